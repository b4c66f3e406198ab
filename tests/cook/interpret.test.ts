import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { interpret, typedWords } from '../../source/cook/interpret.js';
import { phaseIds } from '../../source/recipe/recipe.js';
import { coldWaterOutcomes } from '../../source/sugar/stages.js';
import { hall, Play } from './play.js';

const boil = new Play({ kitchen: hall, from: 'boil' });
const read = (typed: string, play: Play = boil) => interpret(typed, play.advice);

describe('what people type', () => {
  it.each([
    ['238', { kind: 'reading', value: 238, unit: 'F', of: 'syrup', by: 'hands' }],
    ['114.5c', { kind: 'reading', value: 114.5, unit: 'C', of: 'syrup' }],
    ['114,5c', { kind: 'reading', value: 114.5, unit: 'C' }],
    ['238 F', { kind: 'reading', value: 238, unit: 'F' }],
    ['middle 47c', { kind: 'reading', value: 47, unit: 'C', of: 'middle' }],
    ['ice 0.5c', { kind: 'reading', value: 0.5, of: 'ice' }],
    ['boils 95c', { kind: 'reading', value: 95, of: 'boiling water' }],
    ['room 19c 60%', { kind: 'room', celsius: 19, humidity: 0.6 }],
    ['room 19 c 60 %', { kind: 'room', celsius: 19, humidity: 0.6 }],
    ['room 60 %', { kind: 'room', celsius: null, humidity: 0.6 }],
    ['thermometer none', { kind: 'no thermometer' }],
    ['no thermometer', { kind: 'no thermometer' }],
    ['unsure', { kind: 'cold water', outcome: 'unsure' }],
    ['done', { kind: 'done', step: 'boil.start' }],
    ['DONE', { kind: 'done', step: 'boil.start' }],
    ['heat high', { kind: 'heat', setting: 'high' }],
    ['heat off', { kind: 'heat', setting: 'off' }],
    ['pot off', { kind: 'pot', on: false }],
    ['lid on', { kind: 'lid', on: true }],
    ['water 30ml', { kind: 'water', grams: 30 }],
    ['hands children', { kind: 'hands', whose: 'children' }],
    ['droops', { kind: 'rope', does: 'droops' }],
    ['holds', { kind: 'rope', does: 'holds' }],
    ['arms   out', { kind: 'arms out' }],
    ['portion 3', { kind: 'portions', count: 3 }],
    ['stop', { kind: 'stop' }],
    ['weigh 512g', { kind: 'weigh', grams: 512, pieces: null }],
    ['weigh 70g of 10', { kind: 'weigh', grams: 70, pieces: 10 }],
    ['count 63', { kind: 'count', pieces: 63 }],
    ['note The Room got crowded', { kind: 'note', text: 'The Room got crowded' }],
    ['mark recording', { kind: 'mark', what: 'recording' }],
  ])('%s', (typed, event) => {
    expect(read(typed)).toMatchObject(event);
  });

  it('every outcome, trouble and phase by its name', () => {
    for (const outcome of coldWaterOutcomes) expect(read(outcome)).toEqual({ kind: 'cold water', outcome });
    for (const name of troubleNames) expect(read(`trouble ${name}`)).toEqual({ kind: 'trouble', name });
    for (const phase of phaseIds) expect(read(`at ${phase}`)).toEqual({ kind: 'at', phase });
  });

  it('a number on the knob where the knob has numbers', () => {
    const knob = { ...hall, heat: ['1', '2', '3', '4', '5', '6', '7', '8', '9'] };
    expect(read('heat 6', new Play({ kitchen: knob, from: 'boil' }))).toEqual({ kind: 'heat', setting: '6' });
    expect(boil.query('heat 6')).toContain('low, medium, high');
  });

  it.each([
    ['dnoe', 'Did you mean "done"?'],
    ['hard bal', 'Did you mean "hard ball"?'],
    ['heat hihg', 'did you mean "heat high"?'],
    ['at boli', 'Did you mean "at boil"?'],
    ['pot', 'Type "pot on" or "pot off"'],
    ['water', 'water 30ml'],
    ['portion many', 'portion 3'],
    ['room -40c', 'room 19c 60%'],
    ['weigh 0g of 10', 'weigh 512g'],
    ['count -3', 'count 63'],
    ['ok', 'no warning'],
    ['ok fire', 'No warning called "fire" is open'],
    ['over', 'No trouble is open'],
    ['yes', 'answers nothing'],
    ['stop it', 'Did you mean "stop"?'],
    ['no, wait', 'not understood'],
    ['hard ball I think', 'Did you mean "hard ball"?'],
    ['x'.repeat(400), 'too long'],
    ['\u001b[31mdone', '\\x1b'],
  ])('%j is answered with what to type instead', (typed, said) => {
    expect(boil.query(typed)).toContain(said);
    expect(boil.events).toHaveLength(1);
  });

  it('nothing that is typed throws, and nothing of it reaches the terminal raw', () => {
    const odd = [
      '\u0000',
      '\u202e238',
      '238\n239',
      'at\tboil',
      '💥',
      '[238]',
      '-',
      '--help',
      '1e9',
      'NaN',
      'null',
      '0x10',
      '²³⁸',
    ];
    for (const typed of odd) {
      const because = boil.query(typed) ?? '';
      expect(because).not.toMatch(/[\u0000-\u001f\u202e]/);
    }
  });

  it('every word is among those that help lists', () => {
    for (const word of [
      'done',
      'yes',
      'no',
      'ok',
      'heat',
      'pot',
      'lid',
      'trouble',
      'over',
      'at',
      'undo',
      'note',
      'mark',
    ])
      expect(typedWords).toContain(word);
  });
});
