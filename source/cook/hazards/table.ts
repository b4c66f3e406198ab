import { evidenceHazards } from './evidence.js';
import type { Hazard, HazardId } from './hazard.js';
import { precautions } from './precautions.js';
import { reports } from './reports.js';

/** The hazard table. No warning exists outside it. */
export const hazards: readonly Hazard[] = [...precautions, ...evidenceHazards, ...reports];

const byId = new Map<string, Hazard>(hazards.map((hazard) => [hazard.id, hazard]));

export const hazardById = (id: string): Hazard | undefined => byId.get(id);

export const isHazardId = (id: string): id is HazardId => hazardById(id) !== undefined;
