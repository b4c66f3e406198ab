import { escapeForTerminal } from '../../units/escape.js';
import type { Printer, TemperatureUnit } from '../../units/printer.js';
import { hectopascals, shownOn } from '../measures.js';
import { quoted } from '../quoted.js';
import { suggestion } from './recipes.js';

type Shown = { id: string; shown: number; unit: TemperatureUnit };

/** What is wrong with a kitchen file, or with an answer about a kitchen. */
export const kitchenProblemTexts = {
  'kitchen.recipe-file': 'This is a recipe. Name a kitchen here; it begins with "kettlehand-kitchen: 1".',
  'kitchen.altitude-range': (
    { metres, low, high }: { metres: number; low: number; high: number },
    printer: Printer,
  ) =>
    `${printer.metres(metres)} is no place for a kitchen. Write an altitude from ${printer.metres(low)} to ${printer.metres(high)}, for example 1450 m or 4750 ft.`,
  'kitchen.pressure-range': ({ pascal, low, high }: { pascal: number; low: number; high: number }) =>
    `${hectopascals(pascal)} is no air pressure on the ground. Write ${hectopascals(low)} to ${hectopascals(high)}, for example 850 hPa.`,
  'kitchen.size-range': ({ found, low, high }: { found: string; low: string; high: string }) =>
    `${quoted(found)} does not fit. Write ${low} to ${high}.`,
  'kitchen.temperature': ({ found }: { found: string }) =>
    `${quoted(found)} is no temperature. Write a number, with C or F behind it if it is not the thermometer's own unit: 33, 0.5 C.`,
  'kitchen.heat': ({ found }: { found: string }) =>
    `${quoted(found)} is no knob. Write its labels, weakest first: [low, medium, high], or the highest number on it: 9.`,
  'kitchen.heat-label': ({ found }: { found: string }) =>
    `${quoted(found)} can't be a label of the knob: one short word, each once, and not "off".`,
  'kitchen.date': ({ found }: { found: string }) =>
    `${quoted(found)} is no date. Write year-month-day: 2026-11-20.`,
  'kitchen.same-thermometer': ({ found }: { found: string }) =>
    `Two thermometers are called ${quoted(found)}. Give each its own id.`,
  'kitchen.unknown-setting': ({
    found,
    nearest,
    allowed,
  }: {
    found: string;
    nearest: string | null;
    allowed: readonly string[];
  }) => `${quoted(found)} is nothing that can be set.${suggestion(nearest)} Settings: ${allowed.join(', ')}.`,
  'kitchen.no-thermometer-yet':
    'There is no thermometer to set that of. Begin with: kettlehand kitchen set thermometer dial.',
} as const;

