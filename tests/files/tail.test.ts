import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  closeSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cannotTail, type Tailed, tailLines } from '../../source/files/tail.js';
import { scratch } from '../journal/sample.js';

const told = (one: Tailed): string =>
  one.what === 'line' ? one.text : one.what === 'no line' ? `${one.because}: ${one.text}` : `<${one.what}>`;

/** Follow while `steps` happen one after the other, each when all before has been told. */
const follow = async (path: string, steps: readonly (() => void)[]): Promise<readonly string[]> => {
  const stop = new AbortController();
  const left = [...steps];
  const heard: string[] = [];
  const wait = async (): Promise<void> => {
    const step = left.shift();
    if (step === undefined) stop.abort();
    else step();
  };
  for await (const one of tailLines(path, { signal: stop.signal, wait }))
    if (one.what !== 'looked') heard.push(told(one));
  return heard;
};

const file = (content?: string | Buffer): string => {
  const path = join(scratch(), 'feed');
  if (content !== undefined) writeFileSync(path, content);
  return path;
};

const pipe = (): string => {
  const path = join(scratch(), 'pipe');
  execFileSync('mkfifo', [path]);
  return path;
};

describe('a growing file', () => {
  it('is followed from its end: what stood there is of the past', async () => {
    const path = file('100\n101\n');
    const heard = await follow(path, [
      () => appendFileSync(path, '102\n'),
      () => appendFileSync(path, '103\r\n\n104\r'),
    ]);
    expect(heard).toEqual(['<there>', '102', '103', '104']);
  });

  it('gives no line before its end is written: "23" may be the beginning of "238"', async () => {
    const path = file('9');
    const steps = ['7\n', '23', '8', '\n'].map((part) => () => appendFileSync(path, part));
    expect(await follow(path, steps)).toEqual(['<there>', '238']);
  });

  it('is read from its beginning when it appears, got shorter or was exchanged', async () => {
    const path = file();
    const heard = await follow(path, [
      () => writeFileSync(path, '1\n2\n'),
      () => truncateSync(path),
      () => appendFileSync(path, '3\n'),
      () => {
        writeFileSync(`${path}.new`, '4\n5\n6\n');
        renameSync(`${path}.new`, path);
      },
      () => undefined,
      () => rmSync(path),
      () => writeFileSync(path, '7\n'),
    ]);
    expect(heard.filter((one) => /^\d|missing|over/.test(one))).toEqual([
      '<missing>',
      '1',
      '2',
      '<started over>',
      '3',
      '<started over>',
      '4',
      '5',
      '6',
      '<missing>',
      '7',
    ]);
  });

  it('of a hundred megabytes costs nothing, and of a flood only the end counts', async () => {
    const path = file();
    truncateSync(openAndClose(path), 100 * 1024 * 1024);
    const flood = Buffer.from('1234567\n'.repeat(400_000));
    const heard = await follow(path, [
      () => appendFileSync(path, Buffer.concat([Buffer.from('\n'), flood, Buffer.from('99\n')])),
      () => undefined,
    ]);
    expect(heard[1]).toBe('<skipped>');
    expect(heard.length).toBeLessThan(10_000);
    expect(heard.at(-1)).toBe('99');
  });

  it('with bytes of every kind gives lines within bounds and goes on behind them', async () => {
    const path = file('');
    const every = Buffer.from(Array.from({ length: 256 }, (_, byte) => byte));
    const endless = Buffer.alloc(300_000, 'x');
    const heard = await follow(path, [
      () => appendFileSync(path, Buffer.concat([every, Buffer.from('\n'), endless])),
      () => undefined,
      () => appendFileSync(path, '\n240\n'),
    ]);
    expect(heard.filter((one) => one.startsWith('too long'))).toHaveLength(1);
    expect(Math.max(...heard.map((one) => one.length))).toBeLessThanOrEqual(1000);
    expect(heard.at(-1)).toBe('240');
  });
});

const openAndClose = (path: string): string => {
  closeSync(openSync(path, 'w'));
  return path;
};

describe('a named pipe', () => {
  it('without a writer does not hold anybody up; writers come, go and come again', async () => {
    const path = pipe();
    let writer = -1;
    const heard = await follow(path, [
      () => {
        writer = openSync(path, 'w');
      },
      () => writeSync(writer, '200\n20'),
      () => writeSync(writer, '1\n'),
      () => closeSync(writer),
      () => undefined,
      () => {
        writer = openSync(path, 'w');
        writeSync(writer, '202\n2');
        closeSync(writer);
      },
    ]);
    expect(heard).toEqual([
      '<there>',
      '<no writer>',
      '<writer>',
      '200',
      '201',
      '<no writer>',
      '<writer>',
      '202',
      'unfinished: 2',
      '<no writer>',
    ]);
  });
});

describe('what can never be followed', () => {
  it('is a folder or a device; what is not there yet is waited for', async () => {
    const folder = scratch();
    mkdirSync(join(folder, 'sub'));
    expect(await cannotTail(join(folder, 'sub'))).not.toBeNull();
    expect(await cannotTail('/dev/zero')).not.toBeNull();
    expect(await cannotTail(join(folder, 'later'))).toBeNull();
    expect(await cannotTail(pipe())).toBeNull();
    expect(await follow('/dev/zero', [])).toEqual(['<unreadable>']);
  });
});
