/** German for words that reach a sentence as they are typed or as the ingredient table has them. */

const entry = (table: Readonly<Record<string, string>>, word: string): string =>
  Object.hasOwn(table, word) ? (table[word] ?? word) : word;

/**
 * The stages of boiled sugar. German practice divides them finer (Läuterzucker, Faden, Flug, Ballen, Bruch); here
 * they are the outcomes that can be typed, in the words a cook feels them by.
 */
const stages: Readonly<Record<string, string>> = {
  dissolves: 'löst sich auf',
  thread: 'Faden',
  'soft ball': 'weicher Ballen',
  'firm ball': 'fester Ballen',
  'hard ball': 'harter Ballen',
  'soft crack': 'schwacher Bruch',
  'hard crack': 'starker Bruch',
  'past hard crack': 'über starkem Bruch',
  unsure: 'unsicher',
};
export const stageWord = (stage: string): string => entry(stages, stage);
/** The German stage, with what is typed for it behind it. */
export const stageAndTyped = (stage: string): string =>
  Object.hasOwn(stages, stage) ? `${stageWord(stage)} (${stage})` : stage;

const phases: Readonly<Record<string, string>> = {
  mix: 'Mischen',
  dissolve: 'Lösen',
  boil: 'Kochen',
  test: 'Probe',
  flavour: 'Aroma',
  pour: 'Gießen',
  fold: 'Falten',
  pull: 'Ziehen',
  cut: 'Schneiden',
  wrap: 'Wickeln',
  clean: 'Putzen',
  over: 'Ende',
};
export const phaseWord = (phase: string): string => entry(phases, phase);

const heats: Readonly<Record<string, string>> = {
  off: 'aus',
  low: 'klein',
  medium: 'mittel',
  high: 'groß',
};
export const heatWord = (heat: string): string => entry(heats, heat);

const stoves: Readonly<Record<string, string>> = {
  gas: 'Gas',
  coil: 'Kochplatte',
  'glass-ceramic': 'Glaskeramik',
  induction: 'Induktion',
};
export const stoveWord = (stove: string): string => entry(stoves, stove);

const thermometers: Readonly<Record<string, string>> = {
  dial: 'Zeigerthermometer',
  digital: 'Digitalthermometer',
  glass: 'Glasthermometer',
  infrared: 'Infrarotthermometer',
};
export const thermometerWord = (kind: string): string => entry(thermometers, kind);

const ingredients: Readonly<Record<string, string>> = {
  'baking soda': 'Natron',
  'brown sugar': 'brauner Zucker',
  'citric acid': 'Zitronensäure',
  'coconut oil': 'Kokosöl',
  cornstarch: 'Maisstärke',
  'cream of tartar': 'Weinstein',
  'dark corn syrup': 'dunkler Maissirup',
  'evaporated milk': 'Kondensmilch, ungezuckert',
  'fruit flavour': 'Fruchtaroma',
  'gel colour': 'Gelfarbe',
  'gelatine powder': 'Gelatinepulver',
  'ginger oil': 'Ingweröl',
  'glucose syrup': 'Glukosesirup',
  glycerine: 'Glycerin',
  'golden syrup': 'Zuckersirup, goldgelb',
  'granulated sugar': 'Kristallzucker',
  'heavy cream': 'Schlagsahne',
  honey: 'Honig',
  'invert syrup': 'Invertzuckersirup',
  lecithin: 'Lecithin',
  'lemon juice': 'Zitronensaft',
  'lemon oil': 'Zitronenöl',
  'light corn syrup': 'heller Maissirup',
  'liquid colour': 'flüssige Farbe',
  molasses: 'Melasse',
  'orange oil': 'Orangenöl',
  'peppermint oil': 'Pfefferminzöl',
  'cinnamon oil': 'Zimtöl',
  'powdered sugar': 'Puderzucker',
  'rice syrup': 'Reissirup',
  salt: 'Salz',
  'salted butter': 'Butter, gesalzen',
  'sweetened condensed milk': 'Kondensmilch, gezuckert',
  'unsalted butter': 'Butter, ungesalzen',
  butter: 'Butter',
  oil: 'Öl',
  starch: 'Stärke',
  'vanilla extract': 'Vanilleextrakt',
  'vegetable oil': 'Pflanzenöl',
  water: 'Wasser',
  'white vinegar': 'Branntweinessig',
  'whole milk': 'Vollmilch',
};
export const ingredientWord = (name: string): string => entry(ingredients, name);

