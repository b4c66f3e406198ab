import type { Batch } from '../batch/batch.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type CardList, cardDocument } from './card-document.js';
import { beside, sheetColumns, wrapped } from './layout.js';
import type { RunSheetInput } from './run-sheet.js';

const numberColumn = 8;
const timeColumn = 10;

/** The card as text, lines of at most 78 columns: read from a file, a telephone or a line printer. */
export const cardText = (batch: Batch, run: RunSheetInput | null, printer: Printer): string => {
  const say = (said: Message): string => words(said, printer);
  const card = cardDocument(batch, run);
  const heading = (text: string): string =>
    `${text.toUpperCase()} ${'-'.repeat(Math.max(2, sheetColumns - text.length - 1))}`;
  const block = ({ heading: title, items }: CardList): readonly string[] => [
    heading(say(title)),
    ...items.flatMap((item) => wrapped(`- ${say(item)}`, sheetColumns, 2)),
  ];
  const aloud = ({ heading: title, items }: CardList): readonly string[] => [
    heading(say(title)),
    ...wrapped(`${items.map(say).join('. ')}.`),
  ];
  const timed = run !== null;
  return [
    `${say(card.title)}${card.when.length === 0 ? '' : `, ${card.when.map(say).join(', ')}`}`,
    ...wrapped(say(card.purpose)),
    ...wrapped(say(card.place)),
    '',
    ...wrapped(`>>> ${say(card.off.label)}: ${say(card.off.value)} ${say(card.off.after)}`, sheetColumns, 4),
    '',
    ...card.numbers.flatMap(({ value, text, strong }) =>
      beside(`${strong ? '>' : ' '} ${say(value)}`, say(text), numberColumn),
    ),
    ...(card.numbers.length === 0 ? [] : ['']),
    heading(say(message('card.heading.stages'))),
    ...card.stages.flatMap(({ from, feels, target }) =>
      beside(`${target ? '>' : ' '} ${from === null ? '' : say(from)}`, say(feels), numberColumn),
    ),
    ...block(card.test),
    heading(say(message('card.heading.way'))),
    ...card.way.flatMap(({ time, text }) =>
      timed ? beside(`${time ?? ''}`, say(text), timeColumn) : wrapped(`- ${say(text)}`, sheetColumns, 2),
    ),
    heading(say(card.roles.heading)),
    ...wrapped(`${card.roles.items.map(say).join('. ')}.`),
    ...card.lists.flatMap(aloud),
    ...[card.burn, card.fire, card.power, card.more].flatMap(block),
    '',
    ...card.blanks.map((blank) => `${`${say(blank)} `.padEnd(24, '.')}${'.'.repeat(sheetColumns - 24)}`),
    '',
    ...wrapped(say(card.foot)),
    '',
  ].join('\n');
};
