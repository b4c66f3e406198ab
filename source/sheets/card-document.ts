import type { Batch } from '../batch/batch.js';
import { quietKelvin } from '../batch/run-sheet-plan.js';
import { canMeasureMiddle, phaseSeconds } from '../batch/run-sheet-times.js';
import { dialOf } from '../kitchen/dial.js';
import { measuredAmount } from '../recipe/amount.js';
import type { Ingredient, IngredientPhase } from '../recipe/recipe.js';
import { wallCare } from '../recipe/wall-care.js';
import { handLimitCelsius, rescueBelowCelsius, scorchLimitCelsius } from '../sugar/skin.js';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { type Message, message, type TextId } from '../texts/message.js';
import { householdAmount, type Weights } from '../units/household.js';
import { wallTime } from '../units/wall-clock.js';
import type { RunSheetInput } from './run-sheet.js';

export type CardList = { readonly heading: Message; readonly items: readonly Message[] };

/** The card before it is a terminal text or a page: everything in the order in which it is looked for. */
export type CardDocument = {
  readonly title: Message;
  readonly purpose: Message;
  readonly place: Message;
  readonly when: readonly Message[];
  readonly off: { readonly label: Message; readonly value: Message; readonly after: Message };
  /** Numbers on this thermometer, ascending; empty without one. */
  readonly numbers: readonly { readonly value: Message; readonly text: Message; readonly strong: boolean }[];
  /** Hottest first. `from` is null without a thermometer. */
  readonly stages: readonly {
    readonly from: Message | null;
    readonly feels: Message;
    readonly target: boolean;
  }[];
  readonly test: CardList;
  readonly way: readonly { readonly time: string | null; readonly text: Message }[];
  readonly roles: CardList;
  readonly lists: readonly CardList[];
  readonly burn: CardList;
  readonly fire: CardList;
  readonly power: CardList;
  readonly more: CardList;
  readonly blanks: readonly Message[];
  readonly foot: Message;
};

const numbered = (prefix: string, count: number): readonly Message[] =>
  Array.from({ length: count }, (_, index) => ({ id: `${prefix}.${index + 1}` as TextId }));

/** What the middle may show, on the thermometer that measures it; a correction never lets it be hotter. */
const limitShown = ({ kitchen }: Batch): number => {
  const limit = handLimitCelsius(kitchen.hands);
  const dial = dialOf(kitchen, 'middle');
  return Math.min(limit, dial.toShownCelsius(limit));
};

/** As the recipe writes it; by ounces and cups for somebody who weighs so. */
const amountFor = (one: Ingredient, weights: Weights | undefined): string =>
  weights === 'ounces' ? householdAmount(measuredAmount(one)) : one.amount;

const thingsAt = ({ recipe, kitchen }: Batch, phase: IngredientPhase): readonly string[] =>
  recipe.ingredients
    .filter((one) => one.phase === phase)
    .map((one) => `${amountFor(one, kitchen.weights)} ${one.name.toLowerCase()}`);

/** First test: the cup stands ready so far below the take-off, kelvin. */
const cupKelvin = 3;

const numbersOf = (batch: Batch): CardDocument['numbers'] => {
  const { target, boil, dial } = batch;
  if (!dial.present) return [];
  const row = (celsius: number, id: TextId, strong = false) => ({
    celsius,
    value: message('card.number', { celsius }),
    text: { id },
    strong,
  });
  return [
    row(boil.startsCelsius, 'card.boils'),
    row(target.takeOffCelsius - quietKelvin, 'card.quiet'),
    row(target.takeOffCelsius - cupKelvin, 'card.first-test'),
    row(target.takeOffCelsius, 'card.off-row', true),
    row(target.todayCelsius[1], 'card.past'),
    row(rescueBelowCelsius, 'card.rescue'),
    row(scorchLimitCelsius, 'card.never'),
  ]
    .filter(({ text, celsius }) => text.id !== 'card.rescue' || celsius > target.todayCelsius[1])
    .toSorted((one, other) => one.celsius - other.celsius);
};

const stagesOf = ({ stageFromCelsius, target, dial }: Batch): CardDocument['stages'] =>
  coldWaterOutcomes
    .filter((stage) => stage !== 'dissolves')
    .map((stage) => ({
      from: dial.present ? message('card.from', { celsius: stageFromCelsius[stage] }) : null,
      feels: { id: `feels.${stage}` as TextId },
      target: stage === target.feels,
    }))
    .toReversed();

