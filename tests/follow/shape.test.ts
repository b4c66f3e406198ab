import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { asInput, follow, kitchenFile, run } from './feed.js';

const hall = ['hill-hall-ginger-pull', '--kitchen', kitchenFile];
const boil = [...hall, '--from', 'boil'];
const at = (t: number, typed?: string) => (typed === undefined ? { t } : { t, typed });

describe('one line in, one line out', () => {
  it('prints nothing before the first line', async () => {
    expect(await run(['follow', ...hall, '--json'], '')).toEqual({ code: 0, out: '', err: '' });
  });

  it('answers each line with the whole shape, nulls where nothing is known', async () => {
    const [first] = await follow(hall, [at(0)]);
    expect(first).toMatchObject({
      ...{
        version: 1,
        t: 0,
        phase: 'mix',
        step: 'mix.ready',
        question: null,
        temperature: null,
        stages: null,
      },
      ...{ forecast: null, reached: false, offTheHeat: false, nextReadingSeconds: null, changesAt: null },
      ...{ warnings: [], queried: null },
    });
    expect(first).not.toHaveProperty('from');
  });

  it('{"t": s} alone makes no event and prints the advice at s', async () => {
    const lines = await follow(boil, [
      at(0, 'heat medium'),
      at(60, '216'),
      at(180, '220'),
      at(200),
      at(260),
      at(419),
      at(420),
    ]);
    expect(lines.map(({ t }) => t)).toEqual([0, 60, 180, 200, 260, 419, 420]);
    expect(lines[3]?.forecast?.seconds.typical).toBeLessThan(lines[2]?.forecast?.seconds.typical ?? 0);
    expect(lines[5]?.warnings).toEqual([]);
    expect(lines[6]?.warnings.map(({ id }) => id)).toEqual(['unattended']);
    expect(lines[4]?.changesAt).toBe(420);
  });

  it('says "from" in every line when it was opened later', async () => {
    const lines = await follow([...hall, '--from', 'fold'], [at(0), at(10, 'nonsense'), at(20, 'done')]);
    expect(lines.map(({ from }) => from)).toEqual(['fold', 'fold', 'fold']);
    expect(lines[0]?.phase).toBe('fold');
  });

  it('has a forecast from the second believed reading on, in boil and test alone', async () => {
    const lines = await follow(boil, [
      at(0, 'heat medium'),
      at(60, '216'),
      at(180, '220'),
      at(300, '223'),
      at(360, 'hard ball'),
    ]);
    expect(lines.map(({ forecast }) => forecast !== null)).toEqual([false, false, true, true, false]);
    expect(lines[1]?.temperature).not.toBeNull();
    expect(lines[3]?.stages).not.toBeNull();
  });
});

