import { describe, expect, it } from 'vitest';
import type { CookEvent } from '../../source/cook/event.js';
import { readEvent } from '../../source/cook/read-event.js';
import { opened } from './play.js';

/** One of every kind: the compiler holds that none is missing. */
const every: { readonly [Kind in CookEvent['kind']]: Extract<CookEvent, { kind: Kind }> } = {
  opened: opened(),
  reading: { kind: 'reading', value: 238.5, unit: 'F', of: 'syrup', by: 'hands' },
  room: { kind: 'room', celsius: 19, humidity: 0.6 },
  'no thermometer': { kind: 'no thermometer' },
  'cold water': { kind: 'cold water', outcome: 'soft ball' },
  done: { kind: 'done', step: 'mix.ready' },
  answer: { kind: 'answer', question: 'heat.pause', answer: 'yes' },
  ok: { kind: 'ok', warning: 'unattended' },
  heat: { kind: 'heat', setting: 'medium' },
  pot: { kind: 'pot', on: false },
  lid: { kind: 'lid', on: true },
  water: { kind: 'water', grams: 30 },
  hands: { kind: 'hands', whose: 'children' },
  rope: { kind: 'rope', does: 'droops' },
  'arms out': { kind: 'arms out' },
  portions: { kind: 'portions', count: 3 },
  trouble: { kind: 'trouble', name: 'foam' },
  over: { kind: 'over', name: 'foam' },
  at: { kind: 'at', phase: 'boil' },
  stop: { kind: 'stop' },
  undo: { kind: 'undo', voids: 3 },
  weigh: { kind: 'weigh', grams: 512, pieces: null },
  count: { kind: 'count', pieces: 63 },
  note: { kind: 'note', text: 'the room got crowded' },
  mark: { kind: 'mark', what: 'recording' },
  gap: { kind: 'gap', seconds: 420, sure: true },
};

const kept = (event: object) => JSON.parse(JSON.stringify({ ...event, seq: 7, t: 12.5, at: 'now', up: 3 }));

describe('an event as a journal holds it', () => {
  it.each(Object.values(every).map((event) => [event.kind, event] as const))(
    '%s is read back as it was',
    (_kind, event) => {
      expect(readEvent(kept(event))).toEqual({ ...JSON.parse(JSON.stringify(event)), seq: 7, t: 12.5 });
    },
  );

  it.each([
    ['no number', { ...every.reading, value: null }],
    ['a number that is none', { ...every.reading, value: '238' }],
    ['a scale that nobody has', { ...every.reading, unit: 'K' }],
    ['an outcome out of no cup', { ...every['cold water'], outcome: 'medium ball' }],
    ['an answer that is neither', { ...every.answer, answer: 'maybe' }],
    ['a trouble of a newer program', { ...every.trouble, name: 'earthquake' }],
    ['a phase of a newer program', { ...every.at, phase: 'dip' }],
    ['a pot that is neither', { kind: 'pot' }],
    ['half a portion', { ...every.portions, count: 1.5 }],
    ['less than no water', { ...every.water, grams: -3 }],
    ['air wetter than wet', { ...every.room, humidity: 1.2 }],
    ['a kind of a newer program', { kind: 'dip', depth: 3 }],
    ['no kind', { value: 3 }],
    ['a recipe without ingredients', { ...every.opened, recipe: { ...opened().recipe, ingredients: [] } }],
    ['a kitchen without a stove', { ...every.opened, kitchen: { ...opened().kitchen, stove: 'wood' } }],
  ])('%s is refused', (_what, event) => {
    expect(readEvent(kept(event))).toBeNull();
  });

  it.each([
    null,
    3,
    'done',
    [],
    { kind: 'done', step: 'a' },
    { kind: 'done', step: 'a', seq: 0, t: 0 },
    { kind: 'done', step: 'a', seq: 1, t: -1 },
  ])('%j is no event', (entry) => {
    expect(readEvent(entry)).toBeNull();
  });
});
