/** Seeded cooks over recipes, stoves, heights, thermometers and surprises, and what must hold in each of them. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Batch } from '../source/batch/batch.js';
import { batchOf } from '../source/batch/batch-of.js';
import type { Advice } from '../source/cook/advice.js';
import type { Kitchen, StoveKind, Thermometer } from '../source/kitchen/kitchen.js';
import { parseRecipe } from '../source/recipe/parse.js';
import type { Recipe } from '../source/recipe/recipe.js';
import { type Chance, chanceFrom } from '../source/rehearsal/chance.js';
import { type Habits, habitsOf } from '../source/rehearsal/person/habits.js';
import { type Moment, type Rehearsal, rehearse } from '../source/rehearsal/rehearse.js';
import { simulatedCook } from '../source/rehearsal/simulated-cook.js';
import { type SurpriseName, surpriseNames } from '../source/rehearsal/surprises.js';
import { handLimitCelsius } from '../source/sugar/skin.js';
import { coldWaterOutcomes, type Stage, stageWithin } from '../source/sugar/stages.js';
import { saturationCelsius } from '../source/sugar/water.js';
import { words } from '../source/texts/message.js';
import { printer } from '../source/units/printer.js';
import { fromCelsius, toCelsius } from '../source/units/temperature.js';

export const dialKinds = ['calibrated', 'checked at the start', 'unchecked', 'none'] as const;
export type DialKind = (typeof dialKinds)[number];

export type Scenario = {
  readonly seed: number;
  readonly name: string;
  readonly recipe: Recipe;
  readonly kitchen: Kitchen;
  readonly dial: DialKind;
  readonly surprise: SurpriseName | null;
  readonly habits: Habits;
};

const stoves: readonly StoveKind[] = ['gas', 'coil', 'glass-ceramic', 'induction'];

export const bundled: ReadonlyArray<{ readonly name: string; readonly recipe: Recipe }> = readdirSync(
  'recipes',
)
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => {
    const parsed = parseRecipe(readFileSync(`recipes/${file}`, 'utf8'), file);
    if ('problems' in parsed) throw new Error(`${file} cannot be read`);
    return { name: file.replace('.yaml', ''), recipe: parsed.recipe };
  });

const pascalAt = (metres: number): number => 101_325 * (1 - 2.25577e-5 * metres) ** 5.25588;

/** What a thermometer shows that is off by a line nobody made: read in ice and in boiling water, to a whole degree. */
const thermometers = (dial: DialKind, chance: Chance, metres: number): readonly Thermometer[] => {
  if (dial === 'none') return [];
  const kind = chance.even() < 0.7 ? 'dial' : 'digital';
  const unit = chance.even() < 0.7 ? 'F' : 'C';
  const offset = (kind === 'dial' ? 2 : 0.6) * chance.normal();
  const slope = 1 + 0.01 * chance.normal();
  const read = (celsius: number): number =>
    toCelsius(Math.round(fromCelsius(celsius * slope + offset, unit)), unit);
  const calibrated = dial === 'calibrated';
  return [
    {
      id: 'dial',
      kind,
      use: 'both',
      unit,
      iceShownCelsius: calibrated ? read(0) : null,
      boilsShownCelsius: calibrated ? read(saturationCelsius(pascalAt(metres))) : null,
      checked: null,
      stemMillimetres: 20,
    },
  ];
};

