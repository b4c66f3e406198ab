import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { sentence } from '../capital.js';
import type { cookTexts } from '../en/cook.js';
import type { Translated } from '../texts.js';
import { deHazards } from './hazards.js';
import { allergenWord, amountIn, ingredientWord, stageAndTyped, stageWord } from './words.js';

const readAgain = (seconds: number, p: Printer): string =>
  seconds < 8 ? 'jetzt wieder ablesen' : `in ${p.time(seconds)} wieder ablesen`;

/** Behind "Platte, ..." or "Schere ...": how a surface is made ready. */
const greased = {
  butter: 'mit Butter gefettet',
  oil: 'geölt',
  starch: 'mit Stärke bestäubt',
  dry: 'sauber und trocken',
} as const;
const prepare = {
  butter: 'Butter dünn auf die Finger',
  oil: 'Öl dünn auf die Finger',
  starch: 'Stärke auf die Finger',
  dry: 'Finger gut abtrocknen',
} as const;
const forHands = { butter: 'Butter', oil: 'Öl', starch: 'Stärke' } as const;
const whoseHands = {
  bare: 'bloße Hände geübter Erwachsener',
  visitors: 'Hände, die zum ersten Mal ziehen',
  gloved: 'Baumwolle unter Nitrilhandschuhen',
  children: 'Kinderhände',
} as const;

type Allergens = { contains: readonly string[]; check: readonly string[]; unknown: boolean };
const named = (allergens: readonly string[], p: Printer): string =>
  p.list(allergens.map((one) => shown(allergenWord(one))));
const allergenLine = (v: Allergens, p: Printer): string => {
  const parts = [
    v.contains.length > 0 ? `enthält ${named(v.contains, p)}` : 'kein bekanntes Allergen im Rezept',
    ...(v.check.length > 0 ? [`auf den Packungen nachsehen: ${named(v.check, p)}`] : []),
    ...(v.unknown ? ['manche Allergene unbekannt'] : []),
  ];
  return parts.join('; ');
};

