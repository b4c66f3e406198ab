import type { Batch } from '../batch/batch.js';
import { measuredAmount } from '../recipe/amount.js';
import type { IngredientPhase, PhaseId, Recipe } from '../recipe/recipe.js';
import { phaseIds } from '../recipe/recipe.js';
import { wallCare } from '../recipe/wall-care.js';
import { handLimitCelsius } from '../sugar/skin.js';
import { publishedStages } from '../sugar/stages.js';
import { type Message, message } from '../texts/message.js';

/** One part of a section. `words`: lines of the presenter's own; `box`: room to write. */
export type HandoutBlock =
  | { readonly kind: 'text'; readonly said: Message }
  | { readonly kind: 'list' | 'steps'; readonly items: readonly Message[] }
  | {
      readonly kind: 'table';
      readonly columns: readonly Message[];
      readonly rows: readonly (readonly Message[])[];
      /** The row to look at; null: none. */
      readonly marked: number | null;
    }
  | {
      readonly kind: 'words';
      readonly phases: readonly { readonly phase: PhaseId; readonly lines: readonly Message[] }[];
    }
  | { readonly kind: 'box'; readonly said: Message };

export type HandoutSection = {
  readonly heading: Message;
  readonly blocks: readonly HandoutBlock[];
  /** People can be hurt: it is not to be overlooked. */
  readonly warns: boolean;
};

export type Handout = {
  readonly title: Message;
  readonly about: Message | null;
  readonly lead: readonly Message[];
  readonly sections: readonly HandoutSection[];
  readonly foot: readonly Message[];
};

const text = (said: Message): HandoutBlock => ({ kind: 'text', said });
const section = (heading: Message, ...blocks: readonly HandoutBlock[]): HandoutSection => ({
  heading,
  blocks,
  warns: false,
});

const amountsOf = (batch: Batch): HandoutSection => {
  const rows = batch.recipe.ingredients.map((one) => {
    const amount = measuredAmount(one);
    return [
      message('handout.own', { text: one.name }),
      message('handout.metric', { ...amount, isWater: one.role === 'water' }),
      message('handout.household', amount),
      message(`handout.when.${one.phase}`),
    ];
  });
  return section(
    message('handout.heading.amounts'),
    {
      kind: 'table',
      columns: [
        message('handout.column.item'),
        message('handout.column.metric'),
        message('handout.column.household'),
        message('handout.column.when'),
      ],
      rows,
      marked: null,
    },
    text(
      message('handout.makes', {
        pieces: batch.yield.pieces.typical,
        grams: batch.recipe.piece.grams,
      }),
    ),
  );
};

const kitOf = ({ recipe, pot, yield: yields }: Batch): HandoutSection =>
  section(message('handout.heading.kit'), {
    kind: 'list',
    items: [
      message('handout.kit.pot', { litres: pot.neededLitres }),
      message('handout.kit.hot'),
      message('handout.kit.tray', { surface: recipe.surface }),
      message('handout.kit.test'),
      message('handout.kit.wrap', { squares: yields.wrappingSquares }),
    ],
  });

const heatOf = ({ target }: Batch): HandoutSection =>
  section(message('handout.heading.hot'), {
    kind: 'list',
    items: [
      message('handout.hot.target', {
        low: target.seaLevelCelsius[0],
        high: target.seaLevelCelsius[1],
        feels: target.feels,
      }),
      message('handout.hot.check'),
      message('handout.hot.shift'),
      message('handout.hot.early', { kelvin: target.carryOverKelvin }),
    ],
  });

const namesIn = (recipe: Recipe, phase: IngredientPhase): readonly string[] =>
  recipe.ingredients.filter((one) => one.phase === phase).map(({ name }) => name);

