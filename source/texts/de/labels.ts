import type { labelTexts } from '../en/labels.js';
import { own } from '../quoted.js';
import type { Translated } from '../texts.js';
import { allergenWord, comma, ingredientWord } from './words.js';

const item = (name: string): string => own(ingredientWord(name));
const shouted = (words: readonly string[]): string =>
  words.map((word) => own(allergenWord(word)).toUpperCase()).join(', ');

type Listed = Parameters<(typeof labelTexts)['label.ingredients']>[0]['items'][number];

const places = { hands: 'Händen', surface: 'Tisch', dust: 'Stücken' } as const;

/** "Butter, ungesalzen (MILCH)", "Butter (MILCH; an Händen und Tisch)". */
const listed = ({ name, contains, on }: Listed): string => {
  const where =
    on.length === 0
      ? ''
      : on.length === 1 && on[0] === 'dust'
        ? 'zum Bestäuben'
        : `an ${on.map((place) => places[place]).join(' und ')}`;
  const notes = [contains.length === 0 ? '' : shouted(contains), where].filter((note) => note !== '');
  return notes.length === 0 ? item(name) : `${item(name)} (${notes.join('; ')})`;
};

/** Labels for pieces that are given away. */
export const deLabels = {
  'label.name': ({ name }) => `${own(name)}, gezogenes Zuckerbonbon`,
  'label.ingredients': ({ items }) => `Zutaten: ${items.map(listed).join(', ')}.`,
  'label.contains': ({ words }) => `Enthält: ${shouted(words)}.`,
  'label.no-allergens': 'Kein verbreitetes Allergen ist darin bekannt.',
  'label.not-checked': ({ words }, p) =>
    `Nicht ausgeschlossen: ${words
      .map(({ word, of }) => `${shouted([word])}${of.length === 0 ? '' : ` (${p.list(of.map(item))})`}`)
      .join(', ')}.`,
  'label.unknown': ({ of }, p) =>
    `Allergene von ${of.length === 0 ? 'einer Zutat' : p.list(of.map(item))} sind NICHT BEKANNT.`,
  'label.net': ({ grams, pieces }) =>
    `Nettogewicht: ${Math.floor(grams)} g (${comma((Math.floor(grams) / 28.3495).toFixed(1))} oz), ${pieces === 1 ? '1 Stück' : `etwa ${pieces} Stück`}.`,
  'label.made': ({ made, before }) =>
    `Hergestellt am ${made}. Mindestens haltbar bis ${before}. Kühl, trocken und verschlossen aufheben.`,
  'label.care': 'Klebrig und zäh: nicht für Kinder unter vier. Im Sitzen essen.',
  'label.maker': 'Hergestellt von: ________________ Telefon: ______________',
  'label.law':
    'Das örtliche Lebensmittelrecht bestimmt, was auf diesem Etikett stehen muss und wer es abgeben darf.',

  'label.how-water': ({ addedGrams, leftGrams }, p) =>
    leftGrams > 0
      ? `Vom zugegossenen Wasser (${p.grams(addedGrams)}) zählen ${p.grams(leftGrams)}: was das Bonbon wiegt, weniger alle anderen Zutaten.`
      : `Das zugegossene Wasser (${p.grams(addedGrams)}) ist nicht genannt: es verkochte, und ein Teil des Wassers aus dem Sirup auch. Das Übrige steht nach dem eingewogenen Gewicht.`,
  'label.how-unweighed':
    'Was an Händen, Tisch und Stücken ist, wird nicht gewogen und steht zuletzt. Ist es viel, etwa dickes Bestäuben? Rück es in der Liste nach oben.',
  'label.how-check': ({ words }) =>
    `Lies die Packungen. Was sicher nicht darin ist, nimm vom Etikett: --checked ${words.map((word) => (/\s/.test(word) ? `"${own(word)}"` : own(word))).join(' --checked ')}`,
  'label.children':
    'Kinder haben es gezogen: jedes isst nur das Stück, das es gezogen hat. Bonbon für andere wird mit Handschuhen oder von Erwachsenen gezogen.',
  'label.bad.net': ({ found }) =>
    `"${own(found)}" ist kein Gewicht für eine Tüte: 1 g bis 5 kg. Tipp zum Beispiel --net 100g oder --net 4oz.`,
  'label.bad.date': ({ found }) => `"${own(found)}" ist kein Datum. Tipp Jahr-Monat-Tag: --date 2026-11-25.`,
  'label.bad.both':
    'Nenn ein Rezept oder einen Kochgang (--cook), nicht beides: ein Kochgang hat sein Rezept dabei.',
  'label.bad.neither': ({ names }) =>
    `Nenn ein Rezept (${names.map(own).join(', ')}) oder einen Kochgang: kettlehand labels --cook 2026-11-25`,
  'label.bad.size': '--pieces und --net sagen jedes, wie viel in einer Tüte ist. Behalt eines davon.',
  'label.bad.checked': ({ found, allowed }) =>
    allowed.length === 0
      ? `Hier ist nichts nachzulesen, also bedeutet --checked "${own(found)}" nichts.`
      : `"${own(found)}" gehört nicht zu dem, was nachzulesen ist: ${allowed.map(own).join(', ')}.`,
  'label.bad.rehearsal':
    'Das war ein Probelauf: es gibt kein Bonbon, auf das ein Etikett käme. Nenn einen Kochgang; "kettlehand cooks" zählt sie auf.',
  'label.bad.not-poured': 'Jener Kochgang kam nie zum Gießen: es gibt kein Bonbon, auf das ein Etikett käme.',
} as const satisfies Translated<typeof labelTexts>;
