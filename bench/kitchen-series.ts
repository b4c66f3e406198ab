/** Cooks one after the other in the same simulated kitchen: what stays the same, what differs, who cooks. */
import type { Advice } from '../source/cook/advice.js';
import { advise } from '../source/cook/advise.js';
import type { Cook } from '../source/cook/cook.js';
import type { CookEvent, Happened } from '../source/cook/event.js';
import { interpret } from '../source/cook/interpret.js';
import { openCook } from '../source/cook/open.js';
import { step } from '../source/cook/step.js';
import type { Kitchen, StoveKind } from '../source/kitchen/kitchen.js';
import type { Recipe } from '../source/recipe/recipe.js';
import { boilOptions, type Pot, simulate } from '../source/rehearsal/boil.js';
import { type Chance, chanceFrom } from '../source/rehearsal/chance.js';
import { fromCelsius } from '../source/units/temperature.js';

const within = (chance: Chance, low: number, high: number): number => low + (high - low) * chance.even();

/** What is true of a kitchen and nobody in it knows: the same at every cook. */
export type TrueKitchen = {
  readonly kitchen: Kitchen;
  readonly fullWatts: number;
  readonly levelExponent: number;
  readonly baseJoulePerKelvin: number;
  readonly baseWattsPerKelvin: number;
  readonly lossWattsPerKelvin: number;
  /** Shown less true at 100 °C, and for each further kelvin. */
  readonly dialOffsetKelvin: number;
  readonly dialStretch: number;
  readonly boxShare: number;
  readonly pace: Readonly<Record<'fold' | 'pull' | 'cut', number>>;
  /** The fingers of this crew call a syrup firmer (+) than it is, kelvin. */
  readonly testerKelvin: number;
};

const stoves: readonly StoveKind[] = ['gas', 'coil', 'glass-ceramic', 'induction'];

/** A thermometer that nobody has checked, or one with its readings in ice and boiling water in the file. */
export const trueKitchen = (seed: number, checked: boolean): TrueKitchen => {
  const chance = chanceFrom(seed);
  const stove = stoves[Math.floor(chance.even() * stoves.length)] ?? 'coil';
  const usual = stove === 'gas' ? 2200 : 1150;
  // One that is off by more than twice as much is thrown away, not cooked with.
  const dialOffsetKelvin = (checked ? 1.5 : 2.5) * Math.min(2, Math.max(-2, chance.normal()));
  const dialStretch = 0.01 * chance.normal();
  const altitudeMetres = Math.round(within(chance, 0, 1800));
  const waterBoils = 100 - altitudeMetres / 300;
  const rounded = (celsius: number): number => (Math.round(celsius * 1.8 + 32) - 32) / 1.8;
  return {
    kitchen: {
      altitudeMetres,
      pressurePascal: null,
      stove,
      heat: ['low', 'medium', 'high'],
      pot: { litres: 4, diameterMillimetres: 200 },
      thermometers: [
        {
          id: 'dial',
          kind: 'dial',
          use: 'both',
          unit: 'F',
          iceShownCelsius: checked ? rounded(dialOffsetKelvin - 100 * dialStretch) : null,
          boilsShownCelsius: checked
            ? rounded(waterBoils + dialOffsetKelvin + dialStretch * (waterBoils - 100))
            : null,
          checked: null,
          stemMillimetres: 20,
        },
      ],
      room: { celsius: 20, humidity: 0.45 },
      unit: 'F',
      hands: 'visitors',
    },
    fullWatts: usual * within(chance, 0.75, 1.35),
    levelExponent: within(chance, 0.7, 1.5),
    baseJoulePerKelvin:
      (stove === 'gas' ? 350 : stove === 'induction' ? 450 : 600) * within(chance, 0.6, 1.8),
    baseWattsPerKelvin: within(chance, 20, 45),
    lossWattsPerKelvin: within(chance, 0.6, 1.3),
    dialOffsetKelvin,
    dialStretch,
    boxShare: within(chance, 0.8, 0.95),
    pace: {
      fold: Math.exp(0.3 * chance.normal()),
      pull: Math.exp(0.3 * chance.normal()),
      cut: Math.exp(0.3 * chance.normal()),
    },
    testerKelvin: chance.normal(),
  };
};

