import { describe, expect, it } from 'vitest';
import type { Advice } from '../../source/cook/advice.js';
import { troubleNames } from '../../source/cook/event.js';
import { allSteps } from '../../source/cook/phases/index.js';
import { canSpell } from '../../source/screen/block-letters.js';
import { lineWidth } from '../../source/screen/text.js';
import { type Watched, watchFrame } from '../../source/screen/watch-frame.js';
import { WatchLines } from '../../source/screen/watch-lines.js';
import { sceneOf, sceneOfStep } from '../../source/screen/watch-scene.js';
import { en } from '../../source/texts/en.js';
import { printer } from '../../source/units/printer.js';
import { blind, hall, Play, recipeNames } from '../cook/play.js';
import { fleschKincaidGrade } from '../sheets/reading-level.js';

const watched = (play: Play, isLed = true): Watched => ({
  kind: 'cook',
  cook: play.cook,
  advice: play.advice,
  printer: play.printer,
  isLed,
});

const screen = (seen: Watched, columns = 80, rows = 24, ascii = false): string =>
  watchFrame(seen, { columns, rows }, { ascii })
    .map((line) => line.map(({ text }) => text).join(''))
    .join('\n');

const boil = () => new Play({ kitchen: hall, from: 'boil' }).type('heat medium').reads(60, 222, 224);

/** A cook at each of its steps, from the first to the last. */
function* allTheWay(play: Play): Generator<Play> {
  for (let turn = 0; turn < 60 && play.step !== 'over.end'; turn += 1) {
    yield play;
    play.wait(20).forward();
  }
  yield play;
}

const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');

describe('what the room is told', () => {
  it.each(allSteps.map(({ id }) => id))('of the step %s has its scene', (step) => {
    const scene = sceneOfStep[step];
    expect(scene).toBeDefined();
    expect(Object.keys(en)).toContain(`watch.${scene}.why`);
  });

  const told = Object.entries(en).flatMap(([id, text]) =>
    id.startsWith('watch.') &&
    typeof text === 'string' &&
    /\.why$|^watch\.(keep|stage)\.|^watch\.quiet$/.test(id)
      ? [[id, text] as const]
      : [],
  );
  const scenes = Object.values(sceneOfStep).map((scene) => {
    const what: unknown = Reflect.get(en, `watch.${scene}`);
    return String(what);
  });

  it('fits a reader of twelve, all of it', () => {
    const all = [...scenes, ...told.map(([, text]) => text)];
    expect(all.length).toBeGreaterThan(80);
    expect(fleschKincaidGrade(all)).toBeLessThanOrEqual(4);
    expect(all.filter((text) => fleschKincaidGrade([text]) > 8)).toEqual([]);
  });

  it('is the presenter’s line of the phase, and none from 6 K below the take-off until the pot is empty', () => {
    const play = boil();
    expect(flat(screen(watched(play)))).toContain('Nobody stirs now.');
    play.reads(60, 228, 233, 237);
    expect(sceneOf(play.cook, play.advice)).toMatchObject({ quiet: true, cues: [] });
    expect(flat(screen(watched(play)))).toContain('Quiet now, please.');
    play.reads(60, 242).type('pot off').until('pour');
    expect(sceneOf(play.cook, play.advice)).toMatchObject({ quiet: true, cues: [] });
    play.until('fold');
    expect(sceneOf(play.cook, play.advice).quiet).toBe(false);
    expect(flat(screen(watched(play)))).toContain('only the scraper touches it');
  });

  it('is nothing personal: no notes, no words that were typed, and nothing of who got hurt', () => {
    for (const name of troubleNames) {
      const play = boil().type('note Anna is allergic to nuts', `trouble ${name}`).wait(70);
      const seen = flat(screen(watched(play), 120, 40));
      expect(seen).not.toMatch(/Anna|nuts|allerg|burn(?!s)|hurt|skin|water, 20|chok|doctor|911|112 /i);
    }
    const burnt = boil().type('trouble burn');
    expect(screen(watched(burnt))).toContain('Stand back, stay calm, and do what the cook says.');
    expect(screen(watched(burnt))).not.toMatch(/to wait/);
  });

  it('tells them to stand back from steam, from the pour, from the slab', () => {
    const keeps = new Map<string, string>();
    for (const play of allTheWay(new Play({ kitchen: hall }))) {
      const { keep } = sceneOf(play.cook, play.advice);
      keeps.set(play.advice.phase, keep === null ? '' : play.words(keep));
    }
    expect(keeps.get('boil')).toMatch(/^Stand back/);
    expect(keeps.get('flavour')).toMatch(/steam/);
    expect(keeps.get('pour')).toMatch(/^Stand well back/);
    expect(keeps.get('fold')).toMatch(/^Do not touch/);
  });

  it('says before they eat what is in it', () => {
    const play = new Play({ kitchen: hall }).until('wrap.serve');
    expect(screen(watched(play))).toContain('It has this in it: milk.');
  });

  it('runs on between events', () => {
    const play = boil().reads(60, 226, 228);
    const one = screen(watched(play));
    const other = screen(watched(play.wait(40)));
    expect(one).toContain('read just now');
    expect(other).toContain('read 40 s ago');
  });

  it('marks a rehearsal, and a keyboard that nobody sits at', () => {
    const play = boil();
    const advice: Advice = { ...play.advice, rehearsal: true };
    expect(screen({ ...watched(play), advice } as Watched)).toContain('REHEARSAL');
    expect(screen(watched(play, false))).toContain('nobody at the keyboard');
  });
});

