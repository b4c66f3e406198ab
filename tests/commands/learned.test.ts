import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookIn, trueKitchen } from '../../bench/kitchen-series.js';
import { plainPrinter } from '../../source/commands/io.js';
import { kitchen } from '../../source/commands/kitchen.js';
import { learnedNote, taughtKitchen } from '../../source/commands/taught.js';
import type { Happened } from '../../source/cook/event.js';
import { encodeLine } from '../../source/journal/line.js';
import { type Learned, lessonsIn } from '../../source/kitchen/learned.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { kitchenToYaml } from '../../source/kitchen/write.js';
import { words } from '../../source/texts/message.js';
import { recipe } from '../cook/play.js';

const truth = trueKitchen(77, false);
const day = (index: number): string => `2026-11-${10 + index}`;

let home = '';
const env = () => ({ KETTLEHAND_HOME: home });
const keep = async (id: string, events: readonly Happened[], at: string, damage = false): Promise<void> => {
  const lines = events.flatMap((event) => encodeLine({ ...event, at, up: event.t }) ?? []);
  const bytes = Buffer.concat(lines);
  await writeFile(join(home, 'cooks', `${id}.jsonl`), damage ? bytes.subarray(0, 300) : bytes);
};

beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'kettlehand-learned-'));
  await mkdir(join(home, 'cooks'), { recursive: true });
  for (const index of [1, 2, 3]) {
    const { events } = cookIn(recipe('hill-hall-ginger-pull'), truth, truth.kitchen, 77_000 + index);
    await keep(`${day(index)}-100000-000${index}`, events, `${day(index)}T10:00:00.000Z`);
    if (index < 3) continue;
    const rehearsal = [{ ...events[0], seed: 9 } as Happened, ...events.slice(1)];
    await keep(`${day(4)}-100000-0004`, rehearsal, `${day(4)}T10:00:00.000Z`);
    await keep(`${day(5)}-100000-0005`, events.slice(0, 20), `${day(5)}T10:00:00.000Z`);
    await keep(`${day(6)}-100000-0006`, events, `${day(6)}T10:00:00.000Z`, true);
  }
});
afterAll(() => rm(home, { recursive: true, force: true }));

const counter = (text: string) => {
  const said = { out: '', err: '', text };
  const io = {
    out: (part: string) => {
      said.out += part;
    },
    err: (part: string) => {
      said.err += part;
    },
    readKitchen: async () => ({ text: said.text }),
    writeKitchen: async (written: string) => {
      said.text = written;
      return null;
    },
    taught: (one: Parameters<typeof taughtKitchen>[0]) => taughtKitchen(one, { env: env() }),
    now: () => new Date(2026, 10, 30),
    kitchenPath: '/home/ada/kitchen.yaml',
  };
  return { said, io };
};

describe('what finished cooks on the disk teach', () => {
  it('counts the finished ones: no rehearsal, none that was left, none that is damaged', async () => {
    const { learned } = await taughtKitchen(truth.kitchen, { env: env() });
    expect(learned?.boxShare).toMatchObject({ cooks: 3, date: day(3) });
    expect(lessonsIn(learned ?? (null as never)).length).toBeGreaterThan(4);
  });

  it('leaves a kitchen as it was where there are no cooks', async () => {
    const none = await taughtKitchen(truth.kitchen, { env: { KETTLEHAND_HOME: join(home, 'nothing') } });
    expect(none).toBe(truth.kitchen);
  });

  it('says in a plan that it reckons with it', async () => {
    const { learned } = await taughtKitchen(truth.kitchen, { env: env() });
    const note = learnedNote(learned);
    expect(note !== null && words(note, plainPrinter)).toBe(
      `Reckoned with what 3 cooks in this kitchen showed (up to ${day(3)}). See and change it: kettlehand kitchen.`,
    );
    expect(learnedNote(undefined)).toBeNull();
  });
});

describe('kettlehand kitchen', () => {
  it('shows what was learned, from how many cooks and until when', async () => {
    const { io, said } = counter(kitchenToYaml(truth.kitchen));
    expect(await kitchen([], {}, io)).toBe(0);
    expect(said.out).toContain(`(from 3 cooks, the last on ${day(3)})`);
    expect(said.out).toMatch(/Learned of heat medium: about \d+ W into the pot/);
    expect(said.out).toMatch(/Learned of this crew: Cooling and folding takes \d+ min/);
  });

  it('takes what a person says instead, dates it, and forgets it again', async () => {
    const { io, said } = counter(kitchenToYaml(truth.kitchen));
    expect(await kitchen(['set', 'learned.losses', '25 %', 'learned.watts.high', '900 W'], {}, io)).toBe(0);
    expect(said.text).toContain('losses: { value: 25 %, date: 2026-11-30 }');
    expect(said.out).toContain('25 % stay on pot, table and hands');
    expect(said.out).toContain('(said by you on 2026-11-30)');
    expect(await kitchen(['set', 'learned.losses', 'none'], {}, io)).toBe(0);
    expect(said.text).not.toContain('losses');
    said.out = '';
    await kitchen([], {}, io);
    expect(said.out).toMatch(/Learned of losses: .*from 3 cooks/);
  });

  it.each([
    ['learned.losses', '140 %', `"140 %" can't be meant here. Write for example 12 %, or none to forget it.`],
    [
      'learned.carry-over',
      'much',
      `"much" can't be meant here. Write for example 2 F, or none to forget it.`,
    ],
    ['learned.fold', '0 min', `"0 min" can't be meant here. Write for example 18 min, or none to forget it.`],
    ['learned.watts.turbo', '600', '"turbo" is no field here.'],
    ['learned.speed', '3', '"learned.speed" is nothing that can be set.'],
  ])('set %s %s is answered and nothing is written', async (key, value, sentence) => {
    const before = kitchenToYaml(truth.kitchen);
    const { io, said } = counter(before);
    expect(await kitchen(['set', key, value], {}, io)).toBe(2);
    expect(said.err).toContain(sentence);
    expect(said.text).toBe(before);
  });

  it.each([
    ['3 F high', 3 / 1.8],
    ['3 F low', -3 / 1.8],
    ['1.5 K', 1.5],
    ['-2 C', -2],
    ['2', 2 / 1.8],
  ])('understands a thermometer that is off by %s', async (value, kelvin) => {
    const { io, said } = counter(kitchenToYaml(truth.kitchen));
    expect(await kitchen(['set', 'learned.thermometer', value], { json: true }, io)).toBe(0);
    expect(JSON.parse(said.out).kitchen.learned.thermometer.value).toBeCloseTo(kelvin, 6);
  });

  it('writes only what a person said, and reads it back', async () => {
    const taught = await taughtKitchen(truth.kitchen, { env: env() });
    expect(kitchenToYaml(taught)).toBe(kitchenToYaml(truth.kitchen));
  });

  it('writes all that a person can say so that it is read back the same', () => {
    const said = (value: number, sd: number) =>
      ({ value, sd, cooks: 0, date: '2026-11-30', by: 'person' }) as const;
    const learned: Learned = {
      thermometer: { ...said(-1.5, 0.4), id: 'dial' },
      watts: { low: said(300, 0.1), high: said(900, 0.1) },
      carryOverKelvin: said(2, 0.4),
      boxShare: said(0.85, 0.03),
      minutes: { fold: said(20, 0.2), pull: said(9, 0.2), cut: said(12, 0.2) },
    };
    const parsed = parseKitchen(kitchenToYaml({ ...truth.kitchen, learned }), 'kitchen.yaml');
    expect('kitchen' in parsed && parsed.kitchen.learned).toEqual(learned);
  });
});
