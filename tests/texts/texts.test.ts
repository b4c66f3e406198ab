import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { type Hazard, responseOf } from '../../source/cook/hazards/hazard.js';
import { hazards } from '../../source/cook/hazards/table.js';
import { allSteps, phases } from '../../source/cook/phases/index.js';
import { phaseIds } from '../../source/recipe/recipe.js';
import { en } from '../../source/texts/en.js';
import { words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { hall, Play, recipeNames } from '../cook/play.js';

const ids = new Set(Object.keys(en));
const paper = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });
const text = (id: string): string => {
  expect([...ids], id).toContain(id);
  return words({ id } as Parameters<typeof words>[0], paper);
};

/** A cook in every state that a response could depend on. */
const cooks = recipeNames.flatMap((recipe) => {
  const boil = new Play({ recipe, from: 'boil' });
  const off = new Play({ recipe, from: 'boil' }).type('pot off');
  const hot = new Play({ recipe, from: 'boil' }).reads(60, 150);
  const slab = new Play({ recipe, from: 'fold' });
  const blind = new Play({ recipe, from: 'boil' }).type('thermometer none');
  return [boil, off, hot, slab, blind].map(({ cook }) => cook);
});
const responses = (hazard: Hazard): readonly string[] => [
  ...new Set(cooks.flatMap((cook) => responseOf(hazard, cook))),
];

const timersOf = (play: Play): readonly string[] => play.advice.timers.map(({ id }) => id);

function* timersOnTheWay(play: Play): Generator<string> {
  for (let turn = 0; turn < 60 && play.step !== 'over.end'; turn += 1) {
    yield* timersOf(play);
    play.forward();
  }
}

describe('words for the far view', () => {
  it.each([...ids].filter((id) => id.endsWith('.shout')))('%s fits two lines of fourteen', (id) => {
    const lines = text(id).split('\n');
    expect(lines.length).toBeLessThanOrEqual(2);
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(14);
      expect(line.length).toBeGreaterThan(0);
      expect(line).toBe(line.trim());
    }
  });
});

describe('every id that is made up from another one has its text', () => {
  it.each(allSteps.map(({ id }) => id))('step %s: say, why, shout', (id) => {
    for (const part of ['say', 'why', 'shout']) expect([...ids]).toContain(`${id}.${part}`);
  });

  it('phases', () => {
    for (const id of phaseIds) expect(text(`phase.${id}`).length).toBeGreaterThan(0);
    expect(phases.map(({ id }) => id)).toEqual(phaseIds);
  });

  it('timers, of every step of every recipe and of every trouble', () => {
    const kitchens = [hall, { ...hall, thermometers: [] }];
    const cooks = recipeNames.flatMap((recipe) => kitchens.map((kitchen) => new Play({ recipe, kitchen })));
    const led = cooks.flatMap((play) => [...timersOnTheWay(play)]);
    const stopped = new Play({ from: 'boil' }).type('stop', 'heat off');
    const troubled = troubleNames.map((name) => new Play({ from: 'boil' }).type(`trouble ${name}`));
    const seen = new Set([...led, ...[stopped, ...troubled].flatMap(timersOf)]);
    expect(seen.size).toBeGreaterThan(10);
    for (const id of seen) text(`timer.${id}`);
    // And no text for a timer that nobody sets.
    const timers = [...ids].filter((id) => id.startsWith('timer.')).map((id) => id.slice(6));
    expect(timers.filter((id) => !seen.has(id))).toEqual([]);
  });
});

