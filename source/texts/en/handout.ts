import { escapeForTerminal } from '../../units/escape.js';
import { type Amount, countedAmount, householdAmount, ounces, quarts } from '../../units/household.js';
import type { Printer } from '../../units/printer.js';
import { own } from '../quoted.js';
import { bothDegrees, bothLengths, bothSpans, scaleGrams } from './handout-amounts.js';
import { labelTexts } from './labels.js';
import { learnedTexts } from './learned.js';

/** The trade's words for what a drop in cold water feels like. */
type ColdWaterOutcome =
  | 'dissolves'
  | 'thread'
  | 'soft ball'
  | 'firm ball'
  | 'hard ball'
  | 'soft crack'
  | 'hard crack';

type Grease = 'butter' | 'oil' | 'starch' | 'dry';

const names = (items: readonly string[], p: Printer): string => p.list(items.map(own));

const onHands: Readonly<Record<Grease, string>> = {
  butter: 'Rub a little butter on clean hands.',
  oil: 'Rub a little oil on clean hands.',
  starch: 'Dust clean, dry hands with starch.',
  dry: 'Keep your hands clean and dry.',
};
const onTray: Readonly<Record<Grease, string>> = {
  butter: 'a tray rubbed with butter',
  oil: 'a tray rubbed with oil',
  starch: 'a tray dusted with starch',
  dry: 'a clean, dry stone or steel tray',
};

/** What a drop of syrup does in cold water, in plain words. */
const drops: Readonly<Record<ColdWaterOutcome, string>> = {
  dissolves: 'It melts away in the water.',
  thread: 'It makes soft threads and no ball.',
  'soft ball': 'It makes a soft ball. Lift it out and it goes flat.',
  'firm ball': 'It makes a ball that stays round, but you can press it flat.',
  'hard ball': 'It makes a hard ball. You can still dent it.',
  'soft crack': 'It makes threads that bend a bit and then snap.',
  'hard crack': 'It makes threads that snap at once.',
};

/**
 * The page for the audience. Short words and short sentences: measured by the Flesch-Kincaid grade in
 * tests/sheets/handout.test.ts. Both systems of units in every sentence, so that no reader has to convert.
 */
