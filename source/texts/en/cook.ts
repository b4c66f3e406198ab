import { escapeForTerminal as shown } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { sentence } from '../capital.js';
import { hazardTexts } from './hazards.js';

type Fat = 'butter' | 'oil' | 'starch' | 'dry';
type TroubleName = {
  [Id in keyof typeof hazardTexts]: Id extends `hazard.${infer Name}.shout` ? Name : never;
}[keyof typeof hazardTexts];
type Whose = 'bare' | 'visitors' | 'gloved' | 'children';

const readAgain = (seconds: number, p: Printer): string =>
  seconds < 8 ? 'read again now' : `read again in ${p.time(seconds)}`;

const greased: Readonly<Record<Fat, string>> = {
  butter: 'buttered',
  oil: 'oiled',
  starch: 'dusted with starch',
  dry: 'clean and dry',
};
const prepare: Readonly<Record<Fat, string>> = {
  butter: 'Butter your fingers thinly',
  oil: 'Oil your fingers thinly',
  starch: 'Dust your fingers with starch',
  dry: 'Dry your fingers well',
};
const whoseHands: Readonly<Record<Whose, string>> = {
  bare: "practised adults' bare hands",
  visitors: 'first-time hands',
  gloved: 'cotton under nitrile gloves',
  children: "children's hands",
};
/** What each stove does after the pot has left it. */
const carriesOn = {
  gas: "Gas stops at once, but the pot's own heat carries it a little further.",
  coil: 'A coil goes on heating after it is off: turning the knob is not enough.',
  'glass-ceramic': 'The glass goes on heating after it is off: turning the knob is not enough.',
  induction: "The pot's base stays hot and carries it a little further.",
} as const;
const allergenLine = (v: Allergens, p: Printer): string => {
  const parts = [
    v.contains.length > 0 ? `contains ${p.list(v.contains.map(shown))}` : 'no known allergen in the recipe',
    ...(v.check.length > 0 ? [`check the packets for ${p.list(v.check.map(shown))}`] : []),
    ...(v.unknown ? ['some allergens unknown'] : []),
  ];
  return parts.join('; ');
};
type Allergens = { contains: readonly string[]; check: readonly string[]; unknown: boolean };

