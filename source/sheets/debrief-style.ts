/** One page for screen and paper: greys and weight; colour only where something is to be found again. */
export const debriefStyle = `
:root { color-scheme: light; --ink: #1b1b1b; --soft: #5a5a5a; --line: #d2d2d2; --mark: #a3360b; --syrup: #1f5a8a; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: #fff; color: var(--ink); font: 16px/1.5 system-ui, -apple-system, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
main { max-width: 50rem; margin: 0 auto; padding: 1.5rem 1.25rem 2rem; }
h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .35rem; }
h2 { font-size: 1.08rem; margin: 1.7rem 0 .5rem; padding-bottom: .2rem; border-bottom: 1px solid var(--line); }
p { margin: .4rem 0; }
.circumstances { color: var(--soft); font-size: .9rem; }
.lead { font-size: 1.15rem; font-weight: 600; margin: .9rem 0; }
.caveat { border-left: 4px solid var(--mark); padding: .2rem .7rem; font-size: .95rem; }
.rehearsal { margin: 0 0 1rem; padding: .35rem .7rem; border: 2px solid var(--mark); color: var(--mark); font-weight: 700; letter-spacing: .02em; }
.watermark { display: none; }
figure { margin: 0; }
svg { display: block; width: 100%; height: auto; }
svg text { font-family: inherit; fill: var(--ink); }
svg .soft { fill: var(--soft); }
svg .strong { font-weight: 700; }
.narrow { display: none; }
figcaption, .foot { color: var(--soft); font-size: .82rem; }
.legend { list-style: none; margin: .3rem 0; padding: 0; display: flex; flex-wrap: wrap; gap: .15rem 1.1rem; font-size: .82rem; }
.legend li { display: flex; align-items: center; gap: .35rem; }
.legend svg { width: 22px; height: 14px; flex: none; }
ol.changes { margin: .3rem 0; padding-left: 1.4rem; }
ol.changes li { margin: .45rem 0; padding-left: .2rem; }
ol.changes strong { display: block; }
ol.changes span { color: var(--soft); }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .3rem 1.1rem; margin: .3rem 0; }
dt { color: var(--soft); }
dd { margin: 0; }
table { border-collapse: collapse; max-width: 100%; font-size: .92rem; }
th { text-align: left; font-weight: 400; color: var(--soft); }
th, td { padding: .22rem 1.4rem .22rem 0; vertical-align: top; border-bottom: 1px solid #ebebeb; overflow-wrap: break-word; }
td.right, th.right { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
ul.remarks { margin: .3rem 0; padding-left: 1.2rem; }
footer { margin-top: 1.8rem; }
@media (max-width: 40rem) {
  main { padding: 1rem .9rem 1.5rem; }
  .wide { display: none; }
  .narrow { display: block; }
  dl { grid-template-columns: 1fr; gap: 0; }
  dd { margin-bottom: .5rem; }
  table.many, .many tbody, .many tr, .many td { display: block; }
  table { font-size: .82rem; }
  .many { font-size: .92rem; }
  th, td { padding-right: .55rem; }
  .many thead { display: none; }
  .many tr { padding: .4rem 0; border-bottom: 1px solid var(--line); }
  .many td, .many td.right { border: 0; padding: 0; text-align: left; white-space: normal; }
  .many td:empty { display: none; }
  .many td[data-label]:not([data-label=""])::before { content: attr(data-label) ": "; color: var(--soft); }
  .many td:first-child { font-weight: 600; }
}
@media print {
  @page { margin: 13mm; }
  body { font-size: 9.5pt; line-height: 1.3; }
  .cone svg { max-height: 42mm; }
  th, td { padding-top: .06rem; padding-bottom: .06rem; }
  main { max-width: none; padding: 0; }
  .wide { display: block; }
  .narrow { display: none; }
  h1 { font-size: 17pt; }
  h2 { margin: .8rem 0 .3rem; break-after: avoid; }
  footer { margin-top: .6rem; break-before: avoid; }
  footer p { margin: .1rem 0; }
  figure, tr, li, dl, footer, .lead, .caveat { break-inside: avoid; }
  .short { break-inside: avoid; }
  .watermark { display: block; position: fixed; top: 42%; left: 0; right: 0; text-align: center; transform: rotate(-28deg); font-size: 64pt; font-weight: 700; letter-spacing: .08em; color: rgba(163, 54, 11, .13); }
  body, svg { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
}
`.trim();
