import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { blockLetters, canSpell, type LetterSize } from '../../source/screen/block-letters.js';
import { contextOf, type Size } from '../../source/screen/context.js';
import { frame } from '../../source/screen/frame.js';
import {
  arcMinutes,
  capitalRows,
  heightsMarkdown,
  laptop,
  leastArcMinutes,
  preferredArcMinutes,
  seenArcMinutes,
} from '../../source/screen/legibility.js';
import type { ConsoleModel } from '../../source/screen/model.js';
import { far, type Letters, seenOf } from '../../source/screen/parts/far.js';
import { lineWidth } from '../../source/screen/text.js';
import { message } from '../../source/texts/message.js';
import { type Bench, bench, kitchenNamed, modelOn, plainText, play, wholeCook } from './kit.js';

const unicode = { ascii: false };
const ascii = { ascii: true };
const usual: Size = { columns: 120, rows: 36 };
const small: Size = { columns: 80, rows: 24 };
const sizes: readonly Size[] = [small, usual, { columns: 120, rows: 40 }, { columns: 200, rows: 60 }];

const press = async (model: ConsoleModel, one: Bench, keys: string): Promise<void> => {
  for (const char of keys) {
    model.key(char === '\r' ? { kind: 'enter' } : { kind: 'char', char });
    await one.time.pass(500);
  }
};

const drawn = (model: ConsoleModel, size: Size, style = unicode) => {
  model.happened();
  return frame(model.shown, size, style).lines;
};
const text = (model: ConsoleModel, size: Size, style = unicode): string =>
  plainText(drawn(model, size, style));

const isFar = (model: ConsoleModel): boolean => /near view/.test(text(model, usual).split('\n').at(-1) ?? '');

/** Rows of a text in block letters are somewhere on the screen. */
const hasLetters = (
  page: string,
  said: string,
  letters: readonly LetterSize[] = ['slim', 'small', 'large', 'huge'],
): boolean =>
  letters.some((size) => blockLetters(said, size, 400, false)?.every((row) => page.includes(row.trim())));

describe('the heights of letters', () => {
  it('are what geometry says: 9.31 mm at two metres are 16 minutes of arc', () => {
    expect(arcMinutes(9.308, 2000)).toBeCloseTo(16, 2);
    expect(arcMinutes(4 * Math.tan((0.5 * Math.PI) / 180), 2)).toBeCloseTo(60, 6);
    expect(laptop.heightMillimetres).toBeCloseTo(174.4, 1);
  });

  it('count half blocks as halves, and lines of box letters to the middle of their cell', () => {
    expect(capitalRows('slim', false)).toBe(2);
    expect(capitalRows('small', false)).toBe(4.5);
    expect(capitalRows('large', false)).toBe(4.5);
    expect(capitalRows('huge', false)).toBe(6);
    expect(capitalRows('large', true)).toBeLessThan(4.8);
    expect(capitalRows('large', true)).toBeGreaterThan(4);
  });

  it('are at least 16 minutes for every letter at 120x36, and 20 for all but the smallest', () => {
    for (const size of ['slim', 'small', 'large', 'huge'] as const)
      expect(seenArcMinutes(size, { rows: 36 }), size).toBeGreaterThanOrEqual(leastArcMinutes);
    for (const size of ['small', 'large', 'huge'] as const)
      for (const isAscii of [false, true])
        expect(seenArcMinutes(size, { rows: 36, ascii: isAscii })).toBeGreaterThanOrEqual(
          preferredArcMinutes,
        );
  });

  it('stand in the documentation as they are computed', () => {
    const page = readFileSync(new URL('../../docs/LEGIBILITY.md', import.meta.url), 'utf8');
    expect(page, 'run: npx tsx scripts/legibility.ts').toContain(heightsMarkdown());
  });
});

/** Every language that is gathered in the folder of texts. */
const gathered = async (): Promise<readonly (readonly [id: string, texts: Record<string, unknown>])[]> => {
  const folder = new URL('../../source/texts/', import.meta.url);
  const ids = readdirSync(folder).flatMap((name) => /^([a-z]{2})\.ts$/.exec(name)?.[1] ?? []);
  return Promise.all(
    ids.map(async (id) => {
      const module = (await import(new URL(`${id}.ts`, folder).href)) as Record<
        string,
        Record<string, unknown>
      >;
      return [id, module[id] ?? {}] as const;
    }),
  );
};

describe('every shout, in every language', () => {
  it('has at most two lines of fourteen letters, each in the block fonts, and fits a 120x36 window in 20 minutes', async () => {
    const languages = await gathered();
    expect(languages.map(([id]) => id)).toContain('en');
    for (const [id, texts] of languages) {
      const shouts = Object.entries(texts).filter(([key]) => key.endsWith('.shout'));
      if (id === 'en') expect(shouts.length).toBeGreaterThan(60);
      for (const [key, said] of shouts) {
        expect(typeof said, `${id} ${key}`).toBe('string');
        const lines = String(said).split('\n');
        expect(lines.length, `${id} ${key}`).toBeLessThanOrEqual(2);
        for (const line of lines) expect([...line].length, `${id} ${key}: ${line}`).toBeLessThanOrEqual(14);
        for (const size of ['slim', 'small', 'large', 'huge'] as const)
          expect(canSpell(String(said), size, false), `${id} ${key} in ${size} letters`).toBe(true);
        expect(blockLetters(String(said), 'small', usual.columns - 4, false), `${id} ${key}`).not.toBeNull();
        expect(blockLetters(String(said), 'small', small.columns - 4, false), `${id} ${key}`).not.toBeNull();
      }
    }
  });
});

