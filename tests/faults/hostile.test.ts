import { execFileSync, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import {
  chmodSync,
  cpSync,
  ftruncateSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { crc32 } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { encodeLine } from '../../source/journal/line.js';
import { entriesOf, followArgs, Piped, program, scratch, times } from './program.js';

/** Bounds that hold for any file, however hostile: docs/RELIABILITY.md. Ample, because the machine is shared by all tests. */
const mostSeconds = 20;
const mostMegabytes = 400;

const inject = join(import.meta.dirname, 'inject.mjs');

type Ended = {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
  readonly megabytes: number;
};

/** The real program with nothing on its input; killed, and failed, when it takes too long. */
const run = async (args: readonly string[], input = '', env: Record<string, string> = {}): Promise<Ended> => {
  const rss = join(mkdtempSync(join(tmpdir(), 'kettlehand-rss-')), 'rss');
  const child = spawn(process.execPath, ['--import', inject, program, ...args], {
    env: { ...process.env, KETTLEHAND_HOME: home, ...env, RSS_FILE: rss },
    timeout: mostSeconds * 1000,
    killSignal: 'SIGKILL',
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (chunk) => {
    out += chunk;
  });
  child.stderr.setEncoding('utf8').on('data', (chunk) => {
    err += chunk;
  });
  child.stdin.on('error', () => undefined);
  child.stdin.end(input);
  const [code] = (await once(child, 'close')) as [number | null];
  const megabytes = code === null ? Number.POSITIVE_INFINITY : Number(readFileSync(rss, 'utf8'));
  rmSync(join(rss, '..'), { recursive: true });
  return { code, out, err, megabytes };
};

/** Said in one or a few sentences, harmless to look at, in bounded time and memory. */
const harmless = ({ code, out, err, megabytes }: Ended): void => {
  expect(code).not.toBeNull();
  expect(megabytes).toBeLessThan(mostMegabytes);
  expect(`${out}${err}`).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
  expect(err).not.toMatch(/\n\s+at .*\d+:\d+/);
  expect(err.length).toBeLessThan(20_000);
};

let home = '';
let folder = '';
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'kettlehand-hostile-'));
  folder = mkdtempSync(join(tmpdir(), 'kettlehand-files-'));
});
afterAll(() => {
  for (const one of [home, folder]) rmSync(one, { recursive: true, force: true });
});

const good = readFileSync('recipes/mint-pull.yaml', 'utf8');
const evil = '\\e[2J\\e]0;owned\\a\\x9b31m\\u202Eevil\\u2066\\n';

/** Nine to the ninth copies of one word, if anybody unfolds them. */
const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x]',
  ...'bcdefghij'
    .split('')
    .map((key, place) => `${key}: &${key} [${Array(9).fill(`*${'abcdefghij'[place]}`).join(', ')}]`),
].join('\n');

const recipes: readonly (readonly [string, string, 0 | 1])[] = [
  [
    'escape sequences and bidirectional overrides in its name',
    good.replace(/^name: .*$/m, `name: "${evil}"`),
    0,
  ],
  ['the same in an ingredient', good.replace(/item: granulated-sugar/, `item: "${evil}"`), 1],
  ['an alias bomb', `${good}\n${bomb}\n`, 1],
  ['a hundred thousand levels of nesting', `kettlehand: 1\nname: ${'['.repeat(100_000)}\n`, 1],
  ['wrong types everywhere', 'kettlehand: [1]\nname: {a: b}\ningredients: 7\ntarget: yes\npiece: ~\n', 1],
  ['prototype keys', `${good}\n__proto__: {polluted: true}\nconstructor: {prototype: {polluted: true}}\n`, 1],
  ['bytes that are no text', `${good}\u0000\uFFFF`, 1],
  ['nothing at all', '', 1],
];

