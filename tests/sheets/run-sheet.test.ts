import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type PlanOptions, plan } from '../../source/commands/plan.js';
import { readStart } from '../../source/commands/start-time.js';
import { kitchenToYaml } from '../../source/kitchen/write.js';
import { parseWallTime, wallTime } from '../../source/units/wall-clock.js';
import { hall, recipe } from '../cook/play.js';

const noon = new Date(2026, 10, 25, 12, 0).getTime();

const run = async (
  options: PlanOptions,
  wall = noon,
  kitchen: string | null = kitchenToYaml(hall),
  name = 'hill-hall-ginger-pull',
) => {
  let [out, err] = ['', ''];
  const code = await plan(options, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    readRecipe: async () => ({ text: readFileSync(`recipes/${name}.yaml`, 'utf8'), name }),
    readKitchen: async () => (kitchen === null ? null : { text: kitchen, name: 'kitchen.yaml' }),
    wall: () => wall,
  });
  return { code, out, err };
};

describe('plan --at', () => {
  it('prints what is done when, in order, in lines that fit', async () => {
    const { code, out } = await run({ at: '15:00' });
    expect(code).toBe(0);
    const lines = out.split('\n');
    expect(lines[0]).toBe('Hill hall ginger pull: hands on it at 15:00, 2026-11-25');
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(78);
    const times = lines.flatMap((line) => /^ {2}(\d\d:\d\d) /.exec(line)?.[1] ?? []);
    expect(times.length).toBeGreaterThan(12);
    expect(times).toEqual(times.toSorted());
    expect(out).toMatch(/\n {2}15:00 +HANDS/);
    expect(out).toMatch(
      /The window opens: off the heat at \d+ °F.*\n.*\n? *Earliest \d\d:\d\d, latest \d\d:\d\d/,
    );
    expect(out.replaceAll(/\s+/g, ' ')).toContain('covered at 131 to 140 °F. Its middle is measured again');
    expect(out).toMatch(/10 to 30 min: wrapped warm/);
  });

  it("has the presenter's own lines by phase, and none from the silence to the empty pot", async () => {
    const { out } = await run({ at: '15:00' });
    const flat = out.replaceAll(/\s+/g, ' ');
    for (const [phase, cues] of Object.entries(recipe('hill-hall-ginger-pull').cues))
      for (const cue of cues ?? []) expect(flat, phase).toContain(`Say: "${cue}"`);
    const silent = flat.slice(flat.indexOf('Quiet: the presenter'), flat.indexOf('Talk again'));
    expect(silent.length).toBeGreaterThan(200);
    expect(silent).not.toContain('Say:');
  });

  it('says what five and ten minutes late mean, and what is never hurried', async () => {
    const flat = (await run({ at: '15:00' })).out.replaceAll(/\s+/g, ' ');
    expect(flat).toContain('5 min: nothing changes');
    expect(flat).toContain('10 min: the pulling begins at 15:05.');
    expect(flat).toContain(
      'Never: a hotter ring for the last degrees, or hands before the middle is measured.',
    );
  });

  it('staggers them for one person too, with the hours that help would save', async () => {
    const { out } = await run({ at: '15:00', batches: '2', alone: true });
    const said = out.replaceAll(/\s+/g, ' ');
    expect(said).toMatch(/2 batches for one pair of hands, 2 h .* apart: the pot is never left/);
    expect(said).toMatch(/With a second adult and somebody who wraps: \d+ min apart, ended near \d\d:\d\d/);
    expect(said).not.toContain('if a helper poured one');
    expect(said).not.toContain('two adults');
    const one = await run({ at: '15:00', alone: true });
    expect(one.out.replaceAll(/\s+/g, ' ')).toContain('Alone: no talking');
  });

  it('staggers batches and says who is needed', async () => {
    const { out } = await run({ at: '15:00', batches: '2' });
    expect(out).toContain('batch 2: HANDS');
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(/2 batches on one hob, \d+ min apart: two adults/);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(/Alone: .* then stand 2 h .* apart and end near \d\d:\d\d/);
    const json = JSON.parse((await run({ at: '15:00', batches: '3', json: true })).out);
    expect(json.version).toBe(1);
    expect(json.runSheet).toMatchObject({ date: '2026-11-25', pullsAtSecondOfDay: 54_000, batches: 3 });
    expect(JSON.parse((await run({ json: true })).out).runSheet).toBeNull();
  });

  it('says the time as it was typed', async () => {
    expect((await run({ at: '3 pm' })).out).toMatch(/\n {2}3:00 pm +HANDS/);
    expect((await run({ at: '2026-12-05 00:30' })).out).toMatch(/^.*00:30, 2026-12-05\n/);
  });

  it('wraps at once in damp air', async () => {
    const damp = kitchenToYaml({ ...hall, room: { celsius: 22, humidity: 0.8 } });
    const { out } = await run({ at: '15:00' }, noon, damp);
    expect(out).toContain('Wrap at once: the air is damp.');
    expect(out).not.toContain('The pieces rest apart');
  });

  it('goes by cold water alone where there is no thermometer', async () => {
    const blind = kitchenToYaml({ ...hall, thermometers: [] });
    const { out } = await run({ at: '16:00' }, noon, blind);
    expect(out).toContain('From the first firm ball on');
    expect(out).not.toMatch(/off the heat at \d/);
  });

  it('says when there is less time than planned, and refuses when it can not be done', async () => {
    expect((await run({ at: '13:00' })).out).toMatch(/Setting out should have begun \d+ min ago/);
    const { code, out, err } = await run({ at: '12:20' });
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^12:20 is 20 min away.*at the quickest\. Type --at "13:\d[05]" or later/);
    // The evening: the soonest is tomorrow.
    const late = await run({ at: '23:50' }, new Date(2026, 10, 25, 23, 30).getTime());
    expect(late.err).toMatch(/--at "tomorrow 00:\d\d"/);
    const soonest = /--at "([^"]+)"/.exec(late.err)?.[1] ?? '';
    expect((await run({ at: soonest }, new Date(2026, 10, 25, 23, 30).getTime())).code).toBe(0);
  });

  const wrong: ReadonlyArray<readonly [PlanOptions, RegExp]> = [
    [{ at: '09:00' }, /^09:00 was 3 h ago\. .*"tomorrow 09:00"/],
    [{ at: '12:00' }, /^12:00 is now\. For another day/],
    [{ at: '2026-11-24 15:00' }, /was 21 h ago/],
    [{ at: '25:00' }, /"25:00" is no time of day.*--at 15:00/],
    [{ at: '15:60' }, /no time of day/],
    [{ at: '15' }, /no time of day/],
    [{ at: '13 pm' }, /no time of day/],
    [{ at: '2026-02-30 15:00' }, /no time of day/],
    [{ at: 'soon' }, /"soon" is no time of day/],
    [{ at: '' }, /no time of day/],
    [{ at: '15:00', batches: '0' }, /--batches needs a whole number from 1 to \d/],
    [{ at: '15:00', batches: '1.5' }, /--batches/],
    [{ at: '15:00', batches: '-2' }, /--batches/],
    [{ at: '15:00', batches: '99' }, /"99" is none/],
    [{ batches: '2' }, /--batches belongs to --at/],
    [{ alone: true }, /--alone belongs to --at.*--at 15:00 --alone/],
    [{ html: true }, /--html belongs to --card/],
  ];
  for (const [options, says] of wrong)
    it(`answers ${JSON.stringify(options)} with a sentence and 2`, async () => {
      const { code, out, err } = await run(options);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(says);
      expect(err.trim().split('\n')).toHaveLength(1);
    });
});

