import { boilOptions, type Pot, simulate } from '../../source/rehearsal/boil.js';
import { type Opening, Play } from './play.js';

/** Typed, or only looked at. */
export type Line = { readonly t: number; readonly typed?: string };
export type Raised = { readonly t: number; readonly id: string };

/** How long a person takes over a step before saying that it is done, seconds. */
const takes: Readonly<Record<string, number>> = {
  'mix.ready': 240,
  'mix.dry': 90,
  'mix.wet': 150,
  'dissolve.spoon-out': 15,
  'boil.brush': 40,
  'boil.lid': 10,
  'boil.lid-off': 150,
  'flavour.sink': 40,
  'fold.wait': 150,
  'fold.again': 360,
  'pull.stretch': 330,
  'pull.stiff': 120,
  'cut.rope': 200,
  'cut.cut': 420,
  'wrap.rest': 700,
  'wrap.wrap': 600,
};

/** Newton's law from the pour on: a mass of a few hundred grams on a slab, folded now and then. */
const middleAfter = (seconds: number): number => 20 + 95 * Math.exp(-seconds / 900);

/** A cook as it would go with a simulated pot, a reader who obeys, and hands that take their time. */
export class SimulatedCook {
  readonly play: Play;
  readonly lines: Line[] = [];
  readonly raised: Raised[] = [];
  readonly #pot: Pot;
  #standing = new Set<string>();

  constructor(opening: Opening, seed: number, changes: { fullWatts?: number } = {}) {
    this.play = new Play(opening);
    const { batch, hob } = this.play.cook;
    const shown = batch.dial.toShownCelsius(120) - 120;
    this.#pot = simulate(
      boilOptions({
        curve: batch.curve,
        waterGrams: batch.waterGrams,
        otherGrams: hob.otherGrams,
        stove: batch.kitchen.stove,
        stageFromCelsius: batch.stageFromCelsius,
        dial: { lagSeconds: 10, noiseSdKelvin: 0.3, offsetKelvin: shown, stepKelvin: 0 },
        testerSdKelvin: 0.5,
        ...changes,
      }),
      seed,
    );
  }

  run(mostTurns = 400): this {
    for (let turn = 0; turn < mostTurns && this.play.step !== 'over.end'; turn += 1) this.#turn();
    if (this.play.step !== 'over.end') throw new Error(`stuck at ${this.play.step}: ${this.play.say}`);
    return this;
  }

  /** What is warned of is looked at whenever the advice says that something changes. */
  #wait(seconds: number): void {
    const until = this.play.t + seconds;
    for (let at = this.play.advice.changesAt; at !== null && at < until; at = this.play.advice.changesAt) {
      this.#pot.advance(at - this.play.t);
      this.play.t = at;
      this.lines.push({ t: at });
      this.#look();
    }
    this.#pot.advance(until - this.play.t);
    this.play.t = until;
    this.#look();
  }

  #look(): void {
    const now = this.play.advice.warnings.map(({ id }) => id);
    for (const id of now) if (!this.#standing.has(id)) this.raised.push({ t: this.play.t, id });
    this.#standing = new Set(now);
  }

  #type(typed: string): void {
    this.play.t = Math.ceil(this.play.t);
    const because = this.play.query(typed);
    if (because !== null) throw new Error(`"${typed}" at ${this.play.step}: ${because}`);
    this.lines.push({ t: this.play.t, typed });
    this.#obey();
    this.#look();
  }

  #obey(): void {
    const { heat, potOn, lidOn } = this.play.cook;
    this.#pot.setHeat(heat?.level ?? 0);
    this.#pot.setPot(potOn?.on ?? true);
    this.#pot.setLid(lidOn?.on ?? false);
  }

  #read(): void {
    const celsius = this.#pot.dialCelsius();
    const { unit } = this.play.advice.typing;
    this.#type(unit === 'F' ? `${Math.round((celsius * 9) / 5 + 32)}` : `${Math.round(celsius * 2) / 2}`);
  }

  #turn(): void {
    const { step, offTheHeat, question, waits } = this.play.advice;
    const pot = this.#pot.state();
    if (waits !== null) this.#wait(waits.until - this.play.t);
    else if (offTheHeat || question !== null) this.#after(...this.#answer());
    else if (step === 'hands.measure') this.#measure();
    else if (step === 'boil.still' || step === 'boil.last') this.#boilOn();
    else if (step === 'dissolve.stir' && pot.celsius < 88) this.#readAfter(45);
    else if (step === 'boil.start' && pot.celsius < pot.boilsCelsius - 0.3) this.#readAfter();
    else this.#after(...this.#act());
  }

  #answer(): readonly [seconds: number, typed: string] {
    const { question, offTheHeat } = this.play.advice;
    if (offTheHeat) return [6, 'done'];
    if (question?.kind === 'reading') return [4, 'no'];
    return [question?.kind === 'pause' ? 40 : 10, 'yes'];
  }

  #act(): readonly [seconds: number, typed: string] {
    const { step, canBeDone } = this.play.advice;
    if (step === 'dissolve.heat') return [15, 'heat medium'];
    if (step === 'test.drop') return [35, this.#pot.coldWater()];
    if (!canBeDone) throw new Error(`no way forward at ${step}`);
    return [takes[`${step}`] ?? 20, 'done'];
  }

  #after(seconds: number, typed: string): void {
    this.#wait(seconds);
    this.#type(typed);
  }

  /** By the thermometer, or by cold water alone when the next test is due. */
  #boilOn(): void {
    const { timers } = this.play.advice;
    const due = timers.find(({ id }) => id === 'test-due')?.until ?? null;
    if (due === null) this.#readAfter();
    else {
      this.#wait(Math.max(10, due + 5 - this.play.t));
      this.#type('pot off');
    }
  }

  #readAfter(mostSeconds = 600): void {
    this.#wait(Math.min(mostSeconds, Math.max(8, this.play.advice.nextReadingSeconds ?? 60)));
    const { offTheHeat, question } = this.play.advice;
    if (!offTheHeat && question === null && this.play.cook.thermometer) this.#read();
  }

  #measure(): void {
    this.#wait(240);
    const celsius = middleAfter(this.play.t - (this.play.cook.pouredAt ?? this.play.t));
    this.#type(
      this.play.advice.typing.unit === 'F'
        ? `middle ${Math.ceil((celsius * 9) / 5 + 32)}f`
        : `middle ${Math.ceil(celsius)}c`,
    );
  }
}