const stepsOf = ({ recipe, yield: yields }: Batch): HandoutSection => {
  const [boil, flavour, fold, pull] = (['boil', 'flavour', 'fold', 'pull'] as const).map((phase) =>
    namesIn(recipe, phase),
  ) as [readonly string[], readonly string[], readonly string[], readonly string[]];
  const starch = recipe.ingredients.some((one) => one.role === 'starch');
  const alcohol = recipe.ingredients.some((one) => one.phase === 'flavour' && one.alcohol);
  const only = (items: readonly string[], said: Message): readonly Message[] =>
    items.length === 0 ? [] : [said];
  return section(message('handout.heading.steps'), {
    kind: 'steps',
    items: [
      message('handout.step.start'),
      message('handout.step.mix', { items: namesIn(recipe, 'mix'), starch }),
      message('handout.step.dissolve'),
      message(`handout.step.wall.${wallCare(recipe)}`),
      message(recipe.stir === 'late' ? 'handout.step.stir' : 'handout.step.still'),
      ...only(boil, message('handout.step.boil', { items: boil })),
      message('handout.step.slow'),
      ...only(flavour, message('handout.step.flavour', { items: flavour, alcohol })),
      message('handout.step.pour', { scrape: starch }),
      message('handout.step.fold'),
      ...only(fold, message('handout.step.fold-add', { items: fold })),
      message('handout.step.wait', {
        child: handLimitCelsius('children'),
        adult: handLimitCelsius('visitors'),
      }),
      message('handout.step.pull', { hands: recipe.hands }),
      ...only(pull, message('handout.step.pull-add', { items: pull })),
      message('handout.step.cut', {
        ropeMillimetres: recipe.piece.ropeMillimetres,
        cutMillimetres: yields.cutMillimetres,
      }),
      message('handout.step.wrap', { dust: recipe.dust }),
    ],
  });
};

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

const testOf = ({ target }: Batch): HandoutSection =>
  section(
    message('handout.heading.test'),
    text(message('handout.test.how')),
    {
      kind: 'table',
      columns: [
        message('handout.column.stage'),
        message('handout.column.celsius'),
        message('handout.column.fahrenheit'),
        message('handout.column.drop'),
      ],
      rows: publishedStages.map(({ stage, fahrenheit: [low, high] }) => [
        message('handout.stage', { stage, aim: stage === target.feels }),
        message('handout.span', { low: celsius(low), high: celsius(high) }),
        message('handout.span', { low, high }),
        message('handout.drop', { stage }),
      ]),
      marked: publishedStages.findIndex(({ stage }) => stage === target.feels),
    },
    text(message('handout.stages.foot')),
    text(message('handout.test.short')),
  );

const care: HandoutSection = {
  heading: message('handout.heading.care'),
  warns: true,
  blocks: [
    {
      kind: 'list',
      items: [
        message('handout.care.stick'),
        message('handout.care.children'),
        message('handout.care.touch'),
        message('handout.care.foam'),
        message('handout.care.fire'),
        message('handout.care.floor'),
      ],
    },
  ],
};

const aid: HandoutSection = {
  heading: message('handout.heading.aid'),
  warns: true,
  blocks: [
    {
      kind: 'steps',
      items: [
        message('handout.aid.water'),
        message('handout.aid.rings'),
        message('handout.aid.warm'),
        message('handout.aid.cover'),
        message('handout.aid.call'),
      ],
    },
    text(message('handout.aid.source')),
  ],
};

const allergensOf = ({ allergens }: Recipe): HandoutSection => {
  const { contains, check, unknown } = allergens;
  const none = contains.length === 0 && check.length === 0 && !unknown;
  return {
    heading: message('handout.heading.allergens'),
    warns: true,
    blocks: [
      {
        kind: 'list',
        items: [
          ...(contains.length === 0 ? [] : [message('handout.allergens.contains', { items: contains })]),
          ...(check.length === 0 ? [] : [message('handout.allergens.check', { items: check })]),
          ...(unknown ? [message('handout.allergens.unknown')] : []),
          ...(none ? [message('handout.allergens.none')] : []),
          message('handout.allergens.young'),
        ],
      },
    ],
  };
};

const wordsOf = ({ cues }: Recipe): HandoutSection => {
  const phases = phaseIds.flatMap((phase) => {
    const lines = (cues[phase] ?? []).map((line) => message('handout.own', { text: line }));
    return lines.length === 0 ? [] : [{ phase, lines }];
  });
  return section(
    message('handout.heading.words'),
    ...(phases.length === 0 ? [] : [{ kind: 'words', phases } as const]),
    { kind: 'box', said: message('handout.words.box') },
  );
};

/**
 * The page for the audience, as what is to be said and in which order: for a home kitchen of which nothing is known,
 * so for sea level, with the rule that fits it to any height and thermometer. Pure.
 */
export const handoutOf = (batch: Batch): Handout => ({
  title: message('handout.title', { name: batch.recipe.name }),
  about: batch.recipe.about === '' ? null : message('handout.own', { text: batch.recipe.about }),
  lead: [message('handout.defer'), message('handout.who')],
  sections: [
    amountsOf(batch),
    kitOf(batch),
    heatOf(batch),
    care,
    stepsOf(batch),
    testOf(batch),
    aid,
    allergensOf(batch.recipe),
    section(message('handout.heading.keep'), text(message('handout.keep'))),
    section(message('handout.heading.clean'), text(message('handout.clean'))),
    wordsOf(batch.recipe),
  ],
  foot: [message('handout.foot')],
});
