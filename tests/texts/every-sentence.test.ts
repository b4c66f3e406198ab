import { describe, expect, it } from 'vitest';
import { de } from '../../source/texts/de.js';
import { en } from '../../source/texts/en.js';
import { type Printer, printer } from '../../source/units/printer.js';
import { numbersIn } from './numbers.js';
import { combinations } from './values/alternatives.js';
import { alternatives } from './values/index.js';

type Sentence = (values: unknown, printer: Printer) => string;
type Said = {
  readonly id: string;
  readonly values: unknown;
  readonly english: string;
  readonly german: string;
};

const [englishTexts, germanTexts]: readonly Readonly<Record<string, unknown>>[] = [en, de];
const isSentence = (text: unknown): text is Sentence => typeof text === 'function';

/** A dial that shows 2 °F too much, read in the other scale, with everything that a person can choose. */
const readers = [
  printer({ unit: 'C', toShownCelsius: (celsius) => celsius }),
  printer({
    unit: 'F',
    both: true,
    weights: 'ounces',
    clock: '12h',
    toShownCelsius: (celsius) => celsius + 10 / 9,
  }),
];

/** A sentence as two readers see it, in both languages. */
const render = (id: string, values: unknown): readonly Said[] => {
  const [english, german] = [englishTexts?.[id], germanTexts?.[id]];
  if (!isSentence(english) || !isSentence(german)) return [];
  return readers.map((reader) => ({
    id,
    values,
    english: english(values, reader),
    german: german(values, reader.inLanguage('de')),
  }));
};

const made = Object.entries(alternatives).flatMap(([id, given]) =>
  combinations(given).flatMap((values) => render(id, values)),
);
const plain = Object.entries(en).flatMap(([id, english]) => {
  const german = germanTexts?.[id];
  return typeof english === 'string' && typeof german === 'string'
    ? [{ id, values: undefined, english, german }]
    : [];
});
const all: readonly Said[] = [...made, ...plain];

/** The sentences of which something is wrong, each id once, as a reader would see them. */
const wrong = (said: readonly Said[], isWrong: (one: Said) => string | false): readonly string[] => {
  const found = new Map<string, string>();
  for (const one of said) {
    const shown = found.has(one.id) ? false : isWrong(one);
    if (shown !== false) found.set(one.id, `${one.id}: ${shown}`);
  }
  return [...found.values()];
};
const either =
  (isWrong: (text: string) => boolean) =>
  ({ english, german }: Said): string | false =>
    isWrong(english) ? english : isWrong(german) ? german : false;
const except =
  (ids: RegExp) =>
  ({ id }: Said): boolean =>
    !ids.test(id);

/** Columns and lines under each other; keys in a row; what is drawn. */
const laidOut =
  /^(plan\.explain\.|syrup\.result|shelf\.(item|source|ingredient|title)|rehearsal\.(phase|warning)$|debrief\.remark|choose\.trouble\.one|leave\.keys|lines\.note|card\.(heading\.list|list))|\.shout$/;
/** Fragments whose mark belongs to what is typed. */
const drawn = /^(screen\.(rang\.|more$)|key\.list\.head|far\.middle\.none|key\.)/;

const words = (values: unknown): readonly string[] =>
  typeof values === 'string'
    ? [values]
    : typeof values === 'object' && values !== null
      ? Object.values(values).flatMap(words)
      : [];

