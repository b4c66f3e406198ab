import { wallCare } from '../../recipe/wall-care.js';
import { rescueBelowCelsius } from '../../sugar/skin.js';
import type { TextId } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import type { CookEvent, TroubleName } from '../event.js';
import type { Level, ReportHazard, Signal } from './hazard.js';

type Response = ReportHazard['response'];

const numbered = (name: TroubleName, count: number): readonly TextId[] =>
  Array.from({ length: count }, (_, index) => `hazard.${name}.${index + 1}` as TextId);

const row = (
  id: TroubleName,
  level: Level,
  signal: Signal | null,
  response: Response,
  respondWithinSeconds: number | null,
  source: string,
  more: Pick<ReportHazard, 'timerSeconds' | 'asks' | 'holds'> = {},
): ReportHazard => ({
  id,
  phases: 'any',
  raisedBy: 'report',
  level,
  signal,
  response,
  respondWithinSeconds,
  source,
  shout: `hazard.${id}.shout` as TextId,
  ...more,
});

const poured = (cook: Cook): boolean => cook.pouredAt !== null;

const overshot = (cook: Cook): readonly TextId[] => {
  if (poured(cook)) return ['hazard.overshoot.slab'];
  const scorched = cook.troubles.some((trouble) => trouble.name === 'scorched');
  // One that is doubted may be right.
  const doubted = cook.doubt?.of === 'syrup' ? [cook.doubt.celsius] : [];
  const hottest = Math.max(cook.lastReading?.celsius ?? -Infinity, ...doubted);
  if (scorched || hottest >= rescueBelowCelsius) {
    return ['hazard.overshoot.off', 'hazard.overshoot.keep'];
  }
  return [
    'hazard.overshoot.off',
    'hazard.overshoot.rescue',
    'hazard.overshoot.keep',
    'hazard.overshoot.again',
  ];
};

const wallResponse = {
  lid: 'hazard.grains.wall-lid',
  brush: 'hazard.grains.wall-brush',
  'none-late-stir': 'hazard.grains.wall-leave',
} as const;

const firstAid =
  '20 minutes of cool running water: British Burn Association first-aid guidance; rings off, nothing stuck pulled off, no ice, no fat: the same';

/** Troubles, reported by name: one row each. */
export const reports: readonly ReportHazard[] = [
  row(
    'fire',
    'now',
    'DANGER',
    numbered('fire', 4),
    5,
    'NFPA cooking-fire advice: lid, heat off, do not move it, never water',
    { holds: true },
  ),
  row(
    'choking',
    'now',
    'DANGER',
    numbered('choking', 3),
    5,
    'trained first aid comes first; common practice',
  ),
  row(
    'allergy',
    'now',
    'DANGER',
    numbered('allergy', 3),
    30,
    'trained first aid comes first; common practice',
  ),
  row('burn', 'now', 'WARNING', numbered('burn', 5), 10, firstAid, { timerSeconds: 1200 }),
  row('overflow', 'now', 'WARNING', numbered('overflow', 4), 5, 'common practice, no source'),
  row('scorched', 'now', 'WARNING', numbered('scorched', 4), 15, 'common practice, no source', {
    holds: true,
  }),
  row('foam', 'now', 'WARNING', numbered('foam', 2), 5, 'common practice, no source'),
  row('glass', 'now', 'WARNING', numbered('glass', 4), 60, 'common practice, no source', { holds: true }),
  row('spill', 'now', 'WARNING', numbered('spill', 3), 10, 'common practice, no source'),
  row(
    'power',
    'soon',
    'CAUTION',
    (cook) => (poured(cook) ? ['hazard.power.1', 'hazard.power.slab'] : numbered('power', 3)),
    60,
    'common practice, no source',
  ),
  row(
    'away',
    'now',
    'WARNING',
    (cook) => (poured(cook) ? ['hazard.away.slab'] : ['hazard.away.heat', 'hazard.away.back']),
    30,
    'common practice: a pot on the heat is never left alone',
  ),
  row(
    'overshoot',
    'now',
    'WARNING',
    overshot,
    15,
    'water in hot syrup flashes to steam: our judgement; a little water and boiling again: a 19th-century confectioner',
  ),
  row('thermometer', 'soon', 'CAUTION', numbered('thermometer', 3), 60, 'common practice, no source', {
    asks: 'trouble.glass',
  }),
  row(
    'grains',
    'soon',
    null,
    (cook) =>
      poured(cook)
        ? ['hazard.grains.slab']
        : [wallResponse[wallCare(cook.batch.recipe)], 'hazard.grains.pot'],
    60,
    'Bradley, The Candy Cook Book, 1917: one crystal seeds the batch',
  ),
  row(
    'stiff',
    'soon',
    null,
    (cook) => (poured(cook) ? numbered('stiff', 3) : overshot(cook)),
    120,
    'common practice, no source',
  ),
  row(
    'soft',
    'note',
    null,
    (cook) => (poured(cook) ? ['hazard.soft.slab', 'hazard.soft.end'] : ['hazard.soft.pot']),
    null,
    'common practice, no source',
  ),
];

/** What "done" says also, where an instruction is an act at the pot. */
const acts: Readonly<Partial<Record<TextId, CookEvent>>> = {
  'hazard.foam.1': { kind: 'pot', on: false },
  'hazard.overflow.1': { kind: 'heat', setting: 'off' },
  'hazard.overflow.2': { kind: 'pot', on: false },
  'hazard.scorched.1': { kind: 'pot', on: false },
  'hazard.overshoot.off': { kind: 'pot', on: false },
  'hazard.fire.1': { kind: 'heat', setting: 'off' },
  'hazard.glass.1': { kind: 'heat', setting: 'off' },
  'hazard.power.1': { kind: 'heat', setting: 'off' },
};

/** Null where an instruction is no act at the pot, or nothing stands there any more. */
export const meantBy = (cook: Cook, instruction: TextId): CookEvent | null =>
  poured(cook) ? null : (acts[instruction] ?? null);

const byName = new Map(reports.map((hazard) => [hazard.id, hazard]));

export const reportOf = (name: TroubleName): ReportHazard =>
  // Every trouble has its row: the test of the hazard table holds this.
  byName.get(name) as ReportHazard;
