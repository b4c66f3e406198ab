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
