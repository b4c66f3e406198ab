import { beforeAll, describe, expect, it } from 'vitest';
import { hall } from '../cook/play.js';
import { SimulatedCook } from '../cook/simulated.js';
import { type AdviceLine, follow, kitchenFile, recorded } from './feed.js';

const inTheHall = (recipe: string, ...more: readonly string[]) => [recipe, '--kitchen', kitchenFile, ...more];
const phasesOf = (lines: readonly AdviceLine[]) => [...new Set(lines.map(({ phase }) => phase))];
const unanswered = (lines: readonly AdviceLine[]) => lines.filter(({ queried }) => queried !== null);

const mixed = `
  +60 done
  +20 done
  +40 yes
  +90 done
  +120 done
  +20 done
  +10 heat medium
`;

describe('a plain cook, from the checklist to wrapped pieces', () => {
  const cook = new SimulatedCook({ recipe: 'hill-hall-ginger-pull', kitchen: hall }, 11).run();
  let lines: readonly AdviceLine[] = [];
  beforeAll(async () => {
    lines = await follow(inTheHall('hill-hall-ginger-pull'), cook.lines);
  });

  it('goes through every phase, and every word is taken', () => {
    expect(unanswered(lines)).toEqual([]);
    expect(phasesOf(lines)).toEqual(
      expect.arrayContaining([
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
    );
    expect(lines.at(-1)?.say).toMatch(/^Done: \d+ pieces/);
  });

  it('has a forecast that closes in, and calls off before the dial would', () => {
    const forecasts = lines.flatMap(({ t, forecast }) => (forecast === null ? [] : [{ t, ...forecast }]));
    expect(forecasts.length).toBeGreaterThan(6);
    const called = lines.findIndex(({ offTheHeat }) => offTheHeat);
    expect(lines[called]?.phase).toMatch(/boil|test/);
    const share = forecasts.map(({ boilShare }) => boilShare);
    expect(share.at(-1)).toBeGreaterThan(0.8);
    const early = forecasts[Math.floor(forecasts.length / 3)];
    const real = (lines[called]?.t ?? 0) - (early?.t ?? 0);
    expect(early?.seconds.low).toBeLessThan(real * 1.3);
    expect(early?.seconds.high).toBeGreaterThan(real * 0.7);
  });

  it('passes the three pause points by yes alone, in their places', () => {
    const asked = lines.flatMap(({ phase, question }) =>
      question === null ? [] : [`${phase} ${question.id}`],
    );
    expect([...new Set(asked)]).toEqual(expect.arrayContaining(['mix heat.pause', 'fold hands.pause']));
    expect(asked.some((one) => /^(boil|pour) pour\.pause$/.test(one))).toBe(true);
  });

  it('is the same cook that the core leads', () => {
    const { play } = cook;
    const last = lines.at(-1);
    expect({ phase: last?.phase, step: last?.step, t: last?.t, say: last?.say }).toEqual({
      phase: play.phase,
      step: play.step,
      t: play.t,
      say: play.say,
    });
  });
});

describe('a cook in which much goes wrong', () => {
  it('bad reading, disagreement, failed test and back, boil-over, undo, cutting while still pulling', async () => {
    const script = recorded(`${mixed}
      +300 done
      +20 done
      +120 done
      +30 done
      +20 done
      +60 219
      +60 222
      +60 2256
      +10 no
      +20 225
      +30 trouble overflow
      +5 done
      +5 pot off
      +10 done
      +10 done
      +5 done
      +60 over overflow
      +30 done
      +30 heat low
      +60 229
      +60 231
      +60 234
      +40 yes
      +60 237
      +60 240
      +60 243
      +30 245
      +10 done
      +40 thread
      +20 undo
      +10 firm ball
      +10 done
      +40 247
      +40 249
      +20 done
      +40 hard ball
      +40 done
      +20 done
      +10 yes
      +10 done
      +150 done
      +30 done
      +20 done
      +200 done
      +300 middle 150f
      +500 middle 112f
      +40 yes
      +5 portion 3
      +10 done
      +300 done
      +10 droops
      +120 done
      +5 done
      +60 done
      +20 done
      +300 done
      +5 done
      +60 done
      +10 at cut
      +30 done
      +120 done
      +120 done
      +700 done
    `);
    const lines = await follow(inTheHall('hill-hall-ginger-pull'), script);
    const heard = (typed: string, nth = 0) =>
      lines[
        script.map((line, index) => (line.typed === typed ? index : -1)).filter((index) => index >= 0)[nth] ??
          -1
      ];
    expect(heard('2256')?.queried).toMatchObject({ kept: true });
    expect(heard('2256')?.question?.id).toBe('reading.doubt');
    expect(heard('trouble overflow')?.say).toBe('Knob off first.');
    expect(heard('trouble overflow')?.warnings[0]).toMatchObject({ id: 'overflow', level: 'now' });
    // The pot is off for the boil-over, which is no test.
    expect(heard('pot off')?.phase).toBe('boil');
    expect(heard('over overflow')?.say).toContain('Pot back on the ring, at a lower heat');
    expect(heard('245')?.offTheHeat).toBe(true);
    expect(heard('thread')?.warnings.map(({ id }) => id)).toContain('disagreement');
    expect(heard('undo')?.warnings.map(({ id }) => id)).not.toContain('disagreement');
    expect(heard('undo')?.phase).toBe('test');
    expect(heard('firm ball')?.say).toMatch(/^Not yet: firm ball\. Pot back on, low heat, to 2\d\d °F/);
    expect(heard('249')?.offTheHeat).toBe(true);
    expect(heard('hard ball')?.phase).toBe('flavour');
    expect(heard('middle 150f')?.say).toContain('still too hot');
    expect(heard('portion 3')?.phase).toBe('pull');
    const cutting = lines.filter(({ phase }) => phase === 'pull').length;
    expect(cutting).toBeGreaterThan(8);
    expect(heard('at cut')?.phase).toBe('cut');
    expect(lines.at(-1)?.phase).toBe('wrap');
    expect(unanswered(lines).map(({ queried }) => queried?.typed)).toEqual(['2256']);
  });
});

describe('a cook without a thermometer', () => {
  it('works by cold water alone, and by time before any hand', async () => {
    const script = recorded(`
      +1 thermometer none${mixed}
      +300 done
      +20 done
      +120 done
      +60 done
      +300 soft ball
      +10 done
      +200 firm ball
      +10 done
      +40 yes
      +60 pot off
      +20 unsure
      +20 hard ball
      +10 done
      +20 done
      +10 yes
      +10 done
      +150 done
      +30 done
      +20 done
      +200 done
      +10 yes
      +60 yes
      +900 yes
      +40 yes
      +10 done
      +300 done
      +10 done
      +10 done
    `);
    const lines = await follow(inTheHall('hill-hall-ginger-pull'), script);
    expect(
      lines.every(
        ({ temperature, forecast, nextReadingSeconds }) =>
          temperature === null && forecast === null && nextReadingSeconds === null,
      ),
    ).toBe(true);
    const reached = lines.findIndex((line) => line.reached);
    expect(script[reached]?.typed).toBe('hard ball');
    expect(lines[reached]?.stages?.['hard ball']).toBeGreaterThan(0.3);
    expect(unanswered(lines).map(({ queried }) => queried?.because)).toEqual([
      expect.stringMatching(/^Not yet: this is asked in 1\d min\. Until then tools only/),
    ]);
    expect(lines.at(-1)?.phase).toBe('cut');
    expect(lines.flatMap(({ warnings }) => warnings.map(({ id }) => id))).not.toContain('unattended');
  });
});

describe('a cook with molasses', () => {
  it('is stirred late, and hears of no lid and no brush', async () => {
    const cook = new SimulatedCook({ recipe: 'molasses-pull', kitchen: hall }, 5).run();
    const lines = await follow(inTheHall('molasses-pull'), cook.lines);
    expect(lines.at(-1)?.say).toMatch(/^Done/);
    const said = lines.map(({ say, why }) => `${say} ${why}`).join('\n');
    expect(said).toContain('Stir slowly, along the bottom');
    expect(said).not.toMatch(/Lid on|brush|Spoon out|Leave it still/);
  });
});

describe('a cook that is given up', () => {
  it('with a full pot: no water in before it is cool, and safely ended', async () => {
    const script = recorded(`${mixed}
      +300 done
      +20 done
      +120 216
      +60 221
      +30 trouble scorched
      +5 pot off
      +10 done
      +10 done
      +10 stop
      +5 heat off
      +10 done
      +1200 201
      +900 176
      +60 done
      +60 done
      +60 done
    `);
    const lines = await follow(inTheHall('hill-hall-ginger-pull'), script);
    const steps = lines.slice(-8).map(({ step }) => step);
    expect(lines.find((_line, index) => script[index]?.typed === 'stop')?.phase).toBe('clean');
    expect(steps).toEqual(
      expect.arrayContaining(['clean.cool', 'clean.pot', 'clean.tools', 'clean.hob', 'over.end']),
    );
    expect(lines.find(({ step }) => step === 'clean.cool')?.say).toContain('no water in');
    expect(lines.at(-1)?.say).toContain('given up');
  });
});

describe('a cook joined late, with a batch poured earlier', () => {
  const rest = `
    +60 done
    +30 done
    +20 done
    +200 done
    +10 middle 130f
    +300 middle 110f
    +40 yes
    +10 done
    +300 done
    +10 done
    +60 done
    +20 done
  `;

  it('--from fold: the middle is measured and the third pause point read all the same', async () => {
    const lines = await follow(inTheHall('hill-hall-ginger-pull', '--from', 'fold'), recorded(rest));
    expect(lines.every(({ from }) => from === 'fold')).toBe(true);
    expect(lines.some(({ question }) => question?.id === 'hands.pause')).toBe(true);
    expect(lines.at(-1)?.phase).toBe('cut');
    expect(unanswered(lines)).toEqual([]);
  });

  it('"at fold" from the checklist: the same', async () => {
    const lines = await follow(inTheHall('hill-hall-ginger-pull'), recorded(`+30 at fold${rest}`));
    expect(lines[0]).toMatchObject({ phase: 'fold', temperature: null, forecast: null });
    expect(lines.some(({ question }) => question?.id === 'hands.pause')).toBe(true);
    expect(lines.at(-1)?.phase).toBe('cut');
  });

  it('"at pull" asks for the middle first', async () => {
    const lines = await follow(inTheHall('hill-hall-ginger-pull'), recorded('+30 at pull\n+5 done\n+5 yes'));
    expect(lines.map(({ step }) => step)).toEqual(['hands.measure', 'hands.measure', 'hands.measure']);
    expect(lines.slice(1).every(({ queried }) => queried?.kept === false)).toBe(true);
  });
});
