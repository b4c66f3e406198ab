import { escapeForTerminal } from '../../units/escape.js';
import { countedAmount, householdAmount, ounces, quarts } from '../../units/household.js';
import type { Printer } from '../../units/printer.js';
import type { handoutTexts } from '../en/handout.js';
import { bothDegrees, bothLengths, bothSpans, scaleGrams } from '../en/handout-amounts.js';
import { own } from '../quoted.js';
import type { Translated } from '../texts.js';
import { deLabels } from './labels.js';
import { deLearned } from './learned.js';
import { allergenWord, comma, ingredientWord, stageWord } from './words.js';

type Stage = Parameters<(typeof handoutTexts)['handout.drop']>[0]['stage'];

const names = (items: readonly string[], p: Printer): string =>
  p.list(items.map((item) => own(ingredientWord(item))));
const allergens = (items: readonly string[], p: Printer): string =>
  p.list(items.map((item) => own(allergenWord(item))));

const onHands = {
  butter: 'Reib etwas Butter auf saubere Hände.',
  oil: 'Reib etwas Öl auf saubere Hände.',
  starch: 'Bestäub saubere, trockene Hände mit Stärke.',
  dry: 'Halt die Hände sauber und trocken.',
} as const;
const onTray = {
  butter: 'ein Blech, mit Butter eingerieben',
  oil: 'ein Blech, mit Öl eingerieben',
  starch: 'ein Blech, mit Stärke bestäubt',
  dry: 'eine saubere, trockene Platte aus Stein oder Stahl',
} as const;

/** What a drop of syrup does in cold water, in plain words. */
const drops: Readonly<Record<Stage, string>> = {
  dissolves: 'Er löst sich im Wasser auf.',
  thread: 'Er gibt weiche Fäden und keine Kugel.',
  'soft ball': 'Er gibt eine weiche Kugel. Herausgehoben läuft sie flach.',
  'firm ball': 'Er gibt eine Kugel, die rund bleibt, aber du kannst sie platt drücken.',
  'hard ball': 'Er gibt eine harte Kugel. Eindrücken kannst du sie noch.',
  'soft crack': 'Er gibt Fäden, die sich etwas biegen und dann brechen.',
  'hard crack': 'Er gibt Fäden, die sofort brechen.',
};