/** What a plan says about the kitchen. */
export const kitchenNoteTexts = {
  'kitchen.note.sea-level':
    'Neither altitude nor air pressure is known, so sea level is taken. Higher up, every target is too hot. Boil water, read it, and type what the thermometer shows; or set the altitude.',
  'kitchen.note.air-from-boiling': (
    { altitudeMetres }: { celsius: number; altitudeMetres: number | null },
    printer: Printer,
  ) =>
    `Water boiled ${altitudeMetres === null ? 'as it does on no hill' : `as it does at about ${printer.metres(Math.round(altitudeMetres / 50) * 50)}`}. All of that is taken as air pressure and the thermometer as right; give the altitude to tell the two apart.`,
  'kitchen.note.pressure-reduced': (
    {
      pressurePascal,
      altitudeMetres,
      usedPascal,
    }: { pressurePascal: number; altitudeMetres: number; usedPascal: number },
    printer: Printer,
  ) =>
    `${hectopascals(pressurePascal)} can't be the air at ${printer.metres(altitudeMetres)}, where it is near ${hectopascals(usedPascal)}: weather reports reduce it to sea level. The altitude is used.`,
  'kitchen.note.no-thermometer': 'There is no thermometer: the cold-water test alone decides.',
  'kitchen.note.unchecked': ({ id }: { id: string }) =>
    `${escapeForTerminal(id)} was never checked. Read it in boiling water before the cook: it may be several degrees off.`,
  'kitchen.note.infrared': ({ id }: { id: string }) =>
    `${escapeForTerminal(id)} is infrared: it reads the foam and the steam, several degrees off. Trust the cold-water test more.`,
  'kitchen.note.ice-below-scale': ({ id, shown, unit }: Shown) =>
    `${escapeForTerminal(id)} showed ${shownOn(shown, unit)} in ice: that is the end of its scale, not a reading. Boiling water alone corrects it.`,
  'kitchen.note.ice-not-used': ({ id, shown, unit }: Shown) =>
    `${escapeForTerminal(id)} showed ${shownOn(shown, unit)} in ice: too far off to be one. Not used. Try crushed ice with a little water, or another thermometer.`,
  'kitchen.note.boil-not-used': ({ id, shown, unit }: Shown) =>
    `${escapeForTerminal(id)} showed ${shownOn(shown, unit)} in boiling water: nowhere does water boil there. Not used. Check the number and its unit, or take another thermometer.`,
  'kitchen.note.boil-disagrees': ({ id, shown, waterBoils, unit }: Shown & { waterBoils: number }) =>
    `${escapeForTerminal(id)} showed ${shownOn(shown, unit)} in boiling water, which boils at ${shownOn(waterBoils, unit)} here. That is more than such a thermometer is off: check the altitude, then the thermometer.`,
} as const;

/** The questions of a first run. */
export const kitchenAskTexts = {
  'kitchen.ask.place':
    'How high is this kitchen? An altitude (1450 m, 4750 ft), or what the thermometer shows in boiling water (boils 203 F).',
  'kitchen.ask.place.why':
    'Water and syrup boil cooler higher up: 1 °C less for every 300 m. Without this the candy comes out too hard.',
  'kitchen.ask.place.skip': 'Enter: not known, sea level is taken and every plan says so.',
  'kitchen.ask.stove': 'What does the pot stand on? gas, coil, glass-ceramic or induction.',
  'kitchen.ask.stove.why':
    'A coil goes on heating after it is off, a flame lights alcohol: the advice differs.',
  'kitchen.ask.stove.skip': 'Enter: coil.',
  'kitchen.ask.thermometer': 'Which thermometer, and in which unit? For example: dial F, digital C, none.',
  'kitchen.ask.thermometer.why':
    'Each kind is off by a different amount; with none, the cold-water test decides alone.',
  'kitchen.ask.thermometer.skip': 'Enter: dial F.',
  'kitchen.ask.not-understood.stove': ({ found }: { found: string }) =>
    `${quoted(found)} does not say which of the four. Type gas, coil (a spiral or an iron plate), glass-ceramic (a flat glass top) or induction.`,
  'kitchen.ask.not-understood.thermometer': ({ found }: { found: string }) =>
    `${quoted(found)} does not say which kind. Type dial, digital, glass or infrared, and C or F; or none.`,
  'kitchen.ask.bare.place': ({ found }: { found: string }) =>
    `${found} what? Type ${found} m, ${found} ft, or what the thermometer shows in boiling water: boils 203 F.`,
  'kitchen.ask.not-understood.place': ({ found }: { found: string }) =>
    `${quoted(found)} is neither an altitude nor a boiling point. Type for example 1450 m, 4750 ft or boils 203 F.`,
} as const;

type Basis = 'two points' | 'ice' | 'boiling water' | 'taken as right';

const basisWords: Readonly<Record<Basis, string>> = {
  'two points': 'corrected by ice and boiling water',
  ice: 'corrected by ice',
  'boiling water': 'corrected by boiling water',
  'taken as right': 'taken as right',
};

const airWords = {
  pressure: 'as measured',
  altitude: 'by the altitude',
  'boiling water': 'by boiling water',
  'assumed sea level': 'sea level, for want of anything better',
} as const;