describe('a time of day', () => {
  it.each([
    ['15:00', 15, 0],
    ['3pm', 15, 0],
    ['3:05 p.m.', 15, 5],
    ['12 am', 0, 0],
    ['12:30pm', 12, 30],
    ['0:05', 0, 5],
    ['tomorrow 9:15', 9, 15],
    ['2026-11-28T07:45', 7, 45],
  ])('reads %s', (typed, hours, minutes) => {
    expect(parseWallTime(typed)).toMatchObject({ hours, minutes });
  });

  it('writes moments of the evening before and of the next morning', () => {
    expect(wallTime(-10 * 60)).toBe('23:50');
    expect(wallTime(86_400 + 5 * 60)).toBe('00:05');
    expect(wallTime(86_399)).toBe('00:00');
    expect([wallTime(0, true), wallTime(12 * 3600, true)]).toEqual(['12:00 am', '12:00 pm']);
  });

  it('finds the day on the calendar of this machine', () => {
    const tomorrow = readStart('tomorrow 15:00', new Date(2026, 11, 31, 20, 0).getTime());
    expect(tomorrow).toMatchObject({ value: { date: '2027-01-01', at: 15 * 3600 } });
  });

  it.each([
    // 25 November 2026 is a Wednesday.
    ['Saturday 15:00', '2026-11-28'],
    ['Mittwoch 15 Uhr', '2026-11-25'],
    ['Wednesday 11:00', '2026-12-02'],
    ['28.11. 15:00', '2026-11-28'],
    ['24.11. 15:00', '2027-11-24'],
    ['24.11.2027 noon', '2027-11-24'],
  ])('%s, said on a Wednesday noon, is on %s', (typed, date) => {
    expect(readStart(typed, noon)).toMatchObject({ value: { date } });
  });
});
