/** What syrup dropped into cold water does, weakest first: the trade's words. */
export const coldWaterOutcomes = [
  'dissolves',
  'thread',
  'soft ball',
  'firm ball',
  'hard ball',
  'soft crack',
  'hard crack',
] as const;
export type ColdWaterOutcome = (typeof coldWaterOutcomes)[number];

export const stages = [...coldWaterOutcomes, 'past hard crack'] as const;
export type Stage = (typeof stages)[number];

/** A published range of a stage at sea level, in whole degrees Fahrenheit as the sources print it. */
export type StageRange = {
  readonly stage: Exclude<Stage, 'dissolves' | 'past hard crack'>;
  readonly fahrenheit: readonly [number, number];
  readonly source: string;
};

const bhg = 'Better Homes and Gardens, Candy: Cooking and Testing Candy Mixtures';
const csu = 'Colorado State University Extension, Candy Making at High Elevation';
const mcGee = 'McGee 2004, On Food and Cooking, table of sugar syrups';

/** The ranges from which the bounds are cut; the sources agree with each other within a few degrees. */
export const publishedStages: readonly StageRange[] = [
  { stage: 'thread', fahrenheit: [230, 233], source: bhg },
  { stage: 'soft ball', fahrenheit: [234, 240], source: `${bhg}; ${csu}` },
  { stage: 'firm ball', fahrenheit: [244, 248], source: `${bhg}; ${csu}` },
  { stage: 'hard ball', fahrenheit: [250, 266], source: `${bhg}; ${mcGee} (to 265)` },
  { stage: 'soft crack', fahrenheit: [270, 290], source: `${bhg}; ${mcGee}` },
  { stage: 'hard crack', fahrenheit: [300, 310], source: `${mcGee}; ${bhg} (from 295); ${csu} (to 308)` },
];

const celsiusOf = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

const rangeOf = (stage: StageRange['stage']): readonly [number, number] => {
  const found = publishedStages.find((row) => row.stage === stage);
  if (found === undefined) throw new Error(`no published range for ${stage}`);
  return found.fahrenheit;
};

const midway = (lower: StageRange['stage'], upper: StageRange['stage']): number =>
  celsiusOf((rangeOf(lower)[1] + rangeOf(upper)[0]) / 2);

/**
 * Lower bound of each stage at sea level, Celsius; -Infinity for the first. Contiguous: cut midway between the
 * published ranges, the thread at its own lower end, past hard crack at the upper end of hard crack.
 */
export const stageFromSeaLevelCelsius: Readonly<Record<Stage, number>> = {
  dissolves: -Infinity,
  thread: celsiusOf(rangeOf('thread')[0]),
  'soft ball': midway('thread', 'soft ball'),
  'firm ball': midway('soft ball', 'firm ball'),
  'hard ball': midway('firm ball', 'hard ball'),
  'soft crack': midway('hard ball', 'soft crack'),
  'hard crack': midway('soft crack', 'hard crack'),
  'past hard crack': celsiusOf(rangeOf('hard crack')[1]),
};

/** The stage of a temperature under given lower bounds (those of sea level, or today's). */
export const stageWithin = (celsius: number, from: Readonly<Record<Stage, number>>): Stage =>
  stages.findLast((stage) => celsius >= from[stage]) ?? 'dissolves';

/** The stage of a syrup that boils at `seaLevelCelsius` under 101 325 Pa. */
export const stageAt = (seaLevelCelsius: number): Stage =>
  stageWithin(seaLevelCelsius, stageFromSeaLevelCelsius);

/** Place of a stage in the order, 0 for `dissolves`. */
export const stageIndex = (stage: Stage): number => stages.indexOf(stage);

/** How many stages `to` lies above `from`; negative where it lies below. */
export const stageDistance = (from: Stage, to: Stage): number => stageIndex(to) - stageIndex(from);