describe('a recipe that means harm', () => {
  it.each(recipes)('%s', async (_what, text, code) => {
    const path = join(folder, 'recipe.yaml');
    writeFileSync(path, text);
    const plan = await run(['plan', path]);
    harmless(plan);
    expect(plan.code).toBe(code);
    if (code === 1) expect(plan.err).not.toBe('');
    else expect(plan.out).toContain('\\x1b[2J');
  });

  it('of a hundred megabytes is refused unread, as recipe, kitchen and journal', async () => {
    const path = join(folder, 'large.yaml');
    writeFileSync(path, 'kettlehand: 1\n');
    truncateSync(path, 100 * 1024 * 1024);
    for (const args of [
      ['plan', path],
      ['plan', 'mint-pull', '--kitchen', path],
      ['follow', 'mint-pull', '--journal', path],
    ]) {
      const ended = await run(args);
      harmless(ended);
      expect(ended.code).toBe(1);
      expect(ended.err).toMatch(/large/i);
    }
    rmSync(path);
  });

  it('under a name with newlines, escapes and overrides is shown on one line', async () => {
    const path = join(folder, 'a\nb\u001b[31m\u202e.yaml');
    for (const named of [
      path,
      join(folder, '../'.repeat(30), 'etc/shadow\n'),
      '/dev/zero',
      '/proc/self/mem',
      folder,
    ]) {
      const ended = await run(['plan', named]);
      harmless(ended);
      expect(ended.code).toBe(1);
      expect(ended.err.trimEnd().split('\n')).toHaveLength(1);
    }
  });
});

const kitchens: readonly (readonly [string, string])[] = [
  [
    'escape sequences',
    `kettlehand-kitchen: 1\nheat: ["${evil}"]\nthermometers:\n  - { id: "${evil}", kind: dial, use: pot, unit: F }\n`,
  ],
  ['an alias bomb', `kettlehand-kitchen: 1\n${bomb}\n`],
  ['deep nesting', `kettlehand-kitchen: 1\npot: ${'{a: '.repeat(50_000)}\n`],
  [
    'prototype keys',
    'kettlehand-kitchen: 1\n__proto__: { polluted: true }\nconstructor: { prototype: { polluted: true } }\n',
  ],
  ['wrong types', 'kettlehand-kitchen: 1\naltitude: [1, 2]\nstove: {}\npot: 5\nthermometers: no\n'],
  ['numbers beyond all measure', 'kettlehand-kitchen: 1\naltitude: 1e308 m\npot: { volume: 1e400 l }\n'],
];

describe('a kitchen that means harm', () => {
  it.each(kitchens)('%s', async (_what, text) => {
    const path = join(folder, 'kitchen.yaml');
    writeFileSync(path, text);
    const ended = await run(
      ['follow', 'mint-pull', '--kitchen', path, '--from', 'dissolve'],
      `238\nheat x\nice \u001b[2J\u0007\nheet \u001b[31m\n`,
    );
    harmless(ended);
    expect([0, 1]).toContain(ended.code);
  });
});

const signed = (body: string): string =>
  `${body},"sum":"${crc32(Buffer.from(body)).toString(16).padStart(8, '0')}"}\n`;
const stamp = (seq: number): string =>
  `"seq":${seq},"t":${seq},"at":"2026-12-05T18:00:00.000Z","up":${4000 + seq}`;

describe('a journal that means harm', () => {
  let opening = '';
  beforeAll(async () => {
    const path = join(scratch(), 'cook.jsonl');
    const feed = new Piped(followArgs(path));
    feed.type('{"t":0}');
    await feed.finish();
    opening = readFileSync(path, 'utf8');
  });

  /** Each is a line of its own: what one does to the reader, it does before the next. */
  const oneByOne: readonly string[] = [
    signed(`{${stamp(2)},"kind":"note","text":${JSON.stringify('\u001b[2J\u202e\u0007')}`),
    signed(`{${stamp(3)},"kind":"${'k'.repeat(1000)}"`),
    signed(`{${stamp(4)},"kind":"note","text":${'['.repeat(30_000)}${']'.repeat(30_000)}`),
    signed(`{${stamp(5)},"kind":"note","text":"x","__proto__":{"gap":{}},"constructor":1`),
    signed(`{${stamp(6)},"kind":"reading","value":"hot","unit":7,"of":null,"by":[]`),
    signed(`{"seq":"7","t":[],"at":5,"up":{},"kind":["note"],"text":null`),
    signed(`{${stamp(8)},"kind":"undo","voids":1`),
  ];

  const lines: readonly (readonly [string, () => string])[] = [
    [
      'escape sequences, a long kind, deep nesting, prototype keys, wrong types, an undo of the opening',
      () => oneByOne.join(''),
    ],
    [
      'times that fall and leap, a second opening, a number beyond all numbers',
      () =>
        signed(`{"seq":2,"t":-1e300,"at":"x","up":1e300,"kind":"stop"`) +
        signed(`{"seq":3,"t":1e300,"at":"x","up":null,"kind":"note","text":"x"`) +
        `${opening.split('\n')[0]?.replace('"seq":1', '"seq":4') ?? ''}\n` +
        signed(`{"seq":1000000000,"t":5,"at":"x","up":null,"kind":"note","text":"x"`),
    ],
    ['a million empty lines', () => '\n'.repeat(1_000_000)],
    [
      `${times(3000, 50_000)} events`,
      () =>
        Array.from({ length: times(3000, 50_000) }, (_, n) =>
          encodeLine({ seq: n + 2, t: n, at: 'x', up: n, kind: 'note', ...{ text: 'y' } })?.toString(),
        ).join(''),
    ],
  ];
  it.each(lines)('%s', async (_what, more) => {
    const path = join(folder, 'cook.jsonl');
    writeFileSync(path, opening + more());
    const ended = await run([...followArgs(path)], 'note still here\n');
    harmless(ended);
    expect(ended.code).toBe(0);
    expect(JSON.parse(ended.out)).toMatchObject({ version: 1 });
  });

  it('that is a link, a folder or a device is left alone', async () => {
    const target = join(folder, 'precious.jsonl');
    writeFileSync(target, opening);
    const link = join(folder, 'link.jsonl');
    symlinkSync(target, link);
    for (const path of [link, folder, '/dev/null']) {
      const ended = await run([...followArgs(path)], 'note x\n');
      harmless(ended);
      expect(ended.code).toBe(1);
    }
    expect(readFileSync(target, 'utf8')).toBe(opening);
  });
});

