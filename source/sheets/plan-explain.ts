import { altitudeRules } from '../batch/altitude-rules.js';
import type { Batch, Pair } from '../batch/batch.js';
import { usualRoomCelsius } from '../batch/candy.js';
import { effectOf } from '../batch/effect.js';
import { potTimesVolume } from '../batch/pot.js';
import { boxShare, pulledGramsPerCubicCentimetre } from '../batch/yield.js';
import { enoughDoctor, supersaturation, tooLittleDoctor } from '../sugar/solubility.js';
import { withWater } from '../sugar/syrup.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { sheetColumns, wrapped } from './layout.js';

/** Columns before the text of a part ("  formula   "). */
const partColumn = 12;

const ofPlace = (batch: Batch): readonly Message[] => {
  const { air, syrup, boil, target, dial } = batch;
  return [
    message('plan.explain.air', {
      from: air.from,
      altitudeMetres: air.altitudeMetres,
      pressurePascal: air.pressurePascal,
    }),
    message('plan.explain.water', { pressurePascal: air.pressurePascal, boils: air.waterBoilsCelsius }),
    message('plan.explain.curve', {
      sucroseGrams: syrup.sucroseGrams,
      glucose: syrup.glucoseSolids,
      invertGrams: syrup.invertGrams,
      saltGrams: syrup.saltGrams,
      waterGrams: syrup.waterGrams,
      starts: boil.startsCelsius,
      solids: boil.solidsFractionAtTarget,
    }),
    message('plan.explain.target', {
      seaLevel: target.seaLevelCelsius,
      today: target.todayCelsius,
      ...altitudeRules(batch),
    }),
    message('plan.explain.dial', {
      id: dial.id,
      basis: dial.basis,
      present: dial.present,
      aim: target.aimCelsius,
      shown: dial.toShownCelsius(target.aimCelsius),
      sd: dial.sdKelvin,
    }),
    message('plan.explain.takeoff', {
      today: target.todayCelsius,
      aim: target.aimCelsius,
      carryOver: target.carryOverKelvin,
      takeOff: target.takeOffCelsius,
      stove: batch.kitchen.stove,
      damp: batch.room?.damp ?? false,
    }),
  ];
};

const ofMass = (batch: Batch): readonly Message[] => {
  const { boil, candy, recipe, pot, yield: yields } = batch;
  const waterLeft: Pair = [
    batch.waterGrams - boil.waterToBoilAwayGrams[1],
    batch.waterGrams - boil.waterToBoilAwayGrams[0],
  ];
  return [
    message('plan.explain.mass', {
      totalGrams: batch.totalGrams,
      waterGrams: batch.waterGrams,
      waterLeft,
      laterGrams: batch.laterGrams,
      cookedGrams: yields.cookedGrams,
      moisture: candy.moistureFraction,
    }),
    message('plan.explain.yield', {
      cookedGrams: yields.cookedGrams,
      shares: boxShare,
      pieces: yields.pieces,
    }),
    message('plan.explain.rope', {
      expectedGrams: yields.expectedGrams.typical,
      pieceGrams: recipe.piece.grams,
      ropeMillimetres: recipe.piece.ropeMillimetres,
      metres: yields.ropeMetres,
      cut: yields.cutMillimetres,
      density: pulledGramsPerCubicCentimetre,
    }),
    message('plan.explain.pot', {
      litres: pot.neededLitres / potTimesVolume,
      needed: pot.neededLitres,
      depth: pot.depthMillimetres,
    }),
  ];
};

const ofCandy = (batch: Batch): readonly Message[] => {
  const { candy, syrup, curve, kitchen, target, room } = batch;
  const roomCelsius = kitchen.room.celsius ?? usualRoomCelsius;
  const finished = withWater(syrup, curve.waterGramsAt(target.aimCelsius));
  const doctor = syrup.glucoseSolids.reduce((sum, { grams }) => sum + grams, 0) + syrup.invertGrams;
  return [
    message('plan.explain.glass', {
      moisture: candy.moistureFraction,
      glass: candy.glassTransitionCelsius,
      pulls: candy.pullsCelsius,
      room: roomCelsius,
      effects: [-2, 2].map((kelvin) => {
        const {
          glassTransitionCelsius: glass,
          moistureFraction: moisture,
          firmness,
        } = effectOf(batch, kelvin);
        return { kelvin, glass, moisture, firmness };
      }),
    }),
    message('plan.explain.grain', {
      sucroseGrams: syrup.sucroseGrams,
      doctorGrams: doctor,
      inverted: candy.invertedFraction,
      ratio: candy.doctorRatio,
      // The table of solubility begins at 0 °C, and a frosty room does not change what is said.
      supersaturation: syrup.sucroseGrams > 0 ? supersaturation(finished, Math.max(0, roomCelsius)) : null,
      missingGrams: candy.doctorMissingGrams,
      enough: enoughDoctor,
      tooLittle: tooLittleDoctor,
    }),
    message('plan.explain.humidity', {
      humidity: candy.equilibriumRelativeHumidity,
      room: room?.humidity ?? null,
      sticky: room?.stickySeconds ?? null,
    }),
    message('plan.explain.never'),
  ];
};

/** Formula, inputs, result, source and uncertainty of every number of a plan; lines of at most 78 columns. */
export const planExplain = (batch: Batch, printer: Printer): string =>
  [message('plan.explain.head'), ...ofPlace(batch), ...ofMass(batch), ...ofCandy(batch)]
    .map((said) =>
      words(said, printer)
        .split('\n')
        .flatMap((line) => wrapped(line, sheetColumns, line.startsWith('  ') ? partColumn : 0))
        .join('\n'),
    )
    .join('\n\n')
    .concat('\n');