const handsWords = {
  visitors: 'adults who may pull for the first time',
  bare: 'practised adults, bare hands',
  gloved: 'practised adults, cotton under nitrile',
  children: 'children',
} as const;

/** What `kettlehand kitchen` prints. */
export const kitchenShowTexts = {
  'kitchen.show.file': ({ path }: { path: string }) => `Kitchen file: ${escapeForTerminal(path)}`,
  'kitchen.show.no-file': ({ path }: { path: string }) =>
    `There is no kitchen file yet; this is what is taken. It will be ${escapeForTerminal(path)}. Begin with: kettlehand kitchen set altitude "1450 m"`,
  'kitchen.show.air': (
    {
      pressurePascal,
      altitudeMetres,
      waterBoilsCelsius,
      from,
    }: {
      pressurePascal: number;
      altitudeMetres: number | null;
      waterBoilsCelsius: number;
      from: keyof typeof airWords;
    },
    printer: Printer,
  ) =>
    `Air: ${hectopascals(pressurePascal)}, ${airWords[from]}${altitudeMetres === null ? '' : ` (${printer.metres(altitudeMetres)})`}. Water boils at ${printer.degrees(waterBoilsCelsius)}.`,
  'kitchen.show.stove': ({ stove, heat }: { stove: string; heat: readonly string[] }) =>
    `Stove: ${stove}. Knob: ${heat.map(escapeForTerminal).join(', ')}.`,
  'kitchen.show.pot': (
    { litres, diameterMillimetres }: { litres: number | null; diameterMillimetres: number | null },
    printer: Printer,
  ) =>
    litres === null && diameterMillimetres === null
      ? 'Pot: not known.'
      : `Pot: ${[litres === null ? '' : printer.litres(litres), diameterMillimetres === null ? '' : `${Math.round(diameterMillimetres / 10)} cm across`].filter((part) => part !== '').join(', ')}.`,
  'kitchen.show.thermometer': ({
    id,
    kind,
    unit,
    basis,
    trueCelsius,
    shownCelsius,
    sdKelvin,
  }: {
    id: string;
    kind: string;
    unit: TemperatureUnit;
    basis: Basis;
    trueCelsius: number;
    shownCelsius: number;
    sdKelvin: number;
  }) =>
    `Thermometer ${escapeForTerminal(id)}: ${kind}, ${basisWords[basis]}; shows ${shownOn(shownCelsius, unit)} at ${shownOn(trueCelsius, unit)}, give or take ${Math.round(2 * sdKelvin * (unit === 'F' ? 1.8 : 1))} °${unit}.`,
  'kitchen.show.room': (
    { celsius, humidity }: { celsius: number | null; humidity: number | null },
    printer: Printer,
  ) =>
    celsius === null && humidity === null
      ? 'Room: not known.'
      : `Room: ${[celsius === null ? '' : printer.degrees(celsius), humidity === null ? '' : `${printer.percent(humidity)} humidity`].filter((part) => part !== '').join(', ')}.`,
  'kitchen.show.hands': ({ hands }: { hands: keyof typeof handsWords }) =>
    `Hands that pull: ${handsWords[hands]}.`,
  'kitchen.saved': ({ path }: { path: string }) => `Saved in ${escapeForTerminal(path)}.`,
  'kitchen.set-usage': ({ allowed }: { allowed: readonly string[] }) =>
    `Write a setting and its value, as often as needed: kettlehand kitchen set altitude "1450 m" stove coil. Settings: ${allowed.join(', ')}. "none" forgets one.`,
  'kitchen.unknown-action': ({ found, nearest }: { found: string; nearest: string | null }) =>
    `"kitchen ${escapeForTerminal(found)}" is nothing to do.${suggestion(nearest)} Use: kitchen, kitchen set KEY VALUE, kitchen path.`,
} as const;
