import { escapeCssString } from '../escape/escape-css-string.js';
import { type InkName, palette } from '../picture/palette.js';

function properties(shade: 'light' | 'dark'): string {
  return (Object.keys(palette) as InkName[]).map((name) => `--${name}:${palette[name][shade]}`).join(';');
}

/** The style of a sheet: paper first, then screen, dark screen and narrow screen. `foot` stands on every page. */
export function styleOf(foot: string): string {
  return `
:root{color-scheme:light dark;${properties('light')}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;max-width:66rem;padding:1.5rem 1.25rem 4rem;background:var(--paper);color:var(--ink);font:1rem/1.45 system-ui,"Segoe UI","Helvetica Neue",Arial,sans-serif}
header{border-bottom:3px solid var(--accent);padding-bottom:.6rem;margin-bottom:1rem}
h1{font-size:1.6rem;line-height:1.2;margin:0 0 .2rem}
h2{font-size:1.2rem;line-height:1.25;margin:2rem 0 .6rem;color:var(--accent);break-after:avoid}
h3{font-size:1rem;margin:1.2rem 0 .3rem;break-after:avoid}
h4{font-size:.9rem;margin:.5rem 0 .2rem;color:var(--soft);font-weight:600;break-after:avoid}
p{margin:.4rem 0}
a{color:var(--accent)}
h1,h2,h3,p,li,dd,td.spill,tr.notes td,tr.group1 td,tr.group2 td{overflow-wrap:anywhere}
.subtitle{font-size:1.1rem;margin:0}
.small{font-size:.86rem;color:var(--soft)}
ul.note{list-style:none;border:2px dashed var(--cautionEdge);padding:.4rem .7rem;font-weight:600}
#work{margin-top:.6rem}
nav ul{list-style:none;margin:.3rem 0 0;padding:0;display:flex;flex-wrap:wrap;gap:.2rem 1.1rem;font-size:.9rem}
dl.facts{display:grid;grid-template-columns:minmax(9rem,14rem) 1fr;gap:.15rem 1rem;margin:0}
dl.facts dt{color:var(--soft)}
dl.facts dd{margin:0}
ul{margin:.4rem 0;padding-left:1.2rem}
ul.caution{list-style:none;padding:.55rem .8rem;background:var(--caution);border-left:6px solid var(--cautionEdge)}
ul.caution li{margin:.25rem 0;padding-left:1.4rem;text-indent:-1.4rem}
ul.caution li::before{content:"\\26A0\\FE0E";display:inline-block;width:1.4rem;text-indent:0}
ul.warning li::marker{content:"!\\00A0\\00A0";font-weight:700}
li{break-inside:avoid}
section#signature{break-inside:avoid}
.lines{display:grid;gap:.55rem;margin:.8rem 0;break-inside:avoid}
.lines p{display:grid;grid-template-columns:minmax(9rem,14rem) 1fr;gap:1rem;margin:0;align-items:end;break-inside:avoid}
.lines .room{border-bottom:1.5px solid var(--ink);min-height:1.7rem}
.lines .name{color:var(--soft)}
table{border-collapse:collapse;width:100%;font-size:.9rem;margin:.3rem 0;font-variant-numeric:tabular-nums}
caption{break-after:avoid;text-align:left;color:var(--soft);font-size:.86rem;padding-bottom:.25rem}
th{text-align:left;vertical-align:bottom;font-weight:600;border-bottom:2px solid var(--ink);padding:.25rem .45rem;line-height:1.2}
th .unit{display:block;font-weight:400;color:var(--soft)}
td{vertical-align:top;border-top:1px solid var(--rule);padding:.3rem .45rem}
.right{text-align:right}
td.is-number{white-space:pre}
td.short{white-space:nowrap}
thead{display:table-header-group;break-after:avoid}
tbody,tr{break-inside:avoid}
tr.group1 td{border-top:2px solid var(--accent);background:var(--raised);font-weight:600;padding-top:.45rem;break-after:avoid}
tr.group2 td{font-weight:600;color:var(--accent);border-top:1px solid var(--accent);break-after:avoid}
tr.notes td{border-top:0;padding-top:0;font-size:.84rem;color:var(--soft)}
tr.notes p{margin:.05rem 0}
.attention{color:var(--ink);font-weight:600}
.attention::before{content:"!\\00A0";color:var(--fail);font-weight:800}
td.is-blank{border:1.5px solid var(--soft);min-width:4.2rem;height:2rem}
#rules td.is-blank{min-width:8rem}
td.is-margin{white-space:nowrap}
td.is-margin svg{width:5rem;height:auto;display:block;margin:.1rem 0 0 auto}
.verdict{display:inline-flex;align-items:center;gap:.35rem;white-space:nowrap;font-weight:600}
.verdict.pass{font-weight:400}
.verdict svg{flex:none}
.reason{display:block;font-size:.84rem;color:var(--soft)}
tbody.is-fail>tr.main>td:first-child,tbody.is-fail>tr.notes>td:first-child{box-shadow:inset 4px 0 0 var(--fail)}
#result table{width:auto;min-width:60%}
#result .verdict{font-size:1.1rem;font-weight:700}
.pictures{display:grid;grid-template-columns:repeat(auto-fill,minmax(20rem,1fr));gap:1rem 1.2rem}
figure{margin:0;break-inside:avoid}
figure svg{width:100%;height:auto;max-width:30rem;display:block}
.traces figure{margin:.8rem 0}
.traces svg{max-width:52rem}
.traces{overflow-x:auto}
table.working{table-layout:fixed;margin:.1rem 0 .4rem}
table.working thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table.working td{font-size:.86rem;padding:.12rem .45rem;border-top:1px solid var(--grid);overflow-wrap:anywhere}
table.working .c1{width:25%}
table.working .c3{width:14%}
table.working td:last-child{color:var(--soft)}
table.working td.formula{font-family:ui-monospace,"Cascadia Mono",Menlo,Consolas,"DejaVu Sans Mono",monospace;font-size:.8rem;padding-left:1.6rem;text-indent:-1.2rem}
table.working b{white-space:nowrap;text-indent:0}
@media screen and (prefers-color-scheme:dark){:root{${properties('dark')}}}
@media screen and (max-width:44rem){
.traces svg{width:40rem;max-width:none}
body{padding:1rem .8rem 3rem}
h1{font-size:1.35rem}
dl.facts,.lines p{grid-template-columns:1fr;gap:0}
dl.facts dd{margin-bottom:.4rem}
table.flow,.flow tbody,.flow tr,.flow td{display:block;width:auto}
.flow thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.flow caption{display:block}
.flow tbody{border:1px solid var(--rule);border-left-width:4px;margin:.5rem 0;padding:.2rem .5rem}
.flow tbody.heads{border:0;padding:0}
.flow tbody.is-fail{border-left-color:var(--fail)}
.flow tbody.is-fail>tr>td:first-child{box-shadow:none}
.flow td{border:0;padding:.12rem 0}
.flow tr.main td{display:flex;justify-content:space-between;align-items:baseline;gap:1rem;text-align:right}
.flow tr.main td.wide{display:block;text-align:left}
.flow.working tbody{border-width:0 0 1px;padding:.15rem 0;margin:0}
.flow.working tr.main td{display:block;text-align:left;border:0}
.flow.working tr.main td::before{content:none}
.flow.working tr.main td.formula{padding-left:1.2rem}
.flow tr.main td::before{content:attr(data-label);color:var(--soft);text-align:left;flex:none;max-width:60%}
.flow tr.main td.wide::before{display:block}
.flow td.is-blank::after{content:"";border-bottom:1.5px solid var(--ink);width:6rem}
.flow td.is-blank{border:0;height:auto}
.flow td.is-margin svg{width:5rem;height:auto;display:none}
.flow .verdict{white-space:normal}
#result table{min-width:0}
.pictures{grid-template-columns:1fr}
}
@media print{
:root{color-scheme:light;font-size:9.5pt}
body{max-width:none;padding:0;line-height:1.35}
h1{font-size:16pt}
h2{font-size:12pt;margin:5mm 0 1.5mm}
nav{display:none}
a{color:inherit;text-decoration:none}
table{font-size:8.5pt}
table.working td,table.working td.formula{font-size:7.5pt;padding-top:.3mm;padding-bottom:.3mm}
h3{margin:3mm 0 .5mm}
h4{margin:1mm 0 .3mm}
td,th{padding:.8mm 1.2mm}
td.is-blank{height:8mm;min-width:15mm}
.new-page{break-before:page}
.pictures{grid-template-columns:1fr 1fr;gap:4mm}
.lines .room{min-height:8mm}
ul.caution,td,th,svg{-webkit-print-color-adjust:exact;print-color-adjust:exact}
}
@page{margin:14mm 13mm 17mm;@bottom-left{content:${escapeCssString(foot)};font:8pt system-ui,Arial,sans-serif;color:#55606a}@bottom-right{content:"Page " counter(page) " of " counter(pages);font:8pt system-ui,Arial,sans-serif;color:#55606a;white-space:nowrap}}
`.trim();
}