/** One cook that went wrong in a way that would teach nonsense. */
export type Odd = 'none' | 'knob not typed';

/** What came of one cook; Celsius is true. */
export type CookResult = {
  readonly events: readonly Happened[];
  readonly cook: Cook;
  readonly finished: boolean;
  /** Relative error of the forecast time to the floor, so many minutes before it was crossed; null where there was none. */
  readonly forecastError: Readonly<Record<number, number | null>>;
  /** The same of the first forecast that was given at all. */
  readonly firstForecastError: number | null;
  /** Where the syrup would have had to rest, and where it did. */
  readonly aimCelsius: number;
  readonly restCelsius: number;
  /** What the syrup still climbed when the pot last left the ring, kelvin. */
  readonly climbedKelvin: number | null;
  readonly tests: number;
  /** Rested within the window of the recipe. */
  readonly inWindow: boolean;
  /** Expected share in the box less the true one. */
  readonly shareError: number;
};

export const minutesBefore = [20, 10, 5, 2] as const;

/** How long a person takes over a step before saying that it is done, seconds. */
const takes: Readonly<Record<string, number>> = {
  'mix.ready': 240,
  'mix.dry': 90,
  'mix.wet': 150,
  'fold.wait': 150,
  'fold.again': 360,
  'pull.stretch': 330,
  'pull.stiff': 120,
  'cut.rope': 200,
  'cut.cut': 420,
  'wrap.rest': 700,
  'wrap.wrap': 600,
};

type Seen = { readonly t: number; readonly seconds: number };

class SeriesCook {
  cook: Cook;
  t = 0;
  readonly pot: Pot;
  readonly #chance: Chance;
  readonly #truth: TrueKitchen;
  readonly #foreseen: Seen[] = [];
  readonly #odd: Odd;
  #crossedAt: number | null = null;
  #floorCelsius = 0;
  #weighed = false;
  #lowered = false;
  #looksAt = 0;
  #peakBoil = 0;
  #offAtCelsius: number | null = null;
  tests = 0;

  constructor(recipe: Recipe, truth: TrueKitchen, kitchen: Kitchen, seed: number, odd: Odd) {
    this.#truth = truth;
    this.#odd = odd;
    this.#chance = chanceFrom(seed ^ 0x51e5);
    const chance = this.#chance;
    this.cook = openCook({
      kind: 'opened',
      recipe,
      kitchen,
      runSheet: null,
      seed: null,
      version: '0.0.0',
      from: null,
      seq: 1,
      t: 0,
    });
    const { batch, hob } = this.cook;
    this.pot = simulate(
      boilOptions({
        curve: batch.curve,
        curveShiftKelvin: 0.8 * chance.normal(),
        waterGrams: batch.waterGrams * (1 + 0.03 * chance.normal()),
        otherGrams: hob.otherGrams,
        stove: batch.kitchen.stove,
        stageFromCelsius: batch.stageFromCelsius,
        fullWatts: truth.fullWatts * (1 + 0.05 * chance.normal()),
        levelExponent: truth.levelExponent,
        baseJoulePerKelvin: truth.baseJoulePerKelvin,
        baseWattsPerKelvin: truth.baseWattsPerKelvin,
        lossWattsPerKelvin: truth.lossWattsPerKelvin,
        wander: { sd: within(chance, 0.02, 0.05), seconds: within(chance, 120, 600) },
        dial: { lagSeconds: within(chance, 8, 16), noiseSdKelvin: 0, offsetKelvin: 0, stepKelvin: 0 },
        testerSdKelvin: 2,
      }),
      seed,
    );
    this.#floorCelsius = batch.target.todayCelsius[0];
  }

