import { describe, expect, it } from 'vitest';
import type { Advice } from '../../source/cook/advice.js';
import { habitsOf } from '../../source/rehearsal/person/habits.js';
import { personOf } from '../../source/rehearsal/person/person.js';
import { simulatedCook } from '../../source/rehearsal/simulated-cook.js';
import type { Senses, SimulatedCook } from '../../source/rehearsal/table.js';
import { blind, hall as hallKitchen, Play } from '../cook/play.js';
import { hall, hallBatch } from './hall.js';

/** Careful, never wrong, never forgetful: what they do is what the rules say. */
const steady = { ...habitsOf(1), slips: 0, forgetsHeat: 0, unsure: 0, careful: true };
const at = (step: string, kitchen = hallKitchen) => new Play({ kitchen }).until(step).advice;

const tableOf = (more: Partial<SimulatedCook> = {}, senses: Partial<Senses> = {}): SimulatedCook => {
  const table = simulatedCook(hallBatch, 3, null);
  return { ...table, senses: () => ({ ...table.senses(), ...senses }), ...more };
};
/** Somebody who has lit the ring. */
const personAt = (table: SimulatedCook, slips = 0) => {
  const person = personOf(table, hall.kitchen, 3, { ...steady, slips });
  person.typed({ key: 'light', seconds: 1, type: null }, 'heat low', at('boil.still'));
  return person;
};
type Person = ReturnType<typeof personAt>;

/** What is typed at that advice; null: only waited. */
const typedBy = (person: Person, advice: Advice, t = advice.now): string | null => {
  const intent = person.decide(advice, t);
  const typed = intent.type === null ? null : intent.type();
  if (typed !== null) person.typed(intent, typed, advice);
  return typed;
};
const answerTo = (advice: Advice, table = tableOf()) => typedBy(personAt(table), advice);
const warned = (advice: Advice, ...ids: readonly string[]): Advice => ({
  ...advice,
  warnings: ids.map((id) => ({ ...({} as Advice['warnings'][number]), id }) as Advice['warnings'][number]),
});
const asked = (advice: Advice, question: Partial<NonNullable<Advice['question']>>): Advice => ({
  ...advice,
  question: { ...({} as NonNullable<Advice['question']>), ...question },
});

describe('a simulated person does what is warned of', () => {
  const boil = at('boil.still');
  it.each([
    ['heat-left-on', 'heat off'],
    ['lid-foams', 'lid off'],
    ['disagreement', 'ok disagreement'],
  ])('%s: types "%s"', (id, typed) => expect(answerTo(warned(boil, id))).toBe(typed));

  it('goes by fingers alone when dial and fingers disagree once more', () => {
    const person = personAt(tableOf());
    expect(typedBy(person, warned(boil, 'disagreement'))).toBe('ok disagreement');
    expect(typedBy(person, warned(boil, 'disagreement'))).toBe('thermometer none');
  });

  it('says that somebody is there where there is no dial to read', () => {
    expect(answerTo(warned(boil, 'unattended'), tableOf({ dial: () => null }))).toBe('ok unattended');
    expect(answerTo(warned(boil, 'unattended'))).toMatch(/^\d+f$/);
  });
});

