import wrapAnsi from 'wrap-ansi';
import type { Advice } from '../cook/advice.js';
import { type Message, message, type TextId, type Texts, words } from '../texts/message.js';
import { warningText } from '../texts/warning.js';
import type { Printer } from '../units/printer.js';

/** Words behind a warning's level, so that nothing depends on colour. */
const levelWords = { now: 'NOW', soon: 'SOON', note: 'NOTE' } as const;

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
const headline = (advice: Advice, printer: Printer, texts?: Texts): readonly string[] => {
  const say = (said: Message): string => words(said, printer, texts);
  const phase = say({ id: `phase.${advice.phase}` as TextId }).toUpperCase();
  const marks = [
    phase,
    printer.clock(advice.now),
    ...(advice.drift === null ? [] : [say(message('drift', advice.drift))]),
    ...(advice.rehearsal ? ['REHEARSAL'] : []),
    ...(advice.from === null ? [] : [`opened at ${advice.from}`]),
  ];
  const asks = advice.question !== null && words(advice.question.text, printer, texts) !== say(advice.say);
  return [
    `[${marks.join(', ')}] ${say(advice.say)}`,
    `    Why: ${say(advice.why)}`,
    ...advice.cautions.map((caution) => `    ${warningText(caution, printer, texts)}`),
    ...listed(advice.items.map(say), advice.question?.kind === 'pause' || advice.troubles.length > 0),
    ...(asks && advice.question !== null ? [`    Question: ${say(advice.question.text)}`] : []),
    ...(advice.next === null ? [] : [`    Next: ${say(advice.next)}`]),
    ...(advice.watch === null ? [] : [`    Watch: ${say(advice.watch)}`]),
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
  { answered = false, texts }: { readonly answered?: boolean; readonly texts?: Texts } = {},
): readonly string[] => {
  const say = (said: Message): string => words(said, printer, texts);
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
    ...warnings.map((warning) => `!! ${levelWords[warning.level]}: ${warningText(warning, printer, texts)}`),
    ...gone.map((warning) => `    (over: ${say(warning.cause)})`),
    ...due.map((timer) => `*  Due: ${say({ id: `timer.${timer.id}` as TextId })}`),
    ...(moved ? headline(after, printer, texts) : answered && !meaning ? [`    ${say(after.say)}`] : []),
  ];
};

/** Break a line between words; what follows stands as far in as the line began. */
export const wrapped = (line: string, columns: number): string => {
  const indent = /^(\s*(?:\d+\. |- |!! |\* {2}|\? {2})?)/.exec(line)?.[0].length ?? 0;
  const width = Math.max(20, columns - indent);
  return wrapAnsi(line.slice(indent), width, { hard: true })
    .split('\n')
    .map((part, index) => (index === 0 ? line.slice(0, indent) : ' '.repeat(indent)) + part)
    .join('\n');
};
