import { describe, expect, it } from 'vitest';
import { hazards } from '../../source/cook/hazards/table.js';
import { allSteps } from '../../source/cook/phases/index.js';
import { canSpell, type LetterSize } from '../../source/screen/block-letters.js';
import { toAscii } from '../../source/screen/looks.js';
import { de } from '../../source/texts/de.js';
import { en } from '../../source/texts/en.js';
import { printer } from '../../source/units/printer.js';
import { numbersIn } from './numbers.js';

const english = en as Readonly<Record<string, unknown>>;
const german = de as Readonly<Record<string, unknown>>;
const strings = Object.keys(german).flatMap((id) => {
  const [one, other] = [english[id], german[id]];
  return typeof one === 'string' && typeof other === 'string' ? [[id, one, other] as const] : [];
});
const shouts = Object.keys(german).filter((id) => id.endsWith('.shout'));

/** What is the same word in both languages. */
const sameInBoth = new Set(['plot.minutes', 'screen.ghost']);

describe('the German sentences', () => {
  it('belong to an English one each', () => {
    expect(Object.keys(german).filter((id) => !(id in english))).toEqual([]);
    for (const [id, said] of Object.entries(german)) expect(typeof said, id).toBe(typeof english[id]);
  });

  it('are no English left over', () => {
    const same = strings.filter(([, one, other]) => one === other && /[a-z]{2}/i.test(one)).map(([id]) => id);
    expect(same.filter((id) => !sameInBoth.has(id))).toEqual([]);
    const words = /\b(the|and|with|from|you|your|into|until|is|are|not|type|heat the)\b/;
    const unquoted = (text: string): string =>
      text
        .replaceAll(/"[^"]*"|\{[^}]*\}|Better Homes and Gardens|On Food and Cooking/g, '')
        .replaceAll(/kettlehand [a-z .-]+/g, '');
    expect(strings.filter(([, , other]) => words.test(unquoted(other))).map(([id]) => id)).toEqual([]);
  });

  it('have the same numbers, but for the emergency number', () => {
    for (const [id, one, other] of strings)
      expect(numbersIn(other.replaceAll(/ ?\(112\)/g, ''), 'de'), `${id}: ${other}`).toEqual(
        numbersIn(one, 'en'),
      );
  });

  it('leave what is typed as it has to be typed', () => {
    const typed = (text: string): readonly string[] =>
      [...text.matchAll(/"([a-z][a-z0-9 :{}.-]*)"|\b(kettlehand [a-z]+ [a-z]+)/g)].map(
        ([, quoted, command]) => quoted ?? command ?? '',
      );
    for (const [id, one, other] of strings)
      for (const word of typed(one))
        if (!/name|value/.test(word)) expect(other, `${id}: ${word}`).toContain(word);
  });

  it('say "you" as among friends, and never "Sie" or the careless quotes of another language', () => {
    for (const [id, , other] of strings) {
      expect(other, id).not.toMatch(/\bIhre?[nmrs]?\b|\bIhnen\b|[“”]/);
      expect(other, id).not.toMatch(/(?<=[a-zäöüß,] )Sie\b/);
    }
  });
});

describe('German words for the far view', () => {
  const sizes: readonly LetterSize[] = ['slim', 'small', 'large', 'huge'];

  it.each(shouts)('%s fits two lines of fourteen, also without umlauts, and can be spelt', (id) => {
    const said = String(german[id]);
    for (const text of [said, toAscii(said)]) {
      const lines = text.split('\n');
      expect(lines.length).toBeLessThanOrEqual(2);
      for (const line of lines) {
        expect(line.length, line).toBeLessThanOrEqual(14);
        expect(line).toBe(line.trim());
        expect(line).toBe(line.toUpperCase());
      }
    }
    for (const size of sizes) {
      expect(canSpell(said, size, false), `${said} ${size}`).toBe(true);
      expect(canSpell(toAscii(said), size, true), `${said} ${size} ASCII`).toBe(true);
    }
  });

  it('are there for every English one', () => {
    expect(shouts.toSorted()).toEqual(
      Object.keys(english)
        .filter((id) => id.endsWith('.shout'))
        .toSorted(),
    );
  });
});

describe('German sentences for a person at a stove', () => {
  const steps = new Set(allSteps.flatMap(({ id }) => [`${id}.say`, `${id}.why`]));
  const said = strings.filter(([id]) => steps.has(id));

  it.each(said.map(([id, , other]) => [id, other] as const))(
    '%s ends as a sentence and is short',
    (_id, sentence) => {
      expect(sentence).toMatch(/^[A-ZÄÖÜ].*[.?!]$/s);
      expect(sentence.length).toBeLessThanOrEqual(120);
      expect(sentence).not.toMatch(/\bbitte\b|\bsicher\b| {2}/i);
    },
  );

  it.each(hazards.map(({ id, signal }) => [id, signal] as const))(
    'the hazard %s says danger and consequence in at most twelve words',
    (id, signal) => {
      const word = signal === null ? '' : String(german[`signal.${signal}`]);
      const before = `${word} ${german[`hazard.${id}.cause`]} ${german[`hazard.${id}.does`]}`;
      expect(before.trim().split(/\s+/).length, before).toBeLessThanOrEqual(12);
    },
  );
});

describe('numbers as German writes them', () => {
  const right = (celsius: number): number => celsius;
  const auf = printer({ language: 'de', unit: 'C', toShownCelsius: right });

  it('has a decimal comma, no comma for thousands, and its own words', () => {
    expect(auf.litres(3.25)).toBe('3,3 l');
    expect(auf.grams(1520)).toBe('1,52 kg');
    expect(auf.metres(1450)).toBe('1450 m');
    expect(auf.count(12_500, 'Stück', 'Stück')).toBe('12\u00a0500 Stück');
    expect(auf.number(3.5, 1)).toBe('3,5');
    expect(auf.rate(0.01)).toBe('0,6 °C pro Minute');
    expect(auf.rise(0.2)).toBe('weniger als 1 °C');
    expect(auf.about({ low: 180, typical: 240, high: 300 })).toBe('etwa 4 min (3-5)');
    expect(auf.about({ low: 3000, typical: 3600, high: 4500 })).toBe('etwa 1 h (50 min bis 1 h 15 min)');
    expect(auf.about({ low: 0, typical: 0, high: 0 })).toBe('jetzt');
    expect(auf.dialSpan(-5, 3)).toBe('-5 bis 3 °C');
    expect(auf.list(['Milch', 'Soja', 'Weizen'])).toBe('Milch, Soja und Weizen');
  });
});

describe('a terminal without umlauts', () => {
  it.each([
    ['Öl', 'Oel'],
    ['ÜBERS ZIEL', 'UEBERS ZIEL'],
    ['LÖFFEL', 'LOEFFEL'],
    ['Süßkraft', 'Suesskraft'],
    ['A\u0308rmel', 'Aermel'],
    ['crème', 'creme'],
  ])('%s is %s', (said, shown) => expect(toAscii(said)).toBe(shown));
});
