import { readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { Typist } from '../terminal/typist.js';
import { chance, entriesOf, kitchenFile, Piped, scratch, seed, times } from './program.js';

const hall = ['--kitchen', kitchenFile];

const alive: Typist[] = [];
const cooks = (
  home: string,
  args: readonly string[] = [...hall],
  env: Readonly<Record<string, string>> = {},
) => {
  const cook = Typist.cooks(home, args, env);
  alive.push(cook);
  return cook;
};
afterEach(() => {
  for (const cook of alive.splice(0)) {
    try {
      cook.kill('SIGKILL');
    } catch {
      // It has ended by itself.
    }
  }
});

const journalsIn = (home: string): readonly string[] =>
  readdirSync(join(home, 'cooks')).filter((name) => name.endsWith('.jsonl'));

const journalIn = (home: string): string => join(home, 'cooks', journalsIn(home)[0] ?? 'none');

/** The first step and the prompt behind it. */
const ready = /Set everything out.*> $/;

const noStack = (text: string): void => expect(text).not.toMatch(/\n\s+at .*\d+:\d+/);

describe('a line mode that is killed in its terminal', () => {
  const kills = times(3, 40);

  it(`shows nothing that is not in its journal, ${kills} times, and goes on with the same words`, {
    timeout: 60_000 + kills * 8000,
  }, async () => {
    const random = chance(seed + 7);
    const home = scratch();
    let shown = 0;
    let headline = '';
    for (let kill = 0; kill < kills; kill += 1) {
      const cook = cooks(home, kill === 0 ? ['hill-hall-ginger-pull', ...hall] : [...hall]);
      if (kill === 0) await cook.sees(ready);
      else {
        await cook.sees('Go on with it?');
        const again = await cook.types('yes', /Going on with .*\[[A-Z]+, [\d:]+\] .*> $/);
        expect(again).toContain(headline);
      }
      const typed = 1 + Math.floor(random() * 3);
      for (let n = 0; n < typed; n += 1) {
        const before = cook.text.length;
        await cook.types(`note k${shown + n}`, /> $/);
        const [, said] = /\n {4}(.+)/.exec(cook.text.slice(before).replaceAll('\r', '')) ?? [];
        headline = (said ?? headline).slice(0, 30);
      }
      cook.key(`note k${shown + typed}\r`);
      await new Promise((resolve) => setTimeout(resolve, random() * 30));
      cook.kill('SIGKILL');
      await cook.ended;
      const answered = cook.text.replaceAll('\r', '').split(`note k${shown + typed}\n`)[1] ?? '';
      const least = shown + typed + (answered.includes('> ') ? 1 : 0);
      const notes = entriesOf(journalIn(home)).flatMap(({ text }) =>
        typeof text === 'string' ? [text] : [],
      );
      expect(notes.length).toBeGreaterThanOrEqual(least);
      expect(notes).toEqual(notes.map((_, index) => `k${index}`));
      shown = notes.length;
      noStack(cook.text);
    }
    console.log(`${kills} kills in the pseudo-terminal, ${shown} events shown, none lost`);
  });
});

describe('the ways out of the line mode', () => {
  it.each([
    ['SIGHUP', 129],
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ] as const)('%s ends it with %i, and everything shown is kept', async (signal, code) => {
    const home = scratch();
    const cook = cooks(home);
    await cook.sees(ready);
    await cook.types('note before the signal', /> $/);
    cook.kill(signal);
    expect(await cook.ended).toBe(code);
    noStack(cook.text);
    expect(entriesOf(journalIn(home)).at(-1)).toMatchObject({ kind: 'note', text: 'before the signal' });
    // The lock is no obstacle.
    const again = cooks(home);
    await again.sees('Go on with it?');
  });

  it('a reader that goes away ends it quietly; what was typed until then is kept', async () => {
    const home = scratch();
    const cook = new Piped(['cook', '--plain', ...hall], { KETTLEHAND_HOME: home });
    cook.type('note one');
    await cook.until(() => cook.out.includes('Set everything out') && entriesOf(journalIn(home)).length > 1);
    cook.child.stdout.destroy();
    for (let n = 0; n < 50 && cook.child.exitCode === null; n += 1) {
      cook.type('done');
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    expect(await cook.ended).toBe(0);
    noStack(cook.err);
    expect(entriesOf(journalIn(home))[1]).toMatchObject({ text: 'one' });
  });
});

describe('a terminal that sends anything', () => {
  /** Still there, still right. */
  const stillWorks = async (cook: Typist, home: string): Promise<void> => {
    cook.key('\r');
    await cook.types('note still here', /> $/);
    cook.key('leave\r');
    expect(await cook.ended).toBe(0);
    noStack(cook.text);
    const notes = entriesOf(journalIn(home)).filter(({ kind }) => kind === 'note');
    expect(notes.at(-1)).toMatchObject({ text: 'still here' });
  };

  it('a paste of a megabyte is queried line by line, and nothing of it acts', {
    timeout: 60_000,
  }, async () => {
    const home = scratch();
    const cook = new Piped(['cook', '--plain', ...hall], { KETTLEHAND_HOME: home });
    const pasted = `${'done yes 238 '.repeat(270)}\n`.repeat(300);
    expect(pasted.length).toBeGreaterThan(1_000_000);
    cook.type(pasted, `note ${'z'.repeat(1_000_000)}`, 'note still here');
    expect(await cook.finish()).toBe(0);
    noStack(cook.err);
    const entries = entriesOf(journalIn(home));
    expect(entries.map(({ kind }) => kind)).toEqual(['opened', 'note', 'note']);
    expect(String(entries[1]?.text).length).toBe(500);
    expect(entries[2]).toMatchObject({ text: 'still here' });
  });

  it('all 256 byte values, in any order, broken UTF-8 and escape sequences among them', async () => {
    const random = chance(seed + 11);
    const home = scratch();
    const cook = cooks(home);
    await cook.sees(ready);
    for (let turn = 0; turn < times(2, 40); turn += 1) {
      // Those that the terminal itself acts on (end of input, interrupt, stop and go) are tried as signals.
      const bytes = Array.from({ length: 256 }, (_, value) => value).filter(
        (value) => ![3, 4, 15, 17, 19, 22, 26, 28].includes(value),
      );
      const shuffled = bytes.map((value) => ({ value, at: random() })).sort((a, b) => a.at - b.at);
      cook.raw(Buffer.from(shuffled.map(({ value }) => value)));
      cook.key('\r');
    }
    await stillWorks(cook, home);
    // Only what the keyboard's own echo sends may be anything: the program itself never sends what it was sent.
    expect(cook.text).not.toContain('\u001b]');
  });

  it('every byte value through a pipe comes back harmless', async () => {
    const random = chance(seed + 13);
    const home = scratch();
    const cook = new Piped(['cook', '--plain', ...hall], { KETTLEHAND_HOME: home });
    for (let turn = 0; turn < times(5, 300); turn += 1) {
      cook.child.stdin.write(Buffer.from(Array.from({ length: 400 }, () => Math.floor(random() * 256))));
    }
    cook.type('', 'note still here');
    expect(await cook.finish()).toBe(0);
    expect(cook.out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
    expect(entriesOf(journalIn(home)).at(-1)).toMatchObject({ text: 'still here' });
    noStack(cook.err);
  });

  it('random Unicode, half of it typed as a note', async () => {
    const random = chance(seed + 17);
    const home = scratch();
    const cook = new Piped(['cook', '--plain', ...hall], { KETTLEHAND_HOME: home });
    for (let turn = 0; turn < times(60, 3000); turn += 1) {
      const text = Array.from({ length: 1 + Math.floor(random() * 30) }, () =>
        String.fromCodePoint(Math.floor(random() * (random() < 0.5 ? 0x300 : 0x10ffff))),
      ).join('');
      cook.type(`${random() < 0.5 ? 'note ' : ''}${text}`);
    }
    cook.type('note still here');
    expect(await cook.finish()).toBe(0);
    noStack(cook.err);
    expect(cook.out).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u009b]/);
    expect(entriesOf(journalIn(home)).at(-1)).toMatchObject({ text: 'still here' });
  });
});

describe('two consoles on one cook', () => {
  it('the lock of a killed one is taken over without a question; what it holds for is asked of the cook alone', async () => {
    const home = scratch();
    const first = cooks(home);
    await first.sees(ready);
    await first.types('note mine', /> $/);
    first.kill('SIGKILL');
    await first.ended;
    const second = cooks(home);
    const said = await second.sees('Go on with it?');
    expect(said).not.toMatch(/open|process|lock/i);
    await second.types('yes', 'Going on');
  });

  it('a stopped one, as on a sleeping laptop, keeps it however old it looks, and goes on when it wakes', {
    timeout: 60_000,
  }, async () => {
    const home = scratch();
    const first = cooks(home);
    await first.sees(ready);
    await first.types('note mine', /> $/);
    first.kill('SIGSTOP');
    const lock = `${journalIn(home)}.lock`;
    utimesSync(lock, new Date('2020-01-01'), new Date('2020-01-01'));
    const second = cooks(home);
    await second.sees(new RegExp(`process ${first.pid}`));
    // It begins no cook beside that one of its own accord.
    await second.types('', /$/);
    expect(await second.ended).toBe(1);
    expect(journalsIn(home)).toHaveLength(1);
    first.kill('SIGCONT');
    await first.types('note still mine', /> $/);
    expect(entriesOf(journalIn(home)).at(-1)).toMatchObject({ text: 'still mine' });
  });

  it('two cooks left on one day are both offered, the one that was last at work first', async () => {
    const home = scratch();
    const first = cooks(home, ['hill-hall-ginger-pull', ...hall]);
    await first.sees(ready);
    await first.types('note mine', /> $/);
    const second = cooks(home);
    await second.sees('Begin another cook beside it?');
    await second.types('yes', ready);
    await second.types('note beside it', /> $/);
    await first.types('note the last word', /> $/);
    for (const cook of [first, second]) {
      cook.kill('SIGKILL');
      await cook.ended;
    }
    const third = cooks(home);
    await third.sees(/Go on with it\?.* 1 other is offered.* > $/);
    await third.types('no', /Go on with it\? yes or no \(Enter: yes\)\. > $/);
    await third.types('yes', /Going on.*> $/);
    await third.types('note found again', /> $/);
    const last = journalsIn(home).map((name) => entriesOf(join(home, 'cooks', name)).map(({ text }) => text));
    expect(last).toContainEqual([undefined, 'mine', 'the last word']);
    expect(last).toContainEqual([undefined, 'beside it', 'found again']);
  });

  it('a lock that names nobody holds nothing', async () => {
    const home = scratch();
    const first = cooks(home);
    await first.sees(ready);
    await first.types('note mine', /> $/);
    first.kill('SIGKILL');
    await first.ended;
    writeFileSync(`${journalIn(home)}.lock`, '');
    const second = cooks(home);
    await second.sees('Go on with it?');
    rmSync(home, { recursive: true, force: true });
  });
});
