import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { blockLetters, canSpell, type LetterSize } from '../../source/screen/block-letters.js';
import type { Size } from '../../source/screen/context.js';
import { frame } from '../../source/screen/frame.js';
import type { ConsoleModel } from '../../source/screen/model.js';
import { lineWidth } from '../../source/screen/text.js';
import { en } from '../../source/texts/en.js';
import { languageIds } from '../../source/units/language.js';
import { type Bench, bench, kitchenNamed, modelOn, plainText, play, wholeCook } from './kit.js';

const unicode = { ascii: false };
const ascii = { ascii: true };
const sizes: readonly Size[] = [
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
];
const smallest = sizes[0] as Size;

const at = (model: ConsoleModel, size: Size = smallest, style = unicode): string => {
  model.happened();
  return plainText(frame(model.shown, size, style).lines);
};

/** The frame is exactly as high as the window, no row is wider, and nothing had to be left out. */
const fits = (model: ConsoleModel, where: string, within = sizes): void => {
  model.happened();
  for (const size of within)
    for (const style of [unicode, ascii]) {
      const drawn = frame(model.shown, size, style);
      const said = `${where} at ${size.columns}x${size.rows}${style.ascii ? ' in ASCII' : ''}`;
      expect(drawn.lines.length, said).toBe(size.rows);
      const widest = Math.max(...drawn.lines.map(lineWidth));
      expect(widest, said).toBeLessThanOrEqual(size.columns);
      if (drawn.clipped) console.log(plainText(drawn.lines));
      expect(drawn.clipped, said).toBe(false);
    }
};

const recipes = ['hill-hall-ginger-pull', 'molasses-pull', 'clear-pull', 'vinegar-pull'];

const withoutThermometer = (): Kitchen => ({ ...kitchenNamed('hill-hall'), thermometers: [] });
const poorKitchen = (): Kitchen => ({
  ...kitchenNamed('hill-hall'),
  pot: { litres: 1.5, diameterMillimetres: 280 },
});

const presses = async (model: ConsoleModel, one: Bench, keys: string): Promise<void> => {
  for (const char of keys) {
    model.key(char === '\r' ? { kind: 'enter' } : { kind: 'char', char });
    await one.time.pass(500);
  }
};

describe.each(languageIds)(
  'in %s the frame is never taller or wider than the window, and leaves nothing out',
  (language) => {
    it.each(recipes)('in every step of %s', async (recipe) => {
      const one = bench({ recipe });
      const model = modelOn(one, { language });
      fits(model, 'opening');
      await play(one, wholeCook, (line) => fits(model, `after "${line}" (${one.session.advice().step})`));
      model.close();
    });

    it('without a thermometer, and with a pot that is too small', async () => {
      for (const kitchen of [withoutThermometer(), poorKitchen()]) {
        const one = bench({ kitchen });
        const model = modelOn(one, { language });
        fits(model, 'opening');
        await play(
          one,
          [...wholeCook.slice(0, 14), 'pot off', 'hard ball', 'done', 'done', 'done', 'yes'],
          (line) => fits(model, `after "${line}" (${one.session.advice().step})`),
        );
        model.close();
      }
    });

    it.each(troubleNames)(
      'with the trouble %s, from first action to last, in the boil and on the slab',
      async (name) => {
        for (const steps of [17, 41]) {
          const one = bench();
          await play(one, wholeCook.slice(0, steps));
          const model = modelOn(one, { language });
          const windows = [smallest, sizes[2] as Size];
          await play(one, [`trouble ${name}`], () => fits(model, name, windows));
          await play(one, ['done', 'done', 'done', 'done', 'done'], () =>
            fits(model, `${name} (${one.session.advice().step})`, windows),
          );
          model.close();
        }
      },
    );

    it('with lists, help, leaving, a long line, and after an act that was taken back', async () => {
      const one = bench();
      await play(one, wholeCook.slice(0, 17));
      const model = modelOn(one, { language });
      for (const keys of ['!', 'h', '?', '?', 'q', 'q']) {
        await presses(model, one, keys);
        fits(model, `key ${keys}`);
      }
      await presses(model, one, `:note ${'a long remark about the hall '.repeat(6)}`);
      fits(model, 'a long remark');
      await presses(model, one, '\r238');
      fits(model, 'a reading being typed');
      await presses(model, one, '\rpu');
      fits(model, 'taken back');
      expect(one.session.advice().question?.kind).toBe('what is true now');
      model.close();
    });
  },
);

