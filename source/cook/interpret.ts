import { nearest } from '../recipe/items.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { type Message, message } from '../texts/message.js';
import { textAt } from '../units/at.js';
import { parseHumidity, parseMass, parseVolume } from '../units/parse.js';
import { parseTemperature, toCelsius } from '../units/temperature.js';
import type { Advice, Asked } from './advice.js';
import { type CookEvent, type TroubleName, troubleNames } from './event.js';
import { isRoomCelsius } from './readings.js';

/** A line that was not understood or not wanted: nothing else changes. */
export type Queried = { readonly kind: 'queried'; readonly typed: string; readonly because: Message };

type Read = CookEvent | { readonly because: Message };
type Reader = (rest: string, advice: Advice) => Read;

/** No sensible line is longer; a note may be. */
const longest = { line: 120, note: 500 } as const;
const mostPortions = 50;
const mostPieces = 10_000;
const mostGrams = 20_000;

const no = (because: Message): Read => ({ because });

const temperature = (rest: string, advice: Advice) => {
  const read = parseTemperature(rest);
  return read === null ? null : { value: read.value, unit: read.unit ?? advice.typing.unit };
};

const reading =
  (of: 'syrup' | 'middle' | 'ice' | 'boiling water', because: (typed: string) => Message): Reader =>
  (rest, advice) => {
    const read = temperature(rest, advice);
    return read === null ? no(because(rest)) : { kind: 'reading', ...read, of, by: 'hands' };
  };

const onOff =
  (kind: 'pot' | 'lid'): Reader =>
  (rest) =>
    rest === 'on' || rest === 'off'
      ? { kind, on: rest === 'on' }
      : no(message('typed.on-off', { word: kind }));

const whole = (rest: string, most: number): number | null => {
  const digits = /^\d{1,5}$/.exec(rest)?.[0];
  const count = digits === undefined ? Number.NaN : Number(digits);
  return count >= 1 && count <= most ? count : null;
};

const grams = (rest: string): number | null => {
  const mass = parseMass(rest);
  return mass.kind === 'mass' && mass.grams <= mostGrams ? mass.grams : null;
};

const room: Reader = (rest, advice) => {
  // "19 c 60 %": a unit belongs to the number before it.
  const parts = rest.replaceAll(/(\d) (?=[cf%°])/g, '$1').split(' ');
  const celsius = parts.flatMap((part) => {
    const read = part.includes('%') ? null : temperature(part, advice);
    return read === null ? [] : [toCelsius(read.value, read.unit)];
  })[0];
  const humidity = parts.flatMap((part) => {
    const read = part.includes('%') ? parseHumidity(part) : null;
    return read?.kind === 'humidity' ? [read.fraction] : [];
  })[0];
  const isRoom = celsius === undefined ? humidity !== undefined : isRoomCelsius(celsius);
  if (!isRoom) return no(message('typed.room', { typed: rest }));
  return { kind: 'room', celsius: celsius ?? null, humidity: humidity ?? null };
};

const answer =
  (given: 'yes' | 'no'): Reader =>
  (_rest, { question, waits, now }) => {
    if (question === null && waits !== null)
      return no(message('typed.too-early', { question: waits.question, seconds: waits.until - now }));
    if (question === null) return no(message('typed.no-question', { answer: given }));
    if (!question.answers.includes(given)) {
      return no(message('typed.not-an-answer', { answer: given, answers: question.answers }));
    }
    return { kind: 'answer', question: question.id, answer: given };
  };

/** What "done" would not answer anyway, and must not: it is only not the moment for it. */
const isPlain = ({ kind }: Asked): boolean => kind === 'reading' || kind === 'what is true now';

const done: Reader = (_rest, advice) => {
  if (advice.canBeDone && advice.step !== null) return { kind: 'done', step: advice.step };
  const { waits, now, question } = advice;
  if (waits !== null)
    return no(message('typed.too-early', { question: waits.question, seconds: waits.until - now }));
  if (question === null || isPlain(question)) return no(message('typed.not-done'));
  return no(message('typed.safety', { answers: question.answers }));
};