/** `surprise` undefined: any of them, or none, by the seed. */
export const scenarioOf = (
  seed: number,
  fixed: { readonly dial?: DialKind; readonly surprise?: SurpriseName | null } = {},
): Scenario => {
  const chance = chanceFrom(seed * 7919 + 13);
  const { name, recipe } = bundled[seed % bundled.length] as (typeof bundled)[number];
  const stove = stoves[Math.floor(seed / bundled.length) % stoves.length] as StoveKind;
  const metres = Math.round(3000 * chance.even());
  const kind = chance.even();
  const picked: DialKind =
    kind < 0.5 ? 'calibrated' : kind < 0.7 ? 'checked at the start' : kind < 0.85 ? 'unchecked' : 'none';
  const dial = fixed.dial ?? picked;
  const drawn =
    chance.even() < 0.4 ? null : (surpriseNames[Math.floor(chance.even() * surpriseNames.length)] ?? null);
  const wanted = fixed.surprise === undefined ? drawn : fixed.surprise;
  const surprise = wanted === 'thermometer-off' && dial === 'none' ? null : wanted;
  const kitchen: Kitchen = {
    altitudeMetres: metres,
    pressurePascal: null,
    stove,
    heat: chance.even() < 0.6 ? ['low', 'medium', 'high'] : ['1', '2', '3', '4', '5', '6', '7', '8', '9'],
    pot: { litres: 5, diameterMillimetres: 180 },
    thermometers: thermometers(dial, chance, metres),
    room: { celsius: 17 + 7 * chance.even(), humidity: 0.35 + 0.3 * chance.even() },
    unit: 'F',
    hands: chance.even() < 0.7 ? 'visitors' : chance.even() < 0.5 ? 'bare' : 'children',
  };
  const habits = { ...habitsOf(seed), checks: dial === 'checked at the start' };
  return { seed, name, recipe, kitchen, dial, surprise, habits };
};

export type Ran = {
  readonly scenario: Scenario;
  readonly rehearsal: Rehearsal;
  /** Promises that were broken, in words; empty: all held. */
  readonly broken: readonly string[];
  readonly warnings: readonly string[];
  /** Warnings whose cause was not in the pot. */
  readonly idle: readonly string[];
  readonly inStage: boolean;
  readonly inWindow: boolean;
  /** Where it rested against the window: kelvin below its floor (-) or above its ceiling (+). */
  readonly offKelvin: number;
  /** Null without a thermometer, or where nobody took it off by the dial. */
  readonly budget: Budget | null;
};

/** What a take-off by the dial was off by, part by part, kelvin; together: where it rested over where it was aimed. */
export type Budget = {
  /** The thermometer's own error, that no reading tells of. */
  readonly thermometer: number;
  /** What the program believed of the syrup, beyond that error: scatter, whole degrees, lag, forecast. */
  readonly estimate: number;
  /** Taken off earlier or later than the mark: hands, a single high reading, a doubt. */
  readonly hands: number;
  /** Fingers that felt it short and moved the mark up. */
  readonly fingers: number;
  /** The climb on the trivet against the one that was reckoned with, and water lost while it stood. */
  readonly climb: number;
  /** Weather: the window itself lies elsewhere than the altitude says. */
  readonly air: number;
};
export const budgetParts = ['thermometer', 'estimate', 'hands', 'fingers', 'climb', 'air'] as const;

const plain = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });

/** Says so when there is no sentence, or nothing that leads on. */
const nothingToDo = (advice: Advice): string | null => {
  if (words(advice.say, plain).trim() === '') return 'no sentence';
  if (advice.phase === 'over') return null;
  const leads =
    advice.canBeDone ||
    advice.question !== null ||
    advice.waits !== null ||
    advice.changesAt !== null ||
    advice.nextReadingSeconds !== null ||
    advice.offTheHeat ||
    advice.timers.some(({ due }) => due) ||
    advice.step === 'test.drop' ||
    advice.step === 'hands.measure' ||
    advice.step?.startsWith('trouble.') === true;
  return leads ? null : `${advice.phase} ${advice.step} leads nowhere`;
};

const hasWarning = (advice: Advice, ...ids: readonly string[]): boolean =>
  advice.warnings.some(({ id }) => ids.includes(id));

type ReadAt = { readonly t: number; readonly celsius: number };

/** Watches one cook from outside: events, advice, and the truth that nobody in it sees. */
class Watch {
  readonly broken: string[] = [];
  readonly raised = new Map<string, boolean>();
  #readings: ReadAt[] = [];
  #handsFree = false;
  #heardAt = 0;
  #lastRead: ReadAt | null = null;
  #ringOff = false;
  #stillFrom: number | null = null;
  #pouredAt: number | null = null;
  #off: Off | null = null;
  readonly #batch: Batch;

