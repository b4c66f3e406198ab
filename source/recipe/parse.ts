import * as z from 'zod/mini';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { type Message, message } from '../texts/message.js';
import { parseAmount } from '../units/parse.js';
import type { Cups } from '../units/tables.js';
import { allergensOf } from './allergens.js';
import { gramsOf } from './amount.js';
import { echo, type Field, type FileProblem, openDocument, versionFits } from './document.js';
import { nearest, nearestItem } from './items.js';
import { type KnownItem, parseAllergens, parseDeclared, tableItem } from './parse-item.js';
import { type Ingredient, phaseIds, type Recipe } from './recipe.js';
import { recipeSchema } from './recipe-schema.js';
import {
  cupKinds,
  dusts,
  greases,
  ingredientKeys,
  ingredientPhases,
  limits,
  pieceKeys,
  recipeKeys,
  stirKeys,
  targetKeys,
  usualDe,
} from './schema.js';

export type RecipeProblem = FileProblem;

/** A recipe with remarks on what was assumed; or everything that is wrong with the file, in the order of the file. */
export type ParsedRecipe =
  | { readonly recipe: Recipe; readonly notes: readonly Message[] }
  | { readonly problems: readonly RecipeProblem[] };

type Declared = ReadonlyMap<string, KnownItem | null>;
const itemName = /^[a-z0-9][a-z0-9-]{0,39}$/;

const parseDeclarations = (field: Field): Declared => {
  const declared = new Map<string, KnownItem | null>();
  if (field.missing) return declared;
  for (const [id, described] of [...field.map(null)].slice(0, limits.declared)) {
    if (!itemName.test(id)) described.fail(message('recipe.item-name', { found: echo(id) }));
    else if (tableItem(id) !== null) described.fail(message('recipe.item-is-known', { found: id }));
    else declared.set(id, parseDeclared(id, described));
  }
  return declared;
};

const describesItself = ['composition', 'role', 'name', 'density', 'drop', 'alcohol', 'scorches'] as const;

/** The item of one line: of the table, declared above, or described in the line itself. */
const knownItem = (
  line: Field,
  fields: ReadonlyMap<string, Field>,
  id: string,
  declared: Declared,
): KnownItem | null => {
  const known = tableItem(id) ?? declared.get(id);
  if (known !== null && known !== undefined) {
    for (const key of describesItself)
      if (fields.has(key)) line.of(fields, key).fail(message('recipe.not-declared-here', { found: id }));
    return known;
  }
  if (declared.has(id)) return null;
  if (fields.has('composition')) {
    if (itemName.test(id)) return parseDeclared(id, line, ingredientKeys);
    return line.of(fields, 'item').fail(message('recipe.item-name', { found: echo(id) }));
  }
  const near = nearestItem(id) ?? nearest(id, [...declared.keys()]);
  return line.of(fields, 'item').fail(message('recipe.unknown-item', { found: echo(id), nearest: near }));
};

const unknownMass = {
  density: (item: string) => message('recipe.needs-density', { item }),
  drop: (item: string) => message('recipe.needs-drop', { item }),
  piece: (item: string) => message('recipe.needs-piece', { item }),
} as const;

const parseGrams = (field: Field, item: KnownItem, cups: Cups): { grams: number; amount: string } | null => {
  if (!field.required()) return null;
  const written = field.text(limits.amountCharacters);
  if (written === null) return null;
  const amount = parseAmount(written, cups);
  if (amount.kind === 'problem') return field.fail(amount.problem);
  const grams = gramsOf(amount, item);
  if (typeof grams !== 'number') return field.fail(unknownMass[grams](item.name));
  if (grams > limits.oneIngredientGrams)
    return field.fail(
      message('recipe.absurd-amount', { found: echo(written), grams, most: limits.oneIngredientGrams }),
    );
  return { grams, amount: written };
};

const parseDe = (field: Field, item: KnownItem, notes: Message[], isTableSyrup: boolean): number | null => {
  if (item.composition.glucoseSolids === 0) {
    if (!field.missing) field.fail(message('recipe.no-de', { item: item.name }));
    return null;
  }
  if (field.missing && isTableSyrup) notes.push(message('recipe.note.de-assumed', { item: item.name }));
  return field.number({ low: limits.de[0], high: limits.de[1], unit: 'DE' }) ?? item.de ?? usualDe;
};

