import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';

type Span = readonly [low: number, high: number];

/** A share rounded down, so that what is said fits: "0.9". */
const downTo = (share: number): string => String(Math.floor(share * 100) / 100);
export const kilopascals = (pascal: number): string => `${(pascal / 1000).toFixed(1)} kPa`;

/** What is odd about a batch, and what to do. */
export const batchNoteTexts = {
  'plan.note.air': ({ pressurePascal, usedPascal }: { pressurePascal: number; usedPascal: number }) =>
    `An air pressure of ${kilopascals(pressurePascal)} is outside what is known of boiling syrup; ${kilopascals(usedPascal)} is used. Trust what fingers feel in cold water.`,
  'plan.note.pot': (
    {
      neededLitres,
      haveLitres,
      batches,
      eachGrams,
      mostShare,
    }: { neededLitres: number; haveLitres: number; batches: number; eachGrams: number; mostShare: number },
    printer: Printer,
  ) =>
    `This would foam over: it needs a pot of ${printer.litres(neededLitres)}, four times its volume, and yours holds ${printer.litres(haveLitres)}. Cook ${downTo(mostShare)} of it, or ${batches} batches of ${printer.grams(eachGrams)} each, or take a larger pot.`,
  'plan.note.beyond-curve':
    'The target lies beyond what is known of this syrup. The nearest known temperature is used; trust what fingers feel in cold water.',
  'plan.note.dry': (
    { startsCelsius, floorCelsius }: { startsCelsius: number; floorCelsius: number },
    printer: Printer,
  ) =>
    `There is so little water in this that it would boil at ${printer.dial(startsCelsius)}, above the floor of its target (${printer.dial(floorCelsius)}), and burn before the sugar dissolves. Add water: the boil drives it off again.`,
  'plan.note.stem': (
    { depthMillimetres, stemMillimetres }: { depthMillimetres: number; stemMillimetres: number },
    printer: Printer,
  ) =>
    `At the end the syrup stands ${printer.millimetres(depthMillimetres)} deep, and the thermometer wants ${printer.millimetres(stemMillimetres)}: it would read low. Tilt the pot for each reading so that the syrup gathers around it, or use a narrower pot.`,
  'plan.note.grain': (
    { risk, syrupGrams }: { risk: 'some' | 'high'; syrupGrams: number },
    printer: Printer,
  ) =>
    `${risk === 'high' ? 'This will most likely grain' : 'This may grain'}. ${printer.grams(syrupGrams)} more glucose or corn syrup would take that risk away.`,
  'plan.note.runny':
    'Cooked to this target it stays too soft to hold a shape. Raise the target, or take less syrup.',
  'plan.note.glassy':
    'Cooked to this target it sets like glass and cracks instead of chewing. Lower the target if chewing is wanted.',
  'plan.note.damp': ({ humidity }: { humidity: number }, printer: Printer) =>
    `The room is damp (${printer.percent(humidity)}): take-off is set for the upper part of the window, because candy takes up water as soon as it cools.`,
  'plan.note.frost': ({ celsius, known }: { celsius: number; known: boolean }, printer: Printer) =>
    `The room is below freezing (${printer.degrees(celsius)})${known ? ': what its air does to the candy is reckoned for 0 °C' : ''}. Keep ingredients, test water and the bowl for hands indoors until they are needed; on a cold slab the candy sets sooner, so warm the slab.`,
  'plan.note.sticky': ({ seconds, humidity }: { seconds: Span; humidity: number }, printer: Printer) =>
    `In this air (${printer.percent(humidity)}) an unwrapped piece goes sticky after ${printer.time(seconds[0])} to ${printer.time(seconds[1])}, roughly. Wrap soon, and close the box.`,
  'plan.note.pair': ({ grams, mostGrams }: { grams: number; mostGrams: number }, printer: Printer) =>
    `${printer.grams(grams)} is too much for one pair of pullers, who manage about ${printer.grams(mostGrams)} before it sets. Have more hands ready, or keep part of it warm.`,
  'plan.note.small': ({ solidsGrams }: { solidsGrams: number }, printer: Printer) =>
    `So little syrup (${printer.grams(solidsGrams)} of sugars) rises fast and is over the target within moments. Use low heat and a small pot, or make more.`,
  'plan.note.cut': (
    {
      cutMillimetres,
      grams,
      ropeMillimetres,
    }: { cutMillimetres: number; grams: number; ropeMillimetres: number },
    printer: Printer,
  ) =>
    `A piece of ${printer.grams(grams)} from a rope of ${printer.millimetres(ropeMillimetres)} would be ${printer.millimetres(cutMillimetres)} long. Change one of the two under "piece".`,
} as const;

