import wrapAnsi from 'wrap-ansi';
import type { Advice } from '../cook/advice.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import { warningText } from '../texts/warning.js';
import type { Printer } from '../units/printer.js';

/** A list that is read aloud is numbered; ingredients and choices are not. */
const listed = (items: readonly string[], numbered: boolean): readonly string[] =>
  items.map((item, index) => (numbered ? `    ${index + 1}. ${item}` : `    - ${item}`));

const isNew = <Item>(before: readonly Item[] | undefined, key: (item: Item) => string) => {
  const known = new Set(before?.map(key));
  return (item: Item): boolean => !known.has(key(item));
};

const sayKey = (advice: Advice): string =>
  `${advice.phase} ${advice.step} ${advice.urgent} ${advice.question?.id ?? ''}`;

/** The action as it is said in lines: phase and time, what to do, why, and what belongs to it. */
const headline = (advice: Advice, printer: Printer): readonly string[] => {
  const say = (said: Message): string => words(said, printer);
  const phase = say({ id: `phase.${advice.phase}` as TextId }).toUpperCase();
  const marks = [
    phase,
    printer.clock(advice.now),
    ...(advice.drift === null ? [] : [say(message('drift', advice.drift))]),
    ...(advice.rehearsal ? [say(message('lines.rehearsal'))] : []),
    ...(advice.from === null
      ? []
      : [say(message('lines.from', { phase: say({ id: `phase.${advice.from}` as TextId }) }))]),
  ];
  const asks = advice.question !== null && words(advice.question.text, printer) !== say(advice.say);
  return [
    `[${marks.join(', ')}] ${say(advice.say)}`,
    `    ${say(message('lines.why', { said: say(advice.why) }))}`,
    ...advice.cautions.map((caution) => `    ${warningText(caution, printer)}`),
    ...listed(advice.items.map(say), advice.question?.kind === 'pause' || advice.troubles.length > 0),
    ...(asks && advice.question !== null
      ? [`    ${say(message('lines.question', { said: say(advice.question.text) }))}`]
      : []),
    ...(advice.next === null ? [] : [`    ${say(message('lines.next', { said: say(advice.next) }))}`]),
    ...(advice.watch === null ? [] : [`    ${say(message('lines.watch', { said: say(advice.watch) }))}`]),
  ];
};

/**
 * What to append after `before` became `after`: only what is new, so that a screen reader never hears a thing twice.
 * `answered` repeats the headline in short even when it is the same: somebody typed and waits for a word.
 */
export const linesBetween = (
  before: Advice | null,
  after: Advice,
  printer: Printer,
  { answered = false }: { readonly answered?: boolean } = {},
): readonly string[] => {
  const say = (said: Message): string => words(said, printer);
  const warnings = after.warnings.filter(isNew(before?.warnings, ({ id }) => id));
  const due = after.timers
    .filter((timer) => timer.due)
    .filter(
      isNew(
        before?.timers.filter((timer) => timer.due),
        ({ id, until }) => `${id} ${until}`,
      ),
    );
  const meaning = after.meaning !== null && before?.readAt !== after.readAt;
  const gone = (before?.warnings ?? []).filter(isNew(after.warnings, ({ id }) => id));
  const moved = before === null || sayKey(before) !== sayKey(after);
  return [
    ...(answered && meaning && after.meaning !== null ? [`    ${say(after.meaning)}`] : []),
    ...warnings.map(
      (warning) => `!! ${say({ id: `lines.level.${warning.level}` })}: ${warningText(warning, printer)}`,
    ),
    ...gone.map((warning) => `    ${say(message('lines.over', { said: say(warning.cause) }))}`),
    ...due.map(
      (timer) => `*  ${say(message('lines.due', { said: say({ id: `timer.${timer.id}` as TextId }) }))}`,
    ),
    ...(moved ? headline(after, printer) : answered && !meaning ? [`    ${say(after.say)}`] : []),
  ];
};

/** Break a line between words; what follows stands as far in as the line began. */
export const wrapped = (line: string, columns: number): string => {
  const indent = line.length - line.replace(/^\s*(?:\d+\. |- |!! |\* {2}|\? {2})?/, '').length;
  const width = Math.max(20, columns - indent);
  return wrapAnsi(line.slice(indent), width, { hard: true })
    .split('\n')
    .map((part, index) => (index === 0 ? line.slice(0, indent) : ' '.repeat(indent)) + part)
    .join('\n');
};