describe('a feed that means harm', () => {
  it.each([
    [
      'deep nesting, prototype keys, numbers that are none, escape sequences, half a character',
      [
        `${'{"t":'.repeat(50_000)}1`,
        '{"__proto__":{"t":5},"constructor":1,"t":1,"typed":"238"}',
        '{"t":1e999,"typed":"238"}\n{"t":-5}\n{"t":"1"}\n{"t":null}\n{"t":1,"typed":["238"]}',
        '{"t":1,"typed":"\\u001b[2J\\u202e\\u0000note"}\n{"t":1,"typed":"note \\ud800"}',
      ].join('\n'),
    ],
    ['a line of eight megabytes', `{"t":1,"typed":"${'x'.repeat(8_000_000)}"}`],
    [`${times(2000, 20_000)} lines`, '{"t":1}\n'.repeat(times(2000, 20_000))],
  ])('%s', async (_what, input) => {
    const ended = await run(
      ['follow', 'mint-pull', '--json'],
      `${input}\n{"t":2000000,"typed":"note still here"}\n`,
    );
    harmless(ended);
    expect(ended.code).toBe(0);
    const answers = ended.out.trimEnd().split('\n');
    expect(JSON.parse(answers.at(-1) ?? '')).toMatchObject({ t: 2_000_000, queried: null });
  });
});

/** Ways to name a file to the program. */
const naming: readonly ((path: string) => readonly string[])[] = [
  (path) => ['plan', path],
  (path) => ['plan', 'mint-pull', '--kitchen', path],
  (path) => ['follow', 'mint-pull', '--journal', path],
  (path) => ['debrief', path],
  (path) => ['cooks', 'import', path],
  (path) => ['labels', path],
  (path) => ['handout', path],
  (path) => ['rehearse', path],
  (path) => ['cook', '--plain', path],
];

/** Files that are none that any of these could want. */
const strange: readonly (readonly [string, (path: string) => void])[] = [
  ['a pipe that nobody writes to', (path) => execFileSync('mkfifo', [path])],
  ['a link into nothing', (path) => symlinkSync(join(folder, 'nowhere'), path)],
  ['a link to itself', (path) => symlinkSync(path, path)],
  ['a link to a device', (path) => symlinkSync('/dev/zero', path)],
  ['a folder', (path) => mkdirSync(path)],
  ['a hundred megabytes', (path) => ftruncateSync(openSync(path, 'w'), 100 * 1024 * 1024)],
  ['random bytes', (path) => writeFileSync(path, randomBytes(60_000))],
  ['deep nesting', (path) => writeFileSync(path, '{"a":['.repeat(20_000))],
  ['an alias bomb', (path) => writeFileSync(path, bomb)],
];

