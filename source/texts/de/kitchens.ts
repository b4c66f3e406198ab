import { escapeForTerminal } from '../../units/escape.js';
import type {
  kitchenAskTexts,
  kitchenNoteTexts,
  kitchenProblemTexts,
  kitchenShowTexts,
} from '../en/kitchens.js';
import { hectopascals, shownOn } from '../measures.js';
import { quoted } from '../quoted.js';
import type { Translated } from '../texts.js';
import { suggestion } from './recipes.js';
import { heatWord, stoveWord, thermometerWord } from './words.js';

/** What is wrong with a kitchen file, or with an answer about a kitchen. */
export const deKitchenProblems = {
  'kitchen.recipe-file': 'Das ist ein Rezept. Nenn hier eine Küche; sie beginnt mit "kettlehand-kitchen: 1".',
  'kitchen.altitude-range': ({ metres, low, high }, printer) =>
    `${printer.metres(metres)} ist kein Ort für eine Küche. Schreib eine Höhe von ${printer.metres(low)} bis ${printer.metres(high)}, zum Beispiel 1450 m oder 4750 ft.`,
  'kitchen.pressure-range': ({ pascal, low, high }) =>
    `${hectopascals(pascal)} ist kein Luftdruck am Boden. Schreib ${hectopascals(low)} bis ${hectopascals(high)}, zum Beispiel 850 hPa.`,
  'kitchen.size-range': ({ found, low, high }) => `${quoted(found)} passt nicht. Schreib ${low} bis ${high}.`,
  'kitchen.temperature': ({ found }) =>
    `${quoted(found)} ist keine Temperatur. Schreib eine Zahl, mit C oder F dahinter, wenn es nicht die Einheit des Thermometers ist: 33, 0.5 C.`,
  'kitchen.heat': ({ found }) =>
    `${quoted(found)} ist kein Knopf. Schreib seine Stufen, die kleinste zuerst: [low, medium, high], oder die größte Zahl darauf: 9.`,
  'kitchen.heat-label': ({ found }) =>
    `${quoted(found)} kann keine Stufe des Knopfs sein: ein kurzes Wort, jedes einmal, und nicht "off".`,
  'kitchen.date': ({ found }) => `${quoted(found)} ist kein Datum. Schreib Jahr-Monat-Tag: 2026-11-20.`,
  'kitchen.same-thermometer': ({ found }) =>
    `Zwei Thermometer heißen ${quoted(found)}. Gib jedem seine eigene id.`,
  'kitchen.unknown-setting': ({ found, nearest, allowed }) =>
    `${quoted(found)} lässt sich nicht einstellen.${suggestion(nearest)} Einstellungen: ${allowed.join(', ')}.`,
  'kitchen.no-thermometer-yet':
    'Es gibt noch kein Thermometer, an dem das einzustellen wäre. Beginn mit: kettlehand kitchen set thermometer dial.',
} as const satisfies Translated<typeof kitchenProblemTexts>;

