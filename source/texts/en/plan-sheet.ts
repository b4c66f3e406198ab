import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { spansWith } from '../spans.js';

type Span = readonly [low: number, high: number];
type Spread = { readonly low: number; readonly typical: number; readonly high: number };
type Firmness = 'runny' | 'soft' | 'chewy' | 'firm' | 'glassy';

const firmnessWords: Readonly<Record<Firmness, string>> = {
  runny: 'too soft to hold a shape',
  soft: 'soft',
  chewy: 'chewy',
  firm: 'firm, hard at first bite',
  glassy: 'hard like glass',
};

const { spanOf, massSpan, percentSpan } = spansWith('to');
const altitudeWords = (metres: number | null, printer: Printer): string => {
  if (metres === null) return '';
  const rounded = Math.round(metres / 10) * 10;
  if (rounded === 0) return ', at sea level';
  return `, about ${printer.metres(Math.abs(rounded))} ${rounded > 0 ? 'above' : 'below'} the sea`;
};

const airFrom = {
  pressure: 'from the air pressure given',
  altitude: 'from the altitude given; weather moves it by up to 1 °F (0.6 °C)',
  'boiling water': 'from what boiling water read',
  'assumed sea level': 'sea level taken, because nothing is known of this place',
} as const;

const dialFrom = {
  'two points': 'corrected by ice and boiling water',
  ice: 'corrected by ice alone',
  'boiling water': 'corrected by boiling water alone',
  'taken as right': 'taken as right: not corrected',
} as const;

