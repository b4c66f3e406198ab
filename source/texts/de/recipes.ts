import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import type {
  fileTexts,
  recipeNoteTexts,
  recipeProblemTexts,
  shelfTexts,
  substitutionTexts,
} from '../en/recipes.js';
import { quoted } from '../quoted.js';
import type { Translated } from '../texts.js';
import {
  allergenWord,
  amountIn,
  comma,
  ingredientWord,
  phaseWord,
  stageAndTyped,
  stageWord,
} from './words.js';

const oneOf = (allowed: readonly string[]): string =>
  allowed.length < 2 ? allowed.join('') : `${allowed.slice(0, -1).join(', ')} oder ${allowed.at(-1)}`;
export const suggestion = (nearest: string | null): string =>
  nearest === null ? '' : ` Meintest du ${nearest}?`;
const span = (low: number, high: number, unit: string): string =>
  `${low} bis ${high}${unit === '' ? '' : ` ${unit}`}`;
const named = (items: readonly string[], printer: Printer): string =>
  printer.list(items.map((item) => escapeForTerminal(ingredientWord(item))));

/** What is wrong with a recipe or kitchen file, before it is understood as either. */
export const deFiles = {
  'yaml.place': ({ file, line, field }) =>
    `${escapeForTerminal(file)}:${line}: ${field === '' ? '' : `${escapeForTerminal(field)}: `}`,
  'yaml.too-long': ({ longest }) =>
    `Diese Datei ist länger als ${Math.round(longest / 1024)} kB, das braucht kein Rezept und keine Küche. Prüf, ob es die richtige ist.`,
  'yaml.too-deep':
    'Das ist tiefer verschachtelt als jedes Rezept und jede Küche. Prüf Klammern und Einrückung.',
  'yaml.empty': 'Hier sind keine Felder. Beginn mit einer Zeile wie "kettlehand: 1", dann "name: ...".',
  'yaml.not-yaml':
    'So ist das kein YAML. Sieh diese Zeile und die darüber an: ein Doppelpunkt, Anführungszeichen oder eine Klammer steht falsch.',
  'yaml.duplicate-key': 'Dieses Feld steht zweimal da. Behalt eines davon.',
  'yaml.tab': 'Diese Zeile ist mit einem Tabulator eingerückt. Nimm Leerzeichen.',
  'yaml.indent':
    'Diese Zeile ist anders eingerückt als ihre Nachbarn, oder eine Klammer darüber ist nicht geschlossen. Rück sie mit Leerzeichen gleich ein, oder schließ die Klammer.',
  'yaml.no-colon':
    'Ein Feld braucht hier einen Doppelpunkt und ein Leerzeichen hinter dem Namen: "name: Wert".',
  'yaml.two-colons':
    'Hier beginnt ein Feld mitten in einem anderen. Setz Text mit Doppelpunkt in Anführungszeichen, und rück die Felder gleich ein.',
  'yaml.needs-quotes':
    'Das beginnt mit einem Zeichen, das YAML für sich behält. Setz den Text in Anführungszeichen.',
  'yaml.tag': 'Eine Marke ("!name") wird in diesen Dateien nicht gelesen. Entfern sie.',
  'yaml.unclosed':
    'Hier wird eine Klammer oder ein Anführungszeichen geöffnet und nicht geschlossen. Schließ es.',
  'yaml.several-documents':
    'Hier beginnt ein zweites Dokument ("---"). Lass ein Rezept oder eine Küche in einer Datei.',
  'yaml.alias':
    'Ein Verweis ("&name" oder "*name") wird in diesen Dateien nicht gelesen. Schreib es aus, oder setz den Text in Anführungszeichen.',
  'yaml.unknown-key': ({ found, nearest, allowed }) =>
    `${quoted(found)} ist hier kein Feld.${suggestion(nearest)} Felder: ${allowed.join(', ')}.`,
  'yaml.comma': ({ found }) =>
    `${quoted(found)} steht hinter einem Komma, und zwischen geschweiften Klammern beginnt ein Komma ein neues Feld. Schreib einen Punkt, wie in 17.5, oder setz das Ganze in Anführungszeichen.`,
  'yaml.not-a-map': ({ found, allowed }) =>
    `${quoted(found)} steht hier, und hierher gehören Felder${allowed.length === 0 ? '' : `: ${oneOf(allowed)}`}. Schreib "Feld: Wert", eines pro Zeile oder zwischen geschweiften Klammern.`,
  'yaml.not-a-list': ({ found }) =>
    `${quoted(found)} steht hier, und hierher gehört eine Liste. Beginn jede Zeile mit "- ", oder schreib [eins, zwei].`,
  'yaml.list-too-long': ({ found, longest }) =>
    `${found} sind aufgezählt; höchstens ${longest} werden gelesen. Kürz die Liste.`,
  'yaml.not-a-text': ({ found }) =>
    `${quoted(found)} steht hier, und hierher gehören Wörter. Setz sie in Anführungszeichen.`,
  'yaml.text-too-long': ({ found, longest }) =>
    `Das hat ${found} Zeichen; höchstens ${longest} lassen sich zeigen. Kürz es.`,
  'yaml.number': ({ found, low, high, unit }) =>
    `${quoted(found)} passt nicht. Schreib eine einfache Zahl von ${span(low, high, unit)}.`,
  'yaml.choice': ({ found, nearest, allowed }) =>
    `${quoted(found)} ist hier nicht bekannt.${suggestion(nearest)} Schreib ${oneOf(allowed)}.`,
  'yaml.missing': 'Das fehlt. Ergänz es.',
  'yaml.no-version': ({ key }) => `Die Version des Formats fehlt. Setz die Zeile "${key}: 1" an den Anfang.`,
  'yaml.newer': ({ found }) =>
    `Diese Datei ist für Version ${escapeForTerminal(found)} des Formats, von einem neueren kettlehand; dieses liest Version 1. Bring kettlehand auf den neuen Stand.`,
  'yaml.wrong-version': ({ key, found }) =>
    `${quoted(found)} ist keine Version des Formats. Schreib "${key}: 1".`,
} as const satisfies Translated<typeof fileTexts>;

