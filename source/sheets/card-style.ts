/** One page for a wall, on A4 and on Letter, in black on white: weight and frames carry the meaning, not colour. */
export const cardStyle = `
:root { color-scheme: light; --ink: #111; --soft: #4d4d4d; --line: #b8b8b8; --alarm: #b3160b; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: #fff; color: var(--ink); font: 13.5px/1.3 system-ui, -apple-system, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
main { max-width: 194mm; margin: 0 auto; padding: 6mm; display: grid; gap: 3mm; }
h1 { font-size: 2em; line-height: 1.05; margin: 0 0 .15em; }
h2 { font-size: 1.05em; margin: 0 0 .25em; letter-spacing: .01em; }
p { margin: 0; }
ul, ol { margin: 0; padding: 0; list-style: none; }
li + li { margin-top: .16em; }
.soft { color: var(--soft); }
header { display: grid; grid-template-columns: 1fr auto; gap: 5mm; align-items: stretch; }
header .purpose { font-weight: 700; }
.off { background: var(--ink); color: #fff; padding: 2mm 5mm 2.5mm; max-width: 88mm; }
.off .label { font-weight: 700; letter-spacing: .06em; }
.off .value { font-size: 4em; line-height: 1; font-weight: 800; white-space: nowrap; }
.off .value.words { font-size: 2.6em; }
.two { display: grid; grid-template-columns: 1fr 1.12fr; gap: 4mm; }
.three { display: grid; grid-template-columns: 1fr 1fr 1fr; gap: 3mm; }
.column { display: grid; gap: 3mm; align-content: start; }
table { border-collapse: collapse; width: 100%; }
th, td { padding: .14em .4em; text-align: left; vertical-align: baseline; border-top: 1px solid var(--line); font-weight: 400; }
th { text-align: right; font-weight: 700; font-variant-numeric: tabular-nums; width: 1%; white-space: nowrap; }
tr.strong th, tr.strong td { background: var(--ink); color: #fff; font-weight: 700; }
.way { counter-reset: way; }
.way li { display: grid; grid-template-columns: 1.9em 1fr; counter-increment: way; }
.way li::before { content: counter(way); font-weight: 700; }
.way.timed li { grid-template-columns: 1.9em 4.9em 1fr; }
.way time { font-size: .94em; font-weight: 700; font-variant-numeric: tabular-nums; white-space: nowrap; }
.box { border: 1.5px solid var(--ink); padding: 2mm 2.5mm; }
.box li { padding-left: 1.35em; position: relative; }
.tick li::before { content: ""; position: absolute; left: 0; top: .22em; width: .8em; height: .8em; border: 1px solid var(--ink); }
.plain li { padding-left: 0; }
.alarm { border: 3px solid var(--alarm); padding: 2mm 2.5mm; }
.alarm h2 { color: var(--alarm); font-size: 1.35em; letter-spacing: .04em; }
.alarm li { padding-left: 1.35em; position: relative; }
.alarm li::before { counter-increment: aid; content: counter(aid); position: absolute; left: 0; font-weight: 700; }
.alarm ul { counter-reset: aid; }
.blanks { display: grid; grid-template-columns: 1fr 1.4fr 1fr; gap: 4mm; }
.blanks p { border-bottom: 1.5px solid var(--ink); padding-top: .3em; height: 2.6em; font-size: .92em; }
.roles { display: grid; grid-template-columns: repeat(4, 1fr); gap: 0 3mm; }
.roles li { margin: 0; border-bottom: 1.5px solid var(--ink); min-height: 2.7em; line-height: 1.15; }
footer { font-size: .93em; color: var(--soft); }
@media (max-width: 40rem) {
  body { font-size: 16px; }
  header, .two, .three, .blanks, .roles { grid-template-columns: 1fr; }
  .off { max-width: none; }
}
@media print {
  @page { margin: 7mm; }
  body { font-size: 8.3pt; line-height: 1.17; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  main { max-width: none; padding: 0 .5mm; gap: 2.2mm; }
  .tick li::before { top: .1em; }
  .column { gap: 1.8mm; }
  li + li { margin-top: .1em; }
  th, td { padding-top: .06em; padding-bottom: .06em; }
  .box, .alarm { padding: 1.3mm 2.2mm; break-inside: avoid; }
  header, .two { gap: 4mm; }
}
`.trim();
