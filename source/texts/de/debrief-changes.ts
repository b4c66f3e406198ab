import { escapeForTerminal } from '../../units/escape.js';
import type { debriefChangeTexts } from '../en/debrief-changes.js';
import type { Translated } from '../texts.js';
import { comma, phaseWord, stageWord } from './words.js';

/** Troubles as a person says them. */
const troubles: Readonly<Record<string, string>> = {
  foam: 'steigender Schaum',
  overflow: 'übergekocht',
  scorched: 'angebrannt',
  burn: 'heißer Zucker auf der Haut',
  grains: 'Körner',
  overshoot: 'über dem Zielbereich',
  soft: 'zu weich',
  stiff: 'zu fest',
  thermometer: 'Thermometer im Zweifel',
  glass: 'zerbrochenes Glas',
  spill: 'verschütteter Sirup',
  fire: 'Feuer',
  power: 'Stromausfall',
  choking: 'Ersticken',
  allergy: 'Allergie',
  away: 'Topf allein gelassen',
};
export const troubleCalled = (name: string): string => troubles[name] ?? escapeForTerminal(name);

const firstActs: Readonly<Record<string, string>> = {
  foam: 'kleiner und Topf vom Herd; nie Wasser',
  overflow: 'zuerst Knopf aus, dann den Topf wegschieben; nie Wasser',
  scorched: 'vom Herd und stehen lassen; nie Wasser',
  fire: 'Deckel drauf, Hitze aus; nie den Topf bewegen, nie Wasser',
  overshoot: 'zuerst vom Herd, dann löffelweise kochendes Wasser',
};
const acts: Readonly<Record<string, string>> = {
  'heat down': 'kleiner',
  'heat off': 'Hitze aus',
  'pot off': 'Topf vom Herd',
  'lid on': 'Deckel drauf',
  water: 'Wasser dazu',
  measure: 'gemessen',
  test: 'Wasserprobe',
  check: 'Thermometer geprüft',
  'give up': 'aufgegeben',
};
export const actCalled = (act: string): string => acts[act] ?? act;

/** A phase as it reaches a sentence: by its id, or said already. */
const phase = phaseWord;
const times = (count: number): string => (count === 1 ? 'einmal' : `${count}-mal`);

