import type { Printer } from '../../units/printer.js';
import type { Found, Wanted } from '../../units/problem.js';
import { quoted } from '../quoted.js';

type OutsideRange = {
  readonly asked: 'solids fraction' | 'celsius' | 'pascal' | 'metres' | 'dissolved grams' | 'joule';
  readonly value: number;
  readonly low: number;
  readonly high: number;
};

const wantedWords: Readonly<Record<Wanted, { name: string; of: string; example: string }>> = {
  amount: { name: 'amount', of: 'mass, volume or count', example: '300 g, 1 1/4 cup or 20 drops' },
  mass: { name: 'mass', of: 'mass', example: '300 g' },
  volume: { name: 'volume', of: 'volume', example: '3 l' },
  length: { name: 'length', of: 'length', example: '50 mm' },
  altitude: { name: 'altitude', of: 'altitude', example: '1450 m or 4750 ft' },
  pressure: { name: 'air pressure', of: 'pressure', example: '850 hPa' },
  humidity: { name: 'relative humidity', of: 'humidity', example: '45 %' },
  duration: { name: 'duration', of: 'time', example: '4 min' },
  temperature: { name: 'temperature', of: 'temperature', example: '238 F or 114 C' },
};

const kilopascals = (pascal: number): string => `${Math.round(pascal / 100) / 10} kPa`;
const fine = (fraction: number): string => `${Math.round(fraction * 1000) / 10} %`;

const outsideRange: Readonly<
  Record<OutsideRange['asked'], (value: number, low: number, high: number, printer: Printer) => string>
> = {
  'solids fraction': (value, low, high) =>
    `${fine(value)} solids is outside what is known: ${fine(low)} to ${fine(high)}.`,
  celsius: (value, low, high, printer) =>
    `${printer.degrees(value)} is outside what is known here: ${printer.degrees(low)} to ${printer.degrees(high)}.`,
  pascal: (value, low, high) =>
    `An air pressure of ${kilopascals(value)} is outside what is known: ${kilopascals(low)} to ${kilopascals(high)}.`,
  metres: (value, low, high, printer) =>
    `An altitude of ${printer.metres(value)} is outside what is known: ${printer.metres(low)} to ${printer.metres(high)}.`,
  joule: (value, low, high) =>
    `A heat of ${Math.round(value / 1000)} kJ is outside what is known for this syrup: ${Math.round(low / 1000)} to ${Math.round(high / 1000)} kJ.`,
  'dissolved grams': () => 'Nothing in this syrup is dissolved: it needs sugar, syrup or salt.',
};

/** What could not be read as a number with a unit, and what the physics does not answer. */
export const unitTexts = {
  'units.no-number': ({ found, wanted }: Found) =>
    `${quoted(found)} is no ${wantedWords[wanted].name}. Type a number and a unit, for example ${wantedWords[wanted].example}.`,
  'units.no-unit': ({ found, wanted, allowed }: Found, printer: Printer) =>
    `${quoted(found)} has no unit. Add one of ${printer.list(allowed)}, for example ${wantedWords[wanted].example}.`,
  'units.unknown-unit': ({ found, unit, wanted, allowed }: Found & { unit: string }, printer: Printer) =>
    `${quoted(found)}: ${quoted(unit)} is no unit of ${wantedWords[wanted].of}. Use one of ${printer.list(allowed)}, for example ${wantedWords[wanted].example}.`,
  'units.not-positive': ({ found, wanted }: Found) =>
    `${quoted(found)}: this ${wantedWords[wanted].name} must be more than nothing, for example ${wantedWords[wanted].example}.`,
  'units.comma': ({ found, either }: Found & { either: readonly [string, string] }) =>
    `${quoted(found)} can be read two ways. Type ${either[0]} or ${either[1]}.`,
  'units.humidity-range': ({ found }: Found) =>
    `${quoted(found)} is no relative humidity. Type 0 % to 100 %, for example 45 %.`,
  'sugar.out-of-range': ({ asked, value, low, high }: OutsideRange, printer: Printer) =>
    outsideRange[asked](value, low, high, printer),
} as const;
