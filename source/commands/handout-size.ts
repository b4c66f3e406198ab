import type { Batch } from '../batch/batch.js';
import type { Want } from '../batch/scaled-for.js';
import { defaultKitchen } from '../kitchen/default.js';
import { gramsOf } from '../recipe/amount.js';
import { itemById } from '../recipe/items.js';
import type { Ingredient } from '../recipe/recipe.js';
import { message } from '../texts/message.js';
import { parseAmount } from '../units/parse.js';
import { type Read, readPlace, readWant } from './plan-options.js';

/** How much the page is for, as typed. `have`: what is in the cupboard at home, "granulated-sugar=300g". */
export type HandoutSize = {
  readonly pieces?: string | undefined;
  readonly batch?: string | undefined;
  readonly pot?: string | undefined;
  readonly have?: readonly string[] | undefined;
};

const shape = /^\s*([^=]{1,60}?)\s*=\s*(.{1,40}?)\s*$/;
const longest = 120;

const plain = (word: string): string =>
  word
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
    .trim();

/** The ingredients that a person may mean: one of that very name, else all whose name holds the word. */
const meant = (ingredients: readonly Ingredient[], typed: string): readonly Ingredient[] => {
  const word = plain(typed);
  const names = ({ item, name }: Ingredient): readonly string[] => [plain(item), plain(name)];
  const exact = ingredients.filter((one) => names(one).includes(word));
  return exact.length > 0
    ? exact
    : ingredients.filter((one) => names(one).some((name) => name.includes(word)));
};

/** Which share of the recipe one thing at home is enough for. */
const shareFor = ({ recipe }: Batch, typed: string): Read<number> => {
  const [, word = '', amountTyped = ''] = typed.length > longest ? [] : (shape.exec(typed) ?? []);
  if (word === '')
    return {
      problem: message('handout.bad.have', {
        found: typed.slice(0, longest),
        example: recipe.ingredients[0]?.item ?? 'butter',
      }),
    };
  const found = meant(recipe.ingredients, word);
  const items = [...new Set(found.map(({ item }) => item))];
  const [item] = items;
  if (item === undefined || items.length > 1)
    return {
      problem: message('handout.bad.have-item', {
        found: word,
        several: items.length > 1,
        allowed: [...new Set((items.length > 1 ? found : recipe.ingredients).map((one) => one.item))],
      }),
    };
  const amount = parseAmount(amountTyped);
  if (amount.kind === 'problem') return { problem: amount.problem };
  const grams = gramsOf(amount, {
    densityKilogramPerLitre: found[0]?.densityKilogramPerLitre ?? null,
    dropGrams: itemById(item)?.dropGrams ?? null,
  });
  if (typeof grams === 'string')
    return { problem: message('handout.bad.have-weight', { found: typed, item }) };
  const wanted = found.reduce((sum, one) => sum + one.grams, 0);
  return grams > 0 && wanted > 0
    ? { value: grams / wanted }
    : { problem: message('handout.bad.have-weight', { found: typed, item }) };
};

/**
 * How much the page is for; null: as the recipe is written. What is at home and the pot each bound the batch: the
 * scarcest decides.
 */
export const handoutWant = (
  batch: Batch,
  { pieces, batch: factor, pot, have = [] }: HandoutSize,
): Read<Want | null> => {
  const asked = readWant({ pieces, batch: factor }, null);
  if ('problem' in asked) return asked;
  const place = readPlace(defaultKitchen, { pot });
  if ('problem' in place) return place;
  const { potLitres } = place.value;
  if (potLitres === null && have.length === 0) return asked;
  if (asked.value !== null)
    return {
      problem: message('plan.bad.several', {
        options: [pieces === undefined ? 'batch' : 'pieces', have.length > 0 ? 'have' : 'pot'],
      }),
    };
  const shares = potLitres === null ? [] : [potLitres / batch.pot.neededLitres];
  for (const one of have) {
    const share = shareFor(batch, one);
    if ('problem' in share) return share;
    shares.push(share.value);
  }
  return { value: { kind: 'batch', factor: Math.min(...shares) } };
};