/** The page for the audience: short words and short sentences, both systems of units in every sentence. */
export const deHandout = {
  ...deLearned,
  ...deLabels,
  'handout.own': ({ text }) => own(ingredientWord(text)),
  'handout.title': ({ name }) => `${own(name)}: selbst gemacht`,
  'handout.defer':
    'Wer die Aufsicht hat, die örtlichen Regeln für Küchen und Kinder, das Lebensmittelrecht und ausgebildete Erste Hilfe gehen allem auf dieser Seite vor.',
  'handout.who':
    'Ein Erwachsener kocht und gießt den heißen Sirup. Kinder können wiegen, ziehen und einwickeln.',

  'handout.heading.amounts': 'Was hineinkommt',
  'handout.column.item': 'Zutat',
  'handout.column.metric': 'Gramm, ml',
  'handout.column.household': 'Tassen und Löffel (US)',
  'handout.column.when': 'Wann',
  'handout.metric': ({ grams, millilitres, written, isWater }) => {
    const few = countedAmount(written ?? '', 'de');
    if (few !== null) return own(few);
    return isWater && millilitres !== null ? `${Math.round(millilitres)} ml` : comma(scaleGrams(grams));
  },
  'handout.household': (amount) => own(comma(householdAmount(amount, 'de'))),
  'handout.when.mix': 'am Anfang',
  'handout.when.boil': 'beim Kochen',
  'handout.when.flavour': 'neben dem Herd',
  'handout.when.fold': 'beim Falten',
  'handout.when.pull': 'beim Ziehen',
  'handout.makes': ({ pieces, grams }, p) =>
    `Es gibt etwa ${p.count(pieces, 'Stück', 'Stück')}. Jedes wiegt ${comma(scaleGrams(grams))} (${comma(ounces(grams))}). Wieg ab, wenn du kannst, denn keine zwei Tassen sind gleich.`,

  'handout.heading.kit': 'Was du sonst brauchst',
  'handout.kit.pot': ({ litres }) =>
    `einen schweren Topf für ${comma(Math.ceil(litres * 2) / 2)} Liter (${quarts(litres, 'de')}) oder mehr, und einen Deckel, der passt`,
  'handout.kit.hot': 'ein Zuckerthermometer, trockene Topfhandschuhe und einen Holzlöffel',
  'handout.kit.tray': ({ surface }) => `${onTray[surface]}, und einen Schaber`,
  'handout.kit.test': 'Becher mit kaltem Wasser und einen Metalllöffel, für die Probe',
  'handout.kit.wrap': ({ squares }) =>
    `eine Schere, und etwa ${Math.ceil(squares / 10) * 10} Stücke Wachspapier`,

  'handout.heading.hot': 'Wie heiß',
  'handout.hot.target': ({ low, high, feels }) =>
    `Koch es auf ${bothSpans(low, high)}. Ein Tropfen in kaltem Wasser ist dann so weit: ${stageWord(feels)}.`,
  'handout.hot.check':
    'Prüf zuerst dein Thermometer. Halt es in kochendes Wasser. Am Meer soll es 100 °C (212 °F) zeigen.',
  'handout.hot.shift':
    'Zeigt es 4 Grad weniger? Dann hör 4 Grad früher auf. Zeigt es 2 mehr? Dann hör 2 später auf. Das stimmt für eine Küche auf einem Berg. Es stimmt auch für ein Thermometer, das falsch geht.',
  'handout.hot.early': ({ kelvin }) => {
    const halves = Math.max(1, Math.round(kelvin * 2)) / 2;
    return `Nimm den Topf etwa ${comma(halves)} °C (${Math.max(1, Math.round(kelvin * 1.8))} °F) früher vom Herd. Die Hitze des Topfs kocht es noch kurz weiter.`;
  },

  'handout.heading.steps': 'Schritt für Schritt',
  'handout.step.start':
    'Wasch dir 20 Sekunden die Hände. Bind lange Haare zurück. Mach Blech und Becher bereit.',
  'handout.step.mix': ({ items, starch }, p) =>
    `Gib das in den kalten Topf: ${names(items, p)}.${starch ? ' Misch zuerst Stärke und trockenen Zucker, damit es nicht klumpt.' : ''} Rühr gut um.`,
  'handout.step.dissolve':
    'Erhitz es auf mittlerer Stufe und rühr langsam. Reib einen Tropfen zwischen zwei Löffeln. Knirscht es noch? Dann rühr weiter. Kochen darf es noch nicht.',
  'handout.step.wall.lid':
    'Wenn es kocht, leg den Deckel darauf, 2 Minuten lang. Der Dampf wäscht die Topfwand. Dann heb den Deckel vom Gesicht weg ab.',
  'handout.step.wall.brush': 'Wenn es kocht, wasch die Topfwand mit einem nassen Pinsel. Trag lange Ärmel.',
  'handout.step.wall.none-late-stir':
    'Streif die Wand ab, solange sie kühl ist. Nimm keinen Deckel: es würde überschäumen.',
  'handout.step.still':
    'Lass es jetzt kochen und rühr nicht. Ein Zuckerkorn kann den ganzen Topf körnig machen. Geh nie vom Topf weg.',
  'handout.step.stir':
    'Lass es kochen. Rühr sanft, gegen Ende mehr, denn das hier brennt leicht an. Geh nie vom Topf weg.',
  'handout.step.boil': ({ items }, p) =>
    `Rühr beim Kochen das ein: ${names(items, p)}. Gib es nach und nach dazu, Gesicht weg. Es schäumt und dampft.`,
  'handout.step.slow':
    'Schalt für die letzten Grade kleiner. Dann nimm den Topf vom Herd und prüf einen Tropfen.',
  'handout.step.flavour': ({ items, alcohol }, p) =>
    `Lass den Topf neben dem Herd. Warte, bis die Blasen sinken. Dann rühr das ein, Gesicht weg: ${names(items, p)}.${alcohol ? ' Keine Flamme in der Nähe: es kann sich entzünden.' : ''}`,
  'handout.step.pour': ({ scrape }) =>
    `Der Erwachsene gießt es auf das Blech, tief und langsam. Alle anderen treten zurück. ${scrape ? 'Kratz den Topf mit einem Löffel aus.' : 'Kratz den Topf nicht aus.'}`,
  'handout.step.fold':
    'Lass es liegen, bis der Rand fest ist. Dann falte den Rand mit dem Schaber zur Mitte. Tu das zwei- oder dreimal.',
  'handout.step.fold-add': ({ items }, p) => `Falte das ein: ${names(items, p)}.`,
  'handout.step.wait': ({ child, adult }) =>
    `Der Kern bleibt heiß, wenn sich die Haut schon kühl anfühlt. Steck das Thermometer in den Kern. Warte auf ${bothDegrees(adult)} oder weniger, und für Kinder auf ${bothDegrees(child)} oder weniger.`,
  'handout.step.pull': ({ hands }) =>
    `${onHands[hands]} Zieh das Bonbon lang, leg es doppelt und zieh wieder. Nimm die Fingerspitzen. In etwa 10 Minuten ist es hell und schwer zu ziehen.`,
  'handout.step.pull-add': ({ items }, p) => `Arbeite beim Ziehen das ein: ${names(items, p)}.`,
  'handout.step.cut': ({ ropeMillimetres, cutMillimetres }) =>
    `Roll einen Strang, so dick: ${bothLengths(ropeMillimetres)}. Der Erwachsene schneidet Stücke von ${bothLengths(cutMillimetres)}. Halt die Klingen von der Hand weg, die den Strang hält.`,
  'handout.step.wrap': ({ dust }) =>
    `${dust === 'none' ? '' : `Bestäub die Stücke mit ${dust === 'starch' ? 'Stärke' : 'Puderzucker'}. `}Lass es eine halbe Stunde ruhen. Dann wickel jedes Stück in Papier und dreh die Enden.`,

  'handout.heading.test': 'Die Wasserprobe',
  'handout.test.how':
    'Nimm zuerst den Topf vom Herd. Füll einen Becher mit frischem kaltem Wasser, ohne Eis. Lass einen halben Löffel Sirup hineinfallen. Warte 10 Sekunden. Dann fühlt ihn der Erwachsene unter dem Wasser. Nimm jedes Mal einen neuen Becher.',
  'handout.test.short':
    'Ist er zu weich? Koch etwas weiter und prüf noch einmal. Ist er zu hart? Gieß es aus und nenn es Hartbonbon.',
  'handout.column.stage': 'Stufe',
  'handout.column.celsius': '°C',
  'handout.column.fahrenheit': '°F',
  'handout.column.drop': 'Was der Tropfen tut',
  'handout.stage': ({ stage, aim }) => (aim ? `${stageWord(stage)} (hier hörst du auf)` : stageWord(stage)),
  'handout.span': ({ low, high }) => `${Math.round(low)}-${Math.round(high)}`,
  'handout.drop': ({ stage }) => drops[stage],
  'handout.stages.foot':
    'Diese Zahlen gelten für eine Küche am Meer. Verschieb sie so, wie du dein Ziel verschiebst.',

  'handout.heading.care': 'Gib acht',
  'handout.care.stick':
    'Heißer Sirup ist heißer als kochendes Wasser, und er klebt. Ein Erwachsener bleibt die ganze Zeit am Topf.',
  'handout.care.children':
    'Halt Kinder und Tiere einen großen Schritt (1 m, 3 ft) weg vom Herd und vom Weg zum Blech.',
  'handout.care.touch':
    'Fass heißen Sirup nie an und koste ihn nie. Gib nie Wasser hinein, um ihn zu kühlen.',
  'handout.care.foam': 'Steigt er? Schalt kleiner und schieb den Topf vom Herd.',
  'handout.care.fire':
    'Brennt er mit Flamme? Schieb den Deckel darüber und schalt die Hitze aus. Nimm kein Wasser. Beweg den Topf nicht. Ist es nicht gleich aus? Alle gehen hinaus. Ruf Hilfe.',
  'handout.care.floor': 'Wisch Fett und Tropfen auf, damit niemand ausrutscht.',

  'handout.heading.aid': 'Heißer Zucker auf der Haut',
  'handout.aid.water':
    'Halt die Stelle jetzt unter kühles fließendes Wasser, 20 Minuten lang. Jemand anderes schaltet die Hitze aus.',
  'handout.aid.rings':
    'Nimm Ringe, Uhr und Ärmel unter dem Wasser ab. Lass daran, was klebt. Das Wasser löst den Zucker.',
  'handout.aid.warm': 'Halt die Person warm.',
  'handout.aid.cover':
    'Dann leg Frischhaltefolie oder ein sauberes Tuch darauf, nicht fest. Kein Eis, keine Butter, kein Öl und keine Salbe.',
  'handout.aid.call':
    'Hol Hilfe (112) für ein Kind, für eine Verbrennung an Gesicht, Hand, Gelenk oder Intimbereich, für eine, die größer ist als die Handfläche oder weiß oder wie Leder aussieht. Hol Hilfe, wenn du nicht sicher bist.',
  'handout.aid.source': 'Quelle: Erste-Hilfe-Rat der British Burn Association.',

  'handout.heading.allergens': 'Wer es nicht essen darf',
  'handout.allergens.contains': ({ items }, p) =>
    `Darin ist: ${allergens(items, p)}. Das zählt auch, was an Händen und Blech ist.`,
  'handout.allergens.check': ({ items }, p) =>
    `Lies die Etiketten von dem, was du kaufst. Darin kann sein: ${allergens(items, p)}.`,
  'handout.allergens.unknown':
    'Für manche Zutaten ist das hier nicht bekannt. Lies jedes Etikett, bevor du es teilst.',
  'handout.allergens.none': 'Keines der verbreiteten ist darin bekannt. Lies trotzdem die Etiketten.',
  'handout.allergens.young':
    'Gib Kindern unter vier keines: es klebt, und sie können daran ersticken. Setz dich zum Essen. Es kann an Zahnspangen und lockeren Zähnen ziehen.',

  'handout.heading.keep': 'Wie du es aufhebst',
  'handout.keep':
    'Heb es eingewickelt in einer geschlossenen Dose auf, kühl und trocken. Es hält zwei bis drei Wochen. In feuchter Luft wird es klebrig.',

  'handout.heading.clean': 'Wie du den Topf putzt',
  'handout.clean':
    'Lass den Topf drei Minuten stehen. Dann gieß heißes Wasser aus der Leitung hinein, an der Wand entlang, Gesicht weg. Nimm nie kaltes Wasser. Lass es stehen: der Zucker löst sich von selbst. Schlag nichts ab.',

  'handout.heading.words': 'Von dem, der es gezeigt hat',
  'handout.words.box': 'Platz für eigene Notizen:',
  'handout.foot':
    'Mengen und Zahlen hat das Programm kettlehand ausgerechnet. Stufen: Better Homes and Gardens; Colorado State University Extension; McGee, On Food and Cooking (2004).',
  'handout.bad.format': '--html und --markdown sind zwei Formen einer Seite. Behalt eine davon.',
  'handout.bad.have': ({ found, example }) =>
    `"${escapeForTerminal(found)}" sagt nicht, was zu Hause da ist. Tipp eine Zutat und eine Menge: --have ${escapeForTerminal(example)}=300g.`,
  'handout.bad.have-item': ({ found, several, allowed }, p) =>
    several
      ? `"${escapeForTerminal(found)}" kann hier mehr als eines sein: ${p.list(allowed.map(escapeForTerminal))}. Nenn eines davon.`
      : `"${escapeForTerminal(found)}" kommt nicht in dieses Rezept. Hinein ${allowed.length === 1 ? 'kommt' : 'kommen'} ${p.list(allowed.map(escapeForTerminal))}.`,
  'handout.bad.have-weight': ({ found, item }) =>
    `"${escapeForTerminal(found)}" sagt nicht, wie viel das ist. Gib ein Gewicht an: --have ${escapeForTerminal(item)}=100g.`,
} as const satisfies Translated<typeof handoutTexts>;