  run(): CookResult {
    for (let turn = 0; turn < 600 && this.#advice().phase !== 'over'; turn += 1) this.#turn();
    const { batch } = this.cook;
    const [floor, ceiling] = batch.target.todayCelsius;
    const crossedAt = this.#crossedAt ?? Number.NaN;
    const errorAt = (minutes: number): number | null => {
      const wanted = crossedAt - 60 * minutes;
      const [nearest] = this.#foreseen.toSorted(
        (one, other) => Math.abs(one.t - wanted) - Math.abs(other.t - wanted),
      );
      if (nearest === undefined || !(Math.abs(nearest.t - wanted) < 12 * minutes)) return null;
      const left = crossedAt - nearest.t;
      return left > 0 ? Math.abs(nearest.seconds - left) / left : null;
    };
    const [first] = this.#foreseen;
    return {
      events: this.cook.log.slice(0, this.cook.length),
      cook: this.cook,
      finished: this.#advice().phase === 'over' && !this.cook.stopped,
      forecastError: Object.fromEntries(minutesBefore.map((minutes) => [minutes, errorAt(minutes)])),
      firstForecastError:
        first === undefined || !(crossedAt > first.t)
          ? null
          : Math.abs(first.seconds - (crossedAt - first.t)) / (crossedAt - first.t),
      aimCelsius: batch.target.aimCelsius,
      restCelsius: this.#peakBoil,
      climbedKelvin: this.#offAtCelsius === null ? null : this.#peakBoil - this.#offAtCelsius,
      tests: this.tests,
      shareError: Math.abs(
        batch.yield.expectedGrams.typical / batch.yield.cookedGrams - this.#truth.boxShare,
      ),
      inWindow: this.#peakBoil >= floor && this.#peakBoil <= ceiling,
    };
  }