describe.each(hazards.map((hazard) => [hazard.id, hazard] as const))('the hazard %s', (id, hazard) => {
  it('is a complete row: cause, consequence, what to do in order, a source', () => {
    expect(text(`hazard.${id}.cause`).length).toBeGreaterThan(5);
    expect(typeof text(`hazard.${id}.does`)).toBe('string');
    expect(hazard.source.length).toBeGreaterThan(10);
    expect(['now', 'soon', 'note']).toContain(hazard.level);
    expect([null, 'DANGER', 'WARNING', 'CAUTION']).toContain(hazard.signal);
    expect(hazard.phases === 'any' || hazard.phases.length > 0).toBe(true);
    const all = responses(hazard);
    expect(all.length).toBeGreaterThan(0);
    for (const one of all) expect(text(one)).toMatch(/^[A-Z].*[.?]$/s);
    if (hazard.raisedBy === 'report') text(hazard.shout);
    if (hazard.raisedBy === 'evidence') {
      expect(hazard.raise ?? hazard.arises).toBeDefined();
      if (hazard.raise !== undefined) expect(hazard.clear).toBeDefined();
    }
  });

  it('says danger and consequence in at most twelve words before what to do', () => {
    const before = `${hazard.signal ?? ''} ${text(`hazard.${id}.cause`)} ${text(`hazard.${id}.does`)}`;
    expect(before.trim().split(/\s+/).length, before).toBeLessThanOrEqual(12);
  });
});

describe('the table of hazards', () => {
  it('has one row for every trouble that can be reported, and none twice', () => {
    const reported = hazards.filter(({ raisedBy }) => raisedBy === 'report').map(({ id }) => id);
    expect([...reported].sort()).toEqual([...troubleNames].sort());
    const all = hazards.map(({ id }) => id);
    expect(new Set(all).size).toBe(all.length);
  });

  it('has every text, and the texts have no other', () => {
    const causes = [...ids].flatMap((id) => /^hazard\.(.+)\.cause$/.exec(id)?.[1] ?? []);
    expect([...causes].sort()).toEqual(hazards.map(({ id }) => id as string).sort());
    const used = new Set(hazards.flatMap((hazard) => responses(hazard)));
    const said = [...ids].filter((id) => /^hazard\./.test(id) && !/\.(cause|does|shout)$/.test(id));
    expect(said.filter((id) => !used.has(id))).toEqual([]);
  });

  it('gives a signal word only where people can be hurt', () => {
    const candy = [
      'overshoot-near',
      'past-window',
      'disagreement',
      'grains',
      'soft',
      'stiff',
      'heat-too-early',
    ];
    for (const id of candy) expect(hazards.find((one) => one.id === id)?.signal).toBeNull();
    for (const id of ['fire', 'choking', 'allergy'])
      expect(hazards.find((one) => one.id === id)?.signal).toBe('DANGER');
    for (const id of ['burn', 'spill', 'overflow', 'scorched', 'glass', 'molten-sugar', 'hot-middle'])
      expect(hazards.find((one) => one.id === id)?.signal).toBe('WARNING');
  });

  it('covers what must be there', () => {
    const needed = [
      ...[
        'burn',
        'steam-lid',
        'steam-flavour',
        'soda',
        'alcohol',
        'scorched',
        'emptied-pot',
        'overflow',
        'foam',
      ],
      ...[
        'pot-too-small',
        'fire',
        'spill',
        'overshoot-near',
        'past-window',
        'hot-middle',
        'glowing-ring',
        'glass',
      ],
      ...[
        'unattended',
        'away',
        'stiff',
        'scissors',
        'serving',
        'choking',
        'allergy',
        'thermometer',
        'disagreement',
      ],
    ];
    const all = hazards.map(({ id }) => id as string);
    for (const id of needed) expect(all).toContain(id);
  });
});

describe('sentences for a person at a stove', () => {
  const steps = new Set(allSteps.flatMap(({ id }) => [`${id}.say`, `${id}.why`]));
  const said = Object.entries(en).filter(([id, value]) => typeof value === 'string' && steps.has(id));

  it.each(said.map(([id, value]) => [id, value as string] as const))(
    '%s ends as a sentence and is short',
    (_id, sentence) => {
      expect(sentence).toMatch(/^[A-Z].*[.?!]$/s);
      expect(sentence.length).toBeLessThanOrEqual(120);
      expect(sentence).not.toMatch(/\bplease\b|\bsafe\b| {2}/i);
    },
  );
});