const parseIngredient = (
  line: Field,
  declared: Declared,
  cups: Cups,
  notes: Message[],
): Ingredient | null => {
  const fields = line.map(ingredientKeys);
  if (!line.isMap) {
    if (line.missing) line.required();
    return null;
  }
  const get = (key: (typeof ingredientKeys)[number]) => line.of(fields, key);
  const id = get('item').required() ? get('item').text(limits.wordCharacters) : null;
  const phase = get('phase').choice(ingredientPhases);
  const known = id === null ? null : knownItem(line, fields, id, declared);
  if (id === null || known === null) return null;
  const de = parseDe(get('de'), known, notes, id === 'glucose-syrup');
  const allergens = parseAllergens(get('allergens')) ?? known.allergens;
  const mass = parseGrams(get('amount'), known, cups);
  if (mass === null) return null;
  const { name, role, composition, densityKilogramPerLitre, alcohol, scorches } = known;
  const usual = role === 'flavour' || role === 'colour' || role === 'leavening' ? 'flavour' : 'mix';
  return {
    item: id,
    name,
    de,
    ...mass,
    phase: phase ?? usual,
    role,
    composition,
    densityKilogramPerLitre,
    allergens,
    alcohol,
    scorches,
  };
};

const toCelsius = (fahrenheit: number): number => Math.round(((fahrenheit - 32) / 1.8) * 10) / 10;

const parseWindow = (field: Field, unit: 'C' | 'F'): readonly [number, number] | null => {
  const numbers = field.list(2);
  if (!field.isList || numbers.length !== 2)
    return field.isList ? field.fail(message('recipe.target-pair', { found: field.found })) : null;
  const [low, high] = numbers.map((one) =>
    one.required() ? one.number({ low: -1000, high: 1000, unit: '' }) : null,
  );
  if (low === null || low === undefined || high === null || high === undefined) return null;
  if (low > high) return field.fail(message('recipe.target-order', { low, high }));
  const [least, most] = unit === 'C' ? limits.targetCelsius : limits.targetFahrenheit;
  const outside = [low, high].find((value) => value < least || value > most);
  if (outside === undefined) return unit === 'C' ? [low, high] : [toCelsius(low), toCelsius(high)];
  const [coldest, hottest] = limits.targetFahrenheit;
  if (unit === 'C' && low >= coldest && high <= hottest)
    return field.fail(
      message('recipe.target-fahrenheit', {
        found: low,
        celsius: [Math.round(toCelsius(low)), Math.round(toCelsius(high))],
      }),
    );
  return field.fail(message('recipe.target-range', { found: outside, low: least, high: most, unit }));
};

const parseTarget = (field: Field): Recipe['target'] | null => {
  if (!field.required()) return null;
  const fields = field.map(targetKeys);
  if (!field.isMap) return null;
  const [celsius, fahrenheit] = [field.of(fields, 'celsius'), field.of(fields, 'fahrenheit')];
  const feels = field.of(fields, 'feels');
  feels.required();
  const outcome = feels.choice(coldWaterOutcomes);
  if (!celsius.missing && !fahrenheit.missing) return field.fail(message('recipe.target-both'));
  if (fahrenheit.missing && !celsius.required()) return null;
  const window = fahrenheit.missing ? parseWindow(celsius, 'C') : parseWindow(fahrenheit, 'F');
  return window === null || outcome === null ? null : { celsius: window, feels: outcome };
};

const parseStir = (field: Field): Recipe['stir'] | null => {
  if (field.missing) return null;
  if (!field.isMap) return field.fail(message('recipe.stir', { found: field.found }));
  const fields = field.map(stirKeys);
  const [until, late] = [field.of(fields, 'until'), field.of(fields, 'late')];
  const isLate = late.yesOrNo();
  const isUntil = until.choice(['boil'] as const);
  if (isUntil !== null && isLate === true) return field.fail(message('recipe.stir-both'));
  if (isLate === true) return 'late';
  return isUntil === null && isLate === null ? null : 'until-boil';
};

