import { CHART_CLASS, chartStyleSheet, FONT_FAMILY } from "../frame/index.ts";

/** Style sheet of the report: screen light and dark, A4 paper. Colours are the charts' own. */
export function reportStyle(): string {
  return `${chartStyleSheet()}
:root{color-scheme:light dark}
body{margin:0;padding:24px 20px 48px;background:var(--gambrel-paper);color:var(--gambrel-ink);font:16px/1.5 ${FONT_FAMILY}}
main{max-width:800px;margin:0 auto;overflow-wrap:break-word}
h1{font-size:28px;line-height:1.2;margin:0 0 4px}
h2{font-size:20px;line-height:1.3;margin:40px 0 8px;padding-top:12px;border-top:2px solid var(--gambrel-rule)}
h3{font-size:16px;margin:24px 0 6px}
p,ul,dl{margin:8px 0}
.first h2{margin:14px 0 4px;padding-top:8px}
.question{font-size:17px}
.appendix{margin-top:40px}
.contents{columns:240px;padding-left:20px;margin:12px 0}
.part{max-width:none;font-size:inherit;border-top:1px solid var(--gambrel-rule)}
.part>summary{padding:10px 0}
.part>summary h2{display:inline;border:0;margin:0;padding:0;font-size:18px}
.part>.body{scroll-margin-top:64px;padding-bottom:24px}
.lead{color:var(--gambrel-muted);margin:0 0 10px}
td code,th code{overflow-wrap:anywhere}
.answer{border-left:5px solid var(--gambrel-line);padding:4px 0 4px 16px;margin:8px 0;font-size:17px;line-height:1.45}
.answer p{margin:6px 0}
.verdict{font-size:22px;line-height:1.35;font-weight:600;margin:8px 0 12px;max-width:48em}
.decision{line-height:1.3}
.decision td,.decision thead th{padding-right:14px}
.decision .unshown{font-weight:400}
.decision .range{white-space:nowrap}
.decision tbody th{min-width:11em;max-width:22em}
.decision tr.best{font-weight:600}
.decision tr.harmful th,.decision td.unshown{color:var(--gambrel-muted)}
.decision .tag{border:1px solid currentColor;border-radius:3px;padding:0 4px;font-size:12px;font-weight:600}
.caution{border:1px solid var(--gambrel-limit);padding:10px 14px;margin:16px 0}
#cautions{font-size:13px;line-height:1.4}
#cautions h3,.next h3{margin:0 0 4px;font-size:15px}
#cautions p{margin:4px 0}
.next ul{margin:4px 0;padding-left:22px}
.small{font-size:13px;color:var(--gambrel-muted)}
.paper{display:none}
.scroll{overflow-x:auto}
table{border-collapse:collapse;font-size:13px;line-height:1.35;width:100%;margin:8px 0}
caption{text-align:left;font-size:13px;color:var(--gambrel-muted);padding-bottom:4px}
th,td{text-align:left;vertical-align:top;padding:6px 10px 6px 0;border-bottom:1px solid var(--gambrel-grid);overflow-wrap:normal}
thead th{border-bottom:1.5px solid var(--gambrel-rule)}
.even{table-layout:fixed}
.wide{min-width:660px}
a{color:var(--gambrel-line)}
.range{display:block;font-weight:400;color:var(--gambrel-muted);font-size:12px}
figure{margin:20px 0 28px}
.told figure{margin:8px 0 20px}
.plot{overflow-x:auto}
.plot:focus-visible,.scroll:focus-visible,summary:focus-visible,input:focus-visible,a:focus-visible{outline:3px solid var(--gambrel-line);outline-offset:2px}
figure svg.${CHART_CLASS}{display:block;min-width:700px;width:700px;height:auto}
.pointed circle,.pointed rect{stroke:var(--gambrel-ink);stroke-width:2.5}
.time-cursor{stroke:var(--gambrel-limit);stroke-width:1.5;pointer-events:none}
.plot.phone{display:none}
.reading{font-size:13px;margin:2px 0 4px;max-width:700px;font-variant-numeric:tabular-nums}
.cursor{position:sticky;top:0;z-index:1;background:var(--gambrel-paper);border-bottom:1px solid var(--gambrel-rule);padding:8px 0;font-size:13px;display:flex;gap:12px;align-items:center;flex-wrap:wrap}
.cursor[hidden]{display:none}
.cursor input{flex:1;min-width:200px;accent-color:var(--gambrel-line)}
.cursor output{font-weight:600;font-variant-numeric:tabular-nums;min-width:5em}
details{font-size:13px;max-width:700px}
details.day,details.inputs{max-width:800px}
details.day{font-size:16px}
summary h3{display:inline}
.inputs code{overflow-wrap:normal;background:none;padding:0;font-size:13px}
summary{cursor:pointer;color:var(--gambrel-line);padding:4px 0}
figcaption{font-size:13px;color:var(--gambrel-muted);max-width:700px}
code{font-family:ui-monospace,"DejaVu Sans Mono",Consolas,monospace;font-size:14px;overflow-wrap:anywhere;background:var(--gambrel-pause);padding:1px 4px}
dt{font-weight:600;margin-top:8px}
dd{margin:0 0 0 16px}
@media screen and (max-width:640px){
body{padding:16px 12px 32px}
h1{font-size:23px}
.verdict{font-size:19px}
.answer{padding-left:12px;font-size:16px}
.cards thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.cards,.cards caption,.cards tbody,.cards tr,.cards th,.cards td{display:block;min-width:0;max-width:none}
.cards tr{border:1px solid var(--gambrel-rule);border-radius:4px;margin:8px 0;padding:6px 10px}
.cards tbody th{font-size:15px;border:0;padding:2px 0}
.cards td{display:flex;justify-content:space-between;gap:12px;border:0;border-top:1px solid var(--gambrel-grid);padding:3px 0}
.cards td.none{display:none}
.cards td>span>.range{display:inline;margin-left:8px}
.cards td::before{content:attr(data-label);font-weight:400;color:var(--gambrel-muted)}
.cards td>span{text-align:right}
.scroll:has(>.cards){overflow:visible}
}
@media screen and (max-width:739px){
.even{table-layout:auto}
.plot.wide{display:none}
.plot.phone{display:block}
figure svg.${CHART_CLASS}{min-width:0;width:100%;max-width:480px}
}
@media screen and (min-width:1000px){
.then{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:24px;align-items:start}
.then>.caution:only-child{grid-column:1/3}
.then .caution{margin:8px 0}
}
@media screen and (min-width:1240px){
main{max-width:1200px}
section p,section ul{max-width:860px}
.first>*,.told p,.then p,.then ul{max-width:none}
.beside{display:grid;grid-template-columns:minmax(0,1fr) 700px;column-gap:28px;align-items:start}
.whole figure svg.${CHART_CLASS}{width:1000px}
.whole figcaption{max-width:1000px}
.beside .answer{margin:8px 0 16px}
.beside figure{margin:0}
.body figure{display:grid;grid-template-columns:700px minmax(0,1fr);column-gap:28px;align-items:start;grid-template-rows:auto auto 1fr}
.body figure>.plot{grid-column:1;grid-row:1/5}
.body figure>:not(.plot){grid-column:2}
.body figure>details[open]{grid-column:1/3}
}
@media screen and (min-width:1700px){
main{max-width:1640px}
.beside{grid-template-columns:minmax(0,1fr) 900px}
.beside figure svg.${CHART_CLASS}{width:900px}
.beside figcaption{max-width:900px}
table{font-size:14px}
.body figure{grid-template-columns:900px minmax(0,1fr)}
.body figure svg.${CHART_CLASS}{width:900px}
}
@page{size:A4;margin:14mm 12mm}
@media print{
body{padding:0;font-size:10.5pt}
main{max-width:none}
h2,h3,h2+p,h3+p,caption,thead{break-after:avoid}
tbody tr:first-child{break-before:avoid}
figure,tr,.caution,.answer{break-inside:avoid}
.plot{overflow:visible}
.paper{display:block}
.screen,.appendix,.cursor,.reading,.hint,.time-cursor,details:not([open])>*,figure details:not([open]){display:none}
details.day:not([open])>summary{display:list-item}
summary{list-style:none;color:inherit}
.part{border:0}
.part>summary{padding:0;break-after:avoid}
.part>summary h2{display:block;font-size:20px;margin:14px 0 4px}
.part>.body{padding:0}
.first h1{font-size:22px}
.first h2{margin:8px 0 2px;padding-top:6px;font-size:15px}
.question{font-size:11pt;margin:4px 0}
.verdict{font-size:14pt;line-height:1.25;margin:4px 0 6px}
.answer p{margin:3px 0}
.first figcaption{display:none}
.told figure,.first figure{margin:4px 0}
#cautions{font-size:9pt;margin:8px 0}
.decision,.decision .range{font-size:9pt}
.decision td,.decision th{padding:3px 7px 3px 0;min-width:0}
.decision thead th{min-width:0}
.decision thead bdi{overflow-wrap:break-word}
.decision tbody th{min-width:9em;max-width:18em}
.decision.long tbody th{min-width:16em}
.decision td>span>.range{display:block;margin:0;white-space:nowrap}
.answer{font-size:10pt;line-height:1.3}
.whole~.decided .decision td>span>.range{white-space:normal}
.whole~.decided .decision tbody th{min-width:5em}
.decided,.next{break-inside:avoid}
h2{margin:14px 0 4px;padding-top:6px}
figure,.told figure{margin:8px 0 10px}
.wide{min-width:0}
th,td{padding:2px 8px 2px 0;min-width:4em}
thead th{min-width:5em}
tbody th,thead th:first-child{min-width:7em}
bdi,.part td,.part th{overflow-wrap:anywhere}
td>.range,thead .range{display:inline;margin-left:6px}
.plot.tall svg.${CHART_CLASS}{min-width:0;width:583.333px}
.plot.taller svg.${CHART_CLASS}{min-width:0;width:466.667px}
figcaption,table,caption{font-size:9pt}
figcaption{line-height:1.3}
p,li{break-inside:avoid}
.scroll{overflow:visible}
}`;
}