/** The phases and their steps. `.shout` is at most two lines of fourteen characters. */
export const cookTexts = {
  /** As the recipe writes it, or by ounces and cups; the grams always stand beside it. */
  ingredient: (
    v: { amount: string; name: string; grams: number; millilitres: number | null },
    p: Printer,
  ) => {
    const grams = p.exactGrams(v.grams);
    const amount = p.weights === 'ounces' ? p.household({ ...v, written: v.amount }) : v.amount.trim();
    return amount === grams ? `${grams} ${shown(v.name)}` : `${shown(amount)} ${shown(v.name)} (${grams})`;
  },

  'phase.mix': 'mix',
  'phase.dissolve': 'dissolve',
  'phase.boil': 'boil',
  'phase.test': 'test',
  'phase.flavour': 'flavour',
  'phase.pour': 'pour',
  'phase.fold': 'fold',
  'phase.pull': 'pull',
  'phase.cut': 'cut',
  'phase.wrap': 'wrap',
  'phase.clean': 'clean',
  'phase.over': 'over',

  // Mix cold.
  'mix.ready.say': 'Set everything out before any heat.',
  'mix.ready.why': (_v: { surface: Fat; hands: Fat }) =>
    'Once it boils there is no time to look for a scraper, and nobody leaves the pot.',
  'mix.ready.shout': 'SET IT ALL\nOUT',
  'mix.ready.pot': (
    v: { neededLitres: number; haveLitres: number | null; fits: boolean | null },
    p: Printer,
  ) => {
    const size = `Pot of at least ${p.litres(v.neededLitres)}: four times the dissolved syrup, for the foam`;
    if (v.fits === false && v.haveLitres !== null)
      return `${size}. Yours holds ${p.litres(v.haveLitres)}: too small, make less.`;
    return v.haveLitres === null ? `${size}.` : `${size}. Yours holds ${p.litres(v.haveLitres)}: it fits.`;
  },
  'mix.ready.stem': (
    v: {
      present: boolean;
      stemMillimetres: number | null;
      depthMillimetres: number | null;
      covered: boolean | null;
    },
    p: Printer,
  ) => {
    if (!v.present)
      return 'No thermometer: the cold-water tests alone decide, and there are more of them: a jug of cold water to fill the cups again.';
    if (v.depthMillimetres === null)
      return 'Thermometer: the syrup must cover the sensing part of its stem at the end of the boil.';
    const depth = `the syrup will stand ${p.millimetres(v.depthMillimetres)} deep at the end`;
    if (v.covered === null || v.stemMillimetres === null)
      return `Thermometer: ${depth}; that must cover its sensing part.`;
    return v.covered
      ? `Thermometer: ${depth}, enough for its ${p.millimetres(v.stemMillimetres)} stem.`
      : `Thermometer: ${depth}, too shallow for its ${p.millimetres(v.stemMillimetres)} stem. Narrower pot, or tilt it off the ring to read.`;
  },
  'mix.ready.slab': (v: { surface: Fat }) => `Plate or slab, ${greased[v.surface]}, level, beside the stove.`,
  'mix.ready.scraper': 'Stiff scraper and scissors, both greased.',
  'mix.ready.fat': (v: { hands: Fat }) =>
    v.hands === 'dry'
      ? 'A dry towel within reach, for hands.'
      : `${v.hands[0]?.toUpperCase()}${v.hands.slice(1)} for hands, within reach of the slab.`,
  'mix.ready.bowl': 'A bowl of cool water for hands, beside the slab. Not ice.',
  'mix.ready.cups': 'Six cups of cold tap water, metal or plastic, and a metal spoon: for testing.',
  'mix.ready.clothes': 'Dry mitts, apron, trivet, a lid that fits the pot.',
  'mix.ready.squares': (v: { squares: number }, p: Printer) =>
    `${p.count(v.squares, 'wrapping square', 'wrapping squares')}, cut now.`,
  'mix.roles.say': 'Say aloud who does what.',
  'mix.roles.why':
    'In the last minutes nobody has time to ask. Alone: you are the pot, and you stop talking near the end.',
  'mix.roles.shout': 'WHO DOES\nWHAT',
  'mix.roles.pot': 'Pot: one adult who does nothing else.',
  'mix.roles.slab': 'Slab: scraper, trivet, flavour.',
  'mix.roles.floor': 'Floor: one for six to eight children.',
  'mix.roles.scribe': 'Scribe: types what the pot says.',
  'mix.roles.pull':
    'Who will pull? Type "hands visitors", "hands bare" (practised adults), "hands gloved" or "hands children".',
  'mix.thermometer.say': (_v: { waterBoilsCelsius: number }, p: Printer) =>
    `Hold the thermometer in boiling water and type what it shows: boils ${p.thermometerUnit === 'F' ? '203f' : '95c'}.`,
  'mix.thermometer.why': (v: { waterBoilsCelsius: number }, p: Printer) =>
    `Here water boils at ${p.degrees(v.waterBoilsCelsius)}. Ice water works too (ice ${p.thermometerUnit === 'F' ? '33f' : '0.5c'}). No time for it: done.`,
  'mix.thermometer.shout': 'CHECK THE\nDIAL',
  'heat.pause.say': (_v: { alone: boolean; neededLitres: number }) =>
    'Read this aloud. All true? Answer yes.',
  'heat.pause.why': 'Pause before heat: from here on the pot is hotter than anything else in the room.',
  'heat.pause.shout': 'READ ALOUD\nBEFORE HEAT',
  'heat.pause.hands': 'Hands washed 20 s with soap and dried; again after face, telephone or keyboard.',
  'heat.pause.people': 'Hair tied, cuts covered, nobody ill.',
  'heat.pause.zone': 'Children behind a line 1 m from stove, slab and the path between.',
  'heat.pause.water': 'Lid and dry mitts at hand, cool running water a few steps away.',
  'heat.pause.pot': (v: { neededLitres: number; fits: boolean | null }, p: Printer) =>
    v.fits === false
      ? `The pot is too small: take one of ${p.litres(v.neededLitres)}, or make less.`
      : `Pot of ${p.litres(v.neededLitres)} or more.`,
  'heat.pause.tools': (v: { surface: Fat }) =>
    `Surface ${greased[v.surface]}; scraper and scissors greased; six test cups and the hand bowl filled.`,
  'heat.pause.allergies': (v: Allergens, p: Printer) => `Allergies asked: ${allergenLine(v, p)}.`,
  'mix.dry.say': (v: { things: number; starch: boolean }) =>
    v.things > 1
      ? 'Stir the dry things together in the cold pot. Stove off.'
      : 'Dry first, into the cold pot. Stove off.',
  'mix.dry.why': (v: { things: number; starch: boolean }) =>
    v.starch
      ? 'Starch mixed dry into sugar does not clump later.'
      : 'Dry on the bottom, wet on top: every grain is wetted through.',
  'mix.dry.shout': 'DRY THINGS\nSTOVE OFF',
  'mix.wet.say': 'Add the rest in this order. Stove still off.',
  'mix.wet.why': 'In this order the dry sugar wets through and nothing sticks dry to the bottom.',
  'mix.wet.shout': 'WET THINGS\nSTOVE OFF',
  'mix.walls.say': 'Scrape the sugar off the wall of the pot.',
  'mix.walls.why': 'One dry crystal on the wall can turn the whole batch to grains.',
  'mix.walls.shout': 'SCRAPE WALLS',

  // Dissolve.
  'dissolve.heat.say': (v: { heat: readonly string[] }) =>
    `Turn the heat to low or medium. Type what you set, say "heat ${v.heat[Math.floor((v.heat.length - 1) / 2)] ?? 'medium'}".`,
  'dissolve.heat.why': 'Sugar dissolves before it boils, or it never dissolves well.',
  'dissolve.heat.shout': 'HEAT ON\nLOW-MEDIUM',
  'dissolve.back.say': 'Pot back on the ring, at a lower heat.',
  'dissolve.back.why': 'Off the ring the sugar stops dissolving.',
  'dissolve.back.shout': 'POT BACK ON\nLOWER HEAT',
  'dissolve.stir.say': 'Stir slowly until you feel no grit on the bottom. Then: done.',
  'dissolve.stir.why': (v: { late: boolean; startsCelsius: number }, p: Printer) =>
    `${v.late ? 'This batch scorches: it is stirred later as well.' : 'Every crystal must be gone before it boils.'} It boils from about ${p.dial(v.startsCelsius)}.`,
  'dissolve.stir.shout': 'STIR\nUNTIL CLEAR',
  'dissolve.next': 'at the first bubbles the spoon comes out and stays out',
  'dissolve.spoon-out.say': 'Spoon out. From now on nobody stirs.',
  'dissolve.spoon-out.why': 'Stirring a boiling syrup starts crystals.',
  'dissolve.spoon-out.shout': 'SPOON OUT\nNO STIRRING',

  // Boil.
  'boil.back.say': 'Pot back on the ring, at a lower heat.',
  'boil.back.why': 'Off the ring it does not cook on; lower heat keeps the foam down.',
  'boil.back.shout': 'POT BACK ON\nLOWER HEAT',
  'boil.heat.say': 'Ring on again, low. Another setting: type it, say "heat medium".',
  'boil.heat.why': 'The heat is off: the syrup only cools.',
  'boil.heat.shout': 'HEAT BACK ON\nLOW',
  'boil.start.say': 'Bring it to a steady boil all over. Boiling: done.',
  'boil.start.why': (v: { startsCelsius: number }, p: Printer) =>
    `It boils from about ${p.dial(v.startsCelsius)}. Medium heat: too fast foams, too slow takes an hour.`,
  'boil.start.shout': 'STEADY BOIL',
  'boil.watch.foam': 'foam: half way up the pot is the time to lower the heat',
  'boil.watch.scorch': 'the bottom: scrape it as you stir, it scorches there first',
  'boil.watch.run': 'the last degrees run: nobody talks to the one at the pot',
  'boil.lid.say': 'Lid on for two to three minutes. Stay beside it.',
  'boil.lid.why': 'Steam washes the sugar off the wall.',
  'boil.lid.shout': 'LID ON\nSTAY THERE',
  'boil.lid-off.say': 'Two to three minutes under the lid, then lid off, away from your face.',
  'boil.lid-off.why': 'Under a lid no water leaves: it does not cook on.',
  'boil.lid-off.shout': 'LID OFF AFTER\n2-3 MINUTES',
  'boil.brush.say': (v: { beforeCelsius: number }, p: Printer) =>
    `Wash the wall with a damp long-handled brush, shaken out, before ${p.dial(v.beforeCelsius)}. Sleeve down.`,
  'boil.brush.why':
    'Sugar left on the wall falls in later and seeds crystals. No lid: this batch would foam under it.',
  'boil.brush.shout': 'BRUSH WALLS\nDAMP, ONCE',
  'boil.probe.say': 'Warm the thermometer in hot water, then hang it in: covered, off the bottom.',
  'boil.probe.why': 'On the bottom it reads high, in the foam low, and cold glass cracks.',
  'boil.probe.shout': 'THERMOMETER\nIN',
  'boil.still.say': (v: StillValues, p: Printer) => {
    const act = v.late ? 'Stir slowly, along the bottom.' : 'Leave it still.';
    if (!v.thermometer)
      return `${act} ${v.testSeconds > 0 ? `Test in cold water in ${p.time(v.testSeconds)}: pot off.` : 'Test now: pot off the ring.'}`;
    return v.nextSeconds === null
      ? `${act} Read the thermometer and type it.`
      : `${act} ${sentence(readAgain(v.nextSeconds, p))}`;
  },
  'boil.still.why': (v: StillValues, p: Printer) => {
    const reason = v.late ? 'Unstirred it would scorch.' : 'Stirring now would seed crystals.';
    return v.thermometer
      ? `${reason} Off the ring at ${p.dial(v.takeOffCelsius)}.`
      : `${reason} Done is: ${v.feels}.`;
  },
  'boil.still.shout': 'BOIL ON\nSTAY NEAR',
  'boil.next.test': (v: { nearCelsius: number; takeOffCelsius: number; feels: string }, p: Printer) =>
    `a cup of cold water and a spoon ready from ${p.dial(v.nearCelsius)}; at ${p.dialNumber(v.takeOffCelsius)} off the ring and test for ${v.feels}`,
  'boil.next.blind-test': 'a cup of fresh cold water and a metal spoon',
  'boil.next.trivet': 'trivet and flavour stand ready; a fresh cup of cold water',
  'boil.last.say': (v: StillValues, p: Printer) => {
    const act = v.late ? 'Stay at the pot, stir along the bottom.' : 'Stay at the pot.';
    if (!v.thermometer)
      return `${act} ${v.testSeconds > 0 ? `Test again in ${p.time(v.testSeconds)}.` : 'Test now: pot off the ring.'}`;
    return `${act} ${sentence(readAgain(v.nextSeconds ?? 0, p))}`;
  },
  'boil.last.why': (v: StillValues, p: Printer) =>
    v.thermometer
      ? `The last degrees run. Lower heat gives you control. Off the ring at ${p.dial(v.takeOffCelsius)}.`
      : `The last stage runs. Lower heat gives you control. Done is: ${v.feels}.`,
  'boil.last.shout': 'STAY THERE\nREAD OFTEN',
  'boil.off.say': 'OFF THE HEAT now: pot off the ring, onto the trivet.',
  'boil.off.why': (
    v: { celsius: number | null; stove: keyof typeof carriesOn; windowCelsius: readonly [number, number] },
    p: Printer,
  ) => {
    const at = v.celsius === null ? '' : `${p.dial(v.celsius)}. `;
    return `${at}${carriesOn[v.stove]} Short of the mark can be reheated; past it cannot be undone.`;
  },
  'boil.off.shout': 'OFF THE HEAT\nTO TRIVET',

  // Test.
  'test.off.say': 'Pot off the ring, onto the trivet.',
  'test.off.why': 'On the ring it would cook on while you test.',
  'test.off.shout': 'POT OFF\nFOR THE TEST',
  'test.drop.say': (v: { feels: string; again: boolean }) =>
    v.again
      ? 'Test again: a fresh cup, half a teaspoon, ten seconds under water, then feel.'
      : 'Half a teaspoon of syrup into a fresh cup of cold water. Ten seconds, then feel it.',
  'test.drop.why': (v: { feels: string; again: boolean }) =>
    `Fingers know better than a dial. Looking for ${v.feels}. Type what it felt like.`,
  'test.drop.shout': 'DROP IN COLD\nWATER, FEEL',
  'test.back.say': (v: TestedShort, p: Printer) =>
    v.nextCelsius === null
      ? `Not yet: ${v.outcome}. Pot back on, low heat, and test again in about ${p.time(v.seconds)}.`
      : `Not yet: ${v.outcome}. Pot back on, low heat, to ${p.dial(v.nextCelsius)}, then test again.`,
  'test.back.why': (v: TestedShort) =>
    `It should be ${v.feels}. Below that it never sets, however long you pull.`,
  'test.back.shout': 'POT BACK ON\nLOW HEAT',
  'test.back-far.say': (v: TestedShort, p: Printer) =>
    v.nextCelsius === null
      ? `Far from it yet: ${v.outcome}. Pot back on, medium heat, and test again in about ${p.time(v.seconds)}.`
      : `Far from it yet: ${v.outcome}. Pot back on, medium heat, to ${p.dial(v.nextCelsius)}, then test again.`,
  'test.back-far.why': (v: TestedShort) =>
    `It should be ${v.feels}. Much water has to leave first; low heat is for the last stage.`,
  'test.back-far.shout': 'POT BACK ON\nMEDIUM HEAT',
  'feels.dissolves': 'dissolves: it melts away in the water',
  'feels.thread': 'thread: fine threads, nothing to roll',
  'feels.soft ball': 'soft ball: rolls to a ball that runs flat over your finger',
  'feels.firm ball': 'firm ball: holds its shape, squishes when you press',
  'feels.hard ball': 'hard ball: gives under pressure, does not squash; slightly sticky',
  'feels.soft crack': 'soft crack: bends, then stretches to threads',
  'feels.hard crack': 'hard crack: snaps like glass',
  'feels.unsure': 'unsure: test again with a fresh cup',

  // Flavour off the heat.
  'flavour.off.say': 'It is done. Pot off the heat for good, onto the trivet.',
  'flavour.off.why': "The ring and the pot's own heat would carry it past.",
  'flavour.off.shout': 'DONE: OFF\nTHE HEAT',
  'flavour.sink.say': (v: { stove: string; again: string | null }) =>
    v.again === null
      ? 'Turn the ring off. Wait until the bubbling sinks.'
      : `One more drop, a fresh cup: still ${v.again}? Then ring off, and let the bubbling sink.`,
  'flavour.sink.why': (v: { stove: string; again: string | null }) =>
    v.again === null
      ? 'Anything added to bubbling syrup bursts into steam.'
      : 'Fingers take half a stage for its neighbour. If it is softer this time, type that: it goes back.',
  'flavour.sink.shout': 'RING OFF\nBUBBLES SINK',
  'flavour.add.say': (v: { flavour: boolean }) =>
    `Add ${v.flavour ? 'colour and flavour' : 'this'} at arm’s length, a little at a time. Stir twice.`,
  'flavour.add.why': 'Off the heat it keeps its taste, and spits least.',
  'flavour.add.shout': 'FLAVOUR IN\nFACE AWAY',

  // Pour.
  'pour.pause.say': 'Read this aloud before pouring. All true? Answer yes.',
  'pour.pause.why': 'Pause before pouring: at the take-off there is no time for a list.',
  'pour.pause.shout': 'READ ALOUD\nBEFORE POUR',
  'pour.pause.path': 'Path from stove to slab clear and dry.',
  'pour.pause.slab': (v: { surface: Fat }) => `Trivet down, slab ${greased[v.surface]} and level.`,
  'pour.pause.trivet': 'Dry mitts on whoever pours; handle turned inward until then.',
  'pour.pause.who': 'Who pours? One adult, named.',
  'pour.pause.back': 'Who stands back, and behind which line? Children first.',
  'pour.pause.flavour': (v: { items: readonly string[] }, p: Printer) =>
    v.items.length === 0
      ? 'Nothing to add: straight to the slab.'
      : `Measured and at the trivet: ${p.list(v.items.map(shown))}.`,
  'pour.path.say': 'Path clear, slab ready? Answer yes.',
  'pour.path.why': 'A bump with a full pot burns two people.',
  'pour.path.shout': 'PATH CLEAR?\nSLAB READY?',
  'pour.pour.say': (v: { scrape: boolean; surface: Fat }) =>
    `Pour low and close to the slab, away from you. ${v.scrape ? 'Let it run out.' : 'Do not scrape the pot.'}`,
  'pour.pour.why': (v: { scrape: boolean; surface: Fat }) =>
    v.scrape ? 'From high up it splashes.' : 'From high up it splashes; scrapings seed crystals.',
  'pour.pour.shout': 'POUR LOW\nAWAY FROM YOU',

  // Cool and fold.
  'fold.wait.say': 'Leave it two to three minutes. Emptied pot onto the trivet.',
  'fold.wait.why': 'The edges stiffen first; moved too early it grains.',
  'fold.wait.shout': 'LEAVE IT\n2-3 MINUTES',
  'fold.next.pot': 'hot tap water for the emptied pot, once it has stood two to three minutes',
  'fold.turn.say': 'With the scraper, fold the edges to the middle. Tools only.',
  'fold.turn.why': 'So it cools evenly. Edges left lying turn to hard lumps.',
  'fold.turn.shout': 'FOLD EDGES IN\nTOOLS ONLY',
  'fold.pot.say': 'Hot tap water into the emptied pot, down the wall, face away. Never cold.',
  'fold.pot.why': 'Hot water dissolves everything left; cold water bursts into steam.',
  'fold.pot.shout': 'HOT WATER\nIN THE POT',
  'fold.again.say': 'Fold again two or three times as the edges stiffen, each time onto a cool spot.',
  'fold.again.why': 'Two or three folds are enough; more of them grain it.',
  'fold.again.shout': 'FOLD AGAIN\nTOOLS ONLY',
  'fold.add.say': 'Sprinkle this on and fold it in with the scraper.',
  'fold.add.why': 'Acid in the boil would have softened the candy.',
  'fold.add.shout': 'FOLD THIS IN\nTOOLS ONLY',
  'hands.measure.say': (v: MiddleValues, p: Printer) => {
    if (v.middleCelsius === null)
      return `Measure the middle of the mass and type it: middle ${p.thermometerUnit === 'F' ? '115f' : '46c'}.`;
    return v.againSeconds === null
      ? `Middle ${p.degrees(v.middleCelsius)}: still too hot. Fold with tools, measure again in a few minutes.`
      : `Middle ${p.degrees(v.middleCelsius)}: still too hot. Tools only; measure again ${v.againSeconds < 8 ? 'now' : `in ${p.time(v.againSeconds)}`}.`;
  },
  'hands.measure.why': (v: MiddleValues, p: Printer) =>
    `A cool skin hides a hot middle. Not before ${p.degrees(v.limitCelsius)} for ${whoseHands[v.hands]}.`,
  'hands.measure.shout': 'MEASURE THE\nMIDDLE',
  'hands.layer.say': 'Is it everywhere no thicker than 1 cm, a finger lying flat? yes or no.',
  'hands.layer.why': 'Without a thermometer only time tells: 20 minutes for 1 cm, 45 for more.',
  'hands.layer.shout': 'HOW THICK\nIS IT?',
  'hands.crumb.say': (v: { waitSeconds: number }, p: Printer) =>
    v.waitSeconds > 0
      ? `No hands for another ${p.time(v.waitSeconds)}. Fold with tools.`
      : 'Cut the thickest place open. An adult touches a crumb from the middle: comfortable? yes or no.',
  'hands.crumb.why': (_v: { waitSeconds: number }) => 'A cool skin hides a hot middle.',
  'hands.crumb.shout': 'NO HANDS YET',
  'hands.pause.say': (_v: { hands: Whose; limitCelsius: number }) =>
    'Read this aloud before any hand touches it. All true? Answer yes.',
  'hands.pause.why': (v: { hands: Whose; limitCelsius: number }, p: Printer) =>
    `Pause before hands: limit ${p.degrees(v.limitCelsius)} for ${whoseHands[v.hands]}.`,
  'hands.pause.shout': 'READ ALOUD\nBEFORE HANDS',
  'hands.pause.middle': (v: { celsius: number; limitCelsius: number }, p: Printer) =>
    `Middle measured: ${p.degrees(v.celsius)}, limit ${p.degrees(v.limitCelsius)}.`,
  'hands.pause.crumb': 'Thickest place cut open, a crumb from the middle touched by an adult.',
  'hands.pause.rings': 'Rings and watch off, hands washed.',
  'hands.pause.prepared': (v: { hands: Fat; whose: Whose }) =>
    v.whose === 'gloved'
      ? 'Cotton under nitrile gloves on everyone who pulls.'
      : `${prepare[v.hands]}. That keeps it from sticking; it is no protection from heat.`,
  'hands.pause.bowl': 'Bowl of cool water beside the work, not the test cup.',
  'hands.pause.scissors': 'Scissors out of reach until cutting.',
  'hands.pause.children': 'Children get a small piece from an adult, never the mass.',
  'hands.pause.eat':
    'Each eats only what they pulled; dropped is waste; candy for others: gloves or adults’ hands.',

  // Pull.
  'pull.grease.say': (v: { hands: Fat; whose: Whose; portions: number }) =>
    v.whose === 'gloved'
      ? 'Take a piece the size of an egg in your gloved fingertips.'
      : `${prepare[v.hands]}, take a piece the size of an egg.`,
  'pull.grease.why': (v: { hands: Fat; whose: Whose; portions: number }) =>
    v.portions > 1
      ? 'One portion at a time; keep the others warm and covered.'
      : 'Small pieces cool and whiten evenly. Too hot to hold: put it down.',
  'pull.grease.shout': 'TAKE A PIECE',
  'pull.add.say': 'Put this on the mass and pull it in.',
  'pull.add.why': 'Flavour pulled in late does not boil off.',
  'pull.add.shout': 'ADD, THEN\nPULL IN',
  'pull.stretch.say': (v: { still: boolean; portions: number }) =>
    v.still
      ? 'Pull on: it still droops. Long and light, fold, again.'
      : 'Pull long with fingertips, fold double, pull again.',
  'pull.stretch.why': (_v: { still: boolean; portions: number }) =>
    'Air makes it light and short. Squeezing in the palm drives the air out.',
  'pull.stretch.shout': 'PULL, FOLD\nPULL AGAIN',
  'pull.next.cut': 'what is pulled is cut now, by somebody else: it hardens fast',
  'pull.watch.grease': 'sticking: a little more on the fingers, never much',
  'pull.droop.say': 'Hold a rope out from one hand. Keeps its shape: done. Droops: pull on.',
  'pull.droop.why': 'What droops now runs flat in its paper.',
  'pull.droop.shout': 'DOES IT\nDROOP?',
  'pull.stiff.say': 'Pull once more. Light, satin and too tough to pull on: done.',
  'pull.stiff.why': 'Stopping early gives sticky candy; going on breaks it.',
  'pull.stiff.shout': 'STIFF?\nTHEN DONE',
  'pull.softer.say': 'Arms are out: stop here. Softer candy, not a failure.',
  'pull.softer.why': 'It still droops a little: cut it small, wrap it at once.',
  'pull.softer.shout': 'STOP HERE\nSOFT IS FINE',

  // Cut, wrap.
  'cut.rope.say': (v: { ropeMillimetres: number; ropeMetres: number }, p: Printer) =>
    `Roll ropes ${p.millimetres(v.ropeMillimetres)} thick, about ${p.metres(v.ropeMetres)} in all.`,
  'cut.rope.why': (_v: { ropeMillimetres: number; ropeMetres: number }) =>
    'Even ropes make even pieces. Keep the rest warm: it hardens quickly.',
  'cut.rope.shout': 'ROLL ROPES',
  'cut.cut.say': (v: { cutMillimetres: number; pieces: number }, p: Printer) =>
    `Cut every ${p.millimetres(v.cutMillimetres)}: about ${p.count(v.pieces, 'piece', 'pieces')}. The rope moves, the hand stays.`,
  'cut.cut.why': (_v: { cutMillimetres: number; pieces: number }) =>
    'It starts soft and hardens fast: all cut before it is brittle.',
  'cut.cut.shout': 'CUT\nADULTS ONLY',
  'wrap.rest.say': (v: { dust: string }) =>
    v.dust === 'none'
      ? 'Let the pieces rest apart, 10 to 30 minutes.'
      : `Dust the pieces with ${v.dust === 'starch' ? 'starch' : 'powdered sugar'}, rest them apart, 10 to 30 minutes.`,
  'wrap.rest.why': (_v: { dust: string }) => 'Wrapped warm they sweat and stick.',
  'wrap.rest.shout': 'LET IT REST\n10-30 MIN',
  'wrap.wrap.say': (v: WrapValues, p: Printer) =>
    `${v.damp ? 'Wrap at once: the air is damp.' : 'Wrap each piece and twist the ends.'} ${p.count(v.squares, 'square', 'squares')} for about ${p.count(v.pieces, 'piece', 'pieces')}.`,
  'wrap.wrap.why': (v: WrapValues) =>
    v.damp
      ? 'Bare candy drinks water from damp air and turns sticky.'
      : 'Unwrapped it drinks water from the air and sticks.',
  'wrap.wrap.shout': 'WRAP EACH ONE',
  'wrap.weigh.say': 'Weigh and count, if you like: weigh 512g, count 63. Then: done.',
  'wrap.weigh.why': 'What the batch gave teaches the next plan.',
  'wrap.weigh.shout': 'WEIGH, COUNT',
  'wrap.serve.say': (v: Allergens, p: Printer) =>
    `Before anyone eats, say aloud: ${allergenLine(v, p)}; it is sticky.`,
  'wrap.serve.why': (_v: Allergens) => 'Everyone goes home with a piece and nobody with harm.',
  'wrap.serve.shout': 'SAY ALLERGENS\nTHEN SHARE',

  // Clean up.
  'clean.heat-off.say': 'Turn the heat off, and type: heat off.',
  'clean.heat-off.why': 'Nothing is cooked any more.',
  'clean.heat-off.shout': 'HEAT OFF',
  'clean.cool.say': (v: CoolValues, p: Printer) => {
    if (v.waitSeconds <= 0) return 'Is the outside of the pot barely warm all round? yes or no.';
    return v.thermometer
      ? `Leave the full pot alone, no water in. Type a reading: below ${p.degrees(v.belowCelsius)} you may go on. Unread: ${p.time(v.waitSeconds)}.`
      : `Leave the full pot alone, no water in, for another ${p.time(v.waitSeconds)}.`;
  },
  'clean.cool.why': (_v: CoolValues) => 'Water into hot syrup bursts into steam.',
  'clean.cool.shout': 'LEAVE IT\nTO COOL',
  'clean.pot.say': (v: { full: boolean }) =>
    v.full
      ? 'Fill up with hot water, warm it gently and let it dissolve. Then pour it away.'
      : 'Fill the pot with hot water, bring it to the boil, let it soak.',
  'clean.pot.why': (_v: { full: boolean }) =>
    'Hot water dissolves everything; chipping ruins the pot and flies.',
  'clean.pot.shout': 'SOAK THE POT\nHOT WATER',
  'clean.tools.say': 'Scraper, scissors, slab and floor: hot water, wiped dry.',
  'clean.tools.why': 'Sugar on the floor is slippery, then sticky.',
  'clean.tools.shout': 'CLEAN TOOLS\nAND FLOOR',
  'clean.hob.say': 'Ring off and cold? Wipe the hob.',
  'clean.hob.why': (v: { stove: string }) =>
    v.stove === 'glass-ceramic'
      ? 'The glass stays hot for a long time; sugar that cools on it can pit it.'
      : 'The ring burns for minutes after it is off.',
  'clean.hob.shout': 'HOB OFF AND\nCOLD?',
  'over.end.say': (v: { stopped: boolean; counted: number | null; pieces: number }, p: Printer) =>
    v.stopped
      ? 'The batch was given up. Pot, ring and tools are done.'
      : `Done: ${p.count(v.counted ?? v.pieces, 'piece', 'pieces')}. Well cooked.`,
  'over.end.why': (v: { stopped: boolean; counted: number | null; pieces: number }) =>
    v.stopped
      ? 'The journal keeps what happened, for next time.'
      : 'Keep it dry, cool and closed: two to three weeks.',
  'over.end.shout': 'ALL DONE',

  // Troubles and questions beside the steps.
  'trouble.why': (v: { name: TroubleName }) => {
    const does = hazardTexts[`hazard.${v.name}.does`];
    const cause = hazardTexts[`hazard.${v.name}.cause`];
    return does === '' ? `${cause}.` : `${cause}: ${does}.`;
  },
  'trouble.more.shout': 'DO THIS NEXT',
  'trouble.glass.ask': 'Is there any glass in or near the pot? yes or no.',
  'gap.look.say': (v: { thermometer: boolean; read: boolean }) =>
    v.thermometer && !v.read
      ? 'Look at the pot, then read the thermometer. Only then go on.'
      : 'Look at the pot and say where it is. Only then go on.',
  'gap.look.why': (v: { seconds: number; sure: boolean; on: boolean }, p: Printer) => {
    const unheard = 'in which nothing could be heard here';
    const byTheWall =
      v.seconds < 60
        ? `no clock can tell how long the time was ${unheard}`
        : `by the wall clock, ${p.time(v.seconds)} passed ${unheard}`;
    const passed = v.sure ? `${p.time(v.seconds)} passed ${unheard}` : byTheWall;
    return v.on
      ? `${sentence(passed)} It may have boiled on all the time. Dark or smoking: ring off, lid on, leave it alone.`
      : `${sentence(passed)} Syrup that has set in the pot: water 60ml, and back to the boil.`;
  },
  'gap.look.shout': 'LOOK AT\nTHE POT',
  'gap.ask':
    'What is true now? pot on (the ring), pot off, at fold (it was poured), or stop (it is given up).',
  'unsettled.ask': (v: { what: string }) =>
    ({
      heat: 'That was taken back. What is the heat at now?',
      pot: 'That was taken back. Is the pot on the ring or off it now?',
      lid: 'That was taken back. Is the lid on or off now?',
      pour: 'That was taken back. Where is the syrup now: in the pot, or on the slab?',
    })[v.what] ?? 'That was taken back. What is true now?',
  'reading.doubt.ask': (
    v: {
      of: 'syrup' | 'middle';
      celsius: number;
      because: string;
      otherScaleCelsius: number | null;
      lastCelsius: number | null;
    },
    p: Printer,
  ) => {
    const read = v.of === 'middle' ? `Middle ${p.degrees(v.celsius)}` : p.dial(v.celsius);
    const last = v.lastCelsius === null ? '' : `, after ${p.dialNumber(v.lastCelsius)}`;
    const other = p.thermometerUnit === 'F' ? 'c' : 'f';
    const reasons: Readonly<Record<string, string>> = {
      'out of range': `${read} is not what syrup or candy can have.`,
      jump: `${read}${last}: faster than a hob can heat.`,
      fall: `${read}${last}: faster than a pot can cool on the ring.`,
      'too cold to boil': `${read} is too cold for a boiling syrup.`,
      'too hot so soon': `${read} at the first reading is hotter than it should be by now.`,
      'colder than the room': `${read} is colder than the room.`,
      'other scale': `${read}${last}? Read on the other scale it would fit: type it again with "${other}" behind it.`,
    };
    return `${reasons[v.because] ?? read} Is it right? yes, or no and read again.`;
  },

  'reading.means': (
    v: {
      celsius: number;
      stage: string | null;
      toGoKelvin: number;
      kelvinPerSecond: number | null;
      seconds: { low: number; typical: number; high: number } | null;
      nextSeconds: number | null;
      pastKelvin: number;
    },
    p: Printer,
  ) => {
    const stage =
      v.stage === null ? 'not boiling yet' : v.stage === 'dissolves' ? 'boiling, thin syrup' : v.stage;
    const togo =
      v.pastKelvin > 0
        ? `${p.rise(v.pastKelvin)} past the window`
        : v.toGoKelvin > 0
          ? `${p.rise(v.toGoKelvin)} to go`
          : 'at the take-off';
    const rate =
      v.kelvinPerSecond !== null && v.kelvinPerSecond > 0.002 ? [`rising ${p.rate(v.kelvinPerSecond)}`] : [];
    const left = v.seconds !== null && v.seconds.typical > 0 ? [`${p.about(v.seconds)} to target`] : [];
    const next = v.nextSeconds === null ? [] : [readAgain(v.nextSeconds, p)];
    return `${p.dial(v.celsius)}: ${[stage, togo, ...rate, ...left, ...next].join(', ')}.`;
  },

  // Timers.
  'timer.dissolving': 'dissolving',
  'timer.lid': 'lid comes off',
  'timer.test-due': 'next cold-water test',
  'timer.off-the-ring': 'off the ring',
  'timer.first-fold': 'first fold',
  'timer.emptied-pot': 'water into the pot, not before',
  'timer.next-fold': 'next fold',
  'timer.cooling': 'cooling since the pour',
  'timer.not-before': 'hands not before',
  'timer.droop-test': 'droop test',
  'timer.regrease': 're-grease fingers',
  'timer.rest': 'rest before wrapping',
  'timer.full-pot': 'leave the full pot',
  'timer.trouble.burn': 'cool running water',
} as const;

type TestedShort = { outcome: string; feels: string; nextCelsius: number | null; seconds: number };
type StillValues = {
  late: boolean;
  thermometer: boolean;
  nextSeconds: number | null;
  takeOffCelsius: number;
  feels: string;
  testSeconds: number;
};
type MiddleValues = {
  limitCelsius: number;
  middleCelsius: number | null;
  againSeconds: number | null;
  hands: Whose;
};
type CoolValues = { belowCelsius: number; waitSeconds: number; thermometer: boolean };
type WrapValues = { pieces: number; squares: number; damp: boolean; dust: string };
