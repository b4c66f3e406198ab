import type { IngredientPhase, IngredientRole } from './recipe.js';

/** The fields of a recipe file, format version 1, and the bounds of what may stand in them. Tables only. */
export const recipeKeys = [
  'kettlehand',
  'name',
  'about',
  'cups',
  'ingredients',
  'declared',
  'target',
  'stir',
  'hands',
  'surface',
  'dust',
  'piece',
  'allergens',
  'cues',
] as const;

export const ingredientKeys = [
  'item',
  'amount',
  'phase',
  'de',
  'allergens',
  'name',
  'role',
  'composition',
  'density',
  'drop',
  'alcohol',
  'scorches',
] as const;

/** Fields that describe an item of one's own, under `declared` or in the ingredient's own line. */
export const declaredKeys = [
  'name',
  'role',
  'composition',
  'de',
  'density',
  'drop',
  'allergens',
  'alcohol',
  'scorches',
] as const;

export const compositionKeys = [
  'water',
  'sucrose',
  'glucoseSolids',
  'invert',
  'salt',
  'fat',
  'other',
] as const;
export const targetKeys = ['celsius', 'fahrenheit', 'feels'] as const;
export const stirKeys = ['until', 'late'] as const;
export const pieceKeys = ['grams', 'ropeMillimetres'] as const;
export const allergenKeys = ['contains', 'check'] as const;

export const ingredientPhases: readonly IngredientPhase[] = ['mix', 'boil', 'flavour', 'fold', 'pull'];
export const roles: readonly IngredientRole[] = [
  'sugar',
  'doctor',
  'water',
  'fat',
  'starch',
  'acid',
  'salt',
  'protein',
  'humectant',
  'flavour',
  'colour',
  'leavening',
];
export const greases = ['butter', 'oil', 'starch', 'dry'] as const;
export const dusts = ['none', 'starch', 'powdered-sugar'] as const;
export const cupKinds = ['us', 'metric'] as const;

/** Our judgement throughout: wider than any pulled candy that was found published, narrower than a slip of the finger. */
export const limits = {
  nameCharacters: 100,
  aboutCharacters: 600,
  cueCharacters: 400,
  cuesAPhase: 20,
  ingredients: 60,
  declared: 40,
  wordCharacters: 40,
  amountCharacters: 60,
  oneIngredientGrams: 20_000,
  leastTotalGrams: 50,
  /** Lowest: below any chewy candy that is pulled (122 C is the softest found). Highest: decorative pulled sugar. */
  targetCelsius: [105, 160],
  targetFahrenheit: [221, 320],
  /** Starch syrups are sold from 26 DE; pure dextrose is 100. */
  de: [20, 100],
  pieceGrams: [1, 60],
  ropeMillimetres: [5, 40],
  densityKilogramPerLitre: [0.1, 3],
  dropGrams: [0.005, 0.2],
  /** How far the parts of a declared item may be from 100 % and still be rounding. */
  compositionSlack: 0.011,
} as const;

/** 42 DE is the regular confectioner's syrup: common practice, no source. */
export const usualDe = 42;