describe('what stands on it', () => {
  const inTheBoil = async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 17));
    return { one, model: modelOn(one) };
  };

  it('a pause point shows its whole list at 80x24, and the keys that answer it', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 4));
    const text = at(modelOn(one));
    for (const number of [1, 2, 3, 4, 5, 6, 7])
      expect(text).toMatch(new RegExp(`^.*\\b${number} [A-Z]`, 'm'));
    expect(text).toMatch(/y yes\s+n no/);
    expect(text).not.toMatch(/space done/);
  });

  it('the glass has the window, the reading and the minute to come, hottest on top', async () => {
    const { model } = await inTheBoil();
    const rows = at(model).split('\n');
    const row = (what: RegExp): number => rows.findIndex((text) => what.test(text));
    expect(row(/target/)).toBeGreaterThan(0);
    expect(row(/◁.*in 1 min/)).toBeGreaterThan(row(/target/));
    expect(row(/◄.*now/)).toBeGreaterThan(row(/◁.*in 1 min/));
    expect(rows[row(/◄.*now/)]).toMatch(/^ 2\d\d ◄/);
    expect(row(/hard ball/)).toBeLessThan(row(/firm ball/));
    expect(row(/firm ball/)).toBeLessThan(row(/soft ball {2}|soft ball$/));
  });

  it('a trouble has its first action in block letters and the rest below, at 80x24 and 120x40', async () => {
    for (const size of [smallest, sizes[2] as Size])
      for (const name of troubleNames) {
        const { one, model } = await inTheBoil();
        await play(one, [`trouble ${name}`]);
        model.happened();
        const rows = frame(model.shown, size, unicode).lines;
        const letters = rows.filter((line) => /[▐█▌┏┗┃╹╻]{1}.*[▐█▌┏┗┃╹╻]/.test(plainText([line]).slice(23)));
        expect(letters.length, `${name} at ${size.columns}`).toBeGreaterThanOrEqual(3);
        model.close();
      }
  });

  it('temperature, target, time and action are in block letters from 120x36 on', async () => {
    const { model } = await inTheBoil();
    model.happened();
    const rows = frame(model.shown, { columns: 120, rows: 36 }, unicode).lines;
    const block = rows.filter((line) => line.some(({ text }) => /[▄█▀▐▌]{2}/.test(text.slice(0))));
    expect(block.length).toBeGreaterThanOrEqual(16);
  });

  it('a rehearsal, a later beginning and unsaved events are marked', async () => {
    const rehearsed = at(modelOn(bench({ rehearsal: true, from: 'boil' })));
    expect(rehearsed).toMatch(/REHEARSAL/);
    expect(rehearsed).toMatch(/began at boil/);
    const one = bench();
    const model = modelOn(one);
    model.happened();
    const shown = { ...model.shown, saving: { saving: false, heldCount: 3, problem: null } };
    expect(plainText(frame(shown, smallest, unicode).lines)).toMatch(/NOT SAVED: 3 events/);
  });

  it('meaning is never in colour alone: each warning has a word and a mark', async () => {
    const { one, model } = await inTheBoil();
    await play(one, ['yes', [30, '262']]);
    expect(one.session.advice().warnings.length).toBeGreaterThan(0);
    expect(at(model)).toMatch(/▲ (ACT NOW|WARNING|ATTENTION|CAUTION|DANGER)/);
    expect(at(model, smallest, ascii)).toMatch(/! (ACT NOW|WARNING|ATTENTION|CAUTION|DANGER)/);
  });

  it('is plain ASCII where nothing else can be shown', async () => {
    const one = bench();
    const model = modelOn(one);
    await play(one, wholeCook, () => expect(at(model, sizes[2], ascii)).toMatch(/^[\n\u0020-\u007e]*$/));
  });

  it('a window that is too small says what it needs', () => {
    const model = modelOn(bench());
    expect(at(model, { columns: 60, rows: 20 })).toMatch(/needs 80x24, has 60x20/);
    for (const size of [
      { columns: 20, rows: 5 },
      { columns: 10, rows: 3 },
      { columns: 1, rows: 1 },
    ]) {
      const { lines } = frame(model.shown, size, unicode);
      expect(lines.length).toBe(size.rows);
      expect(Math.max(...lines.map(lineWidth))).toBeLessThanOrEqual(size.columns);
    }
  });

  it('the typed digits are written as large as the action before Enter takes them', async () => {
    const { one, model } = await inTheBoil();
    await presses(model, one, '238');
    const text = at(model);
    expect(text).toMatch(/> 238/);
    expect(
      text.split('\n').filter((row) => /[▄▀▐▌▝▘▗▖]{2}/.test(row.slice(22))).length,
    ).toBeGreaterThanOrEqual(4);
  });

  it('the share bar never claims more than there is', async () => {
    const { model } = await inTheBoil();
    const share = model.shown.advice.forecast?.boilShare ?? 0;
    const row =
      at(model)
        .split('\n')
        .find((text) => /█/.test(text) && /%/.test(text)) ?? '';
    const full = [...row].filter((char) => char === '█').length;
    const cells = full + [...row].filter((char) => /[▏▎▍▌▋▊▉░]/.test(char)).length;
    expect(full / cells).toBeLessThanOrEqual(share);
    expect((full + 1) / cells).toBeGreaterThan(share);
  });
});

describe('block letters', () => {
  const shouts = Object.entries(en).filter(([id]) => id.endsWith('.shout'));
  const letterSizes: readonly LetterSize[] = ['slim', 'small', 'large', 'huge'];

  it('have a shape for every character of every shout, digit and sign that is written in them', () => {
    expect(shouts.length).toBeGreaterThan(60);
    const characters = `${shouts.map(([, text]) => text).join('')}0123456789-:.?ABCDEFGHIJKLMNOPQRSTUVWXYZ`;
    for (const size of letterSizes)
      for (const inAscii of [false, true])
        for (const char of new Set(characters))
          expect(canSpell(char, size, inAscii), `${size} ${char}`).toBe(true);
  });

  it('fit beside the glass: small at 80 columns, large at 120, huge at 200', () => {
    for (const [size, columns] of [
      ['slim', 58],
      ['small', 58],
      ['large', 94],
      ['huge', 174],
    ] as const)
      for (const [id, text] of shouts)
        for (const inAscii of [false, true])
          expect(blockLetters(String(text), size, columns, inAscii), `${id} ${size}`).not.toBeNull();
  });
});
