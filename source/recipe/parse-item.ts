import { message } from '../texts/message.js';
import type { Field } from './document.js';
import { itemById } from './items.js';
import type { Composition, Ingredient, IngredientRole } from './recipe.js';
import { allergenKeys, compositionKeys, declaredKeys, limits, roles } from './schema.js';

/** What is known of an item, from the table or from the file. */
export type KnownItem = Pick<
  Ingredient,
  'name' | 'de' | 'composition' | 'densityKilogramPerLitre' | 'allergens' | 'alcohol' | 'scorches' | 'role'
> & { readonly dropGrams: number | null };

const allergensUnknown = { contains: [], check: [], unknown: true } as const;

/** What a label says; null where the file is silent. */
export const parseAllergens = (field: Field): Ingredient['allergens'] | null => {
  if (field.missing) return null;
  const fields = field.map(allergenKeys);
  const words = (key: (typeof allergenKeys)[number]) =>
    field
      .of(fields, key)
      .words(limits.wordCharacters)
      .map((word) => word.toLowerCase());
  const [contains, check] = [words('contains'), words('check')];
  return { contains, check, unknown: false };
};

const parseComposition = (field: Field): Composition | null => {
  if (!field.required()) return null;
  if (!field.isMap) {
    field.map(compositionKeys);
    return null;
  }
  const fields = field.map(compositionKeys);
  const part = (key: (typeof compositionKeys)[number]) =>
    field.of(fields, key).number({ low: 0, high: 1, unit: '' }) ?? 0;
  const read = Object.fromEntries(compositionKeys.map((key) => [key, part(key)])) as Record<
    (typeof compositionKeys)[number],
    number
  >;
  const sum = compositionKeys.reduce((total, key) => total + read[key], 0);
  if (Math.abs(sum - 1) > limits.compositionSlack)
    return field.fail(message('recipe.composition-sum', { percent: Math.round(sum * 1000) / 10 }));
  return Object.fromEntries(compositionKeys.map((key) => [key, read[key] / sum])) as unknown as Composition;
};

const likelyRole = (composition: Composition): IngredientRole => {
  if (composition.glucoseSolids + composition.invert > 0.3) return 'doctor';
  if (composition.sucrose > 0.5) return 'sugar';
  if (composition.fat > 0.5) return 'fat';
  if (composition.water > 0.9) return 'water';
  return 'flavour';
};

/** An item of the file's own, described in `field`; null (with problems) if it can't be understood. */
export const parseDeclared = (
  id: string,
  field: Field,
  allowed: readonly string[] = declaredKeys,
): KnownItem | null => {
  const fields = field.map(allowed);
  const get = (key: (typeof declaredKeys)[number]) => field.of(fields, key);
  const composition = parseComposition(get('composition'));
  const role = get('role').choice(roles);
  const de = get('de').number({ low: limits.de[0], high: limits.de[1], unit: 'DE' });
  const density = get('density').number({
    low: limits.densityKilogramPerLitre[0],
    high: limits.densityKilogramPerLitre[1],
    unit: 'kg per litre',
  });
  const drop = get('drop').number({ low: limits.dropGrams[0], high: limits.dropGrams[1], unit: 'g' });
  const name = get('name').text(limits.nameCharacters);
  const alcohol = get('alcohol').yesOrNo() ?? false;
  const scorches = get('scorches').yesOrNo() ?? false;
  const allergens = parseAllergens(get('allergens')) ?? allergensUnknown;
  if (composition === null) return null;
  if (composition.glucoseSolids > 0 && get('de').missing) get('de').fail(message('recipe.needs-de'));
  return {
    name: name === null || name === '' ? id.replaceAll('-', ' ') : name,
    de: composition.glucoseSolids > 0 ? de : null,
    composition,
    densityKilogramPerLitre: density,
    dropGrams: drop,
    allergens,
    alcohol,
    scorches,
    role: role ?? likelyRole(composition),
  };
};

/** An item of the table. */
export const tableItem = (id: string): KnownItem | null => {
  const item = itemById(id);
  return item === null ? null : { ...item, role: item.roles[0] };
};