describe('every sentence that a person can read, over all that its values can be', () => {
  it('is there in both languages', () => {
    const functions = Object.entries(en).flatMap(([id, text]) => (isSentence(text) ? [id] : []));
    expect(Object.keys(alternatives).toSorted()).toEqual(functions.toSorted());
    expect([...new Set(made.map(({ id }) => id))].toSorted()).toEqual(functions.toSorted());
  });

  it('has no hole in it, and nothing that a terminal would obey', () => {
    const holes = /undefined|\bNaN\b|\bnull\b|\[object|Infinity|=>/;
    expect(
      wrong(
        all,
        either((text) => holes.test(text)),
      ),
    ).toEqual([]);
    const controls = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/;
    expect(
      wrong(
        all,
        either((text) => controls.test(text)),
      ),
    ).toEqual([]);
  });

  it('is spaced and marked as print is', () => {
    const spaced = all.filter(except(laidOut)).filter(except(drawn));
    expect(
      wrong(
        spaced,
        either((text) => / {2}/.test(text)),
      ),
    ).toEqual([]);
    expect(
      wrong(
        spaced,
        either((text) => text.startsWith(' ')),
      ),
    ).toEqual([]);
    expect(
      wrong(
        spaced,
        either((text) => / [,.;:!?)](?![\w./])/.test(text)),
      ),
    ).toEqual([]);
    const twice = /[,;:!?][.,;:!?]|(?<!\.)\.[,;:!?]|(?<!\.)\.\.(?!\.)|\( | \)|\(\)/;
    expect(
      wrong(
        spaced,
        either((text) => twice.test(text)),
      ),
    ).toEqual([]);
  });

  it('closes every quote and bracket that it opens', () => {
    const unbalanced = (text: string): boolean =>
      text.split('"').length % 2 === 0 ||
      (['()', '[]', '{}'] as const).some(
        ([open, close]) => text.split(open ?? '').length !== text.split(close ?? '').length,
      );
    expect(wrong(all.filter(except(drawn)), either(unbalanced))).toEqual([]);
  });

  it('begins and ends as a sentence in German where it does in English', () => {
    const begins = (text: string): boolean => /^\p{Lu}\p{Ll}/u.test(text);
    const ends = (text: string): string => /[.!?:](?=["»]?\s*$)/.exec(text)?.[0] ?? '';
    expect(
      wrong(all, ({ english, german }) =>
        begins(english) && ends(english) !== '' && /^\p{Ll}/u.test(german) ? `${english} / ${german}` : false,
      ),
    ).toEqual([]);
    expect(
      wrong(all, ({ english, german }) =>
        (ends(english) === '') !== (ends(german) === '') ? `${english} / ${german}` : false,
      ),
    ).toEqual([]);
  });

  it('says the same numbers in both languages', () => {
    const emergency = (german: string): string => german.replaceAll(/ ?\(112\)/g, '');
    expect(
      wrong(all, ({ english, german }) => {
        const [one, other] = [numbersIn(english, 'en'), numbersIn(emergency(german), 'de')];
        return one.join(' ') === other.join(' ')
          ? false
          : `${english} / ${german} (${one.join(' ')} / ${other.join(' ')})`;
      }),
    ).toEqual([]);
  });

  it('says them with the same units', () => {
    const units = (text: string): string =>
      [
        ...text.matchAll(
          /\d[ -](°[CF]|kg|g|lb|oz|ml|l|mm|cm|m|km|%|min|s|h|W|hPa|kPa|K|kJ|MB|kB)(?![\p{L}\d/])/gu,
        ),
      ]
        .map(([, unit]) => unit)
        .toSorted()
        .join(' ');
    expect(
      wrong(all, ({ english, german }) =>
        units(english) === units(german) ? false : `${english} / ${german}`,
      ),
    ).toEqual([]);
  });

  it('leaves no English in the German', () => {
    const unquoted = (text: string): string =>
      text
        .replaceAll(/"[^"]*"|\{[^}]*\}|Better Homes and Gardens|On Food and Cooking/g, '')
        .replaceAll(/kettlehand [a-z .-]+|weigh 70g of 10|--[a-z]+/g, '');
    expect(
      wrong(all, ({ german }) =>
        /\b(the|and|with|of|or|from|your|until|into|is|are)\b/.test(unquoted(german)) ? german : false,
      ),
    ).toEqual([]);
  });

  it('is not the same in both', () => {
    const own = ({ values, english }: Said): string =>
      words(values).reduce((text, word) => (word.length < 3 ? text : text.replaceAll(word, '')), english);
    expect(
      wrong(all, (one) => (one.english === one.german && /[a-z]{4}/i.test(own(one)) ? one.english : false)),
    ).toEqual([]);
  });

  it('counts one as one, and two as several', () => {
    const several =
      /(?<![\d.,\-/:]|\d )\b1 (pieces|squares|batches|lines|events|cooks|warnings|troubles|times|tests|people|portions|handfuls|stages|children|guests|readings|hours|minutes|days|characters|other events|more warnings|Papiere|Ansätze|Zeilen|Ereignisse|Kochgänge|Warnungen|Probleme|Proben|Leute|Portionen|Handvolle|Stufen|Kinder|Gäste|Ablesungen|Stunden|Minuten|Tage|Stücke[n]?|weitere Warnungen|andere Ereignisse)\b/;
    const one =
      /(?<![\d.,\-/:])\b([2-9]|\d\d+) (piece|square|batch|line|event|cook|warning|trouble|test|person|portion|handful|stage|child|guest|reading|Papier|Ansatz|Zeile|Ereignis|Kochgang|Warnung|Problem|Probe|Portion|Handvoll|Stufe|Kind|Gast|Ablesung)\b/;
    expect(
      wrong(
        all,
        either((text) => several.test(text)),
      ),
    ).toEqual([]);
    expect(
      wrong(
        all,
        either((text) => one.test(text)),
      ),
    ).toEqual([]);
  });
});

/** What one thing and several ask of the words around them, and words that are the same in no two languages. */
const grammar: ReadonlyArray<readonly [id: string, values: unknown, english: string, german: string]> = [
  ['recipe.note.stir-late', { items: ['honey'] }, 'honey catches and scorches if', 'Honig: das setzt an'],
  [
    'recipe.note.stir-late',
    { items: ['honey', 'molasses'] },
    'catch and scorch if',
    'Honig und Melasse: das',
  ],
  ['recipe.note.alcohol-early', { items: ['vanilla extract'] }, 'its vapour burns. Put it in', 'verkocht in'],
  [
    'recipe.note.alcohol-early',
    { items: ['rum', 'kirsch'] },
    'their vapour burns. Put them in',
    'Gib sie bei',
  ],
  ['recipe.note.flavour-early', { items: ['lemon oil'] }, 'boils away', 'Zitronenöl verkocht mit'],
  ['recipe.note.flavour-early', { items: ['lemon oil', 'rum'] }, 'rum boil away', 'verkochen mit'],
  ['recipe.swap.starch', { items: ['cornstarch'] }, 'cornstarch is still', 'Maisstärke ist weiterhin'],
  ['recipe.swap.starch', { items: ['cornstarch', 'dextrin'] }, 'are still made', 'sind weiterhin'],
  ['typed.over', { open: ['foam'] }, 'Type "over foam".', 'Tipp "over foam".'],
  ['typed.over', { open: ['foam', 'burn'] }, 'one of foam and burn.', 'eines von foam und burn.'],
  ['ingredient', { amount: '1 cup', name: 'honey', grams: 340, millilitres: 237 }, '1 cup', '1 Tasse Honig'],
  [
    'ingredient',
    { amount: '2 cups', name: 'honey', grams: 680, millilitres: 473 },
    '2 cups',
    '2 Tassen Honig',
  ],
  ['rehearsal.change.unfinished', { phase: 'boil' }, 'left at boil:', 'Verlassen bei Kochen:'],
  [
    'rehearsal.change.late-phase',
    { phase: 'fold', seconds: 4200, mostSeconds: 3600 },
    'Fold took 1 h 10 min',
    'Falten dauerte 1 h 10 min',
  ],
  [
    'debrief.lead.given-up',
    { phase: 'boil', seconds: 95, troubles: 1, warnings: 1 },
    '1 trouble',
    '1 Problem',
  ],
  ['plan.bad.children', { guests: 1, children: 2 }, '2 children among 1 guest can', '2 Kinder unter 1 Gast,'],
];

describe('words that go by what they speak of', () => {
  it.each(grammar)('%s of %j: "%s", "%s"', (id, values, english, german) => {
    const [said] = render(id, values);
    expect(said?.english).toContain(english);
    expect(said?.german).toContain(german);
  });
});