  #advice(): Advice {
    return advise(this.cook, this.t);
  }

  #wait(seconds: number): void {
    const until = this.t + seconds;
    while (this.t < until) {
      const next = Math.min(until, this.t + 1);
      this.pot.advance(next - this.t);
      this.t = next;
      const { celsius, boilsCelsius } = this.pot.state();
      if (celsius > boilsCelsius - 0.5 && celsius >= this.#floorCelsius) this.#crossedAt ??= this.t;
      if (this.cook.pouredAt === null) this.#peakBoil = boilsCelsius;
      if (this.#crossedAt !== null || this.t < this.#looksAt) continue;
      this.#looksAt = this.t + 15;
      const ahead = this.#advice().forecast?.seconds.typical;
      if (ahead !== undefined) this.#foreseen.push({ t: this.t, seconds: ahead });
    }
  }

  #happen(event: CookEvent): void {
    this.cook = step(this.cook, { ...event, seq: (this.cook.log.at(-1)?.seq ?? 0) + 1, t: this.t });
    const { heat, potOn, lidOn } = this.cook;
    // Somebody turned the knob up in this cook and did not say so.
    this.pot.setHeat(this.#odd === 'knob not typed' && (heat?.level ?? 0) > 0 ? 1 : (heat?.level ?? 0));
    if (this.pot.state().potOn && potOn?.on === false && this.cook.pouredAt === null)
      this.#offAtCelsius = this.pot.state().boilsCelsius;
    this.pot.setPot(potOn?.on ?? true);
    this.pot.setLid(lidOn?.on ?? false);
  }

  #type(typed: string): void {
    const event = interpret(typed, this.#advice());
    if (event.kind === 'queried') throw new Error(`"${typed}" at ${this.#advice().step}`);
    this.#happen(event);
  }

  #shown(): string {
    const celsius = this.pot.dialCelsius();
    const { dialOffsetKelvin, dialStretch } = this.#truth;
    const shown = celsius + dialOffsetKelvin + dialStretch * (celsius - 100) + 0.5 * this.#chance.normal();
    return `${Math.round(fromCelsius(shown, 'F'))}`;
  }

  #after(seconds: number, typed: string): void {
    this.#wait(seconds);
    this.#type(typed);
  }

  /** The next reading, unless the advice asks for the pot first: a console rings at that moment. */
  #readAfter(seconds: number | null): void {
    const until = this.t + Math.max(8, seconds ?? 60);
    while (this.t < until) {
      const { changesAt, offTheHeat, question } = this.#advice();
      if (offTheHeat || question !== null) return;
      this.#wait(Math.max(0.5, Math.min(until, changesAt ?? until) - this.t));
    }
    const { offTheHeat, question } = this.#advice();
    if (!offTheHeat && question === null) this.#type(this.#shown());
  }

  /** Hands feel how much water is left, each crew with its own leaning. */
  #feel(): string {
    const { stageFromCelsius } = this.cook.batch;
    const { boilsCelsius } = this.pot.state();
    const felt = boilsCelsius + this.#truth.testerKelvin + 1.5 * this.#chance.normal();
    const order = [
      'dissolves',
      'thread',
      'soft ball',
      'firm ball',
      'hard ball',
      'soft crack',
      'hard crack',
    ] as const;
    return order.findLast((stage) => felt >= stageFromCelsius[stage]) ?? 'dissolves';
  }

  #turn(): void {
    const advice = this.#advice();
    const { question, step: shown, offTheHeat, canBeDone, nextReadingSeconds, phase } = advice;
    if (offTheHeat) return this.#after(4, 'pot off');
    if (question?.kind === 'reading') return this.#after(4, 'yes');
    if (question?.kind === 'what is true now') return this.#after(4, question.safe);
    if (question !== null) return this.#after(question.kind === 'pause' ? 40 : 8, 'yes');
    const pace = phase === 'fold' || phase === 'pull' || phase === 'cut' ? this.#truth.pace[phase] : 1;
    const usual = (takes[`${shown}`] ?? 15) * pace * Math.exp(0.15 * this.#chance.normal());
    switch (shown) {
      case 'dissolve.heat':
        return this.#after(15, 'heat medium');
      case 'dissolve.stir':
        return this.pot.state().celsius < 88 ? this.#readAfter(nextReadingSeconds) : this.#after(5, 'done');
      case 'boil.start': {
        const { celsius, boilsCelsius } = this.pot.state();
        return celsius < boilsCelsius - 0.3 ? this.#readAfter(nextReadingSeconds) : this.#after(8, 'done');
      }
      case 'boil.still':
      case 'boil.last': {
        if (this.t > 3600 && this.cook.heat?.setting === 'medium' && !this.#lowered)
          return this.#after(4, 'heat high');
        return this.#readAfter(nextReadingSeconds);
      }
      case 'test.drop': {
        // The thermometer stands in the pot: it is read once more before the spoon goes in.
        this.#wait(25);
        this.#happen({ kind: 'reading', value: Number(this.#shown()), unit: 'F', of: 'syrup', by: 'hands' });
        this.tests += 1;
        return this.#after(20, this.#feel());
      }
      case 'hands.measure': {
        this.#wait(240);
        const since = this.t - (this.cook.pouredAt ?? this.t);
        const celsius = 22 + 95 * Math.exp(-since / 900);
        return this.#type(`middle ${Math.ceil(fromCelsius(celsius, 'F'))}f`);
      }
      case 'wrap.weigh':
        if (!this.#weighed) {
          this.#weighed = true;
          const grams =
            this.cook.batch.yield.cookedGrams * this.#truth.boxShare * (1 + 0.02 * this.#chance.normal());
          return this.#after(30, `weigh ${Math.round(grams)}g`);
        }
        break;
      default:
    }
    if (advice.waits !== null) return this.#wait(Math.max(1, advice.waits.until - this.t));
    if (!canBeDone) throw new Error(`no way forward at ${shown}`);
    this.#after(usual, 'done');
  }
}

/** One cook in that kitchen as its person knows it (`kitchen`, with or without what was learned). */
export const cookIn = (
  recipe: Recipe,
  truth: TrueKitchen,
  kitchen: Kitchen,
  seed: number,
  odd: Odd = 'none',
): CookResult => new SeriesCook(recipe, truth, kitchen, seed, odd).run();
