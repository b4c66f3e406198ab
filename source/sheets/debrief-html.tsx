import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { ConeFigure } from './debrief-cone.js';
import { CurveFigure } from './debrief-curve.js';
import { type DebriefTable, debriefDocument } from './debrief-document.js';
import { curveFrame } from './debrief-frame.js';
import { debriefStyle } from './debrief-style.js';

type Say = (said: Message) => string;

/** Nothing is loaded, nothing runs: the page is the file. */
const policy =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

const shortRows = 13;

const Table = ({ table, say }: { table: DebriefTable; say: Say }): ReactElement => {
  const { columns, rows, right, wordy, foot, whenEmpty } = table;
  if (rows.length === 0 && whenEmpty !== null) return <p>{say(whenEmpty)}</p>;
  const names = columns.map(say);
  const side = (index: number) => (right.includes(index) ? 'right' : undefined);
  return (
    <>
      <table className={wordy ? 'many' : undefined}>
        <thead>
          <tr>
            {names.map((name, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns have no other name and never move
              <th key={index} className={side(index)} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows never move
            <tr key={place}>
              {row.map((cell, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: cells never move
                <td key={index} className={side(index)} data-label={index === 0 ? undefined : names[index]}>
                  {say(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {foot === null ? null : <p className="foot">{say(foot)}</p>}
    </>
  );
};

const Page = ({
  story,
  printer,
  damage,
}: {
  story: Story;
  printer: Printer;
  damage: readonly Message[];
}): ReactElement => {
  const say: Say = (said) => words(said, printer);
  const sheet = debriefDocument(story, damage, printer.twelveHours);
  const frame = curveFrame(story);
  const title = say(sheet.title);
  return (
    <html lang={printer.language}>
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta httpEquiv="Content-Security-Policy" content={policy} />
        <title>
          {sheet.rehearsal === null ? title : `${say(message('debrief.rehearsal.short'))}: ${title}`}
        </title>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a constant of our own; React would escape its quotes */}
        <style dangerouslySetInnerHTML={{ __html: debriefStyle }} />
      </head>
      <body>
        {sheet.rehearsal === null ? null : (
          <div className="watermark" aria-hidden="true">
            {say(message('debrief.rehearsal.short'))}
          </div>
        )}
        <main>
          {sheet.rehearsal === null ? null : <p className="rehearsal">{say(sheet.rehearsal)}</p>}
          <h1>{title}</h1>
          <p className="circumstances">{sheet.circumstances.map(say).join(' · ')}</p>
          {sheet.caveats.map((caveat) => (
            <p className="caveat" key={say(caveat)}>
              {say(caveat)}
            </p>
          ))}
          <p className="lead">{say(sheet.lead)}</p>
          <h2>{say(message('debrief.heading.curve'))}</h2>
          {frame === null ? (
            <p>{say(message('debrief.no-curve'))}</p>
          ) : (
            <CurveFigure story={story} frame={frame} printer={printer} />
          )}
          <section className="short">
            <h2>{say(message('debrief.heading.changes'))}</h2>
            {sheet.changes.length === 0 ? (
              <p>{say(sheet.noChanges)}</p>
            ) : (
              <ol className="changes">
                {sheet.changes.map(({ action, because }) => (
                  <li key={say(action)}>
                    <strong>{say(action)}</strong> <span>{say(because)}</span>
                  </li>
                ))}
              </ol>
            )}
          </section>
          {sheet.result.length === 0 ? null : (
            <section className="short">
              <h2>{say(message('debrief.heading.result'))}</h2>
              <dl>
                {sheet.result.map(({ label, value }) => (
                  <Row key={label.id} label={say(label)} value={say(value)} />
                ))}
              </dl>
            </section>
          )}
          {sheet.tables.map((table) => (
            <section key={table.heading.id} className={table.rows.length <= shortRows ? 'short' : undefined}>
              <h2>{say(table.heading)}</h2>
              {table.heading.id === 'debrief.heading.forecast' ? (
                <ConeFigure story={story} printer={printer} />
              ) : null}
              <Table table={table} say={say} />
            </section>
          ))}
          {sheet.remarks.length === 0 ? null : (
            <section>
              <h2>{say(message('debrief.heading.remarks'))}</h2>
              <ul className="remarks">
                {sheet.remarks.map((remark) => (
                  <li key={say(remark)}>{say(remark)}</li>
                ))}
              </ul>
            </section>
          )}
          <footer className="foot">
            {sheet.foot.map((one) => (
              <p key={one.id}>{say(one)}</p>
            ))}
          </footer>
        </main>
      </body>
    </html>
  );
};

const Row = ({ label, value }: { label: string; value: string }): ReactElement => (
  <>
    <dt>{label}</dt>
    <dd>{value}</dd>
  </>
);

/**
 * The debrief as one self-contained page: no script, no request, one style for phone, laptop and paper (A4 and Letter).
 * A rehearsal is marked at the top and across every printed page.
 */
export const debriefHtml = (story: Story, printer: Printer, damage: readonly Message[] = []): string =>
  `<!doctype html>\n${renderToStaticMarkup(<Page story={story} printer={printer} damage={damage} />)}\n`;