/** What a plan says about the kitchen. */
export const deKitchenNotes = {
  'kitchen.note.sea-level':
    'Weder Höhe noch Luftdruck sind bekannt, also gilt Meereshöhe. Weiter oben ist jedes Ziel zu heiß. Koch Wasser, lies ab, und tipp, was das Thermometer zeigt; oder stell die Höhe ein.',
  'kitchen.note.air-from-boiling': ({ altitudeMetres }, printer) =>
    `Wasser kochte ${altitudeMetres === null ? 'wie auf keinem Berg' : `wie in etwa ${printer.metres(Math.round(altitudeMetres / 50) * 50)} Höhe`}. Das gilt ganz als Luftdruck und das Thermometer als richtig; gib die Höhe an, um beides zu trennen.`,
  'kitchen.note.pressure-reduced': ({ pressurePascal, altitudeMetres, usedPascal }, printer) =>
    `${hectopascals(pressurePascal)} kann nicht die Luft in ${printer.metres(altitudeMetres)} Höhe sein, dort sind es etwa ${hectopascals(usedPascal)}: Wetterberichte rechnen auf Meereshöhe um. Genommen wird die Höhe.`,
  'kitchen.note.no-thermometer': 'Es gibt kein Thermometer: allein die Wasserprobe entscheidet.',
  'kitchen.note.unchecked': ({ id }) =>
    `${escapeForTerminal(id)} wurde nie geprüft. Lies es vor dem Kochen in kochendem Wasser ab: es kann mehrere Grad daneben liegen.`,
  'kitchen.note.infrared': ({ id }) =>
    `${escapeForTerminal(id)} misst infrarot: es liest Schaum und Dampf, mehrere Grad daneben. Trau der Wasserprobe mehr.`,
  'kitchen.note.ice-below-scale': ({ id, shown, unit }) =>
    `${escapeForTerminal(id)} zeigte in Eis ${shownOn(shown, unit)}: das ist das Ende seiner Skala, keine Ablesung. Allein kochendes Wasser korrigiert es.`,
  'kitchen.note.ice-not-used': ({ id, shown, unit }) =>
    `${escapeForTerminal(id)} zeigte in Eis ${shownOn(shown, unit)}: zu weit daneben für eine Ablesung. Nicht verwendet. Versuch es mit zerstoßenem Eis und etwas Wasser, oder mit einem anderen Thermometer.`,
  'kitchen.note.boil-not-used': ({ id, shown, unit }) =>
    `${escapeForTerminal(id)} zeigte in kochendem Wasser ${shownOn(shown, unit)}: dort kocht Wasser nirgends. Nicht verwendet. Prüf die Zahl und ihre Einheit, oder nimm ein anderes Thermometer.`,
  'kitchen.note.boil-disagrees': ({ id, shown, waterBoils, unit }) =>
    `${escapeForTerminal(id)} zeigte in kochendem Wasser ${shownOn(shown, unit)}, das hier bei ${shownOn(waterBoils, unit)} kocht. So weit liegt so ein Thermometer nicht daneben: prüf die Höhe, dann das Thermometer.`,
} as const satisfies Translated<typeof kitchenNoteTexts>;

/** The questions of a first run. */
export const deKitchenAsk = {
  'kitchen.ask.place':
    'Wie hoch liegt diese Küche? Eine Höhe (1450 m, 4750 ft), oder was das Thermometer in kochendem Wasser zeigt (boils 203 F).',
  'kitchen.ask.place.why':
    'Wasser und Sirup kochen weiter oben kühler: 1 °C weniger je 300 m. Ohne das wird das Bonbon zu hart.',
  'kitchen.ask.place.skip': 'Enter: nicht bekannt, dann gilt Meereshöhe, und jeder Plan sagt es.',
  'kitchen.ask.stove':
    'Worauf steht der Topf? gas (Gas), coil (Kochplatte), glass-ceramic (Glaskeramik) oder induction (Induktion).',
  'kitchen.ask.stove.why':
    'Eine Kochplatte heizt ausgeschaltet weiter, eine Flamme entzündet Alkohol: der Rat ist verschieden.',
  'kitchen.ask.stove.skip': 'Enter: coil (Kochplatte).',
  'kitchen.ask.thermometer':
    'Welches Thermometer, und welche Einheit? Zum Beispiel: dial F (Zeiger), digital C, none (keines).',
  'kitchen.ask.thermometer.why':
    'Jede Art liegt anders daneben; ohne eines entscheidet allein die Wasserprobe.',
  'kitchen.ask.thermometer.skip': 'Enter: dial F (Zeiger).',
  'kitchen.ask.not-understood.stove': ({ found }) =>
    `${quoted(found)} sagt nicht, welcher von den vieren. Tipp gas, coil (Kochplatte), glass-ceramic (Glaskeramik) oder induction (Induktion).`,
  'kitchen.ask.not-understood.thermometer': ({ found }) =>
    `${quoted(found)} sagt nicht, welche Art. Tipp dial (Zeiger), digital, glass (Glas) oder infrared (infrarot), und C oder F; oder none (keines).`,
  'kitchen.ask.bare.place': ({ found }) =>
    `${found} was? Tipp ${found} m, ${found} ft, oder was das Thermometer in kochendem Wasser zeigt: boils 203 F.`,
  'kitchen.ask.not-understood.place': ({ found }) =>
    `${quoted(found)} ist weder eine Höhe noch ein Siedepunkt. Tipp zum Beispiel 1450 m, 4750 ft oder boils 203 F.`,
} as const satisfies Translated<typeof kitchenAskTexts>;

