import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as z from 'zod';

export const kitchenFile = 'recipes/kitchens/hill-hall.yaml';

const probability = z.number().min(0).max(1);
const span = z
  .strictObject({ low: z.number().min(0), typical: z.number().min(0), high: z.number().min(0) })
  .refine(({ low, typical, high }) => low <= typical && typical <= high, 'ascending');
const sentence = z
  .string()
  .min(1)
  .refine((text) => !/undefined|NaN|null|Infinity|\[object/.test(text), 'a sentence without holes');

/** One line of `follow --json`, as INTERFACES promises it: more may be added, none of these may be missing. */
export const adviceLine = z
  .looseObject({
    version: z.literal(1),
    t: z.number().min(0),
    from: z
      .enum([
        'mix',
        'dissolve',
        'boil',
        'test',
        'flavour',
        'pour',
        'fold',
        'pull',
        'cut',
        'wrap',
        'clean',
        'over',
      ])
      .optional(),
    phase: z.enum([
      'mix',
      'dissolve',
      'boil',
      'test',
      'flavour',
      'pour',
      'fold',
      'pull',
      'cut',
      'wrap',
      'clean',
      'over',
    ]),
    step: z.nullable(z.string()),
    say: sentence,
    why: sentence,
    question: z.nullable(
      z
        .strictObject({
          id: z.string(),
          text: sentence,
          answers: z.array(z.string()).min(2),
          safe: z.string(),
        })
        .refine(({ answers, safe }) => answers.includes(safe), 'the safe answer is one of them'),
    ),
    temperature: z.nullable(z.strictObject({ celsius: z.number(), sd: z.number().positive() })),
    stages: z.nullable(
      z
        .strictObject({
          dissolves: probability,
          thread: probability,
          'soft ball': probability,
          'firm ball': probability,
          'hard ball': probability,
          'soft crack': probability,
          'hard crack': probability,
          'past hard crack': probability,
        })
        .refine(
          (stages) => Math.abs(Object.values(stages).reduce((sum, p) => sum + p, 0) - 1) < 1e-4,
          'sums to 1',
        ),
    ),
    forecast: z.nullable(
      z.strictObject({
        targetCelsius: z.number(),
        takeOffCelsius: z.number(),
        seconds: span,
        boilShare: probability,
        watts: z.number().positive(),
        carryOverKelvin: z.number().min(0),
      }),
    ),
    reached: z.boolean(),
    offTheHeat: z.boolean(),
    nextReadingSeconds: z.nullable(z.number().min(0)),
    changesAt: z.nullable(z.number()),
    warnings: z.array(
      z.strictObject({ id: z.string(), level: z.enum(['now', 'soon', 'note']), text: sentence }),
    ),
    queried: z.nullable(z.strictObject({ typed: z.string(), because: sentence, kept: z.boolean() })),
  })
  .refine(({ t, changesAt }) => changesAt === null || changesAt > t, 'changes later than now');

export type AdviceLine = z.infer<typeof adviceLine>;

export type Fed = { readonly code: number | null; readonly out: string; readonly err: string };

/** The built program as another program would start it: a child with pipes. */
export const run = (args: readonly string[], input: string): Promise<Fed> =>
  new Promise((resolve, reject) => {
    const home = mkdtempSync(join(tmpdir(), 'kettlehand-follow-'));
    const child = spawn(process.execPath, ['bin/kettlehand.mjs', ...args], {
      env: { ...process.env, KETTLEHAND_HOME: home },
    });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (chunk) => {
      out += chunk;
    });
    child.stderr.setEncoding('utf8').on('data', (chunk) => {
      err += chunk;
    });
    child.on('error', reject).on('close', (code) => {
      rmSync(home, { recursive: true, force: true });
      resolve({ code, out, err });
    });
    // A program that refuses its arguments does not read.
    child.stdin.on('error', () => undefined);
    child.stdin.end(input);
  });

export type Line = string | { readonly t: number; readonly typed?: string };

export const asInput = (lines: readonly Line[]): string =>
  lines.map((line) => `${typeof line === 'string' ? line : JSON.stringify(line)}\n`).join('');

/** What `follow --json` answers, each line checked against its promised shape. */
export const follow = async (
  args: readonly string[],
  lines: readonly Line[],
): Promise<readonly AdviceLine[]> => {
  const { code, out, err } = await run(['follow', ...args, '--json'], asInput(lines));
  if (code !== 0 || err !== '') throw new Error(`ended with ${code}: ${err}`);
  const answers = out
    .trimEnd()
    .split('\n')
    .filter((line) => line !== '');
  if (answers.length !== lines.length) throw new Error(`${lines.length} lines, ${answers.length} answers`);
  return answers.map((line) => adviceLine.parse(JSON.parse(line)));
};

/** "+60 done": so many seconds after the line before. */
export const recorded = (script: string): readonly { t: number; typed: string }[] => {
  let t = 0;
  return script
    .split('\n')
    .map((line) => /^\s*\+(\d+) (.+?)\s*$/.exec(line))
    .filter((match) => match !== null)
    .map(([, after, typed = '']) => {
      t += Number(after);
      return { t, typed };
    });
};