/** What is wrong with a recipe. */
export const deRecipeProblems = {
  'recipe.value': (v) =>
    `${v.field} passt nicht zu dem, was das Programm dort erwartet (${v.code}). Vergleich mit einem mitgelieferten: kettlehand recipes show mint-pull.`,
  'recipe.kitchen-file': 'Das ist eine Küchendatei. Nenn hier ein Rezept, und diese Datei mit --kitchen.',
  'recipe.unknown-item': ({ found, nearest }) =>
    `${quoted(found)} steht nicht in der Zutatentabelle.${suggestion(nearest)} Zeig sie mit: kettlehand recipes items. Oder beschreib es unter "declared".`,
  'recipe.item-is-known': ({ found }) =>
    `${quoted(found)} steht schon in der Zutatentabelle. Gib deiner einen anderen Namen.`,
  'recipe.item-name': ({ found }) =>
    `${quoted(found)} kann kein Name einer Zutat sein. Nimm kleine Buchstaben, Ziffern und Bindestriche, zum Beispiel malt-extract.`,
  'recipe.not-declared-here': ({ found }) =>
    `Hier wird nur eine eigene Zutat beschrieben, und ${quoted(found)} steht in der Zutatentabelle. Entfern das, oder gib ihr einen anderen Namen.`,
  'recipe.no-de': ({ item }) =>
    `${escapeForTerminal(item)} hat keine Glukose-Trockenmasse, also keinen DE. Entfern dieses Feld.`,
  'recipe.needs-de':
    'Glukose-Trockenmasse ist genannt, also braucht es ihren DE. Ergänz "de: 42" oder was auf dem Eimer steht.',
  'recipe.composition-sum': ({ percent }) =>
    `Diese Anteile ergeben ${percent} %. Mach 100 % daraus: Bruchteile wie 0.8, und "other" für den Rest.`,
  'recipe.needs-density': ({ item }) =>
    `Wie viel ein Löffel oder eine Tasse ${escapeForTerminal(item)} wiegt, ist nicht bekannt. Schreib Gramm, oder ergänz "density" (kg pro Liter), wo sie beschrieben ist.`,
  'recipe.needs-drop': ({ item }) =>
    `${escapeForTerminal(item)} wird nicht in Tropfen gezählt. Schreib Gramm oder einen Löffel.`,
  'recipe.needs-piece': ({ item }) =>
    `Wie viel ein Stück ${escapeForTerminal(item)} wiegt, ist nicht bekannt. Schreib Gramm.`,
  'recipe.absurd-amount': ({ found, grams, most }, printer) =>
    `${quoted(found)} sind ${printer.grams(grams)}; höchstens ${printer.grams(most)} einer Zutat passen in einen Ansatz zu Hause. Prüf Zahl und Einheit.`,
  'recipe.too-small': ({ grams, least }, printer) =>
    `Alle Zutaten zusammen sind ${printer.grams(grams)}. Mindestens ${printer.grams(least)} braucht es, um ein Thermometer zu bedecken. Prüf die Mengen.`,
  'recipe.no-sugar': 'Hier ist kein Zucker. Ergänz granulated-sugar, einen Sirup, Honig oder Melasse.',
  'recipe.target-both': 'Das Ziel steht in Celsius und in Fahrenheit da. Behalt eines davon.',
  'recipe.target-pair': ({ found }) =>
    `${quoted(found)} ist kein Bereich. Schreib zwei Zahlen, die kleinere zuerst: [123, 126].`,
  'recipe.target-fahrenheit': ({ found, celsius }) =>
    `${found} sieht nach Fahrenheit aus. Schreib celsius: [${celsius[0]}, ${celsius[1]}], oder "fahrenheit" statt "celsius".`,
  'recipe.target-range': ({ found, low, high, unit }) =>
    `${found} ${unit} liegt außerhalb dessen, worauf man Ziehbonbon kocht. Schreib ${low} bis ${high} ${unit}.`,
  'recipe.target-order': ({ low, high }) =>
    `Der Bereich läuft von ${low} hinunter auf ${high}. Schreib die kleinere Zahl zuerst.`,
  'recipe.stir': ({ found }) =>
    `${quoted(found)} ist hier nicht bekannt. Schreib { until: boil }, oder { late: true } für Melasse, Honig, Milch oder Sahne.`,
  'recipe.stir-both':
    'Hier steht beides: bis zum Kochen rühren und spät rühren. Lass eines: { until: boil }, oder { late: true } für Melasse, Honig, Milch oder Sahne.',
  'recipe.cue-phase': ({ found, nearest, allowed }) =>
    `${quoted(found)} ist keine Phase.${suggestion(nearest)} Phasen: ${allowed.join(', ')}.`,
} as const satisfies Translated<typeof recipeProblemTexts>;

