import type { Cook } from '../cook/cook.js';
import type { By } from '../cook/event.js';
import { judge, type Verdict } from '../cook/verdict.js';
import { type ColdWaterOutcome, type Stage, stages } from '../sugar/stages.js';
import type { TemperatureUnit } from '../units/printer.js';
import { toCelsius } from '../units/temperature.js';
import type { Instant } from './walk.js';

export type ReadingTold = {
  readonly seq: number;
  readonly t: number;
  readonly of: 'syrup' | 'middle';
  /** True Celsius after the thermometer's correction. */
  readonly celsius: number;
  /** What the thermometer showed, in its own unit. */
  readonly shown: number;
  readonly unit: TemperatureUnit;
  readonly by: By;
  /** Taken for right, at once or later. */
  readonly believed: boolean;
};

export type TestTold = {
  readonly t: number;
  readonly outcome: ColdWaterOutcome | 'unsure';
  readonly verdict: Verdict;
  /** What was believed of the syrup when it was tested, true Celsius. */
  readonly celsius: number | null;
};

/** Where the stage ends that fingers felt: at the lowest bound above its own, Celsius. */
export const stageToCelsius = (felt: ColdWaterOutcome, from: Readonly<Record<Stage, number>>): number =>
  Math.min(...stages.map((stage) => from[stage]).filter((celsius) => celsius > from[felt]));

const measured = (cook: Cook, seq: number, of: ReadingTold['of'], shownCelsius: number): number => {
  const found = of === 'syrup' ? cook.lastReading : cook.middle;
  if (found?.seq === seq) return found.celsius;
  return cook.doubt?.seq === seq ? cook.doubt.celsius : cook.batch.dial.toTrueCelsius(shownCelsius);
};

/** The readings of syrup and mass that were not taken back, in order. */
export const readingsOf = (instants: readonly Instant[]): readonly ReadingTold[] => {
  const believed = new Set<number>();
  const found: Omit<ReadingTold, 'believed'>[] = [];
  const told = new Set<number>();
  for (const { cook, event } of instants) {
    for (const one of [cook.lastReading, cook.middle]) if (one !== null) believed.add(one.seq);
    // Readings of a feed between two looks are in the list as well.
    if (event === null) continue;
    for (const past of newest(cook, told)) {
      if (past.of !== 'syrup' && past.of !== 'middle') continue;
      if (past.of === 'syrup' && cook.pouredAt !== null && past.t > cook.pouredAt) continue;
      const { seq, t, of, value: shown, unit, by } = past;
      if (by !== 'hands' && seq !== event.seq) believed.add(seq);
      const celsius = measured(cook, seq, of, toCelsius(shown, unit));
      found.push({ seq, t, of, celsius, shown, unit, by });
    }
  }
  return found.map((one) => ({ ...one, believed: believed.has(one.seq) }));
};

/** The readings at the end of the list that have not been told yet, oldest first. */
const newest = (cook: Cook, told: Set<number>) => {
  const fresh = [];
  for (let index = cook.length - 1; index >= 0; index -= 1) {
    const event = cook.log[index];
    if (event === undefined || told.has(event.seq)) break;
    told.add(event.seq);
    if (event.kind === 'reading') fresh.push(event);
  }
  return fresh.reverse();
};

export const testsOf = (instants: readonly Instant[]): readonly TestTold[] =>
  instants.flatMap(({ cook, event, advice }) => {
    if (event?.kind !== 'cold water' || cook.lastTest?.t !== cook.t) return [];
    const { outcome, celsius } = cook.lastTest;
    return [
      {
        t: cook.t,
        outcome,
        verdict: judge(cook, outcome),
        celsius: celsius ?? advice.temperature?.celsius ?? null,
      },
    ];
  });
