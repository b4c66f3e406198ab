import { describe, expect, it } from 'vitest';
import { phaseAfter } from '../../source/cook/candy.js';
import type { Cook } from '../../source/cook/cook.js';
import { evidenceHazards } from '../../source/cook/hazards/evidence.js';
import { hazards, isHazardId } from '../../source/cook/hazards/table.js';
import { openCook } from '../../source/cook/open.js';
import { allSteps, phaseOf, phases } from '../../source/cook/phases/index.js';
import { isBehind, stepAt } from '../../source/cook/phases/phase.js';
import type { View } from '../../source/cook/view.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import type { PhaseId } from '../../source/recipe/recipe.js';
import type { Message } from '../../source/texts/message.js';
import { blind, hall, opened, Play, type RecipeName, seaside } from './play.js';

/** A kitchen of which nobody has said how warm or how damp it is. */
const unsaid = { ...seaside, room: { celsius: null, humidity: null } };

const openings = phases.flatMap(({ id }) =>
  [seaside, blind, unsaid].map((kitchen) => new Play({ from: id, kitchen })),
);
const recipes: readonly RecipeName[] = ['cream-pull', 'vinegar-pull', 'molasses-pull', 'mint-pull'];
const underWay = [
  ...recipes.flatMap((recipe) => [
    new Play({ recipe }).until('boil.still'),
    new Play({ recipe }).until('pull'),
  ]),
  new Play({ kitchen: hall })
    .until('dissolve.heat')
    .type('heat medium')
    .until('boil')
    .reads(60, 222, 236, 250),
  new Play().until('boil.still').type('soft ball', 'pot on', 'hard ball', 'thermometer none'),
  new Play().until('pull.stretch').type('droops', 'portion 3'),
  new Play().until('boil.still').type('stop'),
];
/** Of this kitchen hardly anything is known. */
const hardlyKnown = { ...unsaid, pot: { litres: null, diameterMillimetres: null } };

/** A recipe that nobody bundles: pulled with dry hands, with a flavour that holds alcohol. */
const dryAndSpirited = parseRecipe(
  `
kettlehand: 1
name: Vanilla, dry
about: A recipe for a test.
ingredients:
  - { item: granulated-sugar, amount: 450 g, phase: mix }
  - { item: glucose-syrup, de: 42, amount: 300 g, phase: mix }
  - { item: water, amount: 150 ml, phase: mix }
  - { item: vanilla-extract, amount: 1 tsp, phase: flavour }
target: { celsius: [126, 129], feels: hard ball }
hands: dry
piece: { grams: 6, ropeMillimetres: 14 }
`,
  'dry.yaml',
);

const ofThatRecipe = (from: PhaseId): Play => {
  if ('problems' in dryAndSpirited) throw new Error('no recipe');
  const play = new Play();
  play.cook = openCook({ ...opened({ from }), recipe: dryAndSpirited.recipe });
  return play;
};

/** As a list without its middle would leave it: in pieces that do not fit each other. */
const misfits = openings.slice(0, phases.length * 3).map((play) => {
  const odd = new Play();
  odd.cook = { ...play.cook, enteredAt: {}, leftAt: {}, pouredAt: null, droops: true, candy: { cut: 1 } };
  return odd;
});

const states: readonly Play[] = [
  ...openings,
  ...underWay,
  ...phases.map(({ id }) => new Play({ from: id, kitchen: hardlyKnown })),
  ...phases.map(({ id }) => ofThatRecipe(id)),
  ...misfits,
];

const viewOf = ({ cook, t }: Play): View => ({
  cook,
  batch: cook.batch,
  now: t + 30,
  belief: null,
  forecast: null,
  offTheHeat: false,
});

/** A sentence that a person could read: no value that is missing, none that is no number. */
const readable = (play: Play, said: Message | null | undefined): void => {
  if (said === null || said === undefined) return;
  expect(play.words(said), said.id).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
};

