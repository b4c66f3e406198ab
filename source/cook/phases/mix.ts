import { checksOf, thermometerFor } from '../../kitchen/air.js';
import { measuredAmount } from '../../recipe/amount.js';
import type { Ingredient } from '../../recipe/recipe.js';
import { type Message, message } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import type { View } from '../view.js';
import { heatPause } from './gates.js';
import { type Phase, step } from './phase.js';

/** What goes in cold, in the trade's order: dry first, then syrups, fat, water, salt. */
const order: Readonly<Record<'dry' | 'syrup' | 'fat' | 'water' | 'salt', (one: Ingredient) => boolean>> = {
  dry: (one) =>
    one.composition.water < 0.1 && one.role !== 'fat' && one.role !== 'salt' && one.role !== 'flavour',
  syrup: (one) => one.composition.water >= 0.1 && one.composition.water < 0.5 && one.role !== 'fat',
  fat: (one) => one.role === 'fat',
  water: (one) => one.composition.water >= 0.5 && one.role !== 'fat',
  salt: (one) => one.role === 'salt' || (one.composition.water < 0.1 && one.role === 'flavour'),
};

const cold = ({ batch }: View): readonly Ingredient[] =>
  batch.recipe.ingredients.filter((one) => one.phase === 'mix');

export const amountOf = (one: Ingredient): Message => {
  const { grams, millilitres } = measuredAmount(one);
  return message('ingredient', { amount: one.amount, name: one.name, grams, millilitres });
};

const inGroups = (view: View, groups: readonly (keyof typeof order)[]): readonly Message[] =>
  groups.flatMap((group) => cold(view).filter(order[group]).map(amountOf));

/** Held in boiling water, today or by the kitchen file: without an altitude that told of the air, and asking again tells no more. */
const wasBoiled = ({ batch, checks }: Cook): boolean =>
  checksOf(thermometerFor(batch.kitchen, 'pot'), checks).boilsShownCelsius !== null;

export const mix: Phase = {
  id: 'mix',
  steps: [
    step('mix.ready', {
      values: ({ batch }) => ({ surface: batch.recipe.surface, hands: batch.recipe.hands }),
      items: ({ batch, cook }): readonly Message[] => [
        message('mix.ready.pot', {
          neededLitres: batch.pot.neededLitres,
          haveLitres: batch.pot.haveLitres,
          fits: batch.pot.fits,
        }),
        message('mix.ready.stem', {
          present: cook.thermometer,
          stemMillimetres: batch.dial.stemMillimetres,
          depthMillimetres: batch.pot.depthMillimetres?.[1] ?? null,
          covered: batch.pot.stemCovered,
        }),
        message('mix.ready.slab', { surface: batch.recipe.surface }),
        message('mix.ready.scraper'),
        message('mix.ready.fat', { hands: batch.recipe.hands }),
        message('mix.ready.bowl'),
        message('mix.ready.cups'),
        message('mix.ready.clothes'),
        message('mix.ready.squares', { squares: batch.yield.wrappingSquares }),
      ],
    }),
    step('mix.roles', {
      items: () => [
        message('mix.roles.pot'),
        message('mix.roles.slab'),
        message('mix.roles.floor'),
        message('mix.roles.scribe'),
        message('mix.roles.pull'),
      ],
    }),
    step('mix.thermometer', {
      wanted: (cook) => cook.thermometer && cook.batch.dial.basis === 'taken as right' && !wasBoiled(cook),
      values: ({ batch }) => ({ waterBoilsCelsius: batch.air.waterBoilsCelsius }),
    }),
    heatPause,
    step('mix.dry', {
      values: (view) => ({
        things: inGroups(view, ['dry']).length,
        starch: cold(view).some(({ role }) => role === 'starch'),
      }),
      items: (view) => inGroups(view, ['dry']),
    }),
    step('mix.wet', { items: (view) => inGroups(view, ['syrup', 'fat', 'water', 'salt']) }),
    step('mix.walls', {}),
  ],
};
