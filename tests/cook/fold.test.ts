import { describe, expect, it } from 'vitest';
import { Play } from './play.js';

const clock = (play: Play, id: string) => play.advice.timers.find((one) => one.id === id);

/** Poured at this moment; the first fold waits. */
const poured = () => {
  const play = new Play().until('pour.pour').type('done');
  expect(play.step).toBe('fold.wait');
  return { play, at: play.t };
};

describe('the fold', () => {
  it('waits two and a half minutes from the pour', () => {
    const { play, at } = poured();
    expect(clock(play, 'first-fold')).toEqual({ id: 'first-fold', from: at, until: at + 150, due: false });
    expect(play.advice.next?.id).toBe('fold.next.pot');
    expect(play.wait(150).advice.timers.map(({ due }) => due)).toEqual([true]);
  });

  it('goes on to the emptied pot, whose clock runs from the pour, and folds again three minutes after the first', () => {
    const { play, at } = poured();
    play.wait(160).type('done');
    expect(play.step).toBe('fold.turn');
    play.wait(5).type('done');
    const turned = play.t;
    expect(play.step).toBe('fold.pot');
    expect(clock(play, 'emptied-pot')).toMatchObject({ from: at, until: at + 150 });
    expect(play.advice.cautions.map(({ id }) => id)).toEqual(['emptied-pot']);
    play.type('done');
    expect(play.step).toBe('fold.again');
    expect(clock(play, 'next-fold')).toMatchObject({ from: turned, until: turned + 180 });
    expect(play.advice.cautions.map(({ id }) => id)).toEqual(['hot-middle']);
  });

  it('joined later counts from there', () => {
    const play = new Play({ from: 'fold' }).wait(40);
    expect(clock(play, 'first-fold')).toMatchObject({ from: 0, until: 150 });
    for (const step of ['fold.wait', 'fold.turn']) {
      expect(play.step).toBe(step);
      expect(play.advice.cautions.map(({ id }) => id)).toEqual(['hot-middle']);
      play.type('done');
    }
  });
});

describe('what is added on the slab', () => {
  it.each([
    ['mint-pull', true],
    ['vinegar-pull', true],
    ['hill-hall-ginger-pull', false],
  ] as const)('of %s: %s', (name, added) => {
    const play = new Play({ recipe: name, from: 'fold' });
    for (let turn = 0; turn < 4; turn += 1) play.wait(200).type('done');
    expect(play.step === 'fold.add').toBe(added);
    if (!added) return;
    const wanted = play.cook.batch.recipe.ingredients.filter(({ phase }) => phase === 'fold');
    expect(play.advice.items.map(({ values }) => (values as { name: string }).name)).toEqual(
      wanted.map((one) => one.name),
    );
    expect(play.advice.cautions.map(({ id }) => id)).toEqual(['hot-middle']);
  });
});

describe('the pour', () => {
  it('never scrapes a pot whose scrapings would seed crystals; one with starch runs out', () => {
    const said = (name: 'clear-pull' | 'hill-hall-ginger-pull') => {
      const play = new Play({ recipe: name }).until('pour.pour');
      return [play.say, play.why];
    };
    expect(said('clear-pull')).toEqual([
      'Pour low and close to the slab, away from you. Do not scrape the pot.',
      'From high up it splashes; scrapings seed crystals.',
    ]);
    expect(said('hill-hall-ginger-pull')).toEqual([
      'Pour low and close to the slab, away from you. Let it run out.',
      'From high up it splashes.',
    ]);
  });

  it('asks for the path unless the list was read only just now', () => {
    const early = new Play({ from: 'boil' }).type('done').reads(60, 112, 113);
    early.until('pour.pause').type('yes');
    early.reads(60, 121, 124).type('pot off', 'hard ball').until('pour');
    expect(early.step).toBe('pour.path');
    expect(new Play({ from: 'pour' }).type('yes').step).toBe('pour.pour');
  });
});