const heat: Reader = (rest, { typing }) =>
  typing.heatWords.includes(rest)
    ? { kind: 'heat', setting: rest }
    : no(
        message('typed.heat', {
          typed: rest,
          allowed: typing.heatWords,
          nearest: nearest(rest, typing.heatWords),
        }),
      );

const isTrouble = (name: string): name is TroubleName => (troubleNames as readonly string[]).includes(name);
/** With burnt fingers nobody types two words. */
const emergencies = [
  'burn',
  'fire',
  'scorched',
  'choking',
  'allergy',
  'overflow',
  'foam',
  'glass',
  'spill',
  'power',
] as const satisfies readonly TroubleName[];
const isPhase = (name: string): name is PhaseId => (phaseIds as readonly string[]).includes(name);

const trouble: Reader = (rest) =>
  isTrouble(rest)
    ? { kind: 'trouble', name: rest }
    : no(
        message('typed.trouble', {
          typed: rest,
          allowed: troubleNames,
          nearest: nearest(rest, troubleNames),
        }),
      );

const over: Reader = (rest, { typing: { openTroubles } }) => {
  const [only] = openTroubles;
  if (rest === '' && openTroubles.length === 1 && only !== undefined) return { kind: 'over', name: only };
  const named = openTroubles.find((name) => name === rest);
  return named === undefined
    ? no(message('typed.over', { open: openTroubles }))
    : { kind: 'over', name: named };
};

const at: Reader = (rest) =>
  isPhase(rest)
    ? { kind: 'at', phase: rest }
    : no(message('typed.phase', { typed: rest, allowed: phaseIds, nearest: nearest(rest, phaseIds) }));

const ok: Reader = (rest, { warnings }) => {
  const warning = rest === '' ? warnings[0] : warnings.find(({ id }) => id === rest);
  return warning === undefined
    ? no(message('typed.no-warning', { id: rest === '' ? null : rest }))
    : { kind: 'ok', warning: warning.id };
};

const weigh: Reader = (rest) => {
  const parts = rest.split(/\s+of\s+/);
  const [, of, ...more] = parts;
  const weight = grams(textAt(parts, 0));
  const pieces = of === undefined ? null : whole(of, mostPieces);
  if (
    weight === null ||
    more.length > 0 ||
    (pieces !== null && weight === 0) ||
    (of !== undefined && pieces === null)
  )
    return no(message('typed.weigh', { typed: rest }));
  return { kind: 'weigh', grams: weight, pieces };
};

const water: Reader = (rest) => {
  const volume = parseVolume(rest);
  // One millilitre of water is a gram, near enough for a spoon.
  const amount = volume.kind === 'volume' ? volume.millilitres : grams(rest);
  return amount === null || amount > 5000
    ? no(message('typed.water', { typed: rest }))
    : { kind: 'water', grams: amount };
};

const hands: Reader = (rest) =>
  rest === 'bare' || rest === 'visitors' || rest === 'gloved' || rest === 'children'
    ? { kind: 'hands', whose: rest }
    : no(message('typed.hands', { typed: rest }));

const portion: Reader = (rest) => {
  const count = whole(rest, mostPortions);
  return count === null ? no(message('typed.portion', { typed: rest })) : { kind: 'portions', count };
};

const undo: Reader = (_rest, { typing: { undoes } }) =>
  undoes === null ? no(message('typed.no-undo')) : { kind: 'undo', voids: undoes };

const without =
  (event: CookEvent): Reader =>
  () =>
    event;