export const handoutTexts = {
  ...learnedTexts,
  ...labelTexts,
  'handout.own': ({ text }: { text: string }) => own(text),
  'handout.title': ({ name }: { name: string }) => `${own(name)}: make it at home`,
  'handout.defer':
    'The person in charge, local rules for kitchens and for children, food law and trained first aid come before anything on this page.',
  'handout.who': 'An adult cooks and pours the hot syrup. Children can weigh, pull and wrap.',

  'handout.heading.amounts': 'What goes in',
  'handout.column.item': 'Item',
  'handout.column.metric': 'Grams, ml',
  'handout.column.household': 'Cups and spoons',
  'handout.column.when': 'When',
  'handout.metric': ({ grams, millilitres, written, isWater }: Amount & { isWater: boolean }) => {
    const few = countedAmount(written ?? '');
    if (few !== null) return own(few);
    return isWater && millilitres !== null ? `${Math.round(millilitres)} ml` : scaleGrams(grams);
  },
  'handout.household': (amount: Amount) => own(householdAmount(amount)),
  'handout.when.mix': 'at the start',
  'handout.when.boil': 'in the boil',
  'handout.when.flavour': 'off the heat',
  'handout.when.fold': 'as you fold',
  'handout.when.pull': 'as you pull',
  'handout.makes': ({ pieces, grams }: { pieces: number; grams: number }, p: Printer) =>
    `It makes about ${p.count(pieces, 'piece', 'pieces')}. Each weighs ${scaleGrams(grams)} (${ounces(grams)}). Weigh things if you can, for no two cups are quite the same.`,

  'handout.heading.kit': 'What else you need',
  'handout.kit.pot': ({ litres }: { litres: number }) =>
    `a heavy pot that holds ${Math.ceil(litres * 2) / 2} litres (${quarts(litres)}) or more, and a lid that fits`,
  'handout.kit.hot': 'a candy thermometer, dry oven gloves and a wooden spoon',
  'handout.kit.tray': ({ surface }: { surface: Grease }) => `${onTray[surface]}, and a scraper`,
  'handout.kit.test': 'cups of cold water and a metal spoon, for the test',
  'handout.kit.wrap': ({ squares }: { squares: number }) =>
    `scissors, and about ${Math.ceil(squares / 10) * 10} squares of wax paper`,

  'handout.heading.hot': 'How hot',
  'handout.hot.target': ({ low, high, feels }: { low: number; high: number; feels: ColdWaterOutcome }) =>
    `Cook it to ${bothSpans(low, high)}. In cold water a drop is then at the ${feels} stage.`,
  'handout.hot.check':
    'First check your thermometer. Hold it in boiling water. By the sea it should show 100 °C (212 °F).',
  'handout.hot.shift':
    'Does it show 4 degrees less? Then stop 4 degrees sooner. Does it show 2 more? Then stop 2 later. This is right for a kitchen on a hill. It is right for a thermometer that is off, too.',
  'handout.hot.early': ({ kelvin }: { kelvin: number }) => {
    const halves = Math.max(1, Math.round(kelvin * 2)) / 2;
    return `Take the pot off the heat about ${halves} °C (${Math.max(1, Math.round(kelvin * 1.8))} °F) early. The pot's own heat cooks it on for a short while.`;
  },

  'handout.heading.steps': 'Step by step',
  'handout.step.start':
    'Wash your hands for 20 seconds. Tie back long hair. Get the tray and the cups ready.',
  'handout.step.mix': ({ items, starch }: { items: readonly string[]; starch: boolean }, p: Printer) =>
    `Put this in the cold pot: ${names(items, p)}.${starch ? ' Mix the starch and the dry sugar first, so that it makes no lumps.' : ''} Stir it well.`,
  'handout.step.dissolve':
    'Heat it on medium and stir slowly. Rub a drop between two spoons. Is there still grit? Then keep stirring. It must not boil yet.',
  'handout.step.wall.lid':
    'When it boils, put the lid on for 2 minutes. The steam washes the wall of the pot. Then lift the lid away from your face.',
  'handout.step.wall.brush': 'When it boils, wash the wall of the pot with a wet brush. Wear a long sleeve.',
  'handout.step.wall.none-late-stir':
    'Scrape the wall clean while it is cool. Use no lid: it would foam over.',
  'handout.step.still':
    'Now let it boil and do not stir. One grain of sugar can turn the whole pot to grains. Never leave the pot.',
  'handout.step.stir':
    'Let it boil. Stir it gently, and more near the end, for this one burns with ease. Never leave the pot.',
  'handout.step.boil': ({ items }: { items: readonly string[] }, p: Printer) =>
    `While it boils, stir in ${names(items, p)}. Add it bit by bit, with your face away. It will foam and steam.`,
  'handout.step.slow':
    'Turn the heat down for the last few degrees. Then take the pot off the heat and test a drop.',
  'handout.step.flavour': ({ items, alcohol }: { items: readonly string[]; alcohol: boolean }, p: Printer) =>
    `Keep the pot off the heat. Wait till the bubbles sink. Then stir in ${names(items, p)}, with your face away.${alcohol ? ' Have no flame near: it can catch fire.' : ''}`,
  'handout.step.pour': ({ scrape }: { scrape: boolean }) =>
    `The adult pours it on the tray, low and slow. All others stand back. ${scrape ? 'Scrape the pot with a spoon.' : 'Do not scrape the pot.'}`,
  'handout.step.fold':
    'Leave it alone till the edge is firm. Then fold the edge to the middle with the scraper. Do this two or three times.',
  'handout.step.fold-add': ({ items }: { items: readonly string[] }, p: Printer) =>
    `Fold in ${names(items, p)}.`,
  'handout.step.wait': ({ child, adult }: { child: number; adult: number }) =>
    `The middle stays hot when the top feels cool. Push the thermometer into the middle. Wait for ${bothDegrees(adult)} or less, and for children ${bothDegrees(child)} or less.`,
  'handout.step.pull': ({ hands }: { hands: Grease }) =>
    `${onHands[hands]} Pull the candy long, fold it in two, and pull again. Use your finger tips. In about 10 minutes it is pale and hard to pull.`,
  'handout.step.pull-add': ({ items }: { items: readonly string[] }, p: Printer) =>
    `As you pull, work in ${names(items, p)}.`,
  'handout.step.cut': ({
    ropeMillimetres,
    cutMillimetres,
  }: {
    ropeMillimetres: number;
    cutMillimetres: number;
  }) =>
    `Roll a rope as thick as ${bothLengths(ropeMillimetres)}. The adult cuts bits of ${bothLengths(cutMillimetres)}. Keep the blades off the hand that holds the rope.`,
  'handout.step.wrap': ({ dust }: { dust: 'none' | 'starch' | 'powdered-sugar' }) =>
    `${dust === 'none' ? '' : `Dust the bits with ${dust === 'starch' ? 'starch' : 'fine sugar'}. `}Let it rest for half an hour. Then wrap each bit in paper and twist the ends.`,

  'handout.heading.test': 'The cold-water test',
  'handout.test.how':
    'Take the pot off the heat first. Fill a cup with fresh cold water, with no ice in it. Let half a spoon of syrup fall in. Wait for 10 seconds. Then the adult feels it under the water. Take a new cup each time.',
  'handout.test.short':
    'Is it too soft? Boil it a bit more and test again. Is it too hard? Pour it out and call it hard candy.',
  'handout.column.stage': 'Stage',
  'handout.column.celsius': '°C',
  'handout.column.fahrenheit': '°F',
  'handout.column.drop': 'What the drop does',
  'handout.stage': ({ stage, aim }: { stage: ColdWaterOutcome; aim: boolean }) =>
    aim ? `${stage} (you stop here)` : stage,
  'handout.span': ({ low, high }: { low: number; high: number }) => `${Math.round(low)}-${Math.round(high)}`,
  'handout.drop': ({ stage }: { stage: ColdWaterOutcome }) => drops[stage],
  'handout.stages.foot': 'These numbers are for a kitchen by the sea. Shift them as you shift your target.',

  'handout.heading.care': 'Take care',
  'handout.care.stick':
    'Hot syrup is hotter than boiling water, and it sticks. One adult stays at the pot the whole time.',
  'handout.care.children':
    'Keep children and pets one big step (1 m, 3 ft) from the stove and from the way to the tray.',
  'handout.care.touch': 'Never touch or taste hot syrup. Never put water in it to cool it.',
  'handout.care.foam': 'Does it rise? Turn the heat down and slide the pot off the ring.',
  'handout.care.fire':
    'Does it burn with a flame? Slide the lid on and turn off the heat. Use no water. Do not move the pot. Is it not out at once? All go out. Call for help.',
  'handout.care.floor': 'Wipe up grease and drops, so that no one slips.',

  'handout.heading.aid': 'Hot sugar on skin',
  'handout.aid.water':
    'Hold it under cool running water now, for 20 minutes. Somebody else turns off the heat.',
  'handout.aid.rings':
    'Take off rings, watch and sleeve under the water. Leave on what sticks. The water melts the sugar.',
  'handout.aid.warm': 'Keep the person warm.',
  'handout.aid.cover':
    'Then lay cling film or a clean cloth on it, not tight. Put on no ice, no butter, no oil and no cream.',
  'handout.aid.call':
    'Get help for a child, for a burn on face, hand, joint or private parts, for one that is bigger than the palm, or that looks white or like leather. Get help if you are not sure.',
  'handout.aid.source': 'Source: first aid advice of the British Burn Association.',

  'handout.heading.allergens': 'Who must not eat it',
  'handout.allergens.contains': ({ items }: { items: readonly string[] }, p: Printer) =>
    `It has this in it: ${names(items, p)}. That counts what is on hands and tray, too.`,
  'handout.allergens.check': ({ items }: { items: readonly string[] }, p: Printer) =>
    `Read the labels of what you buy. They may have this in them: ${names(items, p)}.`,
  'handout.allergens.unknown': 'For some items this is not known here. Read each label before you share it.',
  'handout.allergens.none': 'None of the common ones is known to be in it. Read the labels all the same.',
  'handout.allergens.young':
    'Give none to children under four: it is sticky, and they can choke on it. Sit down to eat it. It can pull at braces and loose teeth.',

  'handout.heading.keep': 'How to keep it',
  'handout.keep':
    'Keep it wrapped in a closed box, cool and dry. It stays good for two to three weeks. In damp air it gets sticky.',

  'handout.heading.clean': 'How to clean the pot',
  'handout.clean':
    'Let the pot stand for three minutes. Then pour in hot water from the tap, down the wall, with your face away. Never use cold water. Leave it: the sugar melts by itself. Do not chip at it.',

  'handout.heading.words': 'From the one who showed it',
  'handout.words.box': 'Room for your own notes:',
  'handout.foot':
    'Amounts and numbers are worked out by the program kettlehand. Stages: Better Homes and Gardens; Colorado State University Extension; McGee, On Food and Cooking (2004).',
  'handout.bad.format': '--html and --markdown are two forms of one page. Keep one of them.',
  'handout.bad.have': ({ found, example }: { found: string; example: string }) =>
    `"${escapeForTerminal(found)}" doesn't say what there is at home. Type an ingredient and an amount: --have ${escapeForTerminal(example)}=300g.`,
  'handout.bad.have-item': (
    { found, several, allowed }: { found: string; several: boolean; allowed: readonly string[] },
    p: Printer,
  ) =>
    several
      ? `"${escapeForTerminal(found)}" may be more than one thing here: ${p.list(allowed.map(escapeForTerminal))}. Name one of them.`
      : `"${escapeForTerminal(found)}" doesn't go into this recipe. It takes ${p.list(allowed.map(escapeForTerminal))}.`,
  'handout.bad.have-weight': ({ found, item }: { found: string; item: string }) =>
    `"${escapeForTerminal(found)}" doesn't say how much that is. Give it as a weight: --have ${escapeForTerminal(item)}=100g.`,
} as const;