/** What a recipe is remarked on for; it can be cooked all the same. */
export const deRecipeNotes = {
  'recipe.note.de-assumed': ({ item }) =>
    `Der DE von ${escapeForTerminal(ingredientWord(item))} ist nicht angegeben, also wird 42 genommen. Er steht auf dem Eimer: ergänz "de:".`,
  'recipe.note.no-doctor':
    'Nichts hält diesen Zucker davon ab, körnig zu werden: kein Sirup, Honig, keine Melasse, keine Säure. Er wird Cremebonbon. Gib Glukosesirup dazu, ein Drittel des Zuckers oder mehr, wenn das nicht gewollt ist.',
  'recipe.note.little-doctor': ({ ratio }) =>
    `Auf 100 g Zucker kommen nur ${Math.round(ratio * 100)} g Sirup-Trockenmasse: er kann körnig werden. Unter etwa 20 g ist wenig; 33 bis 100 g sind üblich.`,
  'recipe.note.much-doctor': ({ ratio }) =>
    `Auf 100 g Zucker kommen ${Math.round(ratio * 100)} g Sirup-Trockenmasse: weich, und klebrig in feuchtem Raum. 33 bis 100 g sind üblich.`,
  'recipe.note.much-acid': ({ acid }) =>
    `So viel ${ingredientWord(acid.replaceAll('-', ' '))} spaltet beim Kochen viel vom Zucker: weich und klebrig. Wie viel, hängt von den Kochminuten ab.`,
  'recipe.note.stir-late': ({ items }, printer) =>
    `${named(items, printer)}: das setzt an und verbrennt, wenn am Ende des Kochens niemand rührt. Schreib stir: { late: true }.`,
  'recipe.note.stir-clear':
    'Das ist ein klarer Sirup, und spätes Rühren macht ihn körnig. Schreib stir: { until: boil }, wenn das nicht gewollt ist.',
  'recipe.note.little-water': ({ grams, needed }, printer) =>
    `${printer.grams(grams)} Wasser sind wenig, um diesen Zucker vor dem Kochen zu lösen. Mit etwa ${printer.grams(needed)} geht es sicher; das Kochen treibt es wieder aus.`,
  'recipe.note.alcohol-early': ({ items }, printer) =>
    `${named(items, printer)} auf Alkohol ${items.length === 1 ? 'verkocht in heißem Sirup, und der Dampf brennt. Gib es' : 'verkochen in heißem Sirup, und ihr Dampf brennt. Gib sie'} bei phase: flavour dazu, neben dem Herd, weg von Flamme und Platte.`,
  'recipe.note.flavour-early': ({ items }, printer) =>
    `${named(items, printer)} ${items.length === 1 ? 'verkocht mit dem Dampf. Gib es' : 'verkochen mit dem Dampf. Gib sie'} bei phase: flavour dazu, oder beim Falten.`,
  'recipe.note.soda-early': 'Natron schäumt. Gib es bei phase: flavour dazu, neben dem Herd, nach und nach.',
  'recipe.note.feels': ({ feels, stage }) =>
    `Die Zieltemperatur ist ${stageAndTyped(stage)}, und als Wasserprobe steht da: ${stageAndTyped(feels)}. Eines von beiden stimmt nicht; was die Finger in kaltem Wasser fühlen, gilt.`,
  'recipe.note.hot-target':
    'Über 150 °C ist Zucker in einem Ziehbonbon nahe am Verbrennen. Achte auf Farbe und Geruch, und nimm ihn früh vom Herd.',
  'recipe.note.allergens-unknown': ({ items }, printer) =>
    `Die Allergene von ${named(items, printer)} sind nicht bekannt. Lies die Flasche und schreib, was darauf steht: allergens: { contains: [], check: [] }.`,
  'recipe.note.glycerine':
    'Glycerin hält das Bonbon weich; wie es Wasser bindet, steckt nicht in den Zahlen für Feuchte und Festigkeit.',
} as const satisfies Translated<typeof recipeNoteTexts>;

