import { escapeForTerminal } from '../../units/escape.js';
import { capital } from '../capital.js';
import type { cardTexts } from '../en/card.js';
import type { Translated } from '../texts.js';
import { allergenWord, ingredientWord, stageWord } from './words.js';

const named = (things: readonly string[]): string =>
  things.map((thing) => escapeForTerminal(ingredientWord(thing))).join(', ');

/** The card for the wall: what to go on by when the screen is dark. */
export const deCard = {
  'card.title': ({ name }) => escapeForTerminal(name),
  'card.for': 'Für die Wand. Stromausfall, toter Laptop: von hier weiter.',
  'card.place': ({ boils, id, basis, unit }, p) =>
    id === null
      ? `Kein Thermometer: kaltes Wasser entscheidet. Wasser kocht hier bei ${p.degrees(boils)}.`
      : `Zahlen, wie "${escapeForTerminal(id)}" sie in °${unit} zeigt (${basis === 'taken as right' ? 'ungeprüft' : 'korrigiert'}). Wasser kocht hier bei ${p.degrees(boils)}.`,
  'card.date': ({ date }) => date,
  'card.pull': ({ time }) => `Hände daran um ${time}`,

  'card.off.label': 'VOM HERD',
  'card.off': ({ celsius }, p) => p.dial(celsius),
  'card.off.blind': ({ feels }) => stageWord(feels),
  'card.off.then': ({ window, feels, dial }, p) =>
    dial
      ? `auf den Untersetzer. Es ruht bei ${p.dialSpan(window[0], window[1])}: in kaltem Wasser ${stageWord(feels)}.`
      : 'in kaltem Wasser. Dann auf den Untersetzer.',

  'card.heading.numbers': 'Unterwegs',
  'card.boils': 'es kocht ab etwa',
  'card.quiet': 'Stille, kleine Hitze, jede halbe Minute ablesen',
  'card.first-test': 'Becher mit kaltem Wasser bereit',
  'card.off-row': 'vom Herd, Probe',
  'card.past': 'über dem Zielbereich: Hartbonbon',
  'card.rescue': 'darüber nie mehr Wasser hinein',
  'card.never': 'nie: es brennt an. Vom Herd, kein Wasser',
  'card.number': ({ celsius }, p) => p.dialNumber(celsius),

  'card.heading.stages': 'Was Finger in kaltem Wasser fühlen',
  'card.from': ({ celsius }, p) => p.dialNumber(celsius),
  'card.heading.test': 'Die Wasserprobe',
  'card.test.1': 'Topf vom Herd, auf den Untersetzer.',
  'card.test.2': 'Frischer Becher aus Metall oder Plastik, kaltes Leitungswasser, kein Eis.',
  'card.test.3': 'Halber Teelöffel hinein, zehn Sekunden unter Wasser, ein Erwachsener fühlt.',
  'card.test.4': ({ feels }) =>
    `Eine Stufe weicher als ${stageWord(feels)}: zurück, klein, in einer Minute neue Probe. Noch weicher: mittel, drei Minuten. Finger vor Zeiger.`,

  'card.heading.way': 'Der Weg hindurch',
  'card.way.mix': ({ things }) => `Herd aus, kalter Topf: ${named(things)}. Wand abstreifen. Liste 1 lesen.`,
  'card.way.dissolve': ({ minutes }) =>
    `Kleine bis mittlere Hitze. Rühren, bis nichts mehr knirscht, etwa ${minutes} min.`,
  'card.way.boil': (v, _p) => {
    const wall = {
      lid: ' Deckel drauf, 2-3 min, vom Gesicht weg öffnen.',
      brush: ' Feuchter Pinsel an die Wand, einmal. Kein Deckel.',
      'none-late-stir': ' Kein Deckel.',
    };
    return `${v.late ? 'Kochen, langsam am Boden entlang rühren.' : 'Kochen. Niemand rührt.'}${wall[v.care]} ${
      v.dial ? 'Alle 2 min ablesen' : 'Alle paar Minuten Probe'
    }; ${v.minutes[0]} bis ${v.minutes[1]} min. Schaum auf halber Höhe: kleiner.`;
  },
  'card.way.near': ({ celsius, dial }, p) =>
    `${dial ? `Ab ${p.dial(celsius)}` : 'Ab dem ersten festen Ballen'}: klein, niemand spricht mit dem Topf. Liste 2 lesen.`,
  'card.way.off': ({ celsius, feels, dial }, p) =>
    dial
      ? `${p.dial(celsius)} oder ${stageWord(feels)}, was zuerst kommt: VOM HERD, auf den Untersetzer. Herd aus. Probe.`
      : `${capital(stageWord(feels))}: VOM HERD, auf den Untersetzer. Herd aus.`,
  'card.way.flavour': ({ things }) =>
    things.length === 0
      ? 'Warten, bis das Blubbern sinkt.'
      : `Blubbern gesunken: ${named(things)}, nach und nach, Gesicht weg.`,
  'card.way.later': ({ things, phase }) =>
    `${{ boil: 'Beim Kochen', fold: 'Beim Falten', pull: 'Beim Ziehen' }[phase]}: ${named(things)}.`,
  'card.way.pour': ({ scrape }) =>
    `Weg frei, Platte bereit? Tief gießen, von dir weg${scrape ? '' : ', nicht auskratzen'}. Leerer Topf: 3 min warten, dann heißes Leitungswasser, nie kaltes.`,
  'card.way.fold': '2-3 min liegen lassen. Ränder mit dem Schaber zur Mitte, 2-3 mal. Nur Werkzeug.',
  'card.way.hands': ({ celsius, dial }, p) =>
    dial
      ? `Kern ${p.degrees(celsius)} oder weniger: Liste 3 lesen, dann Hände.`
      : '20 min bei 1 cm, 45 bei mehr; aufschneiden, ein Erwachsener fasst einen Krümel an. Liste 3 lesen, dann Hände.',
  'card.way.pull':
    'Mit den Fingerspitzen ziehen, falten, ziehen, bis es hell, seidig und steif ist: 5 bis 20 min.',
  'card.way.cut': ({ cut, damp }, p) =>
    `Stränge, alle ${p.millimetres(cut)} schneiden, Erwachsene. ${damp ? 'Sofort einwickeln: feuchte Luft.' : '10-30 min ruhen, einwickeln.'}`,

  'card.heading.roles': 'Wer',
  'card.role.pot': 'Topf: ein Erwachsener, sonst nichts',
  'card.role.slab': 'Platte: Schaber, Untersetzer, Aroma',
  'card.role.floor': 'Raum: einer auf 6-8 Kinder',
  'card.role.scribe': 'Schreiber: Zeiten, Ablesungen',

  'card.heading.list': ({ number }) =>
    ({ 1: '1  Vor der Hitze', 2: '2  Vor dem Gießen', 3: '3  Vor den Händen' })[number],
  'card.list.1.1': 'Hände 20 s gewaschen; Haare gebunden, Wunden abgedeckt, niemand krank',
  'card.list.1.2': 'Kinder hinter einer Linie, 1 m von Herd, Weg und Platte',
  'card.list.1.3': 'Deckel und trockene Topfhandschuhe zur Hand; kühles fließendes Wasser nahe',
  'card.list.1.4': ({ litres }, p) => `Topf von ${p.litres(litres)} oder mehr`,
  'card.list.1.5': 'Platte, Schaber, Schere gefettet; Becher und Handschüssel gefüllt',
  'card.list.1.6': ({ contains, check, unknown }, p) => {
    const list = (words: readonly string[]): string =>
      p.list(words.map((word) => escapeForTerminal(allergenWord(word))));
    return `Nach Allergien gefragt: ${[
      contains.length > 0 ? list(contains) : 'keine im Rezept',
      ...(check.length > 0 ? [`Packungen: ${list(check)}`] : []),
      ...(unknown ? ['manche unbekannt'] : []),
    ].join('; ')}`;
  },
  'card.list.2.1': 'Weg vom Herd zur Platte frei und trocken',
  'card.list.2.2': 'Untersetzer liegt, Platte gefettet und eben',
  'card.list.2.3': 'Ein Erwachsener gießt, mit Namen; trockene Topfhandschuhe an',
  'card.list.2.4': 'Alle anderen treten zurück, Kinder zuerst',
  'card.list.2.5': 'Aroma abgemessen, am Untersetzer',
  'card.list.3.1': ({ celsius, dial }, p) =>
    dial
      ? `Kern gemessen: ${p.degrees(celsius)} oder weniger`
      : 'Aufgeschnitten, ein Krümel aus dem Kern von einem Erwachsenen angefasst',
  'card.list.3.2': 'Ringe und Uhr ab, Hände gewaschen',
  'card.list.3.3': ({ hands }) =>
    `Hände: ${{ butter: 'Butter, dünn', oil: 'Öl, dünn', starch: 'Stärke', dry: 'trocken' }[hands]}; kein Schutz vor Hitze`,
  'card.list.3.4': 'Schüssel kühles Wasser neben der Arbeit; Schere weg',
  'card.list.3.5': 'Kinder: ein kleines Stück von einem Erwachsenen, nie die Masse',
  'card.list.3.6': 'Iss nur, was du gezogen hast; Heruntergefallenes ist Abfall',

  'card.heading.burn': 'VERBRENNUNG',
  'card.burn.1': 'Kühles fließendes Wasser, jetzt, 20 Minuten. Andere: Hitze aus, Topf vom Herd.',
  'card.burn.2': 'Ringe, Uhr, Ärmel unter dem Wasser ab, erste Minute. Was klebt, bleibt.',
  'card.burn.3':
    'Ein Auge: 20 Minuten spülen. Warm halten; dann locker abdecken. Kein Eis, kein Fett, keine Salbe.',
  'card.burn.4':
    'Hilfe rufen: Gesicht, Auge, Hand, Gelenk, Genitalien; größer als die eigene Handfläche; weiß oder ledrig; jedes Kind; jeder Zweifel.',
  'card.heading.fire': 'FEUER IM TOPF',
  'card.fire.1': 'Deckel darüber schieben. Hitze aus. Nicht bewegen. Kein Wasser.',
  'card.fire.2': 'Nicht gleich aus: alle hinaus, Tür zu, Feuerwehr rufen.',
  'card.heading.more': 'AUSSERDEM',
  'card.more.1': 'Über den Rand: zuerst Knopf aus, zur Seite schieben, kein Wasser.',
  'card.more.2': 'Riecht verbrannt: vom Herd, Fenster auf, kein Wasser hinein.',
  'card.more.3': 'Ersticken, allergische Reaktion: Notruf und Ersthelfer, jetzt.',
  'card.heading.power': 'STROM WEG',
  'card.power.1': 'Knopf aus. Topf bleibt, Deckel ab, ein Erwachsener daneben.',
  'card.power.2': 'Strom wieder da: zuerst klein; nicht kratzen.',
  'card.power.3': 'Auf der Platte: weiter falten und ziehen, das braucht keinen Strom.',
  'card.call': 'Notruf (112)',
  'card.here': 'Wir sind in (Adresse)',
  'card.aider': 'Ersthelfer',
  'card.foot':
    'Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das Lebensmittelrecht und ausgebildete Erste Hilfe gehen dieser Karte vor. Nicht für Kinder unter vier; im Sitzen essen; es klebt.',
} as const satisfies Translated<typeof cardTexts>;
