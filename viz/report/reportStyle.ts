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
section:nth-of-type(-n+2) h2{margin:14px 0 4px;padding-top:8px}
.lead{color:var(--gambrel-muted);margin:0 0 10px}
.answer{border-left:5px solid var(--gambrel-line);padding:4px 0 4px 16px;margin:8px 0;font-size:17px;line-height:1.45}
.answer p{margin:6px 0}
.verdict{font-size:22px;line-height:1.35;font-weight:600;margin:8px 0 12px;max-width:48em}
.decision tr.best{font-weight:600}
.decision tr.harmful th,.decision td.unshown{color:var(--gambrel-muted)}
.decision .tag{border:1px solid currentColor;border-radius:3px;padding:0 4px;font-size:12px;font-weight:600}
.caution{border:1px solid var(--gambrel-limit);padding:10px 14px;margin:16px 0}
.small{font-size:13px;color:var(--gambrel-muted)}
.paper{display:none}
.scroll{overflow-x:auto}
table{border-collapse:collapse;font-size:13px;line-height:1.35;width:100%;margin:8px 0}
caption{text-align:left;font-size:13px;color:var(--gambrel-muted);padding-bottom:4px}
th,td{text-align:left;vertical-align:top;padding:6px 10px 6px 0;border-bottom:1px solid var(--gambrel-grid);overflow-wrap:break-word}
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
@media screen and (min-width:1240px){
main{max-width:1200px}
section>*{max-width:800px}
section:first-child>*,section>h2,section>.beside{max-width:none}
.beside{display:grid;grid-template-columns:minmax(0,1fr) 700px;grid-template-rows:auto 1fr;column-gap:28px;align-items:start}
.beside .answer,.beside .caution{grid-column:1;margin:0 0 16px}
.beside figure{grid-column:2;grid-row:1/3;margin:0}
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
.screen,.cursor,.reading,.hint,.time-cursor,details:not([open])>*,figure details:not([open]){display:none}
details.day:not([open])>summary{display:list-item}
summary{list-style:none;color:inherit}
.answer{font-size:11pt;line-height:1.35}
h2{margin:14px 0 4px;padding-top:6px}
figure,.told figure{margin:8px 0 10px}
.wide{min-width:0}
th,td{padding:2px 8px 2px 0;overflow-wrap:anywhere;min-width:4em}
thead th{min-width:5em}
tbody th,thead th:first-child{min-width:7em}
td>.range,thead .range{display:inline;margin-left:6px}
.tall svg.${CHART_CLASS}{min-width:0;width:583.333px}
.taller svg.${CHART_CLASS}{min-width:0;width:466.667px}
figcaption,table,caption{font-size:9pt}
figcaption{line-height:1.3}
p,li{break-inside:avoid}
.scroll{overflow:visible}
}`;
}