describe('the screen of the room', () => {
  const sizes = [
    [80, 24],
    [120, 40],
    [200, 60],
    [40, 12],
    [12, 4],
  ] as const;

  it.each(sizes)(
    'at %ix%i is exactly as high as the window and never wider, in every step',
    (columns, rows) => {
      for (const kitchen of [hall, blind])
        for (const play of allTheWay(new Play({ kitchen })))
          for (const ascii of [false, true]) {
            const lines = watchFrame(watched(play), { columns, rows }, { ascii });
            expect(lines).toHaveLength(rows);
            for (const line of lines) expect(lineWidth(line)).toBeLessThanOrEqual(columns);
          }
    },
  );

  it('says all of what, why and stand back at 80x24, with the temperature five rows high, in every recipe', () => {
    for (const name of recipeNames)
      for (const play of allTheWay(new Play({ kitchen: hall, recipe: name }))) {
        const seen = flat(screen(watched(play)));
        const scene = sceneOf(play.cook, play.advice);
        for (const said of [scene.what, scene.why, ...(scene.keep === null ? [] : [scene.keep])])
          expect(seen).toContain(play.words(said));
      }
    const letters = screen(watched(boil()))
      .split('\n')
      .filter((row) => /[█▄▀]{2}/.test(row));
    expect(letters.length).toBeGreaterThanOrEqual(10);
  });

  it('is ASCII where the terminal can do no more', () => {
    for (const play of allTheWay(new Play({ kitchen: hall })))
      expect(screen(watched(play), 120, 40, true)).toMatch(/^[\n -~]*$/);
  });

  it('can spell every word and number that is written large', () => {
    for (const text of ['238 °F', '115 °C', 'PAST HARD CRACK', '119 PIECES', 'DISSOLVE', 'FLAVOUR', 'DONE'])
      for (const ascii of [true, false]) {
        for (const size of ['slim', 'small', 'large', 'huge'] as const) {
          const shown = ascii || size === 'slim' ? text.replace('°', '') : text;
          expect(canSpell(shown, size, ascii), `${shown} ${size} ${ascii}`).toBe(true);
        }
      }
  });

  it('waits in words where there is no cook', () => {
    const print = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });
    expect(screen({ kind: 'waiting', for: 'a cook', printer: print })).toContain('Waiting for a cook.');
  });
});

describe('the lines of the room', () => {
  it('only ever say what is new', () => {
    const written: string[] = [];
    const lines = new WatchLines(
      (text) => written.push(text),
      () => null,
    );
    const play = boil();
    lines.see(watched(play));
    const first = written.length;
    expect(written.join('')).toContain('[2:01, thread, 224 °F]');
    for (let second = 0; second < 20; second += 1) lines.see(watched(play.wait(1)));
    expect(written).toHaveLength(first);
    play.reads(15, 225);
    lines.see(watched(play));
    expect(written).toHaveLength(first + 1);
    play.reads(60, 228, 233, 237);
    lines.see(watched(play));
    expect(written.filter((line) => line.includes('Nobody stirs'))).toHaveLength(1);
    expect(written.at(-1)).toContain('Quiet now');
  });
});
