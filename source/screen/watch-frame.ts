import type { Advice } from '../cook/advice.js';
import type { Cook } from '../cook/cook.js';
import { message } from '../texts/message.js';
import { escapeForTerminal } from '../units/escape.js';
import type { Printer } from '../units/printer.js';
import { bar } from './bar.js';
import { blockLetters, canSpell, type LetterSize } from './block-letters.js';
import { type Script, type Size, wordsFor } from './context.js';
import { asciiSigns, type Look, unicodeSigns } from './looks.js';
import { blank, clip, cut, type Line, lineWidth, span, widthOf, wrap } from './text.js';
import { watchNumbers } from './watch-numbers.js';
import { sceneOf } from './watch-scene.js';

/** What an onlooker sees at one moment. */
export type Watched =
  | { readonly kind: 'waiting'; readonly for: 'a cook' | 'its journal'; readonly printer: Printer }
  | {
      readonly kind: 'cook';
      readonly cook: Cook;
      readonly advice: Advice;
      readonly printer: Printer;
      /** Somebody leads it at this moment. */
      readonly isLed: boolean;
    };

/** Text is not set wider than a line that can be read across a room. */
const widest = 100;
const marginOf = ({ columns }: Size): number => (columns >= 110 ? 4 : 2);

/** Sizes of the number and of the word, the most legible first; the slim ones only where nothing else has room. */
type Sizes = readonly (readonly [LetterSize, LetterSize])[];
const legible: Sizes = [
  ['huge', 'huge'],
  ['huge', 'large'],
  ['large', 'large'],
  ['large', 'small'],
  ['small', 'small'],
];
const slim: Sizes = [
  ['small', 'slim'],
  ['slim', 'slim'],
];

/** Null where they don't fit, or have no shape; the smallest have none for the sign of a degree. */
const letters = (text: string, size: LetterSize, cells: number, ascii: boolean): readonly string[] | null =>
  blockLetters(canSpell(text, size, ascii) ? text : text.replace('°', ''), size, cells, ascii);

const block = (rows: readonly string[], look: Look): readonly Line[] => rows.map((row) => [span(row, look)]);

const between = (left: Line, right: Line, cells: number): Line => [
  ...left,
  span(' '.repeat(Math.max(1, cells - lineWidth(left) - lineWidth(right)))),
  ...right,
];

const barCells = { least: 10, most: 50 } as const;

type Parts = {
  readonly number: string | null;
  readonly numberLabel: string | null;
  readonly word: string;
  readonly wordLabel: string | null;
  readonly left: Line;
  readonly told: readonly Line[];
  readonly keep: readonly Line[];
  /** Each of the presenter's lines by itself: where there is no room for all, the first stays. */
  readonly cues: readonly (readonly Line[])[];
};

const partsOf = (watched: Watched & { kind: 'cook' }, width: number, style: Script): Parts => {
  const { cook, advice, printer } = watched;
  const { say, show } = wordsFor(printer, style);
  const numbers = watchNumbers(cook, advice, printer);
  const scene = sceneOf(cook, advice);
  const measure = Math.min(width, widest);
  const signs = style.ascii ? asciiSigns : unicodeSigns;
  const left = numbers.left === null ? '' : say(numbers.left);
  const cells = Math.min(barCells.most, measure - widthOf(left) - 2);
  const percent = numbers.share === null ? '' : ` ${show(printer.percent(numbers.share))}`;
  const rest = cells - percent.length;
  return {
    number: numbers.number === null ? null : show(numbers.number),
    numberLabel: numbers.numberLabel === null ? null : say(numbers.numberLabel),
    word: say(numbers.word).toUpperCase(),
    wordLabel: numbers.wordLabel === null ? null : say(numbers.wordLabel),
    left: [
      span(left, advice.offTheHeat ? 'alarm' : 'strong'),
      ...(numbers.share === null || rest < barCells.least
        ? []
        : [span('  '), ...bar(signs, numbers.share, rest), span(percent, 'plain')]),
    ],
    told: [
      ...wrap([span(say(scene.what), 'strong')], measure),
      ...wrap([span(say(scene.why), 'plain')], measure),
      ...(scene.has === null ? [] : wrap([span(say(scene.has), 'strong')], measure)),
    ],
    keep: [
      ...(scene.keep === null
        ? []
        : wrap([span(`${signs.warning} ${say(scene.keep)}`, 'caution')], measure, 2)),
      ...(scene.quiet ? wrap([span(say(message('watch.quiet')), 'strong')], measure) : []),
    ],
    cues: scene.cues.map((cue, index) =>
      wrap(
        [
          span(index === 0 ? `${say(message('watch.cue'))} ` : '', 'faint'),
          span(show(`“${escapeForTerminal(cue)}”`), 'plain'),
        ],
        measure,
      ),
    ),
  };
};

