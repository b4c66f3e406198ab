import type { syrupTexts } from '../en/syrup.js';
import { quoted } from '../quoted.js';
import type { Translated } from '../texts.js';
import { comma } from './words.js';

const degrees = (celsius: number): string =>
  `${comma(celsius.toFixed(1))} °C (${comma((celsius * 1.8 + 32).toFixed(1))} °F)`;
const percent = (fraction: number): string => `${comma((fraction * 100).toFixed(1))} %`;

/** The syrup calculator. */
export const deSyrup = {
  'syrup.bad.nothing':
    'Ein Sirup braucht etwas darin. Tipp zum Beispiel: --item granulated-sugar=400g --item water=120ml',
  'syrup.bad.item': ({ found }) =>
    `${quoted(found)} ist keine Zutat mit einer Menge. Tipp Zutat=Menge, und für Glukosesirup Zutat:DE=Menge: --item glucose-syrup:42=200g`,
  'syrup.bad.unknown-item': ({ found, nearest }) =>
    `${quoted(found)} steht nicht in der Zutatentabelle.${nearest === null ? '' : ` Meintest du ${nearest}?`} Zeig sie mit: kettlehand recipes items`,
  'syrup.bad.de': ({ found, low, high }) =>
    `${quoted(found)} ist kein DE. Tipp ${low} bis ${high}, zum Beispiel --item glucose-syrup:42=200g`,
  'syrup.bad.no-de': ({ item }) =>
    `${item} hat keine Glukose-Trockenmasse, also keinen DE. Tipp zum Beispiel --item ${item}=200g`,
  'syrup.bad.both': '--celsius und --solids sagen jedes, wie weit gekocht wird. Behalt eines davon.',
  'syrup.bad.celsius': ({ found }) =>
    `${quoted(found)} ist keine Temperatur. Tipp zum Beispiel --celsius 124`,
  'syrup.bad.solids': ({ found }) =>
    `${quoted(found)} ist kein Anteil Trockenmasse. Tipp eine Zahl zwischen 0 und 1, zum Beispiel --solids 0.85`,
  'syrup.result': (
    { celsius, solidsFraction, waterGrams, totalGrams, elevationKelvin, waterBoilsCelsius, pressurePascal },
    printer,
  ) =>
    [
      `kocht bei      ${degrees(celsius)}, ${comma(elevationKelvin.toFixed(1))} K über Wasser, das bei ${degrees(waterBoilsCelsius)} kocht`,
      `Trockenmasse   ${percent(solidsFraction)} von Gelöstem und Wasser`,
      `Wasser übrig   ${printer.grams(waterGrams)} von ${printer.grams(totalGrams)} im Topf`,
      `Luftdruck      ${comma((pressurePascal / 1000).toFixed(2))} kPa`,
      'Veröffentlichte Siedepunkte unterscheiden sich um 2 K bei 80 % Trockenmasse und 4 K bei 90 %.',
    ].join('\n'),
} as const satisfies Translated<typeof syrupTexts>;
