/** What a step takes a person, seconds, where nothing in the pot or on the slab decides. Our judgement, from trade practice. */
export const stepSeconds = {
  'mix.ready': 40,
  'mix.roles': 25,
  'mix.thermometer': 45,
  'mix.dry': 35,
  'mix.wet': 60,
  'mix.walls': 20,
  'dissolve.spoon-out': 5,
  'boil.lid': 5,
  'boil.brush': 20,
  'boil.probe': 15,
  'test.off': 4,
  'test.drop': 30,
  'test.back': 5,
  'test.back-far': 5,
  'flavour.off': 4,
  'flavour.sink': 20,
  'flavour.add': 25,
  'pour.pour': 25,
  'fold.turn': 40,
  'fold.pot': 25,
  'fold.again': 150,
  'fold.add': 40,
  'pull.grease': 20,
  'pull.add': 30,
  'pull.droop': 5,
  'pull.stiff': 30,
  'pull.softer': 15,
  'cut.rope': 150,
  'cut.cut': 300,
  'wrap.wrap': 420,
  'wrap.weigh': 40,
  'wrap.serve': 30,
  'clean.heat-off': 5,
  'clean.pot': 180,
  'clean.tools': 150,
  'clean.hob': 90,
} as const;

const usually: Readonly<Record<string, number>> = stepSeconds;
/** What any other step takes, seconds. */
const shortest = 10;

export const secondsFor = (step: string): number => usually[step] ?? shortest;

/** A list is read aloud in under a minute, a line at once. */
export const questionSeconds: Readonly<Record<'pause' | 'safety' | 'reading' | 'what is true now', number>> =
  {
    pause: 40,
    safety: 5,
    reading: 4,
    'what is true now': 3,
  };