const parseCues = (field: Field): Recipe['cues'] => {
  const cues: Partial<Record<(typeof phaseIds)[number], readonly string[]>> = {};
  if (field.missing) return cues;
  for (const [phase, lines] of field.map(null)) {
    const known = phaseIds.find((id) => id === phase);
    if (known === undefined)
      lines.fail(
        message('recipe.cue-phase', {
          found: echo(phase),
          nearest: nearest(phase, phaseIds),
          allowed: phaseIds,
        }),
      );
    else cues[known] = lines.words(limits.cueCharacters).slice(0, limits.cuesAPhase);
  }
  return cues;
};

const parsePiece = (field: Field): Recipe['piece'] => {
  const fields = field.map(pieceKeys);
  const [least, most] = limits.pieceGrams;
  const [thin, thick] = limits.ropeMillimetres;
  return {
    grams: field.of(fields, 'grams').number({ low: least, high: most, unit: 'g' }) ?? 7,
    ropeMillimetres: field.of(fields, 'ropeMillimetres').number({ low: thin, high: thick, unit: 'mm' }) ?? 15,
  };
};

/** Things that only the ingredients together can show. */
const checkWhole = (field: Field, ingredients: readonly Ingredient[]): void => {
  const grams = ingredients.reduce((sum, one) => sum + one.grams, 0);
  if (grams < limits.leastTotalGrams)
    field.fail(message('recipe.too-small', { grams, least: limits.leastTotalGrams }));
  const hasSugar = ingredients.some(
    ({ composition: { sucrose, glucoseSolids, invert } }) => sucrose + glucoseSolids + invert > 0.1,
  );
  if (!hasSugar) field.fail(message('recipe.no-sugar'));
};

/**
 * A recipe file of format version 1, text in, value out; never throws. Masses in grams, temperatures in Celsius at
 * sea level. `problems` names file, line (from 1), field and what is allowed for everything that was found wrong.
 */
export const parseRecipe = (text: string, fileName: string): ParsedRecipe => {
  const { root, problems } = openDocument(text, fileName);
  if (problems.length > 0) return { problems };
  const top = root.map(null);
  if (top.has('kettlehand-kitchen') && !top.has('kettlehand')) {
    root.fail(message('recipe.kitchen-file'));
    return { problems };
  }
  if (!versionFits(root, top, 'kettlehand')) return { problems };
  const fields = root.map(recipeKeys);
  const get = (key: (typeof recipeKeys)[number]) => root.of(fields, key);
  const notes: Message[] = [];
  const name = get('name').required() ? get('name').text(limits.nameCharacters) : null;
  const about = get('about').text(limits.aboutCharacters) ?? '';
  const cups = get('cups').choice(cupKinds) ?? 'us';
  const declared = parseDeclarations(get('declared'));
  const lines = get('ingredients').required() ? get('ingredients').list(limits.ingredients) : [];
  const ingredients = lines.flatMap((line) => parseIngredient(line, declared, cups, notes) ?? []);
  if (get('ingredients').isList && ingredients.length === lines.length)
    checkWhole(get('ingredients'), ingredients);
  const target = parseTarget(get('target'));
  const scorches = ingredients.some((one) => one.scorches && (one.phase === 'mix' || one.phase === 'boil'));
  const stir = parseStir(get('stir')) ?? (scorches ? 'late' : 'until-boil');
  const hands = get('hands').choice(greases) ?? 'butter';
  const surface = get('surface').choice(greases) ?? 'butter';
  const dust = get('dust').choice(dusts) ?? 'none';
  const piece = parsePiece(get('piece'));
  const own = parseAllergens(get('allergens')) ?? undefined;
  const cues = parseCues(get('cues'));
  if (problems.length > 0 || name === null || target === null)
    return { problems: problems.toSorted((one, other) => one.line - other.line) };
  const allergens = allergensOf(ingredients, { hands, surface, dust }, own);
  const recipe: Recipe = {
    name,
    about,
    ingredients,
    target,
    stir,
    hands,
    surface,
    dust,
    piece,
    allergens,
    cues,
  };
  const checked = z.safeParse(recipeSchema, recipe);
  for (const issue of checked.error?.issues ?? [])
    root.fail(message('recipe.value', { field: issue.path.join('.'), code: issue.code }));
  return checked.success ? { recipe, notes } : { problems };
};
