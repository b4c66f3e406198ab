import type { Batch } from '../batch/batch.js';
import { effectOf } from '../batch/effect.js';
import { measuredAmount } from '../recipe/amount.js';
import type { Ingredient, IngredientPhase } from '../recipe/recipe.js';
import { handLimitCelsius } from '../sugar/skin.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { beside, sheetColumns, wrapped } from './layout.js';

export { planExplain } from './plan-explain.js';
export { type PlanJson, planJson } from './plan-json.js';

/** One number of the plan and the one line of reason for it. */
type Row = { readonly label: Message; readonly value: Message; readonly why: Message };

const labelColumn = 11;
const massColumn = 11;
/** What one person wraps in a minute: our judgement, 4-6 in practice. */
const wrapsAMinute = 5;

const phases: readonly IngredientPhase[] = ['mix', 'boil', 'flavour', 'fold', 'pull'];

/** Grams first, for they are what the sums are made of; by ounces and cups as well for somebody who weighs so. */
const ingredientLine = (one: Ingredient, householdCells: number, printer: Printer): readonly string[] => {
  const { amount, name } = one;
  const mass = printer.exactGrams(one.grams).padStart(massColumn - 2);
  if (printer.weights !== 'ounces')
    return wrapped(
      `${mass}  ${words(message('plan.written', { amount, name }), printer)}`,
      sheetColumns,
      massColumn,
    );
  const household = printer.household(measuredAmount(one)).padEnd(householdCells);
  return wrapped(
    `${mass}  ${household}  ${words(message('plan.name', { name }), printer)}`,
    sheetColumns,
    massColumn + householdCells + 2,
  );
};

const ingredientLines = (batch: Batch, printer: Printer): readonly string[] => {
  const { ingredients } = batch.recipe;
  const cells = Math.max(...ingredients.map((one) => printer.household(measuredAmount(one)).length));
  return phases.flatMap((phase) => {
    const here = ingredients.filter((ingredient) => ingredient.phase === phase);
    if (here.length === 0) return [];
    return [
      words(message(`plan.into.${phase}`), printer),
      ...here.flatMap((one) => ingredientLine(one, cells, printer)),
    ];
  });
};

/** What the cups and spoons of these lines hold, once. */
const measureLines = (printer: Printer): readonly string[] =>
  printer.weights === 'ounces' ? ['', ...wrapped(words(message('plan.measures'), printer))] : [];

const readings = ({ target, boil, air, dial, kitchen }: Batch): readonly Row[] => [
  {
    label: message('plan.place.label'),
    value: message('plan.place', { boils: air.waterBoilsCelsius, altitudeMetres: air.altitudeMetres }),
    why: message('plan.place.why', { from: air.from }),
  },
  {
    label: message('plan.dial.label'),
    value: message('plan.dial', { id: dial.present ? dial.id : null }),
    why: message('plan.dial.why', {
      basis: dial.basis,
      kelvin: dial.toShownCelsius(target.aimCelsius) - target.aimCelsius,
      sd: dial.sdKelvin,
    }),
  },
  {
    label: message('plan.boil.label'),
    value: message('plan.boil', { starts: boil.startsCelsius }),
    why: message('plan.boil.why', { water: boil.waterToBoilAwayGrams }),
  },
  {
    label: message('plan.target.label'),
    value: message('plan.target', { window: target.todayCelsius, feels: target.feels }),
    why: message('plan.target.why', {
      seaLevel: target.seaLevelCelsius,
      kelvin: target.seaLevelCelsius[0] - target.todayCelsius[0],
    }),
  },
  {
    label: message('plan.takeoff.label'),
    value: message('plan.takeoff', { celsius: target.takeOffCelsius }),
    why: message('plan.takeoff.why', {
      kelvin: target.carryOverKelvin,
      aim: target.aimCelsius,
      stove: kitchen.stove,
    }),
  },
];

const results = (batch: Batch): readonly Row[] => {
  const { candy, kitchen, recipe, yield: yields } = batch;
  const { expectedGrams, pieces, portions } = yields;
  return [
    {
      label: message('plan.candy.label'),
      value: message('plan.candy', { firmness: candy.firmness, moisture: candy.moistureFraction }),
      why: message('plan.candy.why', {
        range: candy.firmnessRange,
        less: effectOf(batch, -2).firmness,
        more: effectOf(batch, 2).firmness,
      }),
    },
    {
      label: message('plan.yield.label'),
      value: message('plan.yield', { grams: expectedGrams, pieces }),
      why: message('plan.yield.why', { grams: expectedGrams, pieces }),
    },
    {
      label: message('plan.portions.label'),
      value: message('plan.portions', portions),
      why: message('plan.portions.why', {
        limit: handLimitCelsius(kitchen.hands),
        stiff: candy.pullsCelsius[0],
      }),
    },
    {
      label: message('plan.rope.label'),
      value: message('plan.rope', {
        metres: yields.ropeMetres,
        millimetres: recipe.piece.ropeMillimetres,
        cut: yields.cutMillimetres,
      }),
      why: message('plan.rope.why', { grams: recipe.piece.grams }),
    },
    {
      label: message('plan.papers.label'),
      value: message('plan.papers', { squares: yields.wrappingSquares }),
      why: message('plan.papers.why', { minutes: pieces.typical / wrapsAMinute }),
    },
    {
      label: message('plan.allergens.label'),
      value: message('plan.allergens', recipe.allergens),
      why: message('plan.allergens.why'),
    },
  ];
};

const potRow = ({ pot }: Batch): Row => ({
  label: message('plan.pot.label'),
  value: message('plan.pot', { needed: pot.neededLitres, have: pot.haveLitres }),
  why: message('plan.pot.why', { depth: pot.depthMillimetres }),
});

const rowLines = ({ label, value, why }: Row, printer: Printer): readonly string[] => [
  ...beside(words(label, printer), words(value, printer.inBoth()), labelColumn),
  ...beside('', words(why, printer), labelColumn),
];

/** Nobody starts weighing before these are read. */
const first: ReadonlySet<string> = new Set(['plan.note.pot', 'plan.note.dry', 'plan.note.air']);

const firstLines = (batch: Batch, printer: Printer): readonly string[] =>
  batch.notes.filter(({ id }) => first.has(id)).flatMap((note) => ['', ...wrapped(words(note, printer))]);

const noteLines = (batch: Batch, printer: Printer): readonly string[] => {
  const others = batch.notes.filter(({ id }) => !first.has(id));
  return others.length === 0
    ? []
    : [
        '',
        words(message('plan.notes.label'), printer),
        ...others.flatMap((note) => wrapped(`- ${words(note, printer)}`, sheetColumns, 2)),
      ];
};

/**
 * The plan for people, lines of at most 78 columns: what to weigh, the temperatures on this thermometer, what to expect,
 * each with one line of reason, and what is odd. `printer` writes numbers as the cook's thermometer shows them.
 */
export const planText = (batch: Batch, printer: Printer): string =>
  [
    words(message('plan.title', { name: batch.recipe.name }), printer),
    ...firstLines(batch, printer),
    '',
    ...ingredientLines(batch, printer),
    ...measureLines(printer),
    '',
    ...[potRow(batch), ...readings(batch)].flatMap((row) => rowLines(row, printer)),
    '',
    ...results(batch).flatMap((row) => rowLines(row, printer)),
    ...noteLines(batch, printer),
    '',
  ].join('\n');
