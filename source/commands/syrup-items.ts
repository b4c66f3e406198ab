import { syrupFrom } from '../batch/syrup-of.js';
import { gramsOf } from '../recipe/amount.js';
import { type Item, itemById, nearestItem } from '../recipe/items.js';
import { limits } from '../recipe/schema.js';
import type { Syrup } from '../sugar/syrup.js';
import { type Message, message } from '../texts/message.js';
import { parseAmount } from '../units/parse.js';
import type { Read } from './plan-options.js';

/** "glucose-syrup:42=200g": an item, its DE where it has one, an amount. */
const shape = /^\s*([^=:\s]+)\s*(?::\s*([^=]*?)\s*)?=\s*(.+?)\s*$/;
const longest = 120;

type Part = { readonly grams: number; readonly de: number | null; readonly composition: Item['composition'] };

const bad = (problem: Message): Read<never> => ({ problem });

const readDe = (item: Item, typed: string | undefined): Read<number | null> => {
  if (typed === undefined) return { value: item.de };
  if (item.composition.glucoseSolids === 0) return bad(message('syrup.bad.no-de', { item: item.id }));
  const [low, high] = limits.de;
  const de = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : Number.NaN;
  return de >= low && de <= high ? { value: de } : bad(message('syrup.bad.de', { found: typed, low, high }));
};

const readPart = (typed: string): Read<Part> => {
  const [, id = '', deTyped, amountTyped = ''] = typed.length > longest ? [] : (shape.exec(typed) ?? []);
  if (id === '') return bad(message('syrup.bad.item', { found: typed.slice(0, longest) }));
  const item = itemById(id);
  if (item === null) return bad(message('syrup.bad.unknown-item', { found: id, nearest: nearestItem(id) }));
  const de = readDe(item, deTyped);
  if ('problem' in de) return de;
  const amount = parseAmount(amountTyped);
  if (amount.kind === 'problem') return bad(amount.problem);
  const grams = gramsOf(amount, item);
  if (grams === 'density') return bad(message('recipe.needs-density', { item: id }));
  if (grams === 'drop') return bad(message('recipe.needs-drop', { item: id }));
  if (grams === 'piece') return bad(message('recipe.needs-piece', { item: id }));
  const most = limits.oneIngredientGrams;
  if (grams > most) return bad(message('recipe.absurd-amount', { found: amountTyped, grams, most }));
  return { value: { grams, de: de.value, composition: item.composition } };
};

/** The syrup of `--item` options, in any order; an item given twice counts twice. Grams. */
export const readItems = (typed: readonly string[]): Read<Syrup> => {
  if (typed.length === 0) return bad(message('syrup.bad.nothing'));
  const parts: Part[] = [];
  for (const one of typed) {
    const part = readPart(one);
    if ('problem' in part) return part;
    parts.push(part.value);
  }
  return { value: syrupFrom(parts) };
};
