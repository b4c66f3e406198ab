import type { PhaseId } from '../../recipe/recipe.js';
import { boil } from './boil.js';
import { clean } from './clean.js';
import { cut } from './cut.js';
import { dissolve } from './dissolve.js';
import { flavour } from './flavour.js';
import { fold } from './fold.js';
import { mix } from './mix.js';
import { over } from './over.js';
import type { Phase, Step } from './phase.js';
import { pour } from './pour.js';
import { pull } from './pull.js';
import { test } from './test.js';
import { wrap } from './wrap.js';

/** All phases, in the order in which a plain cook meets them. */
export const phases: readonly Phase[] = [
  mix,
  dissolve,
  boil,
  test,
  flavour,
  pour,
  fold,
  pull,
  cut,
  wrap,
  clean,
  over,
];

const byId = new Map(phases.map((phase) => [phase.id, phase]));

export const phaseOf = (id: PhaseId): Phase => byId.get(id) ?? over;

export const allSteps: readonly Step[] = phases.flatMap((phase) => [...(phase.gates ?? []), ...phase.steps]);

const steps = new Map(allSteps.map((one) => [one.id, one]));
export const stepById = (id: string): Step | undefined => steps.get(id);

const questions = new Set(allSteps.flatMap(({ question }) => question?.id ?? []));
export const isQuestionId = (id: string): boolean => questions.has(id);