/** Words about a change of doctor. */
export const deSubstitution = {
  'recipe.swap.water': ({ grams }, printer) =>
    grams >= 0
      ? `${printer.grams(grams)} mehr Wasser kommen hinein, damit der Topf so nass beginnt wie zuvor.`
      : `${printer.grams(-grams)} weniger Wasser kommen hinein, damit der Topf so nass beginnt wie zuvor.`,
  'recipe.swap.sugar': ({ grams }, printer) =>
    grams >= 0
      ? `${printer.grams(grams)} mehr Kristallzucker kommen hinein, damit das Verhältnis bleibt.`
      : `${printer.grams(-grams)} weniger Kristallzucker kommen hinein: der neue Sirup bringt welchen mit.`,
  'recipe.swap.rice':
    'Ohne Mais: hellerer Malzgeschmack, etwas braun, schäumt mehr. Seine Stärke ist je nach Hersteller anders: mach die Wasserprobe, und nimm kein Ziel aus einem Buch. Manche Hersteller verwenden Gerste: lies das Etikett.',
  'recipe.swap.honey':
    'Mit Honig: schmeckt nach Honig, brauner, weicher und in feuchter Luft klebriger; sofort einwickeln. Er schäumt und brennt an: größerer Topf, kein Deckel, spät rühren. Nie für ein Kind unter einem Jahr.',
  'recipe.swap.molasses':
    'Mit Melasse: dunkel, kräftig, etwas bitter, wird beim Ziehen hellbraun und nicht weiß. Sie schäumt und brennt an: größerer Topf, kein Deckel, spät rühren.',
  'recipe.swap.invert':
    'Mit Invertzuckersirup: klar und mild, in feuchter Luft weicher und klebriger als mit Glukosesirup, weil er mehr Wasser bindet. Gegen Ende bräunt er früher.',
  'recipe.swap.rest-stays': 'Stärke, Butter, Aromen und Ziel bleiben, wie sie waren.',
  'recipe.swap.nothing': 'In diesem Rezept ist kein Glukose- oder Maissirup, der zu ersetzen wäre.',
  'recipe.swap.starch': ({ items }, printer) =>
    `${named(items, printer)} ${items.length === 1 ? 'ist' : 'sind'} weiterhin aus Mais. Für jemanden, der keinen Mais darf, nimm Kartoffel- oder Reisstärke und beschreib sie unter "declared".`,
} as const satisfies Translated<typeof substitutionTexts>;

