import { evidenceHazards } from './evidence.js';
import type { Hazard, HazardId } from './hazard.js';
import { precautions } from './precautions.js';
import { reports } from './reports.js';

/** The hazard table. No warning exists outside it. */
export const hazards: readonly Hazard[] = [...precautions, ...evidenceHazards, ...reports];

export const hazardById = (id: string): Hazard | undefined => hazards.find((hazard) => hazard.id === id);

export const isHazardId = (id: string): id is HazardId => hazardById(id) !== undefined;