describe('what is not taken', () => {
  it('a line that is not understood: kept false, nothing else changes', async () => {
    const [before, after] = await follow(boil, [at(30), at(30, 'stir it')]);
    expect(after?.queried).toEqual({
      typed: 'stir it',
      kept: false,
      because: expect.stringContaining('not understood'),
    });
    expect({ ...after, queried: null }).toEqual(before);
  });

  it('a reading that can not be right: kept true, a question opens, and a high one is acted on', async () => {
    const lines = await follow(boil, [
      at(0, 'heat medium'),
      at(60, '216'),
      at(180, '220'),
      at(181, '420'),
      at(182, '260'),
      at(190, 'no'),
      at(200, '221'),
    ]);
    expect(lines[3]).toMatchObject({
      queried: { typed: '420', kept: true },
      question: { id: 'reading.doubt', safe: 'no' },
    });
    expect(lines[4]).toMatchObject({
      queried: { typed: '260', kept: true },
      offTheHeat: true,
      reached: false,
    });
    expect(lines[4]?.temperature?.celsius).toBeCloseTo(lines[2]?.temperature?.celsius ?? 0, 0);
    expect(lines[5]).toMatchObject({ queried: null, offTheHeat: false });
    expect(lines[6]?.question?.id).not.toBe('reading.doubt');
  });

  it('a time that falls, and lines of the other kind', async () => {
    const lines = await follow(boil, [at(60, '216'), at(50, '217'), '218', '{"t": 70', at(80, '219')]);
    expect(lines.map(({ queried }) => queried?.kept ?? null)).toEqual([null, false, false, false, null]);
    expect(lines[1]?.queried?.because).toContain('time never falls');
    expect(lines[2]?.queried?.because).toContain('JSON lines or plain lines, not both');
    expect(lines[4]?.t).toBe(80);
    const plain = await follow(boil, ['heat medium', '{"t": 5, "typed": "216"}']);
    expect(plain.map(({ queried }) => queried?.kept ?? null)).toEqual([null, false]);
  });

  it.each([
    [
      [
        '',
        '   ',
        '\u001b[2J',
        'a'.repeat(500),
        '238\u0000',
        '９９９',
        '[1]',
        '238238',
        '-',
        'weigh 0g of 1',
        'room -40c',
      ],
    ],
    [['{"t": -5}', '{"t": "now"}', '{', '{}', 'null', '{"t": 1, "typed": 5}', '{"t": 1e999}']],
  ])('lines like %j end nothing, and each gets its answer', async (hostile) => {
    const alive = hostile[0] === '' ? 'note still there' : at(1, 'note still there');
    const lines = await follow(boil, [...hostile, alive]);
    expect(lines.slice(0, -1).every(({ queried }) => queried !== null)).toBe(true);
    expect(lines.at(-1)).toMatchObject({ phase: 'boil', queried: null });
  });
});

describe('a feed by people', () => {
  it('prints the same in words without --json', async () => {
    const { out, code } = await run(
      ['follow', ...hall],
      asInput([at(0), at(60, 'done'), at(90, 'doen'), at(95)]),
    );
    expect(code).toBe(0);
    expect(out).toMatch(/^\[MIX, 0:00\] Set everything out/);
    expect(out).toContain('Did you mean "done"?');
  });
});

describe('how it ends', () => {
  it.each([
    [['follow'], 2, 'Which recipe?'],
    [['follow', 'hill-hal-ginger-pull', '--json'], 2, 'Did you mean hill-hall-ginger-pull'],
    [['follow', 'mint-pull', '--from', 'stir'], 2, 'is not a phase'],
    [['follow', 'mint-pull', '--jsn'], 2, '--jsn'],
    [['follow', 'mint-pull', '--kitchen', 'nowhere.yaml'], 1, 'nowhere.yaml'],
    [['follow', 'mint-pull', 'honey-pull'], 2, 'honey-pull'],
  ] as const)('%j: code %i and one sentence on standard error', async (args, code, words) => {
    const ended = await run(args, asInput([at(0)]));
    expect(ended).toMatchObject({ code, out: '' });
    expect(ended.err).toContain(words);
    expect(ended.err).not.toMatch(/\n\s+at /);
  });
});

describe('--journal', () => {
  it('writes none unless asked, and goes on with the one it is given', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'kettlehand-journal-'));
    const path = join(folder, 'today.jsonl');
    const kept = [...boil, '--journal', path];
    const first = await follow(kept, [at(0, 'heat medium'), at(60, '216'), at(180, '220')]);
    expect(existsSync(path)).toBe(true);
    const bytes = readFileSync(path, 'utf8');
    const second = await follow(kept, [at(100, '218'), at(300, '223')]);
    expect(second[0]?.queried?.because).toContain('time never falls');
    const inOne = await follow(boil, [at(0, 'heat medium'), at(60, '216'), at(180, '220'), at(300, '223')]);
    expect(second[1]).toEqual(inOne[3]);
    expect(first[2]).toEqual(inOne[2]);
    expect(readFileSync(path, 'utf8').startsWith(bytes)).toBe(true);
    rmSync(folder, { recursive: true });
  });
});
