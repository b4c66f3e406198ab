import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { Batch } from '../batch/batch.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type CardList, cardDocument } from './card-document.js';
import { cardStyle } from './card-style.js';
import type { RunSheetInput } from './run-sheet.js';

type Say = (said: Message) => string;

/** Nothing is loaded, nothing runs: the page is the file. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

const Block = ({ list, say, kind }: { list: CardList; say: Say; kind: string }): ReactElement => (
  <section className={kind}>
    <h2>{say(list.heading)}</h2>
    <ul>
      {list.items.map((item) => (
        <li key={item.id}>{say(item)}</li>
      ))}
    </ul>
  </section>
);

const Page = ({
  batch,
  run,
  printer,
}: {
  batch: Batch;
  run: RunSheetInput | null;
  printer: Printer;
}): ReactElement => {
  const say: Say = (said) => words(said, printer);
  const card = cardDocument(batch, run);
  const { off, numbers, stages, way, roles } = card;
  const measured = numbers.length > 0;
  return (
    <html lang={printer.language}>
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta httpEquiv="Content-Security-Policy" content={policy} />
        <title>{say(card.title)}</title>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a constant of our own; React would escape its quotes */}
        <style dangerouslySetInnerHTML={{ __html: cardStyle }} />
      </head>
      <body>
        <main>
          <header>
            <div>
              <h1>{say(card.title)}</h1>
              <p className="purpose">{say(card.purpose)}</p>
              <p className="soft">{[...card.when, card.place].map(say).join(' · ')}</p>
            </div>
            <div className="off">
              <p className="label">{say(off.label)}</p>
              <p className={measured ? 'value' : 'value words'}>{say(off.value)}</p>
              <p>{say(off.after)}</p>
            </div>
          </header>
          <div className="two">
            <div className="column">
              {measured ? (
                <section>
                  <h2>{say(message('card.heading.numbers'))}</h2>
                  <table>
                    <tbody>
                      {numbers.map(({ value, text, strong }) => (
                        <tr key={text.id} className={strong ? 'strong' : undefined}>
                          <th scope="row">{say(value)}</th>
                          <td>{say(text)}</td>
                        </tr>
                      ))}
                    </tbody>
                  </table>
                </section>
              ) : null}
              <section>
                <h2>{say(message('card.heading.stages'))}</h2>
                <table>
                  <tbody>
                    {stages.map(({ from, feels, target }) => (
                      <tr key={feels.id} className={target ? 'strong' : undefined}>
                        {from === null ? null : <th scope="row">{say(from)}</th>}
                        <td>{say(feels)}</td>
                      </tr>
                    ))}
                  </tbody>
                </table>
              </section>
              <Block list={card.test} say={say} kind="box plain" />
            </div>
            <div className="column">
              <section>
                <h2>{say(message('card.heading.way'))}</h2>
                <ol className={run === null ? 'way' : 'way timed'}>
                  {way.map(({ time, text }) => (
                    <li key={say(text)}>
                      {run === null ? null : <time>{time ?? ''}</time>}
                      <span>{say(text)}</span>
                    </li>
                  ))}
                </ol>
              </section>
              <Block list={card.power} say={say} kind="box plain" />
            </div>
          </div>
          <ul className="roles">
            {roles.items.map((item) => (
              <li key={item.id}>{say(item)}</li>
            ))}
          </ul>
          <div className="three">
            {card.lists.map((list) => (
              <Block key={list.items[0]?.id} list={list} say={say} kind="box tick" />
            ))}
          </div>
          <div className="two">
            <Block list={card.burn} say={say} kind="alarm" />
            <div className="column">
              <Block list={card.fire} say={say} kind="alarm" />
              <Block list={card.more} say={say} kind="box plain" />
            </div>
          </div>
          <div className="blanks">
            {card.blanks.map((blank) => (
              <p key={blank.id}>{say(blank)}</p>
            ))}
          </div>
          <footer>{say(card.foot)}</footer>
        </main>
      </body>
    </html>
  );
};

/** The card as one self-contained page that prints on one sheet of A4 or Letter. */
export const cardHtml = (batch: Batch, run: RunSheetInput | null, printer: Printer): string =>
  `<!doctype html>\n${renderToStaticMarkup(<Page batch={batch} run={run} printer={printer} />)}\n`;