/** The number and the word side by side where they fit, else one below the other; null where they don't. */
const large = (
  parts: Parts,
  [numberSize, wordSize]: readonly [LetterSize, LetterSize],
  width: number,
  ascii: boolean,
  isBeside: boolean,
): readonly Line[] | null => {
  const number = parts.number === null ? [] : letters(parts.number, numberSize, width, ascii);
  const word = letters(parts.word, wordSize, width, ascii);
  if (number === null || word === null) return null;
  const label = (text: string | null): readonly Line[] =>
    text === null ? [] : wrap([span(text, 'faint')], width);
  if (!isBeside || number.length === 0) {
    const top = [...block(number, 'strong'), ...label(parts.numberLabel)];
    return [
      ...top,
      ...(top.length === 0 ? [] : [blank]),
      ...block(word, 'strong'),
      ...label(parts.wordLabel),
    ];
  }
  const numberCells = Math.max(...number.map(widthOf), widthOf(parts.numberLabel ?? '')) + 4;
  const wordCells = Math.max(...word.map(widthOf), widthOf(parts.wordLabel ?? ''));
  if (numberCells + wordCells > width) return null;
  const height = Math.max(number.length, word.length);
  const row = (index: number): Line => {
    // Letters stand on one ground line.
    const left = number[index - (height - number.length)] ?? '';
    const right = word[index - (height - word.length)] ?? '';
    return [span(left + ' '.repeat(numberCells - widthOf(left)), 'strong'), span(right, 'strong')];
  };
  const numberLabel = parts.numberLabel ?? '';
  return [
    ...Array.from({ length: height }, (_, index) => row(index)),
    [
      span(numberLabel + ' '.repeat(numberCells - widthOf(numberLabel)), 'faint'),
      span(parts.wordLabel ?? '', 'faint'),
    ],
  ];
};

const inOneLine = (parts: Parts, width: number): readonly Line[] =>
  [parts.number, parts.numberLabel, parts.word, parts.wordLabel].flatMap((text, index) =>
    text === null ? [] : wrap([span(text, index % 2 === 0 ? 'strong' : 'faint')], width),
  );

/** Everything below the letters, from all of it to what must not be missed. */
const unders = (parts: Parts) => {
  const time = parts.left.every(({ text }) => text === '') ? [] : [blank, parts.left];
  const keep = parts.keep.length === 0 ? [] : [blank, ...parts.keep];
  const tight = (lines: readonly Line[]): readonly Line[] => lines.filter((line) => line !== blank);
  const withCues = (cues: readonly (readonly Line[])[]): readonly Line[] => [
    ...time,
    blank,
    ...parts.told,
    ...keep,
    ...(cues.length === 0 ? [] : [blank, ...cues.flat()]),
  ];
  const first = parts.cues.slice(0, 1);
  const [all, one, none] = [parts.cues, first, []].map(withCues) as [Under, Under, Under];
  return {
    generous: [all, tight(all), one, tight(one)],
    bare: [tight(none), tight([...parts.told, ...keep])],
  };
};
type Under = readonly Line[];

const body = (parts: Parts, width: number, rows: number, style: Script): readonly Line[] => {
  const { generous, bare } = unders(parts);
  const set = (sizes: Sizes, under: Under): Under | null => {
    for (const size of sizes)
      for (const isBeside of [true, false]) {
        const top = large(parts, size, width, style.ascii, isBeside);
        if (top !== null && top.length + under.length <= rows) return [...top, ...under];
      }
    return null;
  };
  for (const sizes of [legible, slim])
    for (const under of generous) {
      const found = set(sizes, under);
      if (found !== null) return found;
    }
  for (const under of [...generous, ...bare]) {
    const top = inOneLine(parts, width);
    if (top.length + under.length <= rows) return [...top, ...under];
  }
  return [...parts.keep, ...parts.told].slice(0, rows);
};

const head = (watched: Watched, cells: number, style: Script): Line => {
  if (watched.kind === 'waiting') return blank;
  const { cook, advice, printer, isLed } = watched;
  const { say, show } = wordsFor(printer, style);
  const marks = [
    ...(advice.rehearsal ? [span(` ${say(message('screen.rehearsal'))} `, 'caution block')] : []),
    ...(isLed || advice.phase === 'over' ? [] : [span(` ${say(message('watch.not-led'))} `, 'caution')]),
  ].flatMap((mark) => [mark, span('  ')]);
  const clock = say(message('screen.clock', { minutes: Math.floor(advice.now / 60) }));
  const right: Line = [...marks, span(clock, 'plain')];
  const name = show(escapeForTerminal(cook.batch.recipe.name));
  return between([span(cut(name, Math.max(0, cells - lineWidth(right) - 1)), 'faint')], right, cells);
};

const nothing = (watched: Watched & { kind: 'waiting' }, width: number, style: Script): readonly Line[] => {
  const { say } = wordsFor(watched.printer, style);
  const isCook = watched.for === 'a cook';
  const title = say(message(isCook ? 'watch.waiting' : 'watch.waiting.journal'));
  return [
    blank,
    ...wrap([span(title, 'strong')], width),
    ...(isCook ? wrap([span(say(message('watch.waiting.why')), 'faint')], width) : []),
  ];
};

/** The whole screen as rows: exactly as many as the window has, none wider. Pure. */
export const watchFrame = (watched: Watched, size: Size, style: Script): readonly Line[] => {
  const margin = marginOf(size);
  const width = Math.max(10, size.columns - 2 * margin);
  const rows = Math.max(1, size.rows - 3);
  const { say } = wordsFor(watched.printer, style);
  const lines =
    watched.kind === 'waiting'
      ? nothing(watched, width, style)
      : body(partsOf(watched, width, style), width, rows, style);
  const isOver = watched.kind === 'cook' && watched.advice.phase === 'over';
  const foot = say(message(isOver ? 'watch.over.keys' : 'watch.keys'));
  const filled = Array.from({ length: rows }, (_, index) => lines[index] ?? blank);
  const all: readonly Line[] = [head(watched, width, style), blank, ...filled, [span(foot, 'faint')]];
  return all
    .slice(0, size.rows)
    .map((line) => clip(line.length === 0 ? line : [span(' '.repeat(margin)), ...line], size.columns));
};
