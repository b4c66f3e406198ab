import type { PhaseId } from '../recipe/recipe.js';
import { headline } from './candy.js';
import type { Cook, Raised } from './cook.js';
import { belongsTo, evidenceHazards } from './hazards/evidence.js';
import type { EvidenceHazard } from './hazards/hazard.js';
import type { View } from './view.js';

const bareView = (cook: Cook, now: number): View => ({
  cook,
  batch: cook.batch,
  now,
  belief: null,
  forecast: null,
  offTheHeat: false,
});

const memoryOf = (hazard: EvidenceHazard, phase: PhaseId, view: View): Raised | undefined => {
  const { cook } = view;
  const before = cook.raised[hazard.id];
  if (!belongsTo(phase, hazard)) return undefined;
  if (hazard.arises !== undefined) {
    const at = hazard.arises(cook);
    return at !== null && at <= view.now ? before : undefined;
  }
  if (before !== undefined) return hazard.clear?.(view) ? undefined : before;
  return hazard.raise?.(view) ? { since: view.now, answered: false } : undefined;
};

/** Which warnings an event raised, keeps up or cleared: looked at once an event, so that none chatters. */
export const lookForHazards = (cook: Cook, now: number): Cook => {
  const view = bareView(cook, now);
  const phase = headline(cook);
  const raised: Record<string, Raised> = {};
  let isChanged = false;
  for (const hazard of evidenceHazards) {
    const memory = memoryOf(hazard, phase, view);
    if (memory !== cook.raised[hazard.id]) isChanged = true;
    if (memory !== undefined) raised[hazard.id] = memory;
  }
  return isChanged ? { ...cook, raised } : cook;
};
