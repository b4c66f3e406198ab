import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import type { planSheetTexts } from '../en/plan-sheet.js';
import { spansWith } from '../spans.js';
import type { Translated } from '../texts.js';
import {
  allergenWord,
  amountIn,
  comma,
  firmnessWord,
  ingredientWord,
  stageAndTyped,
  stoveWord,
} from './words.js';

const firmnessWords = {
  runny: 'zu weich, um die Form zu halten',
  soft: 'weich',
  chewy: 'kaubar',
  firm: 'fest, beim ersten Biss hart',
  glassy: 'hart wie Glas',
} as const;

const { spanOf, massSpan, percentSpan } = spansWith('bis');
const altitudeWords = (metres: number | null, printer: Printer): string => {
  if (metres === null) return '';
  const rounded = Math.round(metres / 10) * 10;
  if (rounded === 0) return ', auf Meereshöhe';
  return `, etwa ${printer.metres(Math.abs(rounded))} ${rounded > 0 ? 'über' : 'unter'} dem Meer`;
};

const airFrom = {
  pressure: 'nach dem angegebenen Luftdruck',
  altitude: 'nach der angegebenen Höhe; das Wetter verschiebt es um bis zu 1 °F (0,6 °C)',
  'boiling water': 'nach der Ablesung in kochendem Wasser',
  'assumed sea level': 'Meereshöhe angenommen, weil von diesem Ort nichts bekannt ist',
} as const;

const dialFrom = {
  'two points': 'korrigiert mit Eis und kochendem Wasser',
  ice: 'korrigiert nur mit Eis',
  'boiling water': 'korrigiert nur mit kochendem Wasser',
  'taken as right': 'als richtig genommen: nicht korrigiert',
} as const;