describe('whatever is named, wherever a name is taken', () => {
  const cases = strange.flatMap(([what, make], row) =>
    naming
      .map((args, column) => ({ what, make, args, column }))
      // Each kind and each command once in the test run.
      .filter(({ column }) => times(column === row ? 1 : 0, 1) === 1),
  );
  it.each(cases.map((one) => [`${one.args('...').join(' ')}: ${one.what}`, one] as const))(
    '%s',
    async (_, { make, args }) => {
      const path = join(scratch(), 'a\nb\u001b[31m\u202e.yaml');
      make(path);
      const ended = await run(args(path), 'note x\n');
      harmless(ended);
      expect(ended.code).toBe(1);
      expect(ended.err).not.toBe('');
      expect(ended.out).toBe('');
    },
  );
});

/** Every name under a folder, with what it is and when it was last changed. */
const tree = (root: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(root, { recursive: true, encoding: 'utf8' }).map((name) => {
      const path = join(root, name);
      const found = lstatSync(path);
      const target = found.isSymbolicLink() ? readlinkSync(path) : '';
      return [name, `${found.mode.toString(8)} ${found.size} ${found.mtimeMs} ${target}`];
    }),
  );

describe('where it writes', () => {
  it('nothing outside the data folder and the path that was named; readable by the owner only', {
    timeout: 60_000,
  }, async () => {
    const root = scratch();
    const names = ['house', 'work', 'tmp', 'data', 'named'];
    const [house = '', work = '', temporary = '', data = '', named = ''] = names.map((name) =>
      join(root, name),
    );
    for (const name of names) mkdirSync(join(root, name));
    cpSync('recipes', join(work, 'recipes'), { recursive: true });
    const installed = resolve(program, '..', '..');
    const outside = () =>
      [house, work, temporary, join(installed, 'recipes'), join(installed, 'dist')].map(tree);
    const before = outside();
    const old = process.umask(0);
    const at = async (args: readonly string[], input: string) => {
      const child = spawn(process.execPath, [resolve(program), ...args], {
        cwd: work,
        env: { PATH: process.env.PATH, HOME: house, TMPDIR: temporary, KETTLEHAND_HOME: data },
      });
      child.stdout.resume();
      child.stdin.on('error', () => undefined);
      child.stdin.end(input);
      return ((await once(child, 'close')) as [number])[0];
    };
    try {
      expect(await at(['kitchen', 'set', 'altitude', '1450 m'], '')).toBe(0);
      expect(await at(['cook', '--plain', 'mint-pull'], 'done\ndone\nleave\n')).toBe(0);
      expect(await at(['plan', 'mint-pull', '--json'], '')).toBe(0);
      expect(await at(['recipes'], '')).toBe(0);
      expect(
        await at(['follow', 'recipes/mint-pull.yaml', '--journal', join(named, 'mine.jsonl')], 'done\n'),
      ).toBe(0);
      for (const name of ['../out', '$(touch x)', '-rf'])
        expect(await at(['cook', '--plain', name], 'done\n')).toBeGreaterThan(0);
    } finally {
      process.umask(old);
    }
    expect(outside()).toEqual(before);
    expect(readdirSync(named)).toEqual(['mine.jsonl']);
    expect(readdirSync(data).sort()).toEqual(['cooks', 'kitchen.yaml']);
    expect(readdirSync(join(data, 'cooks')).filter((name) => !name.endsWith('.jsonl'))).toEqual([]);
    for (const path of [
      join(named, 'mine.jsonl'),
      join(data, 'kitchen.yaml'),
      ...readdirSync(join(data, 'cooks')).map((name) => join(data, 'cooks', name)),
    ])
      expect(statSync(path).mode & 0o777, path).toBe(0o600);
    expect(statSync(join(data, 'cooks')).mode & 0o777).toBe(0o700);
  });

  it('not through a link in place of the kitchen or of the cooks folder’s journal', async () => {
    const data = scratch();
    const precious = join(scratch(), 'precious');
    writeFileSync(precious, 'mine');
    chmodSync(precious, 0o644);
    symlinkSync(precious, join(data, 'kitchen.yaml'));
    const ended = await run(['kitchen', 'set', 'altitude', '1450 m'], '', { KETTLEHAND_HOME: data });
    expect(ended.code).toBe(1);
    expect(readFileSync(precious, 'utf8')).toBe('mine');
    expect(readdirSync(data)).toEqual(['kitchen.yaml']);
    expect(entriesOf(precious)).toEqual([]);
  });
});
