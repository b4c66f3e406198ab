import type { Printer } from '../../units/printer.js';
import type { Wanted } from '../../units/problem.js';
import type { unitTexts } from '../en/units.js';
import { quoted } from '../quoted.js';
import type { Translated } from '../texts.js';
import { comma } from './words.js';

/** `none`: "keine Menge"; `of`: "keine Einheit für ..."; `this`: "diese Menge muss ...". */
const wantedWords: Readonly<Record<Wanted, { none: string; of: string; this: string; example: string }>> = {
  amount: {
    none: 'keine Menge',
    of: 'Masse, Volumen oder Anzahl',
    this: 'diese Menge',
    example: '300 g, 1 1/4 cup oder 20 drops',
  },
  mass: { none: 'keine Masse', of: 'Masse', this: 'diese Masse', example: '300 g' },
  volume: { none: 'kein Volumen', of: 'Volumen', this: 'dieses Volumen', example: '3 l' },
  length: { none: 'keine Länge', of: 'Länge', this: 'diese Länge', example: '50 mm' },
  altitude: { none: 'keine Höhe', of: 'Höhe', this: 'diese Höhe', example: '1450 m oder 4750 ft' },
  pressure: { none: 'kein Luftdruck', of: 'Druck', this: 'dieser Luftdruck', example: '850 hPa' },
  humidity: {
    none: 'keine relative Luftfeuchte',
    of: 'Feuchte',
    this: 'diese relative Luftfeuchte',
    example: '45 %',
  },
  duration: { none: 'keine Dauer', of: 'Zeit', this: 'diese Dauer', example: '4 min' },
  temperature: {
    none: 'keine Temperatur',
    of: 'Temperatur',
    this: 'diese Temperatur',
    example: '238 F oder 114 C',
  },
};

const kilopascals = (pascal: number): string => `${comma(Math.round(pascal / 100) / 10)} kPa`;
const fine = (fraction: number): string => `${comma(Math.round(fraction * 1000) / 10)} %`;

type Asked = Parameters<(typeof unitTexts)['sugar.out-of-range']>[0]['asked'];

const outsideRange: Readonly<
  Record<Asked, (value: number, low: number, high: number, printer: Printer) => string>
> = {
  'solids fraction': (value, low, high) =>
    `${fine(value)} Trockenmasse liegt außerhalb des Bekannten: ${fine(low)} bis ${fine(high)}.`,
  celsius: (value, low, high, printer) =>
    `${printer.degrees(value)} liegt außerhalb dessen, was hier bekannt ist: ${printer.degrees(low)} bis ${printer.degrees(high)}.`,
  pascal: (value, low, high) =>
    `Ein Luftdruck von ${kilopascals(value)} liegt außerhalb des Bekannten: ${kilopascals(low)} bis ${kilopascals(high)}.`,
  metres: (value, low, high, printer) =>
    `Eine Höhe von ${printer.metres(value)} liegt außerhalb des Bekannten: ${printer.metres(low)} bis ${printer.metres(high)}.`,
  joule: (value, low, high) =>
    `Eine Wärme von ${Math.round(value / 1000)} kJ liegt außerhalb dessen, was für diesen Sirup bekannt ist: ${Math.round(low / 1000)} bis ${Math.round(high / 1000)} kJ.`,
  'dissolved grams': () => 'In diesem Sirup ist nichts gelöst: er braucht Zucker, Sirup oder Salz.',
};

/** What could not be read as a number with a unit, and what the physics does not answer. */
export const deUnits = {
  'units.no-number': ({ found, wanted }) =>
    `${quoted(found)} ist ${wantedWords[wanted].none}. Tipp eine Zahl und eine Einheit, zum Beispiel ${wantedWords[wanted].example}.`,
  'units.no-unit': ({ found, wanted, allowed }, printer) =>
    `${quoted(found)} hat keine Einheit. Häng eine von ${printer.list(allowed)} an, zum Beispiel ${wantedWords[wanted].example}.`,
  'units.unknown-unit': ({ found, unit, wanted, allowed }, printer) =>
    `${quoted(found)}: ${quoted(unit)} ist keine Einheit für ${wantedWords[wanted].of}. Nimm eine von ${printer.list(allowed)}, zum Beispiel ${wantedWords[wanted].example}.`,
  'units.not-positive': ({ found, wanted }) =>
    `${quoted(found)}: ${wantedWords[wanted].this} muss mehr als nichts sein, zum Beispiel ${wantedWords[wanted].example}.`,
  'units.comma': ({ found, either }) =>
    `${quoted(found)} lässt sich auf zwei Arten lesen. Tipp ${either[0]} oder ${either[1]}.`,
  'units.humidity-range': ({ found }) =>
    `${quoted(found)} ist keine relative Luftfeuchte. Tipp 0 % bis 100 %, zum Beispiel 45 %.`,
  'sugar.out-of-range': ({ asked, value, low, high }, printer) =>
    outsideRange[asked](value, low, high, printer),
} as const satisfies Translated<typeof unitTexts>;