describe('the far view', () => {
  it('is there on one key at any time, and gone on the same key', async () => {
    const one = bench();
    const model = modelOn(one);
    for (const typed of wholeCook) {
      await play(one, [typed]);
      model.happened();
      await one.time.pass(500);
      const { question } = one.session.advice();
      const before = isFar(model);
      await press(model, one, 'v');
      if (question?.kind === 'pause') expect(isFar(model)).toBe(false);
      else expect(isFar(model), `${one.session.advice().step}`).toBe(!before);
      await press(model, one, 'v');
      expect(isFar(model)).toBe(before);
    }
    model.close();
  });

  it('comes by itself while folding, pulling and cutting; a key brings back the near view until the next phase', async () => {
    const one = bench();
    const model = modelOn(one);
    const seen: Record<string, boolean[]> = {};
    for (const typed of wholeCook) {
      await play(one, [typed]);
      const { phase, question } = one.session.advice();
      if (question?.kind !== 'pause') seen[phase] = [...(seen[phase] ?? []), isFar(model)];
    }
    for (const phase of ['fold', 'pull', 'cut']) expect(seen[phase]?.every(Boolean), phase).toBe(true);
    for (const phase of ['mix', 'boil', 'wrap', 'clean'])
      expect(seen[phase]?.some(Boolean), phase).toBe(false);
    const again = bench();
    const other = modelOn(again);
    await play(again, wholeCook.slice(0, 45));
    expect(again.session.advice().phase).toBe('pull');
    other.happened();
    await again.time.pass(1000);
    await press(other, again, 'v');
    expect(isFar(other)).toBe(false);
    await play(again, [[60, 'done']]);
    expect(again.session.advice().phase).toBe('pull');
    expect(isFar(other)).toBe(false);
    for (let press = 0; press < 8 && again.session.advice().phase === 'pull'; press += 1)
      await play(again, [[300, 'done']]);
    expect(again.session.advice().phase).toBe('cut');
    expect(isFar(other)).toBe(true);
  });

  it('writes temperature, target, time and shout so that they are seen under 20 minutes of arc at 120x36', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 16));
    const model = modelOn(one);
    await press(model, one, 'v');
    const page = text(model, usual);
    const enough: readonly LetterSize[] = ['small', 'large', 'huge'];
    const { facts, printer, advice } = model.shown;
    const minutes = Math.round((advice.forecast?.takeOffSeconds.typical ?? 0) / 60);
    expect(minutes).toBeGreaterThan(1);
    const window = printer.dialSpan(...facts.window).replace(/ .*$/, '');
    for (const said of ['229', window, String(minutes)])
      expect(hasLetters(page, said, enough), said).toBe(true);
    for (const line of String(ctxSay(model)).split('\n'))
      expect(hasLetters(page, line, enough), line).toBe(true);
  });

  const note = (into: Record<string, number[]>, key: string, height: number): void => {
    into[key] = [...(into[key] ?? []), height];
  };
  const labelSeen = ({ labels }: Letters, rows: number, ascii: boolean): number =>
    labels === 'line' ? 0 : seenArcMinutes(labels, { rows, ascii });

  it('never has a letter below 16 minutes in a whole cook, at any usual size, with an eye for all that waits', async () => {
    const heights: Record<string, number[]> = {};
    const labelHeights: Record<string, number[]> = {};
    for (const kitchen of [kitchenNamed('hill-hall'), { ...kitchenNamed('hill-hall'), thermometers: [] }]) {
      const one = bench({ kitchen });
      const model = modelOn(one);
      await play(one, wholeCook, () => {
        model.happened();
        for (const size of sizes)
          for (const style of [unicode, ascii]) {
            const found = far(contextOf(model.shown, style), size, size.rows - 3);
            const where = `${one.session.advice().step} at ${size.columns}x${size.rows}`;
            // Lists that are read aloud are shown near.
            if (one.session.advice().question?.kind === 'pause') continue;
            expect(found, where).not.toBeNull();
            if (found === null) continue;
            const seen = seenOf(found.letters, size.rows, style.ascii);
            expect(seen, where).toBeGreaterThanOrEqual(leastArcMinutes);
            const key = `${size.columns}x${size.rows}`;
            note(heights, key, seen);
            note(labelHeights, key, labelSeen(found.letters, size.rows, style.ascii));
            expect(found.lines).toHaveLength(size.rows - 3);
            expect(Math.max(...found.lines.map(lineWidth))).toBeLessThanOrEqual(size.columns);
          }
      });
    }
    for (const size of ['120x36', '120x40', '200x60'])
      expect(Math.min(...(heights[size] ?? [0])), size).toBeGreaterThanOrEqual(preferredArcMinutes);
    expect(Math.min(...(labelHeights['200x60'] ?? [0]))).toBeGreaterThanOrEqual(preferredArcMinutes);
    const read = (labelHeights['120x36'] ?? []).filter((height) => height >= leastArcMinutes);
    expect(read.length).toBeGreaterThan(0.9 * (labelHeights['120x36'] ?? []).length);
  });

  it('shouts a warning that wants an act at once, with its sentence, in the place of the step', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 47));
    expect(one.session.advice().phase).toBe('pull');
    await play(one, [[60, 'middle 140f']]);
    const ids = one.session.advice().warnings.map(({ id }) => id);
    expect(ids).toContain('middle-above-limit');
    const model = modelOn(one);
    for (const size of sizes) {
      const page = text(model, size);
      expect(hasLetters(page, 'PUT IT DOWN'), `${size.rows}`).toBe(true);
      expect(page).toMatch(/WARNING/);
      expect(page.replaceAll(/\s+/g, ' ')).toMatch(/too hot for hands.*Put it down/);
    }
  });

  it('has every open warning of that level somewhere, in words, at every size, whatever else is open', async () => {
    for (const steps of [17, 22, 41, 47])
      for (const name of troubleNames) {
        const one = bench();
        await play(one, wholeCook.slice(0, steps));
        const model = modelOn(one);
        await press(model, one, 'v');
        await play(one, [`trouble ${name}`, [5, 'trouble spill']]);
        model.happened();
        const open = one.session.advice().warnings.filter(({ level }) => level === 'now');
        for (const size of sizes) {
          const page = text(model, size).replaceAll(/\s+/g, ' ');
          const rows = text(model, size);
          for (const { id, cause } of open) {
            const told = one.session.advice().troubles[0]?.name === id;
            const said = model.shown.printer && contextOf(model.shown, unicode).say(cause);
            const shout = contextOf(model.shown, unicode).say(one.session.advice().shout).split('\n');
            const isShouted = told && shout.every((line) => hasLetters(rows, line));
            const isNamed = new RegExp(`(also open|open):[^.]*\\b${id}\\b`).test(page);
            expect(
              isShouted || isNamed || page.includes(said),
              `${name} ${id} at ${size.rows}, ${steps}`,
            ).toBe(true);
          }
        }
        model.close();
      }
  });

  it('keeps the marks of a rehearsal and of what is not saved', async () => {
    const one = bench({ rehearsal: true });
    const model = modelOn(one);
    await press(model, one, 'v');
    const shown = { ...model.shown, saving: { saving: false, heldCount: 3, problem: null } };
    for (const size of sizes) {
      const page = plainText(frame(shown, size, unicode).lines);
      expect(page).toMatch(/REHEARSAL/);
      expect(page).toMatch(/NOT SAVED: 3 events/);
    }
  });

  it('shows in a rehearsal what is to be seen at the simulated pot', async () => {
    const one = bench({ rehearsal: true });
    const model = modelOn(one);
    await press(model, one, 'v');
    const sight = message('rehearsal.look', {
      paused: false,
      wrong: ['touched'],
      dial: null,
      poured: true,
      boils: false,
      dissolved: true,
      fullShare: 0,
      fingers: null,
      rope: null,
      crumbIsComfortable: null,
    });
    for (const size of sizes)
      expect(plainText(frame({ ...model.shown, sight }, size, unicode).lines)).toMatch(
        /A HELPER HAS TOUCHED THE MASS/,
      );
  });

  it('gives way to a list, to what is typed, and to help; and a reading typed there is written large', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 16));
    const model = modelOn(one);
    await press(model, one, 'v!');
    expect(text(model, small)).toMatch(/What is wrong/);
    await press(model, one, '!');
    expect(isFar(model)).toBe(true);
    await press(model, one, '236');
    expect(hasLetters(text(model, usual), '236')).toBe(true);
    expect(text(model, usual)).toMatch(/> 236/);
    await press(model, one, '\r');
    expect(one.session.cook.lastReading?.celsius).toBeGreaterThan(110);
  });

  it('says how old a reading is: nobody takes one of five minutes ago for now', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 16));
    const model = modelOn(one);
    await press(model, one, 'v');
    expect(hasLetters(text(model, usual), 'NOW F')).toBe(true);
    one.time.now += 330_000;
    expect(hasLetters(text(model, usual), '5 MIN AGO')).toBe(true);
  });

  it('has no temperature where there is no thermometer, and still the shout', async () => {
    const one = bench({ kitchen: { ...kitchenNamed('hill-hall'), thermometers: [] } });
    await play(one, wholeCook.slice(0, 12));
    const model = modelOn(one);
    await press(model, one, 'v');
    expect(isFar(model)).toBe(true);
    for (const line of String(ctxSay(model)).split('\n'))
      expect(hasLetters(text(model, usual), line), line).toBe(true);
    expect(text(model, usual)).not.toMatch(/TARGET/);
  });
});

const ctxSay = (model: ConsoleModel): string => contextOf(model.shown, unicode).say(model.shown.advice.shout);
