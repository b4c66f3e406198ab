/** One page for screen and paper: plain letters, large enough for children, room to write. */
export const handoutStyle = `
:root { color-scheme: light; --ink: #1c1c1c; --soft: #595959; --line: #cfcfcf; --mark: #a3360b; --tint: #f6f3ee; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: #fff; color: var(--ink); font: 17px/1.5 system-ui, -apple-system, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
main { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1.25rem 2rem; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .4rem; }
h2 { font-size: 1.15rem; line-height: 1.3; margin: 1.7rem 0 .4rem; }
p { margin: .45rem 0; }
.about { color: var(--soft); font-size: 1.05rem; }
.lead { font-weight: 600; }
ul, ol { margin: .3rem 0; padding-left: 1.6rem; }
li { margin: .35rem 0; padding-left: .2rem; }
.warns { border: 2px solid var(--mark); border-radius: 4px; padding: .1rem 1rem .6rem; margin: 1.6rem 0 0; }
.warns h2 { margin-top: .7rem; color: var(--mark); }
.warns h2::before { content: "\\26A0\\FE0E\\00A0"; }
table { border-collapse: collapse; width: 100%; margin: .3rem 0; }
th { text-align: left; font-weight: 400; color: var(--soft); font-size: .88em; }
th, td { padding: .28rem .8rem .28rem 0; vertical-align: top; border-bottom: 1px solid var(--line); }
td + td { font-variant-numeric: tabular-nums; }
.numbers td:nth-child(2), .numbers td:nth-child(3) { white-space: nowrap; }
tr.marked td { font-weight: 700; background: var(--tint); }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .35rem 1rem; margin: .4rem 0; }
dt { color: var(--soft); }
dd { margin: 0; }
dd p { margin: 0 0 .3rem; font-style: italic; }
.box { border: 1.5px solid var(--line); border-radius: 4px; min-height: 9rem; padding: .4rem .8rem; color: var(--soft); margin-top: .8rem; }
footer { margin-top: 1.6rem; color: var(--soft); font-size: .82rem; }
@media (max-width: 34rem) {
  body { font-size: 16px; }
  main { padding: 1rem .9rem 1.5rem; }
  .warns { padding: .1rem .75rem .5rem; }
  dl { grid-template-columns: 1fr; gap: 0; }
  th, td { padding-right: .5rem; }
}
@media print {
  @page { margin: 12mm; }
  body { font-size: 9.2pt; line-height: 1.27; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 16pt; margin-bottom: .2rem; }
  h2 { font-size: 11pt; margin: .6rem 0 .15rem; break-after: avoid; }
  p { margin: .2rem 0; }
  .about { font-size: 10pt; }
  .warns { margin-top: .6rem; padding: 0 .7rem .2rem; border-width: 1.5px; }
  .warns h2 { margin-top: .35rem; }
  .warns, table, tr, li, .box, dl { break-inside: avoid; }
  ul, ol { margin: .1rem 0; }
  li { margin: .08rem 0; }
  th, td { padding-top: .1rem; padding-bottom: .1rem; }
  dl { gap: .1rem .8rem; margin: .2rem 0; }
  dd p { margin-bottom: .1rem; }
  .box { min-height: 5rem; margin-top: .3rem; }
  footer { margin-top: .3rem; font-size: 8pt; break-before: avoid; }
  body { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
}
`.trim();