const basisWords = {
  'two points': 'korrigiert mit Eis und kochendem Wasser',
  ice: 'korrigiert mit Eis',
  'boiling water': 'korrigiert mit kochendem Wasser',
  'taken as right': 'als richtig genommen',
} as const;

const airWords = {
  pressure: 'wie gemessen',
  altitude: 'nach der Höhe',
  'boiling water': 'nach kochendem Wasser',
  'assumed sea level': 'Meereshöhe, mangels Besserem',
} as const;

const handsWords = {
  visitors: 'Erwachsene, die vielleicht zum ersten Mal ziehen',
  bare: 'geübte Erwachsene, bloße Hände',
  gloved: 'geübte Erwachsene, Baumwolle unter Nitril',
  children: 'Kinder',
} as const;

/** What `kettlehand kitchen` prints. */
export const deKitchenShow = {
  'kitchen.show.file': ({ path }) => `Küchendatei: ${escapeForTerminal(path)}`,
  'kitchen.show.no-file': ({ path }) =>
    `Es gibt noch keine Küchendatei; das hier gilt. Sie wird ${escapeForTerminal(path)}. Beginn mit: kettlehand kitchen set altitude "1450 m"`,
  'kitchen.show.air': ({ pressurePascal, altitudeMetres, waterBoilsCelsius, from }, printer) =>
    `Luft: ${hectopascals(pressurePascal)}, ${airWords[from]}${altitudeMetres === null ? '' : ` (${printer.metres(altitudeMetres)})`}. Wasser kocht bei ${printer.degrees(waterBoilsCelsius)}.`,
  'kitchen.show.stove': ({ stove, heat }) =>
    `Herd: ${stoveWord(stove)}. Knopf: ${heat
      .map((label) => {
        const word = heatWord(label);
        return word === label ? escapeForTerminal(label) : `${label} (${word})`;
      })
      .join(', ')}.`,
  'kitchen.show.pot': ({ litres, diameterMillimetres }, printer) =>
    litres === null && diameterMillimetres === null
      ? 'Topf: nicht bekannt.'
      : `Topf: ${[litres === null ? '' : printer.litres(litres), diameterMillimetres === null ? '' : `${Math.round(diameterMillimetres / 10)} cm Durchmesser`].filter((part) => part !== '').join(', ')}.`,
  'kitchen.show.thermometer': ({ id, kind, unit, basis, trueCelsius, shownCelsius, sdKelvin }) =>
    `Thermometer ${escapeForTerminal(id)}: ${thermometerWord(kind)}, ${basisWords[basis]}; zeigt ${shownOn(shownCelsius, unit)} bei ${shownOn(trueCelsius, unit)}, bis auf ${Math.round(2 * sdKelvin * (unit === 'F' ? 1.8 : 1))} °${unit}.`,
  'kitchen.show.room': ({ celsius, humidity }, printer) =>
    celsius === null && humidity === null
      ? 'Raum: nicht bekannt.'
      : `Raum: ${[celsius === null ? '' : printer.degrees(celsius), humidity === null ? '' : `${printer.percent(humidity)} Luftfeuchte`].filter((part) => part !== '').join(', ')}.`,
  'kitchen.show.hands': ({ hands }) => `Wer zieht: ${handsWords[hands]}.`,
  'kitchen.saved': ({ path }) => `Gespeichert in ${escapeForTerminal(path)}.`,
  'kitchen.set-usage': ({ allowed }) =>
    `Schreib eine Einstellung und ihren Wert, so oft wie nötig: kettlehand kitchen set altitude "1450 m" stove coil. Einstellungen: ${allowed.join(', ')}. "none" vergisst eine.`,
  'kitchen.unknown-action': ({ found, nearest }) =>
    `"kitchen ${escapeForTerminal(found)}" gibt es nicht.${suggestion(nearest)} Möglich: kitchen, kitchen set KEY VALUE, kitchen path.`,
} as const satisfies Translated<typeof kitchenShowTexts>;