  constructor(private readonly scenario: Scenario) {
    this.#batch = batchOf(scenario.recipe, scenario.kitchen);
  }

  readonly see = (moment: Moment): void => {
    const { before, after, event, t } = moment;
    for (const advice of [before, after]) {
      const nothing = nothingToDo(advice);
      if (nothing !== null) this.#break(t, nothing);
      this.#hands(advice, t);
    }
    this.#silence(moment);
    this.#ringLeftOn(moment);
    if (event === null) return;
    this.#heardAt = t;
    if (event.kind === 'pot' && !event.on) this.#off = offBy(moment);
    if (event.kind === 'done' && event.step === 'pour.pour') this.#pouredAt = t;
    if (event.kind === 'done' && event.step === 'flavour.sink') this.#ringOff = true;
    if (['heat', 'pot', 'lid', 'water', 'trouble', 'cold water', 'undo'].includes(event.kind))
      this.#stillFrom = null;
    if (event.kind === 'undo') this.#lastRead = null;
    if (event.kind === 'heat') this.#ringOff = event.setting === 'off';
    if (event.kind === 'trouble') this.#reported(event.name, after, t);
    if (event.kind === 'reading' && event.of === 'syrup') this.#read(moment);
    if (event.kind === 'reading' && event.of === 'middle') this.#middle(moment);
    if (event.kind === 'cold water') this.#tested(moment);
    if (event.kind === 'answer' && event.question === 'hands.crumb' && event.answer === 'yes')
      this.#handsFree = true;
    for (const { id } of after.warnings) {
      if (this.raised.get(id) !== true) this.raised.set(id, this.#isTrue(id, moment));
    }
  };

  get off(): Off | null {
    return this.#off;
  }

  #ringLeftOn({ before, t }: Moment): void {
    const bare = this.#pouredAt !== null && !this.#ringOff && t - this.#pouredAt > 61;
    if (bare && before.phase !== 'over' && !hasWarning(before, 'heat-left-on'))
      this.#break(t, 'the bare ring is on and nothing said');
  }