/** What to do otherwise next time; beside each, why and the number behind it. */
export const deDebriefChanges = {
  'debrief.change.burn':
    'Lange Ärmel und trockene Topfhandschuhe ab dem Kochen, und zeig allen, wo das kühle Wasser läuft.',
  'debrief.because.burn': (v, p) =>
    `Heißer Zucker kam bei ${p.clock(v.at)} auf die Haut (${phase(v.phase)})${v.first === null ? '; das Protokoll sagt nicht, was zuerst getan wurde' : `; ${p.time(v.first)}, bis das Erste getan war`}. Kühles fließendes Wasser beginnt sofort und läuft 20 Minuten.`,
  'debrief.change.hands-too-hot':
    'Nur Werkzeug, bis der Kern unter der Grenze gemessen ist, jedes Mal, wenn er erwärmt wurde.',
  'debrief.because.hands-too-hot': (v, p) =>
    `Bei ${p.clock(v.at)} kamen Hände daran, während der Kern ${v.celsius === null ? 'über' : `${p.degrees(v.celsius)} zeigte, über`} ihrer Grenze von ${p.degrees(v.limitCelsius)}${v.celsius === null ? ' war' : ''}.`,
  'debrief.change.wrong-order': (v) =>
    `Probe "${troubleCalled(v.name)}" einmal: ${firstActs[v.name] ?? 'das Erste zuerst'}.`,
  'debrief.because.wrong-order': (v, p) =>
    `Was ab ${p.clock(v.at)} getan wurde, der Reihe nach: ${p.list(v.acts.map(actCalled))}.`,
  'debrief.change.slow-answer': (v) =>
    `Sagt vor dem Kochen, wer bei "${troubleCalled(v.name)}" zuerst handelt, und probt es.`,
  'debrief.because.slow-answer': (v, p) =>
    `Die erste Antwort kam nach ${p.time(v.seconds)}; es gibt ${p.time(v.within)}.`,
  'debrief.change.unattended':
    'Ein Erwachsener am Topf, der nichts anderes tut; wer tippt, fragt nach einer Ablesung.',
  'debrief.because.unattended': (v, p) =>
    `Stille, während der Topf auf dem Herd stand, brachte ${v.times === 1 ? 'einmal' : times(v.times)} eine Warnung${v.seconds < 10 ? '' : `; die längste dauerte danach noch ${p.time(v.seconds)}`}.`,
  'debrief.change.boil-over': (v, p) =>
    v.litres === null
      ? 'Schalt kleiner, wenn der Schaum auf halber Topfhöhe steht, und butter den Rand.'
      : `Nimm einen Topf von ${p.litres(v.litres)} oder mehr, oder koch zwei kleinere Ansätze.`,
  'debrief.because.boil-over': (v, p) =>
    `Es ${v.name === 'overflow' ? 'lief' : 'schäumte'} bei ${p.clock(v.at)} ${v.name === 'overflow' ? 'über' : 'auf'}; mit seinem Schaum braucht dieser Ansatz ${p.litres(v.neededLitres)}${v.haveLitres === null ? '' : `, und der Topf fasst ${p.litres(v.haveLitres)}${v.haveLitres < v.neededLitres ? '' : ': groß genug, also war es die Hitze'}`}.`,
  'debrief.change.scorched': (v) =>
    v.late
      ? 'Ab der Hälfte kleiner, und streif beim Rühren den Boden ab.'
      : 'Im letzten Drittel kleiner, und ein Topf mit dickerem Boden.',
  'debrief.because.scorched': (v, p) =>
    `Es roch oder sah verbrannt aus bei ${p.clock(v.at)}${v.peakCelsius === null ? '' : `; der Sirup selbst zeigte nie über ${p.dial(v.peakCelsius)}, also war es der Boden`}.`,
  'debrief.change.past-window': (v, p) =>
    v.late
      ? `Steh ab der letzten Liste mit der Hand am Topf, und nimm ihn in dem Augenblick herunter, in dem es verlangt wird, bei ${p.dial(v.offCelsius)}.`
      : `Nimm ihn bei ${p.dial(v.offCelsius)} herunter, um so viel früher.`,
  'debrief.because.past-window': (v, p) =>
    `Am heißesten war es ${p.dial(v.peakCelsius)}, ${p.rise(v.pastKelvin)} über dem oberen Ende des Zielbereichs von ${p.dial(v.ceilingCelsius)}${v.lateSeconds >= 1 ? `, und er kam ${p.time(v.lateSeconds)} später vom Herd als verlangt` : ''}.`,
  'debrief.change.short': (v, p) =>
    `Koch weiter, bis es ${p.dial(v.floorCelsius)} zeigt oder die Wasserprobe es sagt.`,
  'debrief.because.short': (v, p) =>
    `Am heißesten war es ${p.dial(v.peakCelsius)}, ${p.rise(v.shortKelvin)} unter dem Zielbereich.`,
  'debrief.change.late-off': (v, p) =>
    `Ab der letzten Liste Handschuhe an und Untersetzer bereit: bei ${p.dial(v.offCelsius)} vom Herd, sofort.`,
  'debrief.because.late-off': (v, p) =>
    `Er kam ${p.time(v.seconds)} später vom Herd als verlangt; diesmal blieb es im Zielbereich.`,
  'debrief.change.fast-end': (v, p) => `Schalt eine Stufe kleiner, wenn es ${p.dial(v.fromCelsius)} zeigt.`,
  'debrief.because.fast-end': (v, p) =>
    `Die letzten Grade rannten mit ${p.rate(v.kelvinPerSecond)}; unter ${p.rate(v.mostPerSecond)} bleibt Zeit zum Handeln.`,
  'debrief.change.few-readings': (v, p) => `Ab ${p.dial(v.fromCelsius)} alle 20 s ablesen.`,
  'debrief.because.few-readings': (v, p) =>
    `Gegen Ende gab es ${v.readings === 1 ? 'eine Ablesung' : `${v.readings} Ablesungen`}, und einmal ${p.time(v.seconds)} lang keine.`,
  'debrief.change.stiff': (v) =>
    `Zieh es in ${v.portions} Portionen, den Rest warm gehalten, oder mit mehr Händepaaren.`,
  'debrief.because.stiff': (v, p) =>
    `${v.armsOut ? 'Die Arme gaben nach' : 'Es wurde fest, bevor es gezogen war'}, bei ${p.grams(v.gramsEach)} je Portion; solche Hände schaffen etwa ${p.grams(v.mostGrams)}.`,
  'debrief.change.grains': (v, p) =>
    v.missingGrams >= 1
      ? `Gib Sirup mit ${p.grams(v.missingGrams)} mehr Trockenmasse dazu (Glukose- oder Maissirup).`
      : v.wall
        ? 'Wasch die Wand einmal ab, bevor er dick wird, dann lass den Löffel draußen.'
        : 'Rühr nur sanft am Boden entlang, und kratz nie den Topf aus.',
  'debrief.because.grains': (v, p) =>
    `Körner zeigten sich bei ${p.clock(v.at)} (${phase(v.phase)})${v.doctorRatio === null ? '' : `, mit ${comma(Number(v.doctorRatio.toFixed(2)))} g Sirup-Trockenmasse auf 1 g Zucker`}.`,
  'debrief.change.soft': (v, p) =>
    `Koch etwas weiter: bei ${p.dial(v.offCelsius)} vom Herd; und lass es vor dem Ziehen mehr abkühlen.`,
  'debrief.because.soft': (v, p) =>
    `Der Strang hing ${times(v.droops)} durch${v.moisture === null ? '' : `; etwa ${p.percent(v.moisture)} davon war Wasser`}.`,
  'debrief.change.fingers-and-dial': (v, p) =>
    `Halt das Thermometer vor dem Kochen in kochendes Wasser; hier sind das ${p.degrees(v.boils)}.`,
  'debrief.because.fingers-and-dial': (v) =>
    `Die Wasserprobe fühlte sich ${Math.abs(v.stages)} Stufen ${v.stages > 0 ? 'härter' : 'weicher'} an, als das Thermometer zeigte.`,
  'debrief.change.short-tests': (v, p) =>
    v.fromCelsius === null
      ? `Warte länger bis zur ersten Probe (${stageWord(v.feels)}).`
      : `Erste Probe (${stageWord(v.feels)}) bei ${p.dial(v.fromCelsius)}, nicht vorher.`,
  'debrief.because.short-tests': (v, p) =>
    `${v.tests} Proben waren noch nicht so weit${v.firstCelsius === null ? '' : `, die erste bei ${p.dial(v.firstCelsius)}`}; jede kostet ein, zwei Minuten neben dem Herd.`,
  'debrief.change.no-readings': 'Leih ein Thermometer, auch ein schlechtes, und prüf es in kochendem Wasser.',
  'debrief.because.no-readings': (v, p) =>
    v.between === null
      ? 'Nichts wurde abgelesen und nichts geprobt, also lässt sich vom Rest Wasser nichts sagen.'
      : `Nach der Wasserprobe allein endete es irgendwo in ${p.dialSpan(...v.between)}.`,
  'debrief.change.unchecked-dial': (v, p) =>
    `Prüf das Thermometer in kochendem Wasser (hier ${p.degrees(v.boils)}) und tipp, was es zeigt: "boils ...".`,
  'debrief.because.unchecked-dial': (v, p) => `Ungeprüft ist es nur auf etwa ${p.rise(v.sdKelvin)} bekannt.`,
  'debrief.change.boil-time': (v, p) =>
    `Mehr Hitze bis zu den letzten Graden, oder am Anfang weniger Wasser: ${p.grams(v.waterGrams)} mussten verkochen.`,
  'debrief.because.boil-time': (v, p) =>
    `Es kochte ${p.time(v.seconds)} auf dem Herd; mehr als ${p.time(v.high)} ist selten.`,
  'debrief.change.slow-fold': 'Gieß es breiter aus: eine dünnere Schicht kühlt früher.',
  'debrief.because.slow-fold': (v, p) =>
    `Abkühlen und Falten dauerten ${p.time(v.seconds)}; bis zu ${p.time(v.high)} sind üblich.`,
  'debrief.change.heat-left-on': 'Knopf aus, wenn der Topf vom Herd geht, und sag es laut.',
  'debrief.because.heat-left-on': (v, p) => `Die leere Kochstelle blieb ${p.time(v.seconds)} an.`,
  'debrief.change.stirred-in-the-boil':
    'Kleiner, solange es sich löst, und den Löffel heraus bei den ersten Blasen.',
  'debrief.because.stirred-in-the-boil': (v, p) =>
    `Es kochte ${p.time(v.seconds)}, während noch gerührt wurde.`,
  'debrief.change.piece-size': (v, p) =>
    `Schneid ${p.millimetres(v.better)} lang statt ${p.millimetres(v.now)}.`,
  'debrief.because.piece-size': (v, p) =>
    `Ein Stück wog ${p.grams(v.meanGrams)}; das Rezept will ${p.grams(v.wantedGrams)}.`,
  'debrief.change.uneven-pieces':
    'Zeichne die Länge auf dem Brett an, und roll den Strang vor dem Schneiden gleichmäßig.',
  'debrief.because.uneven-pieces': (v, p) =>
    `Die Stücke schwanken um etwa ${p.percent(v.variation)}; Handvolle hatten im Mittel von ${p.grams(v.between[0])} bis ${p.grams(v.between[1])}.`,
  'debrief.change.yield': (v) =>
    v.more
      ? 'Prüf die Waage und was darauf stand: es kam mehr heraus, als hineinging.'
      : 'Streif Platte und Hände auf den Strang, solange er warm ist, und fette sie dünner.',
  'debrief.because.yield': (v, p) =>
    `${p.grams(v.weighedGrams)} wurden gewogen von ${p.grams(v.cookedGrams)}, die der Topf enthielt: ${p.percent(v.share)}.`,
  'debrief.change.slow-wrap': (v) => `${v.people} Leute wickeln ein.`,
  'debrief.because.slow-wrap': (v, p) =>
    `Das Einwickeln dauerte ${p.time(v.seconds)}; eine Person braucht mit der Ruhe davor bis zu ${p.time(v.high)}.`,
  'debrief.change.weigh-and-count': (v) =>
    `${v.weigh ? 'Wieg das Ganze ("weigh 512g")' : ''}${v.weigh && v.count ? ' und zähl' : ''}${!v.weigh && v.count ? 'Zähl' : ''}${v.count ? ' die Stücke ("count 63")' : ''}.`,
  'debrief.because.weigh-and-count': (v, p) =>
    `Ohne das kann der nächste Plan wieder nur raten: ${p.list([
      ...(v.weigh ? [`${p.grams(v.grams.low)} bis ${p.grams(v.grams.high)}`] : []),
      ...(v.count ? [`${Math.round(v.pieces.low)} bis ${Math.round(v.pieces.high)} Stück`] : []),
    ])}.`,
} as const satisfies Translated<typeof debriefChangeTexts>;