/** The phases and their steps. `.shout` is at most two lines of fourteen characters. */
export const deCook = {
  ingredient: (v, p) => {
    const grams = p.exactGrams(v.grams);
    const name = shown(ingredientWord(v.name));
    const household = p.weights === 'ounces' ? p.household({ ...v, written: v.amount }) : v.amount.trim();
    const amount = shown(amountIn(household));
    return amount === grams ? `${grams} ${name}` : `${amount} ${name} (${grams})`;
  },

  'phase.mix': 'mischen',
  'phase.dissolve': 'lösen',
  'phase.boil': 'kochen',
  'phase.test': 'Probe',
  'phase.flavour': 'Aroma',
  'phase.pour': 'gießen',
  'phase.fold': 'falten',
  'phase.pull': 'ziehen',
  'phase.cut': 'schneiden',
  'phase.wrap': 'wickeln',
  'phase.clean': 'putzen',
  'phase.over': 'Ende',

  // Mix cold.
  'mix.ready.say': 'Stell alles bereit, bevor etwas heiß wird.',
  'mix.ready.why': (_v) =>
    'Wenn es kocht, ist keine Zeit, einen Schaber zu suchen, und niemand geht vom Topf weg.',
  'mix.ready.shout': 'ALLES\nBEREIT STELLEN',
  'mix.ready.pot': (v, p) => {
    const size = `Topf von mindestens ${p.litres(v.neededLitres)}: viermal der gelöste Sirup, wegen des Schaums`;
    if (v.fits === false && v.haveLitres !== null)
      return `${size}. Deiner fasst ${p.litres(v.haveLitres)}: zu klein, mach weniger.`;
    return v.haveLitres === null ? `${size}.` : `${size}. Deiner fasst ${p.litres(v.haveLitres)}: er reicht.`;
  },
  'mix.ready.stem': (v, p) => {
    if (!v.present)
      return 'Kein Thermometer: die Wasserproben entscheiden allein, und es sind mehr: ein Krug kaltes Wasser, um die Becher neu zu füllen.';
    if (v.depthMillimetres === null)
      return 'Thermometer: am Ende des Kochens muss der Sirup seinen Fühler bedecken.';
    const depth = `der Sirup steht am Ende ${p.millimetres(v.depthMillimetres)} tief`;
    if (v.covered === null || v.stemMillimetres === null)
      return `Thermometer: ${depth}; das muss seinen Fühler bedecken.`;
    return v.covered
      ? `Thermometer: ${depth}, genug für seinen Fühler von ${p.millimetres(v.stemMillimetres)}.`
      : `Thermometer: ${depth}, zu flach für seinen Fühler von ${p.millimetres(v.stemMillimetres)}. Engerer Topf, oder zum Ablesen neben dem Herd kippen.`;
  },
  'mix.ready.slab': (v) => `Platte oder Blech, ${greased[v.surface]}, eben, neben dem Herd.`,
  'mix.ready.scraper': 'Steifer Schaber und Schere, beide gefettet.',
  'mix.ready.fat': (v) =>
    v.hands === 'dry'
      ? 'Ein trockenes Tuch für die Hände in Reichweite.'
      : `${forHands[v.hands]} für die Hände, in Reichweite der Platte.`,
  'mix.ready.bowl': 'Eine Schüssel kühles Wasser für Hände, neben der Platte. Kein Eis.',
  'mix.ready.cups':
    'Sechs Becher kaltes Leitungswasser, Metall oder Plastik, und ein Metalllöffel: zur Probe.',
  'mix.ready.clothes': 'Trockene Topfhandschuhe, Schürze, Untersetzer, ein Deckel, der passt.',
  'mix.ready.squares': (v, p) =>
    `${p.count(v.squares, 'Papier', 'Papiere')} zum Einwickeln, jetzt zugeschnitten.`,
  'mix.roles.say': 'Sagt laut, wer was tut.',
  'mix.roles.why':
    'In den letzten Minuten fragt keiner mehr. Allein: du bist der Topf, und gegen Ende redest du nicht.',
  'mix.roles.shout': 'WER TUT\nWAS',
  'mix.roles.pot': 'Topf: ein Erwachsener, der nichts anderes tut.',
  'mix.roles.slab': 'Platte: Schaber, Untersetzer, Aroma.',
  'mix.roles.floor': 'Raum: einer auf sechs bis acht Kinder.',
  'mix.roles.scribe': 'Schreiber: tippt, was der Topf sagt.',
  'mix.roles.pull':
    'Wer zieht? Tipp "hands visitors" (zum ersten Mal), "hands bare" (geübt), "hands gloved" (Handschuhe) oder "hands children" (Kinder).',
  'mix.thermometer.say': (_v, p) =>
    `Halt das Thermometer in kochendes Wasser und tipp, was es zeigt: boils ${p.thermometerUnit === 'F' ? '203f' : '95c'}.`,
  'mix.thermometer.why': (v, p) =>
    `Hier kocht Wasser bei ${p.degrees(v.waterBoilsCelsius)}. Eiswasser geht auch (ice ${p.thermometerUnit === 'F' ? '33f' : '0.5c'}). Keine Zeit: done.`,
  'mix.thermometer.shout': 'THERMOMETER\nPRÜFEN',
  'heat.pause.say': (_v) => 'Lies das laut vor. Stimmt alles? Antworte yes (ja).',
  'heat.pause.why': 'Halt vor der Hitze: ab jetzt ist der Topf heißer als alles andere im Raum.',
  'heat.pause.shout': 'LAUT LESEN\nVOR DER HITZE',
  'heat.pause.hands':
    'Hände 20 s mit Seife gewaschen und getrocknet; wieder nach Gesicht, Telefon oder Tastatur.',
  'heat.pause.people': 'Haare gebunden, Wunden abgedeckt, niemand krank.',
  'heat.pause.zone': 'Kinder hinter einer Linie, 1 m von Herd, Platte und dem Weg dazwischen.',
  'heat.pause.water': 'Deckel und trockene Topfhandschuhe zur Hand, kühles fließendes Wasser nahe.',
  'heat.pause.pot': (v, p) =>
    v.fits === false
      ? `Der Topf ist zu klein: nimm einen von ${p.litres(v.neededLitres)}, oder mach weniger.`
      : `Topf von ${p.litres(v.neededLitres)} oder mehr.`,
  'heat.pause.tools': (v) =>
    `Platte ${greased[v.surface]}; Schaber und Schere gefettet; sechs Probebecher und Handschüssel gefüllt.`,
  'heat.pause.allergies': (v, p) => `Nach Allergien gefragt: ${allergenLine(v, p)}.`,
  'mix.dry.say': (v) =>
    v.things > 1
      ? 'Verrühr die trockenen Zutaten im kalten Topf. Herd aus.'
      : 'Zuerst das Trockene in den kalten Topf. Herd aus.',
  'mix.dry.why': (v) =>
    v.starch
      ? 'Stärke, trocken in den Zucker gemischt, klumpt später nicht.'
      : 'Trocken unten, nass oben: jedes Korn wird durchfeuchtet.',
  'mix.dry.shout': 'TROCKENES\nHERD AUS',
  'mix.wet.say': 'Gib das Übrige in dieser Reihenfolge dazu. Herd noch aus.',
  'mix.wet.why': 'So wird der trockene Zucker durchfeuchtet, und nichts klebt trocken am Boden.',
  'mix.wet.shout': 'NASSES DAZU\nHERD AUS',
  'mix.walls.say': 'Streif den Zucker von der Topfwand.',
  'mix.walls.why': 'Ein trockener Kristall an der Wand kann den ganzen Ansatz körnig machen.',
  'mix.walls.shout': 'WAND\nABSTREIFEN',

  // Dissolve.
  'dissolve.heat.say': (v) =>
    `Schalt auf kleine oder mittlere Hitze. Tipp, was du einstellst, etwa "heat ${v.heat[Math.floor((v.heat.length - 1) / 2)] ?? 'medium'}".`,
  'dissolve.heat.why': 'Zucker löst sich, bevor er kocht, oder er löst sich nie ganz.',
  'dissolve.heat.shout': 'HITZE AN\nKLEIN-MITTEL',
  'dissolve.back.say': 'Topf zurück auf den Herd, kleiner gestellt.',
  'dissolve.back.why': 'Neben dem Herd löst sich der Zucker nicht weiter.',
  'dissolve.back.shout': 'TOPF ZURÜCK\nKLEINER',
  'dissolve.stir.say': 'Rühr langsam, bis am Boden nichts mehr knirscht. Dann: done (erledigt).',
  'dissolve.stir.why': (v, p) =>
    `${v.late ? 'Dieser Ansatz brennt an: er wird auch später gerührt.' : 'Jeder Kristall muss weg sein, bevor es kocht.'} Es kocht ab etwa ${p.dial(v.startsCelsius)}.`,
  'dissolve.stir.shout': 'RÜHREN\nBIS ALLES KLAR',
  'dissolve.next': 'bei den ersten Blasen kommt der Löffel heraus und bleibt draußen',
  'dissolve.spoon-out.say': 'Löffel heraus. Ab jetzt rührt niemand.',
  'dissolve.spoon-out.why': 'Rühren in kochendem Sirup bringt Kristalle.',
  'dissolve.spoon-out.shout': 'LÖFFEL RAUS\nNICHT RÜHREN',

  // Boil.
  'boil.back.say': 'Topf zurück auf den Herd, kleiner gestellt.',
  'boil.back.why': 'Neben dem Herd kocht es nicht weiter; kleiner hält den Schaum unten.',
  'boil.back.shout': 'TOPF ZURÜCK\nKLEINER',
  'boil.heat.say': 'Herd wieder an, klein. Andere Stufe: tipp sie, etwa "heat medium" (mittel).',
  'boil.heat.why': 'Die Hitze ist aus: der Sirup kühlt nur ab.',
  'boil.heat.shout': 'WIEDER AN\nKLEIN',
  'boil.start.say': 'Bring es überall gleichmäßig zum Kochen. Kocht: done (erledigt).',
  'boil.start.why': (v, p) =>
    `Es kocht ab etwa ${p.dial(v.startsCelsius)}. Mittlere Hitze: zu schnell schäumt, zu langsam dauert eine Stunde.`,
  'boil.start.shout': 'GLEICHMÄSSIG\nKOCHEN',
  'boil.watch.foam': 'Schaum: auf halber Topfhöhe ist es Zeit, kleiner zu schalten',
  'boil.watch.scorch': 'den Boden: streif ihn beim Rühren ab, dort brennt es zuerst an',
  'boil.watch.run': 'die letzten Grade rennen: niemand spricht mit der Person am Topf',
  'boil.lid.say': 'Deckel drauf, zwei bis drei Minuten. Bleib daneben.',
  'boil.lid.why': 'Dampf wäscht den Zucker von der Wand.',
  'boil.lid.shout': 'DECKEL DRAUF\nDABLEIBEN',
  'boil.lid-off.say': 'Zwei bis drei Minuten unter dem Deckel, dann Deckel ab, vom Gesicht weg.',
  'boil.lid-off.why': 'Unter dem Deckel geht kein Wasser fort: es kocht nicht weiter ein.',
  'boil.lid-off.shout': 'DECKEL AB\nNACH 2-3 MIN',
  'boil.brush.say': (v, p) =>
    `Wasch die Wand mit feuchtem, ausgeschütteltem langem Pinsel, vor ${p.dial(v.beforeCelsius)}. Ärmel herunter.`,
  'boil.brush.why':
    'Zucker an der Wand fällt später hinein und bringt Kristalle. Kein Deckel: es würde schäumen.',
  'boil.brush.shout': 'WAND PINSELN\nEINMAL FEUCHT',
  'boil.probe.say': 'Wärm das Thermometer in heißem Wasser, dann häng es ein: bedeckt, nicht am Boden.',
  'boil.probe.why': 'Am Boden zeigt es zu viel, im Schaum zu wenig, und kaltes Glas springt.',
  'boil.probe.shout': 'THERMOMETER\nHINEIN',
  'boil.still.say': (v, p) => {
    const act = v.late ? 'Rühr langsam am Boden entlang.' : 'Lass es in Ruhe.';
    if (!v.thermometer)
      return `${act} ${v.testSeconds > 0 ? `Wasserprobe in ${p.time(v.testSeconds)}: dann Topf vom Herd.` : 'Jetzt Probe: Topf vom Herd.'}`;
    return v.nextSeconds === null
      ? `${act} Lies das Thermometer ab und tipp es ein.`
      : `${act} ${sentence(readAgain(v.nextSeconds, p))}`;
  },
  'boil.still.why': (v, p) => {
    const reason = v.late ? 'Ungerührt brennt es an.' : 'Rühren bringt jetzt Kristalle.';
    return v.thermometer
      ? `${reason} Vom Herd bei ${p.dial(v.takeOffCelsius)}.`
      : `${reason} Fertig heißt: ${stageWord(v.feels)}.`;
  },
  'boil.still.shout': 'WEITERKOCHEN\nDABLEIBEN',
  'boil.next.test': (v, p) =>
    `ab ${p.dial(v.nearCelsius)} ein Becher kaltes Wasser und ein Löffel bereit; bei ${p.dialNumber(v.takeOffCelsius)} vom Herd und Probe: ${stageWord(v.feels)}`,
  'boil.next.blind-test': 'ein Becher frisches kaltes Wasser und ein Metalllöffel',
  'boil.next.trivet': 'Untersetzer und Aroma stehen bereit; ein frischer Becher kaltes Wasser',
  'boil.last.say': (v, p) => {
    const act = v.late ? 'Bleib am Topf, rühr am Boden entlang.' : 'Bleib am Topf.';
    if (!v.thermometer)
      return `${act} ${v.testSeconds > 0 ? `Neue Probe in ${p.time(v.testSeconds)}.` : 'Jetzt Probe: Topf vom Herd.'}`;
    return `${act} ${sentence(readAgain(v.nextSeconds ?? 0, p))}`;
  },
  'boil.last.why': (v, p) =>
    v.thermometer
      ? `Die letzten Grade rennen. Kleiner hält es in der Hand. Vom Herd bei ${p.dial(v.takeOffCelsius)}.`
      : `Die letzte Stufe rennt. Kleiner hält es in der Hand. Fertig heißt: ${stageWord(v.feels)}.`,
  'boil.last.shout': 'DABLEIBEN\nOFT ABLESEN',
  'boil.off.say': 'VOM HERD, jetzt: Topf herunter, auf den Untersetzer.',
  'boil.off.why': (v, p) => {
    const stove = {
      gas: 'Gas hört sofort auf, aber die Hitze im Topf trägt es noch etwas weiter.',
      coil: 'Eine Kochplatte heizt ausgeschaltet weiter: am Knopf drehen reicht nicht.',
      'glass-ceramic': 'Glaskeramik heizt ausgeschaltet weiter: am Knopf drehen reicht nicht.',
      induction: 'Der Topfboden bleibt heiß und trägt es noch etwas weiter.',
    };
    const at = v.celsius === null ? '' : `${p.dial(v.celsius)}. `;
    return `${at}${stove[v.stove]} Zu kurz lässt sich nachkochen; zu weit nicht zurücknehmen.`;
  },
  'boil.off.shout': 'VOM HERD\nUNTERSETZER',

  // Test.
  'test.off.say': 'Topf vom Herd, auf den Untersetzer.',
  'test.off.why': 'Auf dem Herd würde es während der Probe weiterkochen.',
  'test.off.shout': 'TOPF WEG\nZUR PROBE',
  'test.drop.say': (v) =>
    v.again
      ? 'Noch eine Probe: frischer Becher, halber Teelöffel, zehn Sekunden unter Wasser, dann fühlen.'
      : 'Einen halben Teelöffel Sirup in einen frischen Becher kaltes Wasser. Zehn Sekunden, dann fühlen.',
  'test.drop.why': (v) =>
    `Finger wissen es besser als ein Zeiger. Gesucht: ${stageAndTyped(v.feels)}. Tipp, wie es sich anfühlte.`,
  'test.drop.shout': 'TROPFEN IN\nKALTES WASSER',
  'test.back.say': (v, p) =>
    v.nextCelsius === null
      ? `Noch nicht: ${stageWord(v.outcome)}. Topf zurück, klein, und in etwa ${p.time(v.seconds)} neue Probe.`
      : `Noch nicht: ${stageWord(v.outcome)}. Topf zurück, klein, bis ${p.dial(v.nextCelsius)}, dann neue Probe.`,
  'test.back.why': (v) =>
    `Es soll so sein: ${stageWord(v.feels)}. Darunter wird es nie fest, so lang du auch ziehst.`,
  'test.back.shout': 'TOPF ZURÜCK\nKLEIN',
  'test.back-far.say': (v, p) =>
    v.nextCelsius === null
      ? `Noch weit davon: ${stageWord(v.outcome)}. Topf zurück, mittel, und in etwa ${p.time(v.seconds)} neue Probe.`
      : `Noch weit davon: ${stageWord(v.outcome)}. Topf zurück, mittel, bis ${p.dial(v.nextCelsius)}, dann neue Probe.`,
  'test.back-far.why': (v) =>
    `Es soll so sein: ${stageWord(v.feels)}. Vorher muss noch viel Wasser heraus; klein ist für die letzte Stufe.`,
  'test.back-far.shout': 'TOPF ZURÜCK\nMITTEL',
  'feels.dissolves': 'dissolves: löst sich im Wasser auf',
  'feels.thread': 'thread: Faden; feine Fäden, nichts zu rollen',
  'feels.soft ball': 'soft ball: weicher Ballen; rollt sich und läuft auf dem Finger flach',
  'feels.firm ball': 'firm ball: fester Ballen; hält die Form, lässt sich platt drücken',
  'feels.hard ball': 'hard ball: harter Ballen; gibt nach, wird nicht platt; klebt leicht',
  'feels.soft crack': 'soft crack: schwacher Bruch; biegt sich, zieht dann Fäden',
  'feels.hard crack': 'hard crack: starker Bruch; bricht wie Glas',
  'feels.unsure': 'unsure: unsicher; neue Probe mit frischem Becher',

  // Flavour off the heat.
  'flavour.off.say': 'Es ist so weit. Topf endgültig vom Herd, auf den Untersetzer.',
  'flavour.off.why': 'Herd und Topfhitze würden es übers Ziel tragen.',
  'flavour.off.shout': 'FERTIG:\nVOM HERD',
  'flavour.sink.say': (v) =>
    v.again === null
      ? 'Schalt den Herd aus. Warte, bis das Blubbern sinkt.'
      : `Noch ein Tropfen, frischer Becher: wieder ${stageWord(v.again)}? Dann Herd aus, das Blubbern sinken lassen.`,
  'flavour.sink.why': (v) =>
    v.again === null
      ? 'Was in blubbernden Sirup kommt, zerstiebt zu Dampf.'
      : 'Finger halten leicht eine halbe Stufe für die nächste. Diesmal weicher: das tippen, dann kommt er zurück.',
  'flavour.sink.shout': 'HERD AUS\nBLASEN SINKEN',
  'flavour.add.say': (v) =>
    `${v.flavour ? 'Farbe und Aroma' : 'Das hier'} mit gestrecktem Arm dazu, nach und nach. Zweimal rühren.`,
  'flavour.add.why': 'Neben dem Herd behält es den Geschmack und spritzt am wenigsten.',
  'flavour.add.shout': 'AROMA DAZU\nGESICHT WEG',

  // Pour.
  'pour.pause.say': 'Lies das vor dem Gießen laut vor. Stimmt alles? Antworte yes (ja).',
  'pour.pause.why': 'Halt vor dem Gießen: wenn der Topf herunter muss, ist keine Zeit für eine Liste.',
  'pour.pause.shout': 'LAUT LESEN\nVOR DEM GUSS',
  'pour.pause.path': 'Weg vom Herd zur Platte frei und trocken.',
  'pour.pause.slab': (v) => `Untersetzer liegt, Platte ${greased[v.surface]} und eben.`,
  'pour.pause.trivet': 'Trockene Topfhandschuhe bei dem, der gießt; Griff bis dahin nach innen.',
  'pour.pause.who': 'Wer gießt? Ein Erwachsener, mit Namen.',
  'pour.pause.back': 'Wer tritt zurück, und hinter welche Linie? Kinder zuerst.',
  'pour.pause.flavour': (v, p) =>
    v.items.length === 0
      ? 'Nichts dazuzugeben: gleich auf die Platte.'
      : `Abgemessen am Untersetzer: ${p.list(v.items.map((one) => shown(ingredientWord(one))))}.`,
  'pour.path.say': 'Weg frei, Platte bereit? Antworte yes (ja).',
  'pour.path.why': 'Ein Stoß mit vollem Topf verbrennt zwei Leute.',
  'pour.path.shout': 'WEG FREI?\nPLATTE BEREIT?',
  'pour.pour.say': (v) =>
    `Gieß tief, dicht über der Platte, von dir weg. ${v.scrape ? 'Lass es auslaufen.' : 'Kratz den Topf nicht aus.'}`,
  'pour.pour.why': (v) =>
    v.scrape ? 'Von hoch oben spritzt es.' : 'Von hoch oben spritzt es; Ausgekratztes bringt Kristalle.',
  'pour.pour.shout': 'TIEF GIESSEN\nVON DIR WEG',

  // Cool and fold.
  'fold.wait.say': 'Lass es zwei bis drei Minuten liegen. Leerer Topf auf den Untersetzer.',
  'fold.wait.why': 'Die Ränder werden zuerst steif; zu früh bewegt wird es körnig.',
  'fold.wait.shout': 'LIEGEN LASSEN\n2-3 MINUTEN',
  'fold.next.pot': 'heißes Leitungswasser für den leeren Topf, wenn er zwei bis drei Minuten stand',
  'fold.turn.say': 'Falte mit dem Schaber die Ränder zur Mitte. Nur Werkzeug.',
  'fold.turn.why': 'So kühlt es gleichmäßig. Liegengelassene Ränder werden harte Klumpen.',
  'fold.turn.shout': 'RAND ZUR MITTE\nNUR WERKZEUG',
  'fold.pot.say': 'Heißes Leitungswasser in den leeren Topf, an der Wand, Gesicht weg. Nie kaltes.',
  'fold.pot.why': 'Heißes Wasser löst den Rest; kaltes zerstiebt zu Dampf.',
  'fold.pot.shout': 'HEISSES WASSER\nIN DEN TOPF',
  'fold.again.say': 'Falte noch zwei-, dreimal, wenn die Ränder steif werden, immer auf eine kühle Stelle.',
  'fold.again.why': 'Zwei, drei Mal genügen; mehr macht es körnig.',
  'fold.again.shout': 'NOCHMAL FALTEN\nNUR WERKZEUG',
  'fold.add.say': 'Streu das darauf und falte es mit dem Schaber ein.',
  'fold.add.why': 'Säure beim Kochen hätte das Bonbon weich gemacht.',
  'fold.add.shout': 'EINFALTEN\nNUR WERKZEUG',
  'hands.measure.say': (v, p) => {
    if (v.middleCelsius === null)
      return `Miss den Kern der Masse und tipp ihn: middle ${p.thermometerUnit === 'F' ? '115f' : '46c'}.`;
    return v.againSeconds === null
      ? `Kern ${p.degrees(v.middleCelsius)}: noch zu heiß. Falte mit Werkzeug, miss in ein paar Minuten wieder.`
      : `Kern ${p.degrees(v.middleCelsius)}: noch zu heiß. Nur Werkzeug; miss ${v.againSeconds < 8 ? 'jetzt' : `in ${p.time(v.againSeconds)}`} wieder.`;
  },
  'hands.measure.why': (v, p) =>
    `Kühle Haut verbirgt einen heißen Kern. Nicht über ${p.degrees(v.limitCelsius)}: ${whoseHands[v.hands]}.`,
  'hands.measure.shout': 'KERN\nMESSEN',
  'hands.layer.say': 'Liegt es überall höchstens 1 cm dick, einen Finger hoch? yes (ja) oder no (nein).',
  'hands.layer.why': 'Ohne Thermometer sagt es nur die Zeit: 20 Minuten bei 1 cm, 45 bei mehr.',
  'hands.layer.shout': 'WIE DICK\nIST ES?',
  'hands.crumb.say': (v, p) =>
    v.waitSeconds > 0
      ? `Noch ${p.time(v.waitSeconds)} keine Hände. Falte mit Werkzeug.`
      : 'Schneid die dickste Stelle auf. Ein Erwachsener fasst einen Krümel aus dem Kern an: angenehm? yes oder no.',
  'hands.crumb.why': (_v) => 'Kühle Haut verbirgt einen heißen Kern.',
  'hands.crumb.shout': 'NOCH KEINE\nHÄNDE',
  'hands.pause.say': (_v) => 'Lies das laut vor, bevor Hände es berühren. Stimmt alles? Antworte yes (ja).',
  'hands.pause.why': (v, p) =>
    `Halt vor den Händen: Grenze ${p.degrees(v.limitCelsius)}, ${whoseHands[v.hands]}.`,
  'hands.pause.shout': 'LAUT LESEN\nVOR DEM ZIEHEN',
  'hands.pause.middle': (v, p) =>
    `Kern gemessen: ${p.degrees(v.celsius)}, Grenze ${p.degrees(v.limitCelsius)}.`,
  'hands.pause.crumb': 'Dickste Stelle aufgeschnitten, Krümel aus dem Kern von einem Erwachsenen angefasst.',
  'hands.pause.rings': 'Ringe und Uhr ab, Hände gewaschen.',
  'hands.pause.prepared': (v) =>
    v.whose === 'gloved'
      ? 'Baumwolle unter Nitrilhandschuhen bei allen, die ziehen.'
      : `${prepare[v.hands]}. Das hält Kleben ab; vor Hitze schützt es nicht.`,
  'hands.pause.bowl': 'Schüssel mit kühlem Wasser neben der Arbeit, nicht der Probebecher.',
  'hands.pause.scissors': 'Schere außer Reichweite bis zum Schneiden.',
  'hands.pause.children': 'Kinder bekommen ein kleines Stück von einem Erwachsenen, nie die Masse.',
  'hands.pause.eat':
    'Jeder isst nur, was er gezogen hat; Heruntergefallenes weg; für andere: Handschuhe oder Erwachsene.',

  // Pull.
  'pull.grease.say': (v) =>
    v.whose === 'gloved'
      ? 'Nimm ein Stück, groß wie ein Ei, in die Fingerspitzen der Handschuhe.'
      : `${prepare[v.hands]}, nimm ein Stück, groß wie ein Ei.`,
  'pull.grease.why': (v) =>
    v.portions > 1
      ? 'Eine Portion nach der anderen; die übrigen warm und zugedeckt halten.'
      : 'Kleine Stücke kühlen und hellen gleichmäßig. Zu heiß zum Halten: leg es hin.',
  'pull.grease.shout': 'EIN STÜCK\nNEHMEN',
  'pull.add.say': 'Gib das auf die Masse und zieh es ein.',
  'pull.add.why': 'Spät eingezogenes Aroma verkocht nicht.',
  'pull.add.shout': 'DAZU, DANN\nEINZIEHEN',
  'pull.stretch.say': (v) =>
    v.still
      ? 'Zieh weiter: es hängt noch durch. Lang und leicht, falten, wieder.'
      : 'Zieh es mit den Fingerspitzen lang, leg es doppelt, zieh wieder.',
  'pull.stretch.why': (_v) => 'Luft macht es hell und mürbe. In der Faust gepresst geht die Luft hinaus.',
  'pull.stretch.shout': 'ZIEHEN, FALTEN\nWIEDER ZIEHEN',
  'pull.next.cut': 'was gezogen ist, schneidet gleich ein anderer: es wird schnell hart',
  'pull.watch.grease': 'Kleben: etwas mehr auf die Finger, nie viel',
  'pull.droop.say': 'Halt einen Strang frei aus der Hand. Hält die Form: done. Hängt durch: weiterziehen.',
  'pull.droop.why': 'Was jetzt durchhängt, läuft im Papier flach.',
  'pull.droop.shout': 'HÄNGT ES\nDURCH?',
  'pull.stiff.say': 'Zieh noch einmal. Hell, seidig und zu zäh zum Weiterziehen: done.',
  'pull.stiff.why': 'Zu früh aufgehört klebt es; zu lang gezogen bricht es.',
  'pull.stiff.shout': 'STEIF?\nDANN FERTIG',
  'pull.softer.say': 'Die Arme sind am Ende: hör hier auf. Weicher, nicht misslungen.',
  'pull.softer.why': 'Es hängt noch etwas durch: schneid es klein, wickel es sofort ein.',
  'pull.softer.shout': 'HIER AUFHÖREN\nWEICH IST GUT',

  // Cut, wrap.
  'cut.rope.say': (v, p) =>
    `Roll Stränge von ${p.millimetres(v.ropeMillimetres)} Dicke, zusammen etwa ${p.metres(v.ropeMetres)}.`,
  'cut.rope.why': (_v) => 'Gleiche Stränge geben gleiche Stücke. Halt den Rest warm: er wird schnell hart.',
  'cut.rope.shout': 'STRÄNGE\nROLLEN',
  'cut.cut.say': (v, p) =>
    `Schneid alle ${p.millimetres(v.cutMillimetres)}: etwa ${p.count(v.pieces, 'Stück', 'Stück')}. Der Strang wandert, die Hand bleibt.`,
  'cut.cut.why': (_v) => 'Es ist erst weich und wird schnell hart: alles schneiden, bevor es spröde ist.',
  'cut.cut.shout': 'SCHNEIDEN\nERWACHSENE',
  'wrap.rest.say': (v) =>
    v.dust === 'none'
      ? 'Lass die Stücke getrennt ruhen, 10 bis 30 Minuten.'
      : `Bestäub die Stücke mit ${v.dust === 'starch' ? 'Stärke' : 'Puderzucker'}, lass sie getrennt ruhen, 10 bis 30 Minuten.`,
  'wrap.rest.why': (_v) => 'Warm eingewickelt schwitzen sie und kleben.',
  'wrap.rest.shout': 'RUHEN LASSEN\n10-30 MIN',
  'wrap.wrap.say': (v, p) =>
    `${v.damp ? 'Sofort einwickeln: die Luft ist feucht.' : 'Wickel jedes Stück ein und dreh die Enden.'} ${p.count(v.squares, 'Papier', 'Papiere')} für etwa ${p.count(v.pieces, 'Stück', 'Stück')}.`,
  'wrap.wrap.why': (v) =>
    v.damp
      ? 'Nacktes Bonbon zieht Wasser aus feuchter Luft und wird klebrig.'
      : 'Unverpackt zieht es Wasser aus der Luft und klebt.',
  'wrap.wrap.shout': 'JEDES\nEINWICKELN',
  'wrap.weigh.say': 'Wieg und zähl, wenn du magst: weigh 512g, count 63. Dann: done.',
  'wrap.weigh.why': 'Was der Ansatz gab, lehrt den nächsten Plan.',
  'wrap.weigh.shout': 'WIEGEN\nUND ZÄHLEN',
  'wrap.serve.say': (v, p) => `Bevor jemand isst, sag laut: ${allergenLine(v, p)}; es klebt.`,
  'wrap.serve.why': (_v) => 'Alle gehen mit einem Stück nach Hause und niemand mit einem Schaden.',
  'wrap.serve.shout': 'ALLERGENE\nDANN VERTEILEN',

  // Clean up.
  'clean.heat-off.say': 'Schalt die Hitze aus und tipp: heat off.',
  'clean.heat-off.why': 'Es wird nichts mehr gekocht.',
  'clean.heat-off.shout': 'HERD AUS',
  'clean.cool.say': (v, p) => {
    if (v.waitSeconds <= 0) return 'Ist der Topf außen rundum nur noch lauwarm? yes (ja) oder no (nein).';
    return v.thermometer
      ? `Lass den vollen Topf in Ruhe, kein Wasser hinein. Tipp eine Ablesung: unter ${p.degrees(v.belowCelsius)} geht es weiter. Ohne: ${p.time(v.waitSeconds)}.`
      : `Lass den vollen Topf in Ruhe, kein Wasser hinein, noch ${p.time(v.waitSeconds)}.`;
  },
  'clean.cool.why': (_v) => 'Wasser in heißem Sirup zerstiebt zu Dampf.',
  'clean.cool.shout': 'ABKÜHLEN\nLASSEN',
  'clean.pot.say': (v) =>
    v.full
      ? 'Füll mit heißem Wasser auf, erwärm es sanft, bis alles gelöst ist. Dann gieß es weg.'
      : 'Füll den Topf mit heißem Wasser, koch es auf, lass es einweichen.',
  'clean.pot.why': (_v) => 'Heißes Wasser löst alles; Abschlagen verdirbt den Topf und fliegt umher.',
  'clean.pot.shout': 'EINWEICHEN\nHEISSES WASSER',
  'clean.tools.say': 'Schaber, Schere, Platte und Boden: heißes Wasser, trocken wischen.',
  'clean.tools.why': 'Zucker auf dem Boden ist erst glatt, dann klebrig.',
  'clean.tools.shout': 'WERKZEUG UND\nBODEN PUTZEN',
  'clean.hob.say': 'Herd aus und kalt? Wisch ihn ab.',
  'clean.hob.why': (v) =>
    v.stove === 'glass-ceramic'
      ? 'Glas bleibt lange heiß; Zucker, der darauf erkaltet, kann Löcher reißen.'
      : 'Die Kochstelle verbrennt noch Minuten nach dem Ausschalten.',
  'clean.hob.shout': 'HERD AUS UND\nKALT?',
  'over.end.say': (v, p) =>
    v.stopped
      ? 'Der Ansatz wurde aufgegeben. Topf, Herd und Werkzeug sind fertig.'
      : `Fertig: ${p.count(v.counted ?? v.pieces, 'Stück', 'Stück')}. Gut gekocht.`,
  'over.end.why': (v) =>
    v.stopped
      ? 'Das Protokoll behält, was geschah, fürs nächste Mal.'
      : 'Trocken, kühl und verschlossen aufheben: zwei bis drei Wochen.',
  'over.end.shout': 'ALLES FERTIG',

  // Troubles and questions beside the steps.
  'trouble.why': (v) => {
    const does = deHazards[`hazard.${v.name}.does`];
    const cause = deHazards[`hazard.${v.name}.cause`];
    return does === '' ? `${cause}.` : `${cause}: ${does}.`;
  },
  'trouble.more.shout': 'ALS NÄCHSTES',
  'trouble.glass.ask': 'Ist Glas im Topf oder in der Nähe? yes (ja) oder no (nein).',
  'gap.look.say': (v) =>
    v.thermometer && !v.read
      ? 'Schau nach dem Topf, dann lies das Thermometer ab. Erst dann weiter.'
      : 'Schau nach dem Topf und sag, wo er ist. Erst dann weiter.',
  'gap.look.why': (v, p) => {
    const unheard = 'in denen hier nichts zu hören war';
    const byTheWall =
      v.seconds < 60
        ? 'keine Uhr sagt, wie lange hier nichts zu hören war'
        : `nach der Wanduhr vergingen ${p.time(v.seconds)}, ${unheard}`;
    const passed = v.sure ? `es vergingen ${p.time(v.seconds)}, ${unheard}` : byTheWall;
    return v.on
      ? `${sentence(passed)} Es kann die ganze Zeit gekocht haben. Dunkel oder Rauch: Herd aus, Deckel drauf, stehen lassen.`
      : `${sentence(passed)} Im Topf fest gewordener Sirup: water 60ml, und wieder aufkochen.`;
  },
  'gap.look.shout': 'NACH DEM TOPF\nSEHEN',
  'gap.ask':
    'Was ist jetzt wahr? pot on (auf dem Herd), pot off (daneben), at fold (gegossen) oder stop (aufgegeben).',
  'unsettled.ask': (v) =>
    ({
      heat: 'Das wurde zurückgenommen. Wie steht die Hitze jetzt?',
      pot: 'Das wurde zurückgenommen. Ist der Topf jetzt auf dem Herd oder daneben?',
      lid: 'Das wurde zurückgenommen. Ist der Deckel jetzt drauf oder ab?',
      pour: 'Das wurde zurückgenommen. Wo ist der Sirup jetzt: im Topf oder auf der Platte?',
    })[v.what] ?? 'Das wurde zurückgenommen. Was ist jetzt wahr?',
  'reading.doubt.ask': (v, p) => {
    const read = v.of === 'middle' ? `Kern ${p.degrees(v.celsius)}` : p.dial(v.celsius);
    const last = v.lastCelsius === null ? '' : ` nach ${p.dialNumber(v.lastCelsius)}`;
    const other = p.thermometerUnit === 'F' ? 'c' : 'f';
    const reasons: Readonly<Record<string, string>> = {
      'out of range': `${read} kann weder Sirup noch Bonbon haben.`,
      'too hot so soon': `${read} bei der ersten Ablesung ist heißer, als es jetzt sein sollte.`,
      jump: `${read}${last}: schneller, als ein Herd heizt.`,
      fall: `${read}${last}: schneller, als ein Topf auf dem Herd abkühlt.`,
      'too cold to boil': `${read} ist zu kalt für kochenden Sirup.`,
      'colder than the room': `${read} ist kälter als der Raum.`,
      'other scale': `${read}${last}? Auf der anderen Skala passte es: tipp es noch einmal mit "${other}" dahinter.`,
    };
    return `${reasons[v.because] ?? read} Stimmt es? yes (ja), oder no (nein) und neu ablesen.`;
  },

  'reading.means': (v, p) => {
    const stage =
      v.stage === null
        ? 'kocht noch nicht'
        : v.stage === 'dissolves'
          ? 'kocht, dünner Sirup'
          : stageWord(v.stage);
    const togo =
      v.pastKelvin > 0
        ? `${p.rise(v.pastKelvin)} über dem Zielbereich`
        : v.toGoKelvin > 0
          ? `noch ${p.rise(v.toGoKelvin)}`
          : 'Zeit, ihn vom Herd zu nehmen';
    const rate =
      v.kelvinPerSecond !== null && v.kelvinPerSecond > 0.002 ? [`steigt ${p.rate(v.kelvinPerSecond)}`] : [];
    const left = v.seconds !== null && v.seconds.typical > 0 ? [`${p.about(v.seconds)} bis zum Ziel`] : [];
    const next = v.nextSeconds === null ? [] : [readAgain(v.nextSeconds, p)];
    return `${p.dial(v.celsius)}: ${[stage, togo, ...rate, ...left, ...next].join(', ')}.`;
  },

  // Timers.
  'timer.dissolving': 'Lösen',
  'timer.lid': 'Deckel kommt ab',
  'timer.test-due': 'nächste Probe',
  'timer.off-the-ring': 'neben dem Herd',
  'timer.first-fold': 'erstes Falten',
  'timer.emptied-pot': 'kein Wasser in den Topf',
  'timer.next-fold': 'nächstes Falten',
  'timer.cooling': 'kühlt seit dem Guss',
  'timer.not-before': 'Hände nicht vorher',
  'timer.droop-test': 'Strang halten',
  'timer.regrease': 'Finger neu fetten',
  'timer.rest': 'ruhen vor dem Wickeln',
  'timer.full-pot': 'voller Topf bleibt',
  'timer.trouble.burn': 'unter kühlem Wasser',
} as const satisfies Translated<typeof cookTexts>;