const partNames: Readonly<Record<string, string>> = {
  water: 'Wasser',
  sucrose: 'Saccharose',
  glucoseSolids: 'Glukose-Trockenmasse',
  invert: 'Invertzucker',
  salt: 'Salz',
  fat: 'Fett',
  other: 'anderes',
};

const parts = (composition: Readonly<Record<string, number>>): string =>
  Object.entries(composition)
    .filter(([, share]) => share >= 0.0005)
    .toSorted(([, one], [, other]) => other - one)
    .map(([part, share]) => `${partNames[part] ?? part} ${comma(Math.round(share * 1000) / 10)} %`)
    .join(', ');

type Allergens = { contains: readonly string[]; check: readonly string[]; unknown: boolean };

const allergenWords = ({ contains, check, unknown }: Allergens, printer: Printer): string => {
  const list = (words: readonly string[]): string =>
    printer.list(words.map((word) => escapeForTerminal(allergenWord(word))));
  return (
    [
      contains.length > 0 ? `enthält ${list(contains)}` : '',
      check.length > 0 ? `auf dem Etikett nachlesen: ${list(check)}` : '',
      unknown ? 'nicht alle sind bekannt: lies jedes Etikett' : '',
    ]
      .filter((part) => part !== '')
      .join('; ') || 'keines von denen, nach denen gefragt wird'
  );
};

const handWords: Readonly<Record<string, string>> = {
  butter: 'mit Butter',
  oil: 'mit Öl',
  starch: 'mit Stärke',
  dry: 'trocken',
};

const roleWords: Readonly<Record<string, string>> = {
  sugar: 'Zucker',
  doctor: 'gegen Körnen',
  water: 'Wasser',
  fat: 'Fett',
  protein: 'Eiweiß',
  starch: 'Stärke',
  acid: 'Säure',
  salt: 'Salz',
  flavour: 'Aroma',
  colour: 'Farbe',
  humectant: 'hält feucht',
  leavening: 'Triebmittel',
};