/** The plan on paper: each number a cook needs, and one line of reason. */
export const planSheetTexts = {
  'plan.title': ({ name }: { name: string }) => escapeForTerminal(name),
  'plan.into.mix': 'in the cold pot',
  'plan.into.boil': 'into the boil',
  'plan.into.flavour': 'off the heat',
  'plan.into.fold': 'while folding',
  'plan.into.pull': 'while pulling',
  'plan.written': ({ amount, name }: { amount: string; name: string }) =>
    /^[\d.,\s]+g$/.test(amount)
      ? escapeForTerminal(name)
      : `${escapeForTerminal(name)} (${escapeForTerminal(amount)})`,

  'plan.name': ({ name }: { name: string }) => escapeForTerminal(name),
  'plan.measures':
    'Cups and spoons are US customary and level: a cup is 237 ml, a tbsp 15 ml, a tsp 5 ml. Where they and the grams disagree, the grams are right.',

  'plan.place.label': 'Place',
  'plan.place': (
    { boils, altitudeMetres }: { boils: number; altitudeMetres: number | null },
    printer: Printer,
  ) => `water boils at ${printer.degrees(boils)}${altitudeWords(altitudeMetres, printer)}`,
  'plan.place.why': ({ from }: { from: keyof typeof airFrom }) => airFrom[from],

  'plan.pot.label': 'Pot',
  'plan.pot': ({ needed, have }: { needed: number; have: number | null }, printer: Printer) =>
    `${printer.litres(needed)} or larger${have === null ? '' : `; yours holds ${printer.litres(have)}`}`,
  'plan.pot.why': ({ depth }: { depth: Span | null }, printer: Printer) =>
    `four times the syrup, because it rises${
      depth === null
        ? ''
        : `; ${spanOf(printer.millimetres(depth[0]).replace(/ .*/, ''), printer.millimetres(depth[1]))} deep`
    }`,

  'plan.boil.label': 'Boil',
  'plan.boil': ({ starts }: { starts: number }, printer: Printer) => `begins near ${printer.dial(starts)}`,
  'plan.boil.why': ({ water }: { water: Span }, printer: Printer) =>
    `${massSpan(water[0], water[1], printer)} of water leave: slow at first, fast at the end`,

  'plan.takeoff.label': 'Take off',
  'plan.takeoff': ({ celsius }: { celsius: number }, printer: Printer) => `at ${printer.dial(celsius)}`,
  'plan.takeoff.why': (
    { kelvin, aim, stove }: { kelvin: number; aim: number; stove: string },
    printer: Printer,
  ) =>
    `onto a trivet: the pot's heat (${stove}) carries it ${printer.rise(kelvin)} on, to ${printer.dial(aim)}`,

  'plan.target.label': 'Target',
  'plan.target': ({ window, feels }: { window: Span; feels: string }, printer: Printer) =>
    `${printer.dialSpan(window[0], window[1])}, ${feels} in cold water`,
  'plan.target.why': ({ seaLevel, kelvin }: { seaLevel: Span; kelvin: number }, printer: Printer) => {
    const written = `the recipe's ${spanOf(printer.degrees(seaLevel[0]).replace(/ .*/, ''), printer.degrees(seaLevel[1]))} at sea level`;
    if (Math.abs(kelvin) < 0.3) return written;
    return `${written}, ${printer.rise(Math.abs(kelvin))} ${kelvin > 0 ? 'less' : 'more'} in this air`;
  },

  'plan.dial.label': 'Reads on',
  'plan.dial': ({ id }: { id: string | null }) =>
    id === null ? 'any thermometer that is right' : escapeForTerminal(id),
  'plan.dial.why': (
    { basis, kelvin, sd }: { basis: keyof typeof dialFrom; kelvin: number; sd: number },
    printer: Printer,
  ) =>
    `${dialFrom[basis]}${
      Math.abs(kelvin) < 0.25
        ? ''
        : `, shows ${printer.rise(Math.abs(kelvin))} too ${kelvin > 0 ? 'much' : 'little'}`
    }; may still be ${printer.rise(2 * sd)} off`,

  'plan.candy.label': 'Candy',
  'plan.candy': ({ firmness, moisture }: { firmness: Firmness; moisture: Span }, printer: Printer) =>
    `${firmnessWords[firmness]}, ${percentSpan(moisture, printer)} water`,
  'plan.candy.why': (
    { range, less, more }: { range: readonly [Firmness, Firmness]; less: Firmness; more: Firmness },
    printer: Printer,
  ) => {
    const two = printer.rise(2);
    const spread = range[0] === range[1] ? '' : `; anything from ${range[0]} to ${range[1]} can come of it`;
    return less === more
      ? `${two} more or less: the same${spread}`
      : `${two} less gives ${less}, ${two} more ${more}${spread}`;
  },

  'plan.yield.label': 'Yield',
  'plan.yield': ({ grams, pieces }: { grams: Spread; pieces: Spread }, printer: Printer) =>
    `about ${printer.grams(grams.typical)}, ${printer.count(pieces.typical, 'piece', 'pieces')}`,
  'plan.yield.why': ({ grams, pieces }: { grams: Spread; pieces: Spread }, printer: Printer) =>
    `${massSpan(grams.low, grams.high, printer)}, ${spanOf(String(pieces.low), String(pieces.high))} pieces: 8 to 20 % stays on pot and hands`,

  'plan.portions.label': 'Portions',
  'plan.portions': ({ count, grams }: { count: number; grams: number }, printer: Printer) =>
    `${count} of about ${printer.grams(grams)}`,
  'plan.portions.why': ({ limit, stiff }: { limit: number; stiff: number }, printer: Printer) =>
    `hands once the middle is below ${printer.degrees(limit)}; too stiff near ${printer.degrees(stiff)}`,

  'plan.rope.label': 'Rope',
  'plan.rope': (
    { metres, millimetres, cut }: { metres: number; millimetres: number; cut: number },
    printer: Printer,
  ) =>
    `${printer.metres(metres)} of ${printer.millimetres(millimetres)}, cut every ${printer.millimetres(cut)}`,
  'plan.rope.why': ({ grams }: { grams: number }, printer: Printer) =>
    `${printer.grams(grams)} a piece if pulled candy weighs 1.2 g/cm3: weigh the first ten`,

  'plan.papers.label': 'Papers',
  'plan.papers': ({ squares }: { squares: number }, printer: Printer) =>
    printer.count(squares, 'square', 'squares'),
  'plan.papers.why': ({ minutes }: { minutes: number }, printer: Printer) =>
    `a tenth and ten to spare; ${printer.time(minutes * 60)} of wrapping for one person`,

  'plan.allergens.label': 'Allergens',
  'plan.allergens': (
    { contains, check, unknown }: { contains: readonly string[]; check: readonly string[]; unknown: boolean },
    printer: Printer,
  ) => {
    const said = [
      ...(contains.length > 0 ? [`contains ${printer.list(contains.map(escapeForTerminal))}`] : []),
      ...(check.length > 0 ? [`check the label for ${printer.list(check.map(escapeForTerminal))}`] : []),
      ...(unknown ? ['allergens unknown: read every label'] : []),
    ];
    return said.length === 0 ? 'none in this recipe' : said.join('; ');
  },
  'plan.allergens.why': 'from ingredients, hands, surface and dust; ask everyone who eats',

  'plan.notes.label': 'Notes',
  'plan.scaled': ({ factor }: { factor: number }) => `${Math.round(factor * 100) / 100} times the recipe`,
} as const;
