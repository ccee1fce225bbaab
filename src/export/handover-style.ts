/** Looks of the handover page, on a screen, a phone and paper. */

export const HANDOVER_STYLE = `
:root{color-scheme:light;--ink:#1e2a2e;--soft:#4c5960;--rule:#cfc7b6}
*{box-sizing:border-box}
body{max-width:72rem;margin:0 auto;padding:1rem;background:#fffdf7;color:var(--ink);font:15px/1.45 "Helvetica Neue",Arial,sans-serif}
h1{margin:0 0 .25rem;font-size:1.6rem;line-height:1.2}
h2{margin:2rem 0 .5rem;padding-top:.5rem;border-top:2px solid var(--ink);font-size:1.2rem}
p{margin:.25rem 0 .5rem;max-width:60rem}
nav ol{display:flex;flex-wrap:wrap;gap:.25rem 1.5rem;padding:0 0 0 1.2rem}
a{color:#1f5c6b}
nav a{display:inline-block;min-height:24px}
.t{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.87rem}
th,td{padding:.25rem .5rem;border-bottom:1px solid var(--rule);text-align:left;vertical-align:top}
thead th{border-bottom-color:var(--ink)}
.n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.c{font-family:ui-monospace,Menlo,Consolas,monospace;font-size:.78rem;word-break:break-all}
.s{color:var(--soft);font-size:.87rem}
figure{margin:0 0 1rem}
figure img,.d img{display:block;max-width:100%;height:auto;border:1px solid var(--rule)}
footer{margin-top:2rem;border-top:1px solid var(--rule)}
@media print{body{max-width:none;padding:0;font-size:10pt}nav{display:none}tr,figure{break-inside:avoid}h2{break-after:avoid}thead{display:table-header-group}}
`.trim();
