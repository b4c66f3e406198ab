/** One thing that earlier cooks taught of a kitchen, or that a person said of it. SI values. */
export type Lesson = {
  readonly value: number;
  /** How far the next cook may be from it: standard deviation, in the unit of `value` (relative for watts and minutes). */
  readonly sd: number;
  /** Cooks that it rests on; 0 where a person said it. */
  readonly cooks: number;
  /** ISO date of the latest of them, or of the day on which a person said it; null where it is not known. */
  readonly date: string | null;
  readonly by: 'cooks' | 'person';
};

/** Phases whose minutes depend on who does them. */
export const crewPhases = ['fold', 'pull', 'cut'] as const;
export type CrewPhase = (typeof crewPhases)[number];

/**
 * What is known of a kitchen beyond what its file says. It is computed again from the finished cooks; only what a
 * person said is kept in the file. Null, or a missing entry: nothing is known and the default counts.
 */
export type Learned = {
  /** That thermometer reads high (+) or low (-) by so many kelvin where candy is made, today's check not counted. */
  readonly thermometer: (Lesson & { readonly id: string }) | null;
  /** Net watts into the pot by the knob's label, where the boil begins; `sd` relative. */
  readonly watts: Readonly<Record<string, Lesson>>;
  /** What the syrup still climbs on a trivet, kelvin. */
  readonly carryOverKelvin: Lesson | null;
  /** What reaches the box of what the pot could give, 0 to 1. */
  readonly boxShare: Lesson | null;
  /** Minutes for a usual batch: folding, pulling one portion, rope and cut of a hundred pieces; `sd` relative. */
  readonly minutes: Readonly<Partial<Record<CrewPhase, Lesson>>>;
};

export const nothingLearned: Learned = {
  thermometer: null,
  watts: {},
  carryOverKelvin: null,
  boxShare: null,
  minutes: {},
};

/** All that is there, in the order in which it is shown. */
export const lessonsIn = (learned: Learned): readonly Lesson[] =>
  [
    learned.thermometer,
    ...Object.values(learned.watts),
    learned.carryOverKelvin,
    learned.boxShare,
    ...crewPhases.map((phase) => learned.minutes[phase] ?? null),
  ].filter((lesson) => lesson !== null);

const own = <One extends Lesson>(lesson: One | null | undefined): One | null =>
  lesson?.by === 'person' ? lesson : null;

const ownOf = (record: Readonly<Record<string, Lesson | undefined>>): Record<string, Lesson> =>
  Object.fromEntries(
    Object.entries(record).flatMap(([key, one]) => (own(one) === null ? [] : [[key, one as Lesson]])),
  );

/** Only what a person said: that is what a kitchen file keeps. */
export const saidByPerson = (learned: Learned | undefined): Learned =>
  learned === undefined
    ? nothingLearned
    : {
        thermometer: own(learned.thermometer),
        watts: ownOf(learned.watts),
        carryOverKelvin: own(learned.carryOverKelvin),
        boxShare: own(learned.boxShare),
        minutes: ownOf(learned.minutes),
      };

/** What a person said stands before what cooks taught. */
export const overridden = (taught: Learned, said: Learned): Learned => ({
  thermometer: said.thermometer ?? taught.thermometer,
  watts: { ...taught.watts, ...said.watts },
  carryOverKelvin: said.carryOverKelvin ?? taught.carryOverKelvin,
  boxShare: said.boxShare ?? taught.boxShare,
  minutes: { ...taught.minutes, ...said.minutes },
});