describe('a simulated person answers what is asked', () => {
  const fold = at('fold');
  it.each<[string, Partial<NonNullable<Advice['question']>>, Partial<Senses>, string]>([
    ['a number that was typed rightly', { kind: 'reading', id: 'reading' }, {}, 'yes'],
    ['what is true now', { kind: 'what is true now', id: 'pot.on', safe: 'off' }, {}, 'off'],
    ['a flat layer', { kind: 'safety', id: 'hands.layer' }, { thin: true }, 'yes'],
    ['a thick layer', { kind: 'safety', id: 'hands.layer' }, { thin: false }, 'no'],
    [
      'a crumb that is comfortable',
      { kind: 'safety', id: 'hands.crumb' },
      { crumbIsComfortable: true },
      'yes',
    ],
    ['a crumb that is too hot', { kind: 'safety', id: 'hands.crumb' }, { crumbIsComfortable: false }, 'no'],
  ])('%s', (_, question, senses, typed) => {
    expect(answerTo(asked(fold, question), tableOf({}, senses))).toBe(typed);
  });

  it('sees the slip in what was typed: no, and another reading', () => {
    const person = personAt(tableOf({ dial: () => ({ value: 238, unit: 'F' }) }), 1);
    const due: Advice = { ...at('boil.still'), nextReadingSeconds: 0 };
    expect(typedBy(person, due)).toBe('283');
    expect(typedBy(person, asked(due, { kind: 'reading', id: 'reading' }))).toBe('no');
  });

  it('takes back at once what the program did not ask about', () => {
    const person = personAt(tableOf({ dial: () => ({ value: 238, unit: 'F' }) }), 1);
    const still = at('boil.still');
    const due: Advice = {
      ...still,
      nextReadingSeconds: 0,
      typing: { ...still.typing, undoes: 'a reading' as never },
    };
    typedBy(person, due);
    expect(typedBy(person, due)).toBe('undo');
  });
});

describe('a simulated person pulls', () => {
  const pull = new Play({ kitchen: hallKitchen, from: 'pull' });
  pull.until('pull.droop');
  const stretched: Advice = { ...pull.advice, step: 'pull.stiff', canBeDone: true };
  const pulling = (table: SimulatedCook) => {
    const person = personAt(table);
    const grease: Advice = { ...pull.advice, step: 'pull.grease' };
    person.typed({ key: 'pull.grease', seconds: 1, type: () => 'done' }, 'done', grease);
    return (advice: Advice, seconds: number) => typedBy(person, advice, grease.now + seconds);
  };

  it.each<[string, Advice, Partial<Senses>, number, string | null]>([
    ['droops', pull.advice, { droops: true }, 60, 'droops'],
    ['holds', pull.advice, { droops: false }, 60, 'done'],
    ['still droops after twenty minutes', pull.advice, { droops: true }, 1300, 'arms out'],
    ['is tough', stretched, { stiff: true }, 60, 'done'],
    ['is not tough yet', stretched, { stiff: false }, 60, null],
    ['is not tough after twenty minutes', stretched, { stiff: false }, 1300, 'arms out'],
  ])('a rope that %s', (_, advice, senses, seconds, typed) => {
    expect(pulling(tableOf({}, senses))(advice, seconds)).toBe(typed);
  });
});

describe('a simulated person measures', () => {
  it('the middle of the mass, or says that there is nothing to measure it with', () => {
    const play = new Play({ kitchen: hallKitchen, from: 'fold' });
    for (let turn = 0; turn < 30 && play.step !== 'hands.measure'; turn += 1) {
      play.wait(60);
      play.forward();
    }
    expect(play.step).toBe('hands.measure');
    expect(answerTo(play.advice, tableOf({ middle: () => ({ value: 118, unit: 'F' }) }))).toBe('middle 118f');
    expect(answerTo(play.advice, tableOf({ middle: () => null }))).toBe('thermometer none');
  });

  it('says nothing of glass on the floor where none broke', () => {
    const play = new Play({ kitchen: hallKitchen }).until('boil.still').type('trouble thermometer');
    for (let turn = 0; turn < 9 && play.advice.question?.id !== 'trouble.glass'; turn += 1) play.type('done');
    const { advice } = play;
    expect(advice.question?.id).toBe('trouble.glass');
    expect(answerTo({ ...advice, step: 'trouble.thermometer.1' })).toMatch(/^(no|yes)$/);
  });

  it('waits for a change where nothing is to be done, and never longer than half a minute', () => {
    const quiet: Advice = {
      ...at('boil.still', blind),
      step: null,
      question: null,
      nextReadingSeconds: null,
      changesAt: null,
      warnings: [],
      phase: 'fold',
    };
    const idle = personAt(tableOf()).decide(quiet, quiet.now);
    expect(idle).toMatchObject({ type: null, seconds: 30 - steady.readsIn });
    expect(personAt(tableOf()).decide({ ...quiet, changesAt: quiet.now + 7 }, quiet.now).seconds).toBe(7);
  });
});
