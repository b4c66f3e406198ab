import { appendFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Followed, followJournal } from '../../source/journal/follow.js';
import { bytesOf, event, opened, sample, scratch } from './sample.js';

const told = (followed: readonly Followed[]): (number | string)[] =>
  followed.map((item) =>
    item.what === 'entry'
      ? item.entry.seq
      : item.what === 'damaged'
        ? `damaged ${item.damaged.line}`
        : item.what,
  );

/** Follow while `steps` happen to the file one after the other, each when all before has been told. */
const follow = async (path: string, steps: readonly (() => void)[]): Promise<(number | string)[]> => {
  const stop = new AbortController();
  const followed: Followed[] = [];
  const left = [...steps];
  const wait = async () => {
    const step = left.shift();
    if (step === undefined) stop.abort();
    else step();
  };
  for await (const item of followJournal(path, { signal: stop.signal, wait })) followed.push(item);
  return told(followed.filter(({ what }) => what !== 'upToDate'));
};

const bytes = bytesOf(sample);

describe('reading a journal from outside', () => {
  it('waits for the file, then tells each event once, only when its line is whole', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const cuts = [0, 1, 150, 300, 301, bytes.length - 1, bytes.length];
    const steps = cuts
      .slice(1)
      .map((end, index) => () => appendFileSync(path, bytes.subarray(cuts[index], end)));
    expect(await follow(path, [() => undefined, ...steps])).toEqual([1, 2, 3, 4, 5]);
    expect(await follow(path, [])).toEqual([1, 2, 3, 4, 5]);
  });

  it('starts over when the file got shorter or is another one', async () => {
    const path = join(scratch(), 'cook.jsonl');
    writeFileSync(path, bytes);
    const other = bytesOf([
      opened,
      event(2),
      event(3),
      event(4),
      event(5),
      event(6),
      event(7),
      event(8),
      event(9),
    ]);
    const answers = await follow(path, [
      () => writeFileSync(path, bytesOf([opened, event(2)])),
      () => rmSync(path),
      () => writeFileSync(path, other),
      () => {
        writeFileSync(`${path}.new`, other);
        renameSync(`${path}.new`, path);
      },
    ]);
    expect(answers).toEqual([
      1,
      2,
      3,
      4,
      5,
      'startedOver',
      1,
      2,
      'startedOver',
      1,
      2,
      3,
      4,
      5,
      6,
      7,
      8,
      9,
      'startedOver',
      1,
      2,
      3,
      4,
      5,
      6,
      7,
      8,
      9,
    ]);
  });

  it('reports damage with its line and goes on, also behind a line without end', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const endless = Buffer.alloc(3 * 1024 * 1024, 'x');
    writeFileSync(
      path,
      Buffer.concat([bytesOf([opened]), Buffer.from('x\n'), endless, Buffer.from('\n'), bytesOf([event(2)])]),
    );
    expect(await follow(path, [])).toEqual([1, 'damaged 3', 'damaged 4', 2]);
  });

  it('does not go through a symbolic link', async () => {
    const folder = scratch();
    writeFileSync(join(folder, 'cook.jsonl'), bytes);
    symlinkSync(join(folder, 'cook.jsonl'), join(folder, 'link.jsonl'));
    await expect(follow(join(folder, 'link.jsonl'), [])).rejects.toThrow();
  });
});
