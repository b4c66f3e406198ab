import type { Printer } from '../../units/printer.js';
import { quoted } from '../quoted.js';

const degrees = (celsius: number): string =>
  `${celsius.toFixed(1)} °C (${(celsius * 1.8 + 32).toFixed(1)} °F)`;
const percent = (fraction: number): string => `${(fraction * 100).toFixed(1)} %`;

/** The syrup calculator. */
export const syrupTexts = {
  'syrup.bad.nothing':
    'A syrup needs something in it. Type for example: --item granulated-sugar=400g --item water=120ml',
  'syrup.bad.item': ({ found }: { found: string }) =>
    `${quoted(found)} is no item with an amount. Type item=amount, and for glucose syrup item:DE=amount: --item glucose-syrup:42=200g`,
  'syrup.bad.unknown-item': ({ found, nearest }: { found: string; nearest: string | null }) =>
    `${quoted(found)} is not in the ingredient table.${nearest === null ? '' : ` Did you mean ${nearest}?`} List them with: kettlehand recipes items`,
  'syrup.bad.de': ({ found, low, high }: { found: string; low: number; high: number }) =>
    `${quoted(found)} is no DE. Type ${low} to ${high}, for example --item glucose-syrup:42=200g`,
  'syrup.bad.no-de': ({ item }: { item: string }) =>
    `${item} has no glucose solids, so no DE. Type for example --item ${item}=200g`,
  'syrup.bad.both': '--celsius and --solids each say how far it is boiled. Keep one of them.',
  'syrup.bad.celsius': ({ found }: { found: string }) =>
    `${quoted(found)} is no temperature. Type for example --celsius 124`,
  'syrup.bad.solids': ({ found }: { found: string }) =>
    `${quoted(found)} is no fraction of solids. Type a number between 0 and 1, for example --solids 0.85`,
  'syrup.result': (
    {
      celsius,
      solidsFraction,
      waterGrams,
      totalGrams,
      elevationKelvin,
      waterBoilsCelsius,
      pressurePascal,
    }: {
      celsius: number;
      solidsFraction: number;
      waterGrams: number;
      totalGrams: number;
      elevationKelvin: number;
      waterBoilsCelsius: number;
      pressurePascal: number;
    },
    printer: Printer,
  ) =>
    [
      `boils at      ${degrees(celsius)}, ${elevationKelvin.toFixed(1)} K above water, which boils at ${degrees(waterBoilsCelsius)}`,
      `solids        ${percent(solidsFraction)} of what is dissolved and water`,
      `water left    ${printer.grams(waterGrams)} of ${printer.grams(totalGrams)} in the pot`,
      `air pressure  ${(pressurePascal / 1000).toFixed(2)} kPa`,
      'Published boiling points differ by 2 K at 80 % solids and 4 K at 90 %.',
    ].join('\n'),
} as const;
