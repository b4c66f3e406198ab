import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { Batch } from '../batch/batch.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type HandoutBlock, handoutOf } from './handout-document.js';
import { handoutStyle } from './handout-style.js';

type Say = (said: Message) => string;

/** Nothing is loaded, nothing runs: the page is the file. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

type BlockOf<Kind extends HandoutBlock['kind']> = Extract<HandoutBlock, { kind: Kind }>;

const Table = ({ block, say }: { block: BlockOf<'table'>; say: Say }): ReactElement => (
  <table className={block.marked === null ? undefined : 'numbers'}>
    <thead>
      <tr>
        {block.columns.map((column) => (
          <th key={column.id} scope="col">
            {say(column)}
          </th>
        ))}
      </tr>
    </thead>
    <tbody>
      {block.rows.map((row, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows never move
        <tr key={place} className={place === block.marked ? 'marked' : undefined}>
          {row.map((cell, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: cells never move
            <td key={index}>{say(cell)}</td>
          ))}
        </tr>
      ))}
    </tbody>
  </table>
);

const Words = ({ block, say }: { block: BlockOf<'words'>; say: Say }): ReactElement => (
  <dl>
    {block.phases.map(({ phase, lines }) => (
      <Cue key={phase} name={say(message(`phase.${phase}` as TextId))} lines={lines.map(say)} />
    ))}
  </dl>
);

const Cue = ({ name, lines }: { name: string; lines: readonly string[] }): ReactElement => (
  <>
    <dt>{name}</dt>
    <dd>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </dd>
  </>
);

const Block = ({ block, say }: { block: HandoutBlock; say: Say }): ReactElement => {
  switch (block.kind) {
    case 'text':
      return <p>{say(block.said)}</p>;
    case 'list':
    case 'steps': {
      const items = block.items.map((item) => <li key={say(item)}>{say(item)}</li>);
      return block.kind === 'list' ? <ul>{items}</ul> : <ol>{items}</ol>;
    }
    case 'table':
      return <Table block={block} say={say} />;
    case 'words':
      return <Words block={block} say={say} />;
    case 'box':
      return <div className="box">{say(block.said)}</div>;
  }
};

const Page = ({ batch, printer }: { batch: Batch; printer: Printer }): ReactElement => {
  const say: Say = (said) => words(said, printer);
  const { title, about, lead, sections, foot } = handoutOf(batch);
  return (
    <html lang={printer.language}>
      <head>
        <meta charSet="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta httpEquiv="Content-Security-Policy" content={policy} />
        <title>{say(title)}</title>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a constant of our own; React would escape its quotes */}
        <style dangerouslySetInnerHTML={{ __html: handoutStyle }} />
      </head>
      <body>
        <main>
          <h1>{say(title)}</h1>
          {about === null ? null : <p className="about">{say(about)}</p>}
          {lead.map((one) => (
            <p className="lead" key={one.id}>
              {say(one)}
            </p>
          ))}
          {sections.map(({ heading, blocks, warns }) => (
            <section key={heading.id} className={warns ? 'warns' : undefined}>
              <h2>{say(heading)}</h2>
              {blocks.map((block, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: blocks never move
                <Block key={place} block={block} say={say} />
              ))}
            </section>
          ))}
          <footer>
            {foot.map((one) => (
              <p key={one.id}>{say(one)}</p>
            ))}
          </footer>
        </main>
      </body>
    </html>
  );
};

/** The page for the audience, self-contained: no script, no request; for a phone, a screen, A4 and Letter. */
export const handoutHtml = (batch: Batch, printer: Printer): string =>
  `<!doctype html>\n${renderToStaticMarkup(<Page batch={batch} printer={printer} />)}\n`;