/** What `kettlehand recipes` prints. */
export const deShelf = {
  'shelf.unknown-doctor': (v, p) =>
    v.nearest === null
      ? `Was statt des Sirups? Tipp eines von ${p.list(v.allowed)}: kettlehand recipes instead mint-pull honey.`
      : `"${escapeForTerminal(v.found.slice(0, 40))}" ist keines davon. Meintest du ${v.nearest}?`,
  'shelf.unknown-recipe': ({ found, nearest }) =>
    `Kein Rezept heißt ${quoted(found)}.${suggestion(nearest)} Zeig sie mit: kettlehand recipes list. Für eine Datei schreib ihren Pfad: ./${escapeForTerminal(found)}.yaml`,
  'shelf.unknown-action': ({ found, nearest }) =>
    `"recipes ${escapeForTerminal(found)}" gibt es nicht.${suggestion(nearest)} Möglich: recipes list, recipes show NAME, recipes check FILE, recipes instead NAME SIRUP, recipes items.`,
  'shelf.name-needed': ({ action }) =>
    `Welches? Tipp: recipes ${action} NAME${action === 'instead' ? ' SIRUP' : ''}. Zeig sie mit: kettlehand recipes list.`,
  'shelf.file-needed': 'Welche Datei? Tipp: recipes check FILE.',
  'shelf.folder-missing': ({ path }) =>
    `Die mitgelieferten Rezepte sind nicht in ${escapeForTerminal(path)}. Installier das Programm neu.`,
  'shelf.row': ({ name, low, high, feels, grams }, printer) =>
    `${escapeForTerminal(name)}: ${printer.degrees(low)} bis ${printer.degrees(high)} auf Meereshöhe, ${stageWord(feels)}, ${printer.grams(grams)} im Topf`,
  'shelf.title': ({ name, about }) =>
    about === '' ? escapeForTerminal(name) : `${escapeForTerminal(name)}\n${escapeForTerminal(about)}`,
  'shelf.ingredient': ({ amount, grams, name, de, phase }, printer) => {
    const mass = printer.grams(grams);
    const written = escapeForTerminal(amountIn(amount));
    return `${phaseWord(phase).padEnd(8)} ${escapeForTerminal(ingredientWord(name))}${de === null ? '' : ` (${de} DE)`}: ${written === mass ? mass : `${written} (${mass})`}`;
  },
  'shelf.target': ({ low, high, feels }, printer) =>
    `Kochen auf ${printer.degrees(low)} bis ${printer.degrees(high)} auf Meereshöhe; in kaltem Wasser ${stageAndTyped(feels)}.`,
  'shelf.stir.until-boil': 'Rühren, bis es kocht, dann in Ruhe lassen.',
  'shelf.stir.late': 'Im letzten Teil des Kochens durchgehend sanft rühren.',
  'shelf.wall.lid': 'Beim ersten Kochen: Deckel drauf, 2-3 Minuten, daneben bleiben.',
  'shelf.wall.brush': 'Wand: feuchter langer Pinsel, früh beim Kochen. Kein Deckel.',
  'shelf.wall.none-late-stir': 'Kein Deckel: es schäumt. Streif die Wand ab, solange es kalt ist.',
  'shelf.handling': ({ hands, surface, dust }) =>
    `Hände ${handWords[hands] ?? hands}, Platte ${handWords[surface] ?? surface}${dust === 'none' ? '' : `, nach dem Schneiden mit ${dust === 'starch' ? 'Stärke' : 'Puderzucker'} bestäubt`}.`,
  'shelf.piece': ({ grams, ropeMillimetres }, printer) =>
    `Stücke von ${printer.grams(grams)} aus einem Strang von ${printer.millimetres(ropeMillimetres)}.`,
  'shelf.balance': ({ ratio }) =>
    Number.isFinite(ratio)
      ? `${Math.round(ratio * 100)} g Sirup-Trockenmasse und Invertzucker auf 100 g Zucker.`
      : 'All sein Zucker ist von einer Art, die nicht körnig wird.',
  'shelf.allergens': ({ allergens }, printer) => `Allergene: ${allergenWords(allergens, printer)}.`,
  'shelf.item': ({ id, name, roles, composition, de, density, allergens }, printer) =>
    [
      `${id}: ${ingredientWord(name)}, ${roles.map((role) => roleWords[role] ?? role).join(', ')}`,
      `  ${parts(composition)}${de === null ? '' : `; ${de} DE`}; ${comma(Math.round(density * 1000) / 1000)} kg pro Liter`,
      `  Allergene: ${allergenWords(allergens, printer)}`,
    ].join('\n'),
  'shelf.source': ({ source }) => `  Quelle: ${source}`,
  'shelf.fine': ({ file, name }) =>
    `${escapeForTerminal(file)}: ${escapeForTerminal(name)} lässt sich kochen.`,
  'shelf.kitchen-fine': ({ file }) => `${escapeForTerminal(file)}: diese Küche lässt sich verwenden.`,
} as const satisfies Translated<typeof shelfTexts>;
