import type { Printer } from '../../units/printer.js';
import { own } from '../quoted.js';

const shouted = (words: readonly string[]): string => words.map((word) => own(word).toUpperCase()).join(', ');

type Listed = {
  readonly name: string;
  readonly contains: readonly string[];
  readonly on: readonly ('hands' | 'surface' | 'dust')[];
};

const places = { hands: 'hands', surface: 'table', dust: 'dusting' } as const;

/** "unsalted butter (MILK)", "butter (MILK; on hands and table)". */
const listed = ({ name, contains, on }: Listed): string => {
  const where =
    on.length === 0
      ? ''
      : on.length === 1 && on[0] === 'dust'
        ? 'for dusting'
        : `on ${on.map((place) => places[place]).join(' and ')}`;
  const notes = [contains.length === 0 ? '' : shouted(contains), where].filter((note) => note !== '');
  return notes.length === 0 ? own(name) : `${own(name)} (${notes.join('; ')})`;
};

/** Labels for pieces that are given away. */
export const labelTexts = {
  'label.name': ({ name }: { name: string }) => `${own(name)}, pulled sugar candy`,
  'label.ingredients': ({ items }: { items: readonly Listed[] }) =>
    `Ingredients: ${items.map(listed).join(', ')}.`,
  'label.contains': ({ words }: { words: readonly string[] }) => `Contains: ${shouted(words)}.`,
  'label.no-allergens': 'No common allergen is known to be in it.',
  'label.not-checked': (
    { words }: { words: readonly { word: string; of: readonly string[] }[] },
    p: Printer,
  ) =>
    `Not ruled out: ${words
      .map(({ word, of }) => `${shouted([word])}${of.length === 0 ? '' : ` (${p.list(of.map(own))})`}`)
      .join(', ')}.`,
  'label.unknown': ({ of }: { of: readonly string[] }, p: Printer) =>
    `Allergens of ${of.length === 0 ? 'an ingredient' : p.list(of.map(own))} are NOT KNOWN.`,
  'label.net': ({ grams, pieces }: { grams: number; pieces: number }) =>
    `Net weight: ${Math.floor(grams)} g (${(Math.floor(grams) / 28.3495).toFixed(1)} oz), ${pieces === 1 ? '1 piece' : `about ${pieces} pieces`}.`,
  'label.made': ({ made, before }: { made: string; before: string }) =>
    `Made on ${made}. Best before ${before}. Keep it cool, dry and closed.`,
  'label.care': 'Sticky and chewy: not for children under four. Sit down to eat it.',
  'label.maker': 'Made by: ________________ Telephone: ______________',
  'label.law': 'Local food law decides what must stand on this label and who may give it away.',

  'label.how-water': ({ addedGrams, leftGrams }: { addedGrams: number; leftGrams: number }, p: Printer) =>
    leftGrams > 0
      ? `Of the water poured in (${p.grams(addedGrams)}), ${p.grams(leftGrams)} counts: what the candy weighs less all other ingredients.`
      : `The water poured in (${p.grams(addedGrams)}) is not listed: it boiled away, and so did some of the syrup's own. The rest is in order of weight as weighed in.`,
  'label.how-unweighed':
    'What is on hands, table and pieces is not weighed and stands last. Is it a lot, such as thick dusting? Move it up the list.',
  'label.how-check': ({ words }: { words: readonly string[] }) =>
    `Read the packets. What is surely not in them, take off the label: --checked ${words.map((word) => (/\s/.test(word) ? `"${own(word)}"` : own(word))).join(' --checked ')}`,
  'label.children':
    'Children pulled it: each eats only the piece that they pulled. Candy for others is pulled in gloves or by adults.',
  'label.bad.net': ({ found }: { found: string }) =>
    `"${own(found)}" is no weight for a bag: 1 g to 5 kg. Type for example --net 100g or --net 4oz.`,
  'label.bad.date': ({ found }: { found: string }) =>
    `"${own(found)}" is no date. Type year-month-day: --date 2026-11-25.`,
  'label.bad.both': 'Name a recipe or a cook (--cook), not both: a cook has its recipe with it.',
  'label.bad.neither': ({ names }: { names: readonly string[] }) =>
    `Name a recipe (${names.map(own).join(', ')}) or a cook: kettlehand labels --cook 2026-11-25`,
  'label.bad.size': '--pieces and --net each say how much is in one bag. Keep one of them.',
  'label.bad.checked': ({ found, allowed }: { found: string; allowed: readonly string[] }) =>
    allowed.length === 0
      ? `Nothing has to be checked here, so --checked "${own(found)}" means nothing.`
      : `"${own(found)}" is not among what has to be checked: ${allowed.map(own).join(', ')}.`,
  'label.bad.rehearsal':
    'That was a rehearsal: there is no candy to put a label on. Name a cook; "kettlehand cooks" lists them.',
  'label.bad.not-poured': 'That cook never came to the pour: there is no candy to put a label on.',
} as const;
