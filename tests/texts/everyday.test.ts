import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { interpret } from '../../source/cook/interpret.js';
import { everydaySayings as german } from '../../source/texts/de/everyday.js';
import { everydaySayings as english } from '../../source/texts/en/everyday.js';
import { bring } from '../../source/texts/languages.js';
import { words } from '../../source/texts/message.js';
import { Play } from '../cook/play.js';

await bring('de');
const boil = new Play({ from: 'boil' });
const languages = { en: english, de: german } as const;

const answerIn = (language: 'en' | 'de', typed: string): string | null => {
  const read = interpret(typed, boil.advice);
  return 'because' in read ? words(read.because, boil.printer.inLanguage(language)) : null;
};

/** Taken by the screen itself before anything is read. */
const ofTheScreen = ['help', 'leave'];

describe.each(['en', 'de'] as const)('everyday words in %s', (language) => {
  const rows = [...languages[language].urgent, ...languages[language].others];

  it('are answered with words that are taken', () => {
    for (const [, sentence] of rows)
      for (const [, word = ''] of sentence.matchAll(/"([^"]+)"/g)) {
        if (ofTheScreen.includes(word)) continue;
        const read = interpret(word, boil.advice);
        expect('because' in read ? read.because.id : 'taken', word).not.toBe('typed.unknown');
      }
  });

  it('are no words of the console, and are found by every one of their own', () => {
    for (const [said, sentence] of rows)
      for (const one of said.split('|').map((word) => word.replaceAll('*', ''))) {
        const read = interpret(one, boil.advice);
        if ('because' in read && read.because.id === 'typed.unknown')
          expect(answerIn(language, one), one).toContain(sentence);
      }
  });

  it('fit on two rows of eighty columns', () => {
    for (const [, sentence] of rows) expect(sentence.length, sentence).toBeLessThanOrEqual(125);
  });
});

describe('somebody is hurt', () => {
  it.each([
    ['en', 'I burned myself', '"burn"'],
    ['en', 'ouch!!', 'cool running water now'],
    ['en', 'the pan is on FIRE', 'lid over the pot'],
    ['en', 'it smells funny', '"scorched"'],
    ['en', 'foam is rising', 'slide the pot off'],
    ['en', 'she is choking', 'Call for help'],
    ['de', 'Es brennt', 'Haut: sofort kühles fließendes Wasser'],
    ['de', 'Autsch', '"burn"'],
    ['de', 'es läuft über', 'Hitze aus'],
  ] as const)('%s: %s', (language, typed, said) => {
    expect(answerIn(language, typed)).toContain(said);
  });

  it.each(['burn', 'fire', 'Fire!', 'choking', 'scorched', 'foam', 'glass', ':burn', 'power.'])(
    'one word is enough: %s',
    (typed) => {
      const name = typed.toLowerCase().replace(/[^a-z]/g, '');
      expect(troubleNames).toContain(name);
      expect(interpret(typed, boil.advice)).toEqual({ kind: 'trouble', name });
    },
  );
});

describe('what somebody would say', () => {
  it.each([
    ['en', "it's boiling", 'type "done"'],
    ['en', 'next', 'type "done"'],
    ['en', 'lower', '"heat low"'],
    ['en', 'off', '"pot off"'],
    ['en', 'hard', '"hard ball"'],
    ['en', 'about 240', 'digits alone'],
    ['en', 'bye', '"leave"'],
    ['en', 'oops', '"undo"'],
    ['en', 'yes please', 'Did you mean "yes"?'],
    ['en', 'dnoe', 'Did you mean "done"?'],
    ['en', 'hard ball I think', 'Did you mean "hard ball"?'],
    ['en', 'blorp', 'Type a reading (238)'],
    ['de', 'ja', 'tipp "yes"'],
    ['de', 'nein', 'tipp "no"'],
    ['de', 'fertig', 'tipp "done"'],
    ['de', 'kleiner', '"heat low"'],
    ['de', 'dnoe', 'Meintest du "done"?'],
  ] as const)('%s: %s', (language, typed, said) => {
    expect(answerIn(language, typed)).toContain(said);
  });

  it('a mark at the end is no other word, but a question is no answer', () => {
    const asked = new Play();
    while (asked.advice.question === null) asked.type('done');
    for (const typed of ['yes.', 'Yes!', ': yes'])
      expect(interpret(typed, asked.advice)).toMatchObject({ answer: 'yes' });
    for (const typed of ['yes?', 'yes, in a minute'])
      expect(interpret(typed, asked.advice)).toMatchObject({ kind: 'queried' });
    expect(interpret('Done.', boil.advice)).toMatchObject({ kind: 'done' });
    expect(interpret('note It smelled good.', boil.advice)).toEqual({
      kind: 'note',
      text: 'It smelled good.',
    });
  });

  it('a first word that was mistyped is put right only where the line can be taken then', () => {
    expect(answerIn('en', 'wigh 70g of 10')).toContain('"weigh 70g of 10"');
    expect(answerIn('en', 'haet low')).toContain('"heat low"');
    for (const typed of ['ice burned myself', 'heta now'])
      expect(answerIn('en', typed)).not.toMatch(/Did you mean "(ice|heat) /);
  });
});