/** First word → how the rest is read. Longer words come first where one begins another. */
const words: readonly (readonly [string, Reader])[] = [
  ['middle', reading('middle', (typed) => message('typed.middle', { typed }))],
  ['ice', reading('ice', (typed) => message('typed.check', { typed, word: 'ice' }))],
  ['boils', reading('boiling water', (typed) => message('typed.check', { typed, word: 'boils' }))],
  ['room', room],
  ['thermometer none', without({ kind: 'no thermometer' })],
  ['no thermometer', without({ kind: 'no thermometer' })],
  ...[...coldWaterOutcomes, 'unsure' as const].map((outcome): readonly [string, Reader] => [
    outcome,
    without({ kind: 'cold water', outcome }),
  ]),
  ['done', done],
  ['yes', answer('yes')],
  ['no', answer('no')],
  ['ok', ok],
  ['heat', heat],
  ['pot', onOff('pot')],
  ['lid', onOff('lid')],
  ['water', water],
  ['hands', hands],
  ['droops', without({ kind: 'rope', does: 'droops' })],
  ['holds', without({ kind: 'rope', does: 'holds' })],
  ['arms out', without({ kind: 'arms out' })],
  ['portion', portion],
  ['trouble', trouble],
  ...emergencies.map((name): readonly [string, Reader] => [name, without({ kind: 'trouble', name })]),
  ['over', over],
  ['at', at],
  ['stop', without({ kind: 'stop' })],
  ['undo', undo],
  ['weigh', weigh],
  [
    'count',
    (rest) => {
      const pieces = whole(rest, mostPieces);
      return pieces === null ? no(message('typed.count', { typed: rest })) : { kind: 'count', pieces };
    },
  ],
];

/** Words that mean nothing certain with anything behind them. */
const standAlone: ReadonlySet<string> = new Set([
  ...coldWaterOutcomes,
  ...emergencies,
  ...['unsure', 'done', 'yes', 'no', 'undo', 'stop', 'droops', 'holds', 'arms out'],
  ...['thermometer none', 'no thermometer'],
]);

/** Every word that can be typed, for help and for suggestions. */
export const typedWords: readonly string[] = [...words.map(([word]) => word), 'note', 'mark'];

/** Words that keep the letters as they were typed. */
const remark = (line: string): Read | null => {
  const parts = line.split(' ');
  const word = textAt(parts, 0).toLowerCase();
  const text = parts.slice(1).join(' ').trim();
  if (word === 'note') {
    return text === '' ? no(message('typed.note')) : { kind: 'note', text: text.slice(0, longest.note) };
  }
  if (word === 'mark')
    return text === '' ? no(message('typed.mark')) : { kind: 'mark', what: text.slice(0, longest.line) };
  return null;
};

/** What was probably meant: the whole line, or its first word with the rest as typed, if that can be taken. */
const nearestLine = (typed: string, advice: Advice): string | null => {
  const whole = nearest(typed, typedWords);
  if (whole !== null) return whole;
  const parts = typed.split(' ');
  const word = parts.length === 1 ? null : nearest(textAt(parts, 0), typedWords);
  if (word === null) return null;
  const line = [word, ...parts.slice(1)].join(' ');
  return 'because' in read(line, advice) ? null : line;
};

const read = (line: string, advice: Advice): Read => {
  if (line === '') return no(message('typed.nothing'));
  const remarked = remark(line);
  if (remarked !== null) return remarked;
  if (line.length > longest.line) return no(message('typed.too-long', { length: line.length }));
  const typed = line.toLowerCase();
  if (/^[-+−.,]?\d/.test(typed)) {
    return reading(advice.typing.bare, (found) => message('typed.reading', { typed: found }))(typed, advice);
  }
  const known = words.find(([word]) => typed === word || typed.startsWith(`${word} `));
  if (known === undefined)
    return no(message('typed.unknown', { typed: line, nearest: nearestLine(typed, advice) }));
  const [word, reader] = known;
  const rest = typed.slice(word.length).trim();
  // "yes, in a minute" is no yes.
  if (rest !== '' && standAlone.has(word))
    return no(message('typed.unknown', { typed: line, nearest: word }));
  return reader(rest, advice);
};

/** The one place that reads what people type. Pure; never throws; control characters are data and never act. */
export const interpret = (typed: string, advice: Advice): CookEvent | Queried => {
  const spaced = typed.trim().replaceAll(/\s+/g, ' ');
  const isWords = spaced.length <= longest.line && remark(spaced) === null;
  // A colon is how words are begun on the full screen; "done!" is done, and "yes?" is no yes.
  const line = isWords ? spaced.replace(/^: ?/, '').replace(/[.! ]+$/, '') : spaced;
  const event = read(line, advice);
  return 'because' in event ? { kind: 'queried', typed, because: event.because } : event;
};