const allergens: Readonly<Record<string, string>> = {
  milk: 'Milch',
  soy: 'Soja',
  soya: 'Soja',
  'soya unless the packet says sunflower': 'Soja, wenn nicht Sonnenblume darauf steht',
  wheat: 'Weizen',
  gluten: 'Gluten',
  egg: 'Ei',
  eggs: 'Ei',
  nuts: 'Nüsse',
  peanuts: 'Erdnüsse',
  sesame: 'Sesam',
  sulphites: 'Sulfite',
  barley: 'Gerste',
  coconut: 'Kokosnuss',
  fish: 'Fisch',
};
export const allergenWord = (name: string): string => entry(allergens, name);

const units: readonly (readonly [RegExp, string])[] = [
  [/\btbsp\b/g, 'EL'],
  [/\btsp\b/g, 'TL'],
  [/\bcup\b/g, 'Tasse'],
  [/\bcups\b/g, 'Tassen'],
  [/\bdrops?\b/g, 'Tropfen'],
  [/\bpinch\b/g, 'Prise'],
  [/\bpinches\b/g, 'Prisen'],
  [/(\d)\.(\d)/g, '$1,$2'],
];
/** An amount as the recipe has it, its spoons and cups in German: "2 tbsp" is "2 EL". */
export const amountIn = (amount: string): string =>
  units.reduce((text, [english, german]) => text.replaceAll(english, german), amount);

const typed: Readonly<Record<string, string>> = {
  done: 'erledigt',
  yes: 'ja',
  no: 'nein',
  ok: 'gesehen',
  'pot on': 'Topf auf dem Herd',
  'pot off': 'Topf neben dem Herd',
  'lid on': 'Deckel drauf',
  'lid off': 'Deckel ab',
  'at boil': 'noch beim Kochen',
  'at pour': 'noch im Topf',
  'at fold': 'auf der Platte',
  stop: 'aufgegeben',
  undo: 'zurücknehmen',
};
/** A typed word with what it means beside it: "pot on: Topf auf dem Herd"; alone where it means itself. */
export const wordMeant = (word: string): string => {
  const heat = /^heat (.+)$/.exec(word)?.[1];
  const meant =
    heat === undefined ? entry(typed, word) : Object.hasOwn(heats, heat) ? `Hitze ${heatWord(heat)}` : word;
  return meant === word ? word : `${word}: ${meant}`;
};

const troubles: Readonly<Record<string, string>> = {
  foam: 'Schaum',
  overflow: 'Übergelaufen',
  scorched: 'Angebrannt',
  burn: 'Verbrennung',
  grains: 'Körnig',
  overshoot: 'Übers Ziel',
  soft: 'Zu weich',
  stiff: 'Zu fest',
  thermometer: 'Thermometer',
  glass: 'Glas',
  spill: 'Verschüttet',
  fire: 'Feuer',
  power: 'Strom weg',
  choking: 'Ersticken',
  allergy: 'Allergie',
  away: 'Topf allein',
};
export const troubleWord = (name: string): string => entry(troubles, name);

const hands: Readonly<Record<string, string>> = {
  bare: 'geübt, bloß',
  visitors: 'zum ersten Mal',
  gloved: 'mit Handschuhen',
  children: 'Kinder',
};

export const handsWord = (whose: string): string => entry(hands, whose);

const firmness: Readonly<Record<string, string>> = {
  runny: 'zu weich',
  soft: 'weich',
  chewy: 'kaubar',
  firm: 'fest',
  glassy: 'glashart',
};
export const firmnessWord = (firm: string): string => entry(firmness, firm);

const acts: Readonly<Record<string, string>> = {
  ...typed,
  'pot on': 'Topf drauf',
  'pot off': 'Topf ab',
  'arms out': 'Arme am Ende',
  droops: 'hängt durch',
  holds: 'hält',
  'thermometer none': 'kein Thermometer',
  note: 'Notiz',
  mark: 'Marke',
};

const actsOf: Readonly<Record<string, (rest: string) => string>> = {
  heat: (heat) => `Hitze ${heatWord(heat)}`,
  trouble: (name) => troubleWord(name),
  over: (name) => `${troubleWord(name)} vorbei`,
  at: (phase) => `bei ${phaseWord(phase)}`,
  count: (pieces) => `${pieces} Stück`,
  hands: (whose) => `Hände: ${entry(hands, whose)}`,
  portions: (count) => `${count} Portionen`,
};

/** What happened, as it was typed, in two or three words. */
export const eventWord = (line: string): string => {
  if (Object.hasOwn(acts, line)) return entry(acts, line);
  if (Object.hasOwn(stages, line)) return stageWord(line);
  const [, first = '', rest = ''] = /^(\S+) (.+)$/.exec(line) ?? [];
  return Object.hasOwn(actsOf, first) ? (actsOf[first]?.(rest) ?? line) : line;
};

/** Digits with a decimal comma. */
export const comma = (digits: number | string): string => String(digits).replace('.', ',');
