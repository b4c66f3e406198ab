import type { PhaseId } from '../../recipe/recipe.js';
import type { TextId } from '../../texts/message.js';
import type { HazardId, Precaution, Signal } from './hazard.js';

const row = (
  id: HazardId,
  phases: readonly PhaseId[],
  signal: Signal | null,
  source: string,
): Precaution => ({
  id,
  phases,
  raisedBy: 'step',
  level: 'soon',
  signal,
  response: [`hazard.${id}.1` as TextId],
  respondWithinSeconds: null,
  source,
});

/** What stands in a step's own text before the step is done. */
export const precautions: readonly Precaution[] = [
  row(
    'molten-sugar',
    ['dissolve', 'boil', 'test', 'flavour', 'pour', 'fold'],
    'WARNING',
    'Burn contact times: sugar/skin.ts; sticky syrup stays on, common practice',
  ),
  row('steam-lid', ['boil'], 'WARNING', 'common practice, no source'),
  row('steam-flavour', ['flavour'], 'WARNING', 'common practice, no source'),
  row(
    'alcohol',
    ['flavour'],
    'WARNING',
    'our judgement: flash point of strong extracts is below room-warm air over a hob',
  ),
  row('soda', ['flavour'], 'WARNING', 'Bradley, The Candy Cook Book, 1917 (soda goes in last and foams)'),
  row('cold-test', ['test'], 'CAUTION', 'common practice, no source'),
  row(
    'cold-vessel',
    ['boil', 'test'],
    'CAUTION',
    'Hall, Candy-Making Revolutionized, 1912 (warm the thermometer first)',
  ),
  row(
    'glowing-ring',
    ['test', 'flavour'],
    'CAUTION',
    'University of Florida extension, on glass cooktops: heat stays after the element is off',
  ),
  row('carry', ['pour'], 'WARNING', 'common practice, no source'),
  row('emptied-pot', ['fold', 'clean'], 'WARNING', 'common practice, no source'),
  row('hot-middle', ['fold'], 'WARNING', 'Burn contact times: sugar/skin.ts'),
  row('scissors', ['cut'], 'CAUTION', 'common practice, no source'),
  row(
    'serving',
    ['wrap'],
    'WARNING',
    'American Academy of Pediatrics, choking statement: sticky and hard candy not under four years',
  ),
];
