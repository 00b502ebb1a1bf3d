/** Rules of the dossier's documents behind those of every report: landscape paper, wide tables, drawings that fill the sheet. */
export const DOSSIER_STYLE = `
main{max-width:1180px}
section p,section ul{max-width:none}
.number{text-align:right;font-variant-numeric:tabular-nums}
td:has(+.number),th:has(+.number){padding-right:14px}
.unit{font-weight:400;color:var(--gambrel-muted)}
.owner th,.owner td{padding:5px 8px 5px 0}
.owner tr.best{font-weight:600}
.owner .tag,.tag{border:1px solid currentColor;border-radius:3px;padding:0 4px;font-size:11px;font-weight:600;white-space:nowrap}
.risks th{width:22%}
.caution p{margin:4px 0}
.caution h3{margin:0 0 4px;font-size:15px}
table{width:auto;min-width:40%}
table.owner,table.risks{width:100%}
@page{size:A4 landscape;margin:12mm}
@media print{
body{font-size:10pt}
section{break-before:page}
section.first{break-before:auto}
thead{display:table-header-group}
table,.owner{font-size:8.5pt}
thead th,th,td{min-width:0}
tbody th,thead th:first-child{min-width:0}
.owner thead th{vertical-align:bottom}
.owner .range{display:block;margin:0;font-size:7.5pt;white-space:nowrap}
.owner th .range{white-space:normal}
figure figcaption{display:none}
figure .plot svg.gambrel-chart{min-width:0;width:100%;height:158mm}
.caution{font-size:9pt}
}`;
