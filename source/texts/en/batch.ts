import type { Printer } from '../../units/printer.js';

type Span = readonly [low: number, high: number];

/** What is odd about a batch, and what to do. */
export const batchNoteTexts = {
  'plan.note.pot': (
    { neededLitres, haveLitres, batches, factor }: { neededLitres: number; haveLitres: number; batches: number; factor: number },
    printer: Printer,
  ) =>
    `This would foam over: it needs a pot of ${printer.litres(neededLitres)}, four times its volume, and yours holds ${printer.litres(haveLitres)}. Cook it in ${batches} equal batches (each ${printer.percent(factor)} of this), or take a larger pot.`,
  'plan.note.beyond-curve':
    'The target lies beyond what is known of this syrup. The nearest known temperature is used; trust what fingers feel in cold water.',
  'plan.note.dry': ({ startsCelsius, floorCelsius }: { startsCelsius: number; floorCelsius: number }, printer: Printer) =>
    `There is so little water in this that it would boil at ${printer.dial(startsCelsius)}, above the floor of its target (${printer.dial(floorCelsius)}), and burn before the sugar dissolves. Add water: the boil drives it off again.`,
  'plan.note.no-thermometer': ({ feels }: { feels: string }) =>
    `There is no thermometer: test in cold water often, and stop when it feels like ${feels}.`,
  'plan.note.stem': (
    { depthMillimetres, stemMillimetres }: { depthMillimetres: number; stemMillimetres: number },
    printer: Printer,
  ) =>
    `At the end the syrup stands ${printer.millimetres(depthMillimetres)} deep, and the thermometer wants ${printer.millimetres(stemMillimetres)}: it would read low. Tilt the pot for each reading so that the syrup gathers around it, or use a narrower pot.`,
  'plan.note.grain': ({ risk, syrupGrams }: { risk: 'some' | 'high'; syrupGrams: number }, printer: Printer) =>
    `${risk === 'high' ? 'This will most likely grain' : 'This may grain'}. ${printer.grams(syrupGrams)} more glucose or corn syrup would take that risk away.`,
  'plan.note.runny':
    'Cooked to this target it stays too soft to hold a shape. Raise the target, or take less syrup.',
  'plan.note.glassy':
    'Cooked to this target it sets like glass and cracks instead of chewing. Lower the target if chewing is wanted.',
  'plan.note.damp': ({ humidity }: { humidity: number }, printer: Printer) =>
    `The room is damp (${printer.percent(humidity)}): take-off is set for the upper part of the window, because candy takes up water as soon as it cools.`,
  'plan.note.sticky': ({ seconds, humidity }: { seconds: Span; humidity: number }, printer: Printer) =>
    `In this air (${printer.percent(humidity)}) an unwrapped piece goes sticky after ${printer.time(seconds[0])} to ${printer.time(seconds[1])}, roughly. Wrap soon, and close the box.`,
  'plan.note.pair': ({ grams, mostGrams }: { grams: number; mostGrams: number }, printer: Printer) =>
    `${printer.grams(grams)} is too much for one pair of pullers, who manage about ${printer.grams(mostGrams)} before it sets. Have more hands ready, or keep part of it warm.`,
  'plan.note.small': ({ solidsGrams }: { solidsGrams: number }, printer: Printer) =>
    `So little syrup (${printer.grams(solidsGrams)} of sugars) rises fast and is over the target within moments. Use low heat and a small pot, or make more.`,
  'plan.note.cut': (
    { cutMillimetres, grams, ropeMillimetres }: { cutMillimetres: number; grams: number; ropeMillimetres: number },
    printer: Printer,
  ) =>
    `A piece of ${printer.grams(grams)} from a rope of ${printer.millimetres(ropeMillimetres)} would be ${printer.millimetres(cutMillimetres)} long. Change one of the two under "piece".`,
} as const;