const wayOf = (batch: Batch, run: RunSheetInput | null): CardDocument['way'] => {
  const { recipe, target, dial } = batch;
  const measured = dial.present;
  const middle = canMeasureMiddle(batch);
  const minutes = (seconds: number): number => Math.max(1, Math.round(seconds / 60));
  const boil = phaseSeconds(batch, 'boil');
  const time = (id: string): string | null => {
    const moment = run?.plan.moments.find((one) => one.id === id && one.batch === 1);
    return run === null || moment === undefined ? null : wallTime(run.pull.at + moment.at, run.pull.twelve);
  };
  const later = (phase: 'boil' | 'fold' | 'pull') => {
    const things = thingsAt(batch, phase);
    return things.length === 0 ? [] : [{ time: null, text: message('card.way.later', { things, phase }) }];
  };
  return [
    { time: time('mix'), text: message('card.way.mix', { things: thingsAt(batch, 'mix') }) },
    {
      time: time('light'),
      text: message('card.way.dissolve', { minutes: minutes(phaseSeconds(batch, 'dissolve').typical) }),
    },
    {
      time: time('still'),
      text: message('card.way.boil', {
        late: recipe.stir === 'late',
        care: wallCare(recipe),
        dial: measured,
        minutes: [minutes(boil.low), minutes(boil.high)],
      }),
    },
    ...later('boil'),
    {
      time: time('quiet'),
      text: message('card.way.near', { celsius: target.takeOffCelsius - quietKelvin, dial: measured }),
    },
    {
      time: time('off'),
      text: message('card.way.off', {
        celsius: target.takeOffCelsius,
        feels: target.feels,
        dial: measured,
      }),
    },
    { time: null, text: message('card.way.flavour', { things: thingsAt(batch, 'flavour') }) },
    { time: time('pour'), text: message('card.way.pour', { scrape: recipe.stir === 'late' }) },
    { time: time('fold'), text: message('card.way.fold') },
    ...later('fold'),
    { time: null, text: message('card.way.hands', { celsius: limitShown(batch), dial: middle }) },
    { time: time('pull'), text: message('card.way.pull') },
    ...later('pull'),
    {
      time: time('cut'),
      text: message('card.way.cut', { cut: batch.yield.cutMillimetres, damp: batch.room?.damp === true }),
    },
  ];
};

const listsOf = (batch: Batch): readonly CardList[] => [
  {
    heading: message('card.heading.list', { number: 1 }),
    items: [
      message('card.list.1.1'),
      message('card.list.1.2'),
      message('card.list.1.3'),
      message('card.list.1.4', { litres: batch.pot.neededLitres }),
      message('card.list.1.5'),
      message('card.list.1.6', batch.recipe.allergens),
    ],
  },
  { heading: message('card.heading.list', { number: 2 }), items: numbered('card.list.2', 5) },
  {
    heading: message('card.heading.list', { number: 3 }),
    items: [
      message('card.list.3.1', { celsius: limitShown(batch), dial: canMeasureMiddle(batch) }),
      message('card.list.3.2'),
      message('card.list.3.3', { hands: batch.recipe.hands }),
      message('card.list.3.4'),
      message('card.list.3.5'),
      message('card.list.3.6'),
    ],
  },
];

/** The card of this batch; `run`: with the times of a run sheet. */
export const cardDocument = (batch: Batch, run: RunSheetInput | null): CardDocument => {
  const { target, dial, air, recipe } = batch;
  return {
    title: message('card.title', { name: recipe.name }),
    purpose: message('card.for'),
    place: message('card.place', {
      boils: air.waterBoilsCelsius,
      id: dial.present ? dial.id : null,
      basis: dial.basis,
      unit: dial.unit,
    }),
    when:
      run === null
        ? []
        : [
            message('card.date', { date: run.pull.date }),
            message('card.pull', { time: wallTime(run.pull.at, run.pull.twelve) }),
          ],
    off: {
      label: message('card.off.label'),
      value: dial.present
        ? message('card.off', { celsius: target.takeOffCelsius })
        : message('card.off.blind', { feels: target.feels }),
      after: message('card.off.then', {
        window: target.todayCelsius,
        feels: target.feels,
        dial: dial.present,
      }),
    },
    numbers: numbersOf(batch),
    stages: stagesOf(batch),
    test: {
      heading: message('card.heading.test'),
      items: [...numbered('card.test', 3), message('card.test.4', { feels: target.feels })],
    },
    way: wayOf(batch, run),
    roles: {
      heading: message('card.heading.roles'),
      items: [
        message('card.role.pot'),
        message('card.role.slab'),
        message('card.role.floor'),
        message('card.role.scribe'),
      ],
    },
    lists: listsOf(batch),
    burn: { heading: message('card.heading.burn'), items: numbered('card.burn', 4) },
    fire: { heading: message('card.heading.fire'), items: numbered('card.fire', 2) },
    power: { heading: message('card.heading.power'), items: numbered('card.power', 3) },
    more: { heading: message('card.heading.more'), items: numbered('card.more', 3) },
    blanks: [message('card.call'), message('card.here'), message('card.aider')],
    foot: message('card.foot'),
  };
};