/** The plan on paper: each number a cook needs, and one line of reason. */
export const dePlanSheet = {
  'plan.title': ({ name }) => escapeForTerminal(name),
  'plan.into.mix': 'in den kalten Topf',
  'plan.into.boil': 'beim Kochen',
  'plan.into.flavour': 'neben dem Herd',
  'plan.into.fold': 'beim Falten',
  'plan.into.pull': 'beim Ziehen',
  'plan.written': ({ amount, name }) => {
    const called = escapeForTerminal(ingredientWord(name));
    return /^[\d.,\s]+g$/.test(amount) ? called : `${called} (${escapeForTerminal(amountIn(amount))})`;
  },

  'plan.name': ({ name }) => escapeForTerminal(ingredientWord(name)),
  'plan.measures':
    'Tassen und Löffel nach US-Maß, gestrichen: eine Tasse (cup) ist 237 ml, ein EL 15 ml, ein TL 5 ml. Wo sie und die Gramm nicht übereinstimmen, gelten die Gramm.',

  'plan.place.label': 'Ort',
  'plan.place': ({ boils, altitudeMetres }, printer) =>
    `Wasser kocht bei ${printer.degrees(boils)}${altitudeWords(altitudeMetres, printer)}`,
  'plan.place.why': ({ from }) => airFrom[from],

  'plan.pot.label': 'Topf',
  'plan.pot': ({ needed, have }, printer) =>
    `${printer.litres(needed)} oder größer${have === null ? '' : `; deiner fasst ${printer.litres(have)}`}`,
  'plan.pot.why': ({ depth }, printer) =>
    `viermal der Sirup, weil er steigt${
      depth === null
        ? ''
        : `; ${spanOf(printer.millimetres(depth[0]).replace(/ .*/, ''), printer.millimetres(depth[1]))} tief`
    }`,

  'plan.boil.label': 'Kochen',
  'plan.boil': ({ starts }, printer) => `beginnt nahe ${printer.dial(starts)}`,
  'plan.boil.why': ({ water }, printer) =>
    `${massSpan(water[0], water[1], printer)} Wasser gehen fort: erst langsam, am Ende schnell`,

  'plan.takeoff.label': 'Vom Herd',
  'plan.takeoff': ({ celsius }, printer) => `bei ${printer.dial(celsius)}`,
  'plan.takeoff.why': ({ kelvin, aim, stove }, printer) =>
    `auf den Untersetzer: die Hitze des Topfs (${stoveWord(stove)}) trägt es ${printer.rise(kelvin)} weiter, auf ${printer.dial(aim)}`,

  'plan.target.label': 'Ziel',
  'plan.target': ({ window, feels }, printer) =>
    `${printer.dialSpan(window[0], window[1])}, in kaltem Wasser ${stageAndTyped(feels)}`,
  'plan.target.why': ({ seaLevel, kelvin }, printer) => {
    const written = `im Rezept ${spanOf(printer.degrees(seaLevel[0]).replace(/ .*/, ''), printer.degrees(seaLevel[1]))} auf Meereshöhe`;
    if (Math.abs(kelvin) < 0.3) return written;
    return `${written}, in dieser Luft ${printer.rise(Math.abs(kelvin))} ${kelvin > 0 ? 'weniger' : 'mehr'}`;
  },

  'plan.dial.label': 'Zeigt am',
  'plan.dial': ({ id }) => (id === null ? 'jedem richtigen Thermometer' : escapeForTerminal(id)),
  'plan.dial.why': ({ basis, kelvin, sd }, printer) =>
    `${dialFrom[basis]}${
      Math.abs(kelvin) < 0.25
        ? ''
        : `, zeigt ${printer.rise(Math.abs(kelvin))} zu ${kelvin > 0 ? 'viel' : 'wenig'}`
    }; kann noch ${printer.rise(2 * sd)} daneben liegen`,

  'plan.candy.label': 'Bonbon',
  'plan.candy': ({ firmness, moisture }, printer) =>
    `${firmnessWords[firmness]}, ${percentSpan(moisture, printer)} Wasser`,
  'plan.candy.why': ({ range, less, more }, printer) => {
    const two = printer.rise(2);
    const spread =
      range[0] === range[1]
        ? ''
        : `; alles von ${firmnessWord(range[0])} bis ${firmnessWord(range[1])} kann daraus werden`;
    return less === more
      ? `${two} mehr oder weniger: dasselbe${spread}`
      : `${two} weniger gibt ${firmnessWord(less)}, ${two} mehr ${firmnessWord(more)}${spread}`;
  },

  'plan.yield.label': 'Ausbeute',
  'plan.yield': ({ grams, pieces }, printer) =>
    `etwa ${printer.grams(grams.typical)}, ${printer.count(pieces.typical, 'Stück', 'Stück')}`,
  'plan.yield.why': ({ grams, pieces }, printer) =>
    `${massSpan(grams.low, grams.high, printer)}, ${spanOf(String(pieces.low), String(pieces.high))} Stück: 8 bis 20 % bleiben an Topf und Händen`,

  'plan.portions.label': 'Portionen',
  'plan.portions': ({ count, grams }, printer) => `${count} von etwa ${printer.grams(grams)}`,
  'plan.portions.why': ({ limit, stiff }, printer) =>
    `Hände, sobald der Kern unter ${printer.degrees(limit)} ist; zu steif nahe ${printer.degrees(stiff)}`,

  'plan.rope.label': 'Strang',
  'plan.rope': ({ metres, millimetres, cut }, printer) =>
    `${printer.metres(metres)} von ${printer.millimetres(millimetres)}, alle ${printer.millimetres(cut)} schneiden`,
  'plan.rope.why': ({ grams }, printer) =>
    `${printer.grams(grams)} das Stück, wenn gezogenes Bonbon 1,2 g/cm3 wiegt: wieg die ersten zehn`,

  'plan.papers.label': 'Papiere',
  'plan.papers': ({ squares }, printer) => printer.count(squares, 'Papier', 'Papiere'),
  'plan.papers.why': ({ minutes }, printer) =>
    `ein Zehntel und zehn dazu; ${printer.time(minutes * 60)} Einwickeln für eine Person`,

  'plan.allergens.label': 'Allergene',
  'plan.allergens': ({ contains, check, unknown }, printer) => {
    const list = (words: readonly string[]): string =>
      printer.list(words.map((word) => escapeForTerminal(allergenWord(word))));
    const said = [
      ...(contains.length > 0 ? [`enthält ${list(contains)}`] : []),
      ...(check.length > 0 ? [`auf dem Etikett nachsehen: ${list(check)}`] : []),
      ...(unknown ? ['Allergene unbekannt: lies jedes Etikett'] : []),
    ];
    return said.length === 0 ? 'keine in diesem Rezept' : said.join('; ');
  },
  'plan.allergens.why': 'aus Zutaten, Händen, Platte und Bestäuben; frag alle, die essen',

  'plan.notes.label': 'Hinweise',
  'plan.scaled': ({ factor }) => `${comma(Math.round(factor * 100) / 100)} mal das Rezept`,
} as const satisfies Translated<typeof planSheetTexts>;