  /** Left alone on the ring for eight minutes, and no hotter by a reading. */
  #stands({ after, before, t }: Moment, celsius: number): void {
    const first = this.#readings.find((one) => this.#stillFrom !== null && one.t >= this.#stillFrom);
    this.#stillFrom ??= t;
    if (first === undefined || before.phase !== 'boil' || after.phase !== 'boil') return;
    const left = this.#readings.filter(({ t: at }) => at > t - 60).length > 1;
    if (t - first.t > 480 && left && celsius - first.celsius < -1 && !hasWarning(after, 'stalled'))
      this.#break(t, `falls for ${Math.round(t - first.t)} s and nothing said`);
  }

  #break(t: number, what: string): void {
    this.broken.push(`${Math.round(t)} s: ${what}`);
  }

  #hands(advice: Advice, t: number): void {
    const inHands = [
      'pull.grease',
      'pull.add',
      'pull.stretch',
      'pull.droop',
      'pull.stiff',
      'cut.rope',
      'cut.cut',
    ];
    if (advice.step !== null && inHands.includes(advice.step) && !this.#handsFree)
      this.#break(t, `${advice.step} before the gate to hands`);
  }

  #silence({ before, t }: Moment): void {
    const onHeat =
      (before.phase === 'boil' || before.phase === 'dissolve') && before.nextReadingSeconds !== null;
    if (onHeat && !this.#ringOff && t - this.#heardAt > 241 && !hasWarning(before, 'unattended'))
      this.#break(t, `silent for ${Math.round(t - this.#heardAt)} s and nothing said`);
  }

  #reported(name: string, after: Advice, t: number): void {
    const told = after.troubles.some((one) => one.name === name && one.instruction !== null);
    if (!told || !hasWarning(after, name)) this.#break(t, `reported ${name} is not announced`);
  }

  #read(moment: Moment): void {
    const { event, before, after, truth, t } = moment;
    if (event?.kind !== 'reading') return;
    // With what today's checks told of it.
    const celsius = moment.cook.batch.dial.toTrueCelsius(toCelsius(event.value, event.unit));
    // What the program asks about is not believed yet.
    if (after.question?.kind === 'reading') return;
    this.#readings = [...this.#readings.slice(-8), { t, celsius }];
    this.#lastRead = { t, celsius };
    this.#stands(moment, celsius);
    if (!['boil', 'dissolve'].includes(before.phase)) return;
    // Fingers that felt it short have moved the mark up.
    const ceiling = truth.windowCelsius[1] + moment.cook.movedKelvin;
    if (
      celsius > ceiling + 1.5 &&
      truth.celsius > ceiling + 1.5 &&
      !after.offTheHeat &&
      !hasWarning(after, 'past-window')
    )
      this.#break(t, `reads ${celsius.toFixed(1)}, past the window, and nothing said`);
    if (celsius >= 150.5 && !hasWarning(after, 'scorch-near'))
      this.#break(t, 'near scorching and nothing said');
    const since = this.#readings.findLast((one) => one.t <= t - 45);
    const rate = since === undefined ? 0 : (celsius - since.celsius) / (t - since.t);
    const near = celsius > truth.windowCelsius[0] - 7;
    const fast = rate > 4.2 / 60 && truth.kelvinPerSecond > 4 / 60;
    if (near && fast && !after.offTheHeat && !hasWarning(after, 'overshoot-near', 'scorch-near'))
      this.#break(t, `rises ${(rate * 60).toFixed(1)} K a minute near the end and nothing said`);
  }

  #middle({ event, after, t }: Moment): void {
    if (event?.kind !== 'reading') return;
    const { dial } = this.#batch;
    const shown = toCelsius(event.value, event.unit);
    // Towards the safe side: what is shown and what is corrected, the higher of the two.
    const celsius = Math.max(shown, dial.toTrueCelsius(shown));
    const limit = handLimitCelsius(this.scenario.kitchen.hands);
    if (celsius <= limit) this.#handsFree = true;
    else if (after.step !== 'hands.measure' && after.phase === 'fold')
      this.#break(t, 'a hot middle opens the gate');
  }

  #tested({ event, after, t }: Moment): void {
    if (event?.kind !== 'cold water' || event.outcome === 'unsure' || this.#lastRead === null) return;
    if (t - this.#lastRead.t > 180 || this.scenario.dial !== 'calibrated') return;
    const stage = stageWithin(this.#lastRead.celsius, this.#batch.stageFromCelsius);
    const apart = Math.abs(coldWaterOutcomes.indexOf(event.outcome) - stageIndex(stage));
    if (apart > 1 && !hasWarning(after, 'disagreement'))
      this.#break(t, `dial says ${stage}, fingers ${event.outcome}, and nothing said`);
  }

  /** Whether the pot itself had what a warning speaks of. */
  #isTrue(id: string, { truth, event, t }: Moment): boolean {
    if (event?.kind === 'trouble') return true;
    switch (id) {
      case 'overshoot-near':
        return truth.kelvinPerSecond > 2 / 60;
      case 'stalled':
        return truth.kelvinPerSecond < 0.5 / 60;
      case 'past-window':
        return truth.celsius > truth.windowCelsius[1];
      case 'disagreement':
        return Math.abs((this.#lastRead?.celsius ?? truth.celsius) - truth.celsius) > 2;
      case 'unattended':
        return t - this.#heardAt > 60;
      case 'pot-too-small':
      case 'stem-uncovered':
      case 'heat-left-on':
        return true;
      default:
        return false;
    }
  }
}

type Off = {
  readonly trueCelsius: number;
  readonly believedBoilCelsius: number;
  readonly takeOffCelsius: number;
  readonly dialErrorKelvin: number;
};

/** Null where it came off by feel. */
const offBy = ({ before: { temperature, forecast }, truth }: Moment): Off | null =>
  temperature === null || forecast === null
    ? null
    : {
        trueCelsius: truth.celsius,
        believedBoilCelsius: temperature.celsius,
        takeOffCelsius: forecast.takeOffCelsius,
        dialErrorKelvin: truth.dialErrorKelvin ?? 0,
      };

const budgetOf = (off: Off | null, { cook, truth }: Rehearsal): Budget | null => {
  if (off === null || truth.restCelsius === null || truth.dialErrorKelvin === null) return null;
  const { trueCelsius, believedBoilCelsius, takeOffCelsius, dialErrorKelvin } = off;
  const { aimCelsius, todayCelsius } = cook.batch.target;
  const reckoned = aimCelsius + cook.movedKelvin - takeOffCelsius;
  return {
    thermometer: -dialErrorKelvin,
    estimate: trueCelsius + dialErrorKelvin - believedBoilCelsius,
    hands: believedBoilCelsius - takeOffCelsius,
    fingers: cook.movedKelvin,
    climb: truth.restCelsius - trueCelsius - reckoned,
    air: todayCelsius[0] - truth.windowCelsius[0],
  };
};

const stageIndex = (stage: Stage): number =>
  stage === 'past hard crack' ? coldWaterOutcomes.length : coldWaterOutcomes.indexOf(stage);

const offWindow = (celsius: number, [floor, ceiling]: readonly [number, number]): number =>
  celsius < floor ? celsius - floor : celsius > ceiling ? celsius - ceiling : 0;

export const run = (scenario: Scenario): Ran => {
  const watch = new Watch(scenario);
  const rehearsal = rehearse({ ...scenario, version: 'scenario', onTyped: watch.see });
  const { truth } = rehearsal;
  const rest = truth.restCelsius ?? Number.NaN;
  const broken = [...watch.broken];
  if (!rehearsal.ended) broken.push(`stands still at ${rehearsal.cook.log.at(-1)?.kind}`);
  return {
    scenario,
    rehearsal,
    broken,
    warnings: [...watch.raised.keys()],
    idle: [...watch.raised].filter(([, isTrue]) => !isTrue).map(([id]) => id),
    inStage: truth.restStage === scenario.recipe.target.feels,
    inWindow: rest >= truth.windowCelsius[0] && rest <= truth.windowCelsius[1],
    offKelvin: offWindow(rest, truth.windowCelsius),
    budget: budgetOf(watch.off, rehearsal),
  };
};

export type Naive = 'the book’s number' | 'today’s number';
export type Landed = { readonly inStage: boolean; readonly inWindow: boolean };

/**
 * The same pot, and somebody who takes it off when the dial first shows the target: as the book prints it, or as this
 * dial shows it here. Without a thermometer: when a drop in cold water first feels right, tried once a minute.
 */
export const naive = (scenario: Scenario, rule: Naive): Landed => {
  const batch = batchOf(scenario.recipe, scenario.kitchen);
  const table = simulatedCook(batch, scenario.seed, scenario.surprise);
  const say = (event: object): void =>
    table.happened({ seq: 0, t: 0, ...event } as Parameters<typeof table.happened>[0]);
  const goal =
    rule === 'today’s number'
      ? batch.dial.toShownCelsius(batch.target.todayCelsius[0])
      : scenario.recipe.target.celsius[0];
  const labels = scenario.kitchen.heat;
  say({ kind: 'heat', setting: labels[Math.floor((labels.length - 1) / 2)] });
  let t = 0;
  for (; t < 4 * 3600; ) {
    t += 20;
    table.advanceTo(t);
    const { truth } = { truth: table.truth() };
    if (truth.highestCelsius < batch.boil.startsCelsius) continue;
    const shown = table.dial();
    if (shown === null) {
      if (
        t % 60 === 0 &&
        coldWaterOutcomes.indexOf(table.coldWater()) >= coldWaterOutcomes.indexOf(batch.target.feels)
      )
        break;
    } else if (shown.value >= Math.round(fromCelsius(goal, shown.unit))) break;
  }
  table.advanceTo(t + 4);
  say({ kind: 'pot', on: false });
  table.advanceTo(t + 90);
  say({ kind: 'done', step: 'pour.pour' });
  const { restCelsius, restStage, windowCelsius } = table.truth();
  const rest = restCelsius ?? Number.NaN;
  return {
    inStage: restStage === batch.target.feels,
    inWindow: rest >= windowCelsius[0] && rest <= windowCelsius[1],
  };
};
