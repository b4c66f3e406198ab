import type { Advice } from '../cook/advice.js';
import type { Cook } from '../cook/cook.js';
import { isQuiet } from '../cook/quiet.js';
import type { PhaseId } from '../recipe/recipe.js';
import { type Message, message, type TextId } from '../texts/message.js';

/** What people in the room are told: what happens, why, and what it means for those who stand around. */
export type Scene = {
  readonly id: SceneId;
  readonly what: Message;
  readonly why: Message;
  readonly keep: Message | null;
  /** Nobody talks: the presenter's lines are left out too. */
  readonly quiet: boolean;
  readonly cues: readonly string[];
  /** What the candy has in it, said before anyone eats. */
  readonly has: Message | null;
};

type SceneId = {
  [Id in TextId]: Id extends `watch.${infer Name}.why`
    ? `watch.${Name}` extends TextId
      ? Name
      : never
    : never;
}[TextId];
type KeepId = { [Id in TextId]: Id extends `watch.keep.${infer Name}` ? Name : never }[TextId];

/** The steps of the cook as the room sees them: many steps are one scene. */
export const sceneOfStep: Readonly<Record<string, SceneId>> = {
  'mix.ready': 'lay-out',
  'mix.roles': 'list',
  'heat.pause': 'list',
  'mix.thermometer': 'check',
  'mix.dry': 'mix',
  'mix.wet': 'mix',
  'mix.walls': 'mix',
  'dissolve.heat': 'melt',
  'dissolve.stir': 'melt',
  'dissolve.spoon-out': 'melt',
  'dissolve.back': 'back',
  'boil.heat': 'to-boil',
  'boil.start': 'to-boil',
  'boil.lid': 'wall',
  'boil.lid-off': 'wall',
  'boil.brush': 'wall',
  'boil.probe': 'boil',
  'boil.still': 'boil',
  'boil.last': 'close',
  'boil.off': 'off',
  'boil.back': 'back',
  'test.off': 'off',
  'test.drop': 'drop',
  'test.back': 'back',
  'test.back-far': 'back',
  'flavour.off': 'off',
  'flavour.sink': 'sink',
  'flavour.add': 'flavour',
  'pour.pause': 'path',
  'pour.path': 'path',
  'pour.pour': 'pour',
  'fold.wait': 'cool',
  'fold.turn': 'fold',
  'fold.pot': 'fold',
  'fold.again': 'fold',
  'fold.add': 'fold',
  'hands.measure': 'middle',
  'hands.layer': 'middle',
  'hands.crumb': 'middle',
  'hands.pause': 'hands',
  'pull.grease': 'hands',
  'pull.add': 'pull',
  'pull.stretch': 'pull',
  'pull.droop': 'droop',
  'pull.stiff': 'stiff',
  'pull.softer': 'stiff',
  'cut.rope': 'rope',
  'cut.cut': 'cut',
  'wrap.rest': 'rest',
  'wrap.wrap': 'wrap',
  'wrap.weigh': 'count',
  'wrap.serve': 'serve',
  'clean.heat-off': 'clean',
  'clean.cool': 'clean',
  'clean.pot': 'clean',
  'clean.tools': 'clean',
  'clean.hob': 'clean',
  'over.end': 'over',
};

const sceneOfPhase: Readonly<Record<PhaseId, SceneId>> = {
  mix: 'mix',
  dissolve: 'melt',
  boil: 'boil',
  test: 'drop',
  flavour: 'flavour',
  pour: 'pour',
  fold: 'fold',
  pull: 'pull',
  cut: 'cut',
  wrap: 'wrap',
  clean: 'clean',
  over: 'over',
};

const keepOfPhase: Readonly<Record<PhaseId, KeepId | null>> = {
  mix: null,
  dissolve: 'hot',
  boil: 'steam',
  test: 'steam',
  flavour: 'steam',
  pour: 'pour',
  fold: 'slab',
  pull: 'pull',
  cut: 'scissors',
  wrap: 'eat',
  clean: 'clean',
  over: null,
};

/** Troubles of the candy alone: the room need not be moved for them. */
const ofTheCandy: readonly string[] = [
  'grains',
  'overshoot',
  'soft',
  'stiff',
  'thermometer',
  'power',
  'away',
];

const isTroubled = (advice: Advice): boolean =>
  advice.troubles.some(({ name }) => !ofTheCandy.includes(name));

/** Too hot for hands, whatever the phase: some of the candy is not measured or above the limit. */
const isHands = (scene: SceneId): boolean => scene === 'middle' || scene === 'hands';

const sceneId = (cook: Cook, advice: Advice): SceneId => {
  // What went wrong, and for whom, is nobody's business in the room.
  if (isTroubled(advice)) return 'trouble';
  if (cook.stopped && advice.phase !== 'over') return 'stopped';
  if (advice.offTheHeat) return 'off';
  const own = advice.step === null ? undefined : sceneOfStep[advice.step];
  if (own !== undefined) return own;
  return advice.step === null ? 'gap' : sceneOfPhase[advice.phase];
};

const keepOf = (scene: SceneId, phase: PhaseId): KeepId | null => {
  if (scene === 'trouble') return 'trouble';
  if (scene === 'stopped') return 'clean';
  return isHands(scene) ? 'slab' : keepOfPhase[phase];
};

/** Pure: what the room is told at this moment. Notes, names, hurts and answers of people are not in it. */
export const sceneOf = (cook: Cook, advice: Advice): Scene => {
  const id = sceneId(cook, advice);
  const keep = keepOf(id, advice.phase);
  const contains = cook.batch.recipe.allergens.contains;
  return {
    id,
    what: { id: `watch.${id}` },
    why: { id: `watch.${id}.why` },
    keep: keep === null ? null : { id: `watch.keep.${keep}` },
    // From 6 K below the take-off until the pot is empty the recipe's cues are silent: so is the room.
    quiet: !['trouble', 'stopped', 'gap'].includes(id) && isQuiet(cook, advice.now),
    cues: id === 'trouble' || id === 'stopped' ? [] : advice.cues,
    has: id === 'serve' && contains.length > 0 ? message('watch.has', { items: contains }) : null,
  };
};
