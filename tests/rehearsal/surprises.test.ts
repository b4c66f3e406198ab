import { describe, expect, it } from 'vitest';
import { anySurprise, nearestSurprise, surpriseNames } from '../../source/rehearsal/surprises.js';
import { rehearsalVerdict } from '../../source/rehearsal/verdict.js';
import { rehearsal } from './hall.js';

describe('a surprise', () => {
  it.each(surpriseNames)('%s can be answered with ordinary words, and the cook ended', (name) => {
    const { ended, queried, cook, truth } = rehearsal(5, name);
    expect(queried).toEqual([]);
    expect(ended).toBe(true);
    expect(truth.course.beganAt).not.toBeNull();
    const { answered } = rehearsalVerdict(cook, truth, name);
    expect(answered).toMatchObject({ surprise: name, inOrder: true });
  });

  it('that is reported is announced at once, with its first instruction', () => {
    const announced: string[] = [];
    rehearsal(5, 'foam-over', ({ typed, after }) => {
      if (typed.startsWith('trouble ')) announced.push(`${typed}: ${after.say.id} ${after.urgent}`);
    });
    expect(announced[0]).toMatch(/^trouble (foam: hazard.foam.1|overflow: hazard.overflow.1) true$/);
  });

  it('is not there when none is asked for', () => {
    const { truth } = rehearsal(5);
    expect(truth.course).toEqual({ beganAt: null, showedAt: null, endedAt: null });
  });

  it('that nobody answers is said so, with what to do next time', () => {
    const { cook, truth } = rehearsal(5, 'power-cut');
    const silent = { ...cook, length: 1, t: truth.course.endedAt ?? 0 };
    const verdict = rehearsalVerdict(silent, truth, 'power-cut');
    expect(verdict.answered).toMatchObject({ afterSeconds: null, inTime: false });
    expect(verdict.changes.map(({ id }) => id)).toContain('rehearsal.change.unanswered');
  });

  it('answered late or in the wrong order is said so', () => {
    const { cook, truth } = rehearsal(5, 'burning-smell');
    const shown = truth.course.showedAt ?? 0;
    const late = { ...truth, course: { ...truth.course, showedAt: shown - 100 } };
    expect(rehearsalVerdict(cook, late, 'burning-smell').answered).toMatchObject({ inTime: false });
    const log = cook.log.filter((event) => event.kind !== 'trouble');
    const swapped = rehearsalVerdict({ ...cook, log, length: log.length }, truth, 'burning-smell');
    expect(swapped.answered).toMatchObject({ inOrder: false });
  });

  it('called "any" is the same for the same seed, and not always the same', () => {
    const drawn = Array.from({ length: 40 }, (_, seed) => anySurprise(seed));
    expect(drawn).toEqual(Array.from({ length: 40 }, (_, seed) => anySurprise(seed)));
    expect(new Set(drawn).size).toBeGreaterThan(5);
  });

  it('misspelt has a nearest name', () => {
    expect(nearestSurprise('fome-over')).toBe('foam-over');
    expect(nearestSurprise('power cut')).toBe('power-cut');
    expect(nearestSurprise('foam')).toBe('foam-over');
    expect(nearestSurprise('smell')).toBe('burning-smell');
    expect(nearestSurprise('xyzzyxyzzy')).toBeNull();
  });
});