/** Why there is no plan. */
export const planProblemTexts = {
  'plan.bad.nothing-boils': 'Nothing in the pot dissolves: sugar or syrup has to go in at phase mix or boil.',
  'plan.bad.air': ({
    pressurePascal,
    lowPascal,
    highPascal,
  }: {
    pressurePascal: number;
    lowPascal: number;
    highPascal: number;
  }) =>
    `An air pressure of ${kilopascals(pressurePascal)} is outside what is known of boiling syrup, ${kilopascals(lowPascal)} to ${kilopascals(highPascal)} (about 5,500 m above the sea to 700 m below). Check altitude, pressure and the reading in boiling water.`,
  'plan.bad.altitude': (
    { found, low, high }: { found: string; low: number; high: number },
    printer: Printer,
  ) =>
    `"${escapeForTerminal(found)}" is no altitude for a kitchen: ${printer.metres(low)} to ${printer.metres(high)} can be planned. Type for example --altitude 1450m or --altitude 4750ft.`,
  'plan.bad.pressure': ({
    found,
    lowPascal,
    highPascal,
  }: {
    found: string;
    lowPascal: number;
    highPascal: number;
  }) =>
    `"${escapeForTerminal(found)}" is no air pressure on a kitchen's barometer: ${kilopascals(lowPascal)} to ${kilopascals(highPascal)} can be planned. Type for example --pressure 850hPa, as measured and not reduced to sea level.`,
  'plan.bad.count': ({
    option,
    found,
    whole,
    most,
  }: {
    option: string;
    found: string;
    whole: boolean;
    most: number;
  }) =>
    `--${option} needs a ${whole ? 'whole number' : 'number'} above 0 and up to ${most}, and "${escapeForTerminal(found)}" is none. Type for example --${option} ${whole ? '24' : '1.5'}.`,
  'plan.bad.children': ({ guests, children }: { guests: number; children: number }, printer: Printer) =>
    `${printer.count(children, 'child', 'children')} among ${printer.count(guests, 'guest', 'guests')} can't be: children are counted among the guests. Type for example --guests 24 --children 10.`,
  'plan.bad.children-alone':
    '--children says how many of the guests are children, so it needs --guests. Type for example --guests 24 --children 10.',
  'plan.bad.several': ({ options }: { options: readonly string[] }, printer: Printer) =>
    `${printer.list(options.map((option) => `--${option}`))} each say how much to make. Keep one of them.`,
  'plan.bad.weights': ({ found }: { found: string }) =>
    `"${escapeForTerminal(found)}" is nothing to weigh in. Type --weights grams or --weights ounces.`,
  'plan.bad.pot': ({ found, low, high }: { found: string; low: number; high: number }, printer: Printer) =>
    `"${escapeForTerminal(found)}" is no size for a kitchen pot: ${printer.litres(low)} to ${printer.litres(high)} can be planned. Type for example --pot 3l.`,
  'plan.bad.pot-too-small': (
    {
      neededLitres,
      haveLitres,
      batches,
      eachGrams,
      mostPieces,
    }: { neededLitres: number; haveLitres: number; batches: number; eachGrams: number; mostPieces: number },
    printer: Printer,
  ) =>
    `This would foam over: it needs a pot of ${printer.litres(neededLitres)}, four times its volume, and yours holds ${printer.litres(haveLitres)}. Up to ${printer.count(mostPieces, 'piece', 'pieces')} at a time fit (--pieces ${mostPieces}): cook ${batches} batches of ${printer.grams(eachGrams)} each, or take a larger pot.`,
  'plan.bad.size': ({ grams, low, high }: { grams: number; low: number; high: number }, printer: Printer) =>
    `That would be a batch of ${printer.grams(grams)}; ${printer.grams(low)} to ${printer.grams(high)} can be planned. Ask for ${grams > high ? 'less' : 'more'}.`,
} as const;
