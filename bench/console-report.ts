import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const file = new URL('./baselines.json', import.meta.url);
/** A ratio that grew by more than this is told. */
const worse = 1.15;

type Measured = {
  readonly name: string;
  readonly ours: readonly number[];
  readonly theirs: readonly number[];
  readonly unit: string;
  /** The most that the ratio of the medians may be; and that of the 99th percentiles, where that is asked for. */
  readonly median: number | null;
  readonly p99?: number;
  readonly decimals?: number;
};

const sorted = (values: readonly number[]): readonly number[] =>
  [...values].sort((one, other) => one - other);
export const quantile = (values: readonly number[], share: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(share * values.length))] ?? Number.NaN;
export const medianOf = (values: readonly number[]): number => quantile(values, 0.5);

const verdict = (met: boolean): string => (met ? 'met' : 'MISSED');

/** The table of a run, with what each ratio was when it was last kept. */
export class Report {
  readonly #before: Readonly<Record<string, number>> = existsSync(file)
    ? JSON.parse(readFileSync(file, 'utf8'))
    : {};
  readonly #now: Record<string, number> = {};

  heading(text: string): void {
    console.log(`\n${text}`);
  }

  say(name: string, text: string): void {
    console.log(`  ${name.padEnd(46)} ${text}`);
  }

  /** Two things measured in turn, as a ratio. */
  compare({ name, ours, theirs, unit, median, p99, decimals = 1 }: Measured): void {
    const shown = (values: readonly number[]): string =>
      `${medianOf(values).toFixed(decimals)} (p99 ${quantile(values, 0.99).toFixed(decimals)})`;
    const ratio = medianOf(ours) / medianOf(theirs);
    const tail = quantile(ours, 0.99) / quantile(theirs, 0.99);
    const parts = [
      `${shown(ours)} against ${shown(theirs)} ${unit}, n ${ours.length}`,
      `${ratio.toFixed(2)} times${median === null ? '' : ` (aim ${median}) ${verdict(ratio <= median)}`}`,
      ...(p99 === undefined ? [] : [`p99 ${tail.toFixed(2)} times (aim ${p99}) ${verdict(tail <= p99)}`]),
    ];
    this.say(name, parts.join('; '));
    this.#keep(name, ratio);
  }

  /** One number with an aim of its own. */
  count(name: string, value: number, unit: string, atMost: number | null, decimals = 0): void {
    const aim = atMost === null ? '' : ` (aim: at most ${atMost}) ${verdict(value <= atMost)}`;
    this.say(name, `${value.toFixed(decimals)} ${unit}${aim}`);
    // What should be nothing has no ratio.
    if (atMost === null || atMost >= 1) this.#keep(name, value);
  }

  #keep(name: string, value: number): void {
    this.#now[name] = Number(value.toPrecision(3));
    const before = this.#before[name];
    if (before !== undefined && value > before * worse)
      this.say('', `WORSE than the baseline: ${value.toPrecision(3)}, was ${before}`);
  }

  /** Writes what was measured as the new baseline. */
  keep(): void {
    writeFileSync(file, `${JSON.stringify({ ...this.#before, ...this.#now }, null, 2)}\n`);
    console.log('\nKept as the baseline.');
  }
}