const each = (ids: readonly { readonly id: string }[]): readonly string[] => [
  ...new Set(ids.map(({ id }) => id)),
];

describe('an older list of things done, or a cook opened anywhere', () => {
  it.each(each(allSteps))('can show the step %s in any state', (id) => {
    const step = allSteps.find((one) => one.id === id);
    if (step === undefined) throw new Error(id);
    for (const play of states) {
      const view = viewOf(play);
      for (const said of [step.say(view), step.why(view), step.shout, step.next?.(view), step.watch?.(view)])
        readable(play, said);
      for (const item of step.items?.(view) ?? []) readable(play, item);
      for (const { from, until } of step.timers?.(view) ?? []) {
        expect(Number.isFinite(from), id).toBe(true);
        expect(until === null || until >= from, id).toBe(true);
      }
      expect(Number.isNaN(step.question?.earliest?.(view.cook) ?? 0)).toBe(false);
    }
  });

  it('knows of every step in any state whether it is wanted and behind, and only cautions of the table', () => {
    for (const { cook } of states)
      for (const step of allSteps) {
        const { doneBy, wanted, cautions } = step;
        expect(typeof isBehind(cook, step)).toBe('boolean');
        expect(typeof (doneBy?.(cook) ?? true)).toBe('boolean');
        expect(typeof (wanted?.(cook) ?? true)).toBe('boolean');
        const named = typeof cautions === 'function' ? cautions(cook) : (cautions ?? []);
        for (const caution of named) expect(isHazardId(caution), caution).toBe(true);
      }
  });

  it.each(each(evidenceHazards))('can look for the hazard %s in any state', (id) => {
    const hazard = evidenceHazards.find((one) => one.id === id);
    if (hazard === undefined) throw new Error(id);
    for (const play of states) {
      const view = viewOf(play);
      readable(play, hazard.evidence(view));
      const raised = hazard.raise?.(view) ?? false;
      // What raises it does not clear it at the same time: a warning would come and go with every key.
      const cleared = hazard.clear?.(view) ?? false;
      expect(raised && cleared, id).toBe(false);
      expect(Number.isNaN(hazard.arises?.(view.cook) ?? 0)).toBe(false);
    }
  });

  it.each(each(hazards))('says what to do about %s in any state', (id) => {
    const hazard = hazards.find((one) => one.id === id);
    if (hazard === undefined) throw new Error(id);
    for (const play of states) {
      const response = typeof hazard.response === 'function' ? hazard.response(play.cook) : hazard.response;
      expect(response.length, id).toBeGreaterThan(0);
      for (const said of response) readable(play, { id: said } as Message);
    }
  });

  it('finds the next open step of every phase, or none, in any state', () => {
    for (const { cook } of states)
      for (const phase of phases) {
        const step = stepAt(cook, phase);
        expect(step === null || [...(phase.gates ?? []), ...phase.steps].includes(step)).toBe(true);
      }
  });

  it('gives one next action in any state, and nothing unreadable beside it', () => {
    for (const play of states) {
      const { say, why, shout, items, next, watch, changesAt } = play.advice;
      for (const said of [say, why, shout, ...items, next, watch]) readable(play, said);
      expect(changesAt === null || changesAt > play.t).toBe(true);
    }
  });

  it('says the end when everything is done', () => {
    const play = new Play({ from: 'wrap' });
    play.cook = { ...play.cook, done: Object.fromEntries(allSteps.map(({ id }) => [id, 0])) };
    expect(play.step).toBe('over.end');
  });

  it('takes a phase that only a later version knows for the end', () => {
    expect(phaseOf('age' as PhaseId).id).toBe('over');
  });

  it('has nothing after the end', () => {
    expect(phaseAfter('over')).toBe('over');
    const emptied: Cook = { ...new Play().cook, candy: {} };
    const play = new Play();
    play.cook = emptied;
    expect(play.phase).toBe('over');
  });
});
