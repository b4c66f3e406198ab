import type { Checks } from '../kitchen/air.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { stoveTraits } from '../kitchen/stove.js';
import { recipeNotes } from '../recipe/notes.js';
import type { Recipe } from '../recipe/recipe.js';
import { syrupLitres } from '../sugar/density.js';
import { type Stage, stageFromSeaLevelCelsius, stages } from '../sugar/stages.js';
import {
  type BoilingCurve,
  boilingCurve,
  dissolvedGrams,
  type Syrup,
  solidsFraction,
  totalGrams,
} from '../sugar/syrup.js';
import { invertedInBoil } from './acid.js';
import type { Batch } from './batch.js';
import { candyOf, usualRoomCelsius } from './candy.js';
import { ascending, cookedAt } from './composition.js';
import { hereToday } from './here.js';
import { roomAirFor } from './humidity.js';
import { notesOf } from './notes.js';
import { potFor } from './pot.js';
import { laterOf, syrupOf } from './syrup-of.js';
import { targetToday } from './target.js';
import { boxShareOf, yieldOf } from './yield.js';

/** What is known of today beyond the recipe and the kitchen file. */
export type BatchOptions = {
  /** Today's readings in ice and in boiling water, Celsius as the thermometer showed them; they replace the file's. */
  readonly checks?: Checks;
  /** False: there is no thermometer today, whatever the kitchen file says. */
  readonly thermometer?: boolean;
  /** How many people pull; without it, as many as the batch needs. */
  readonly pullers?: number;
  /** Carry-over to plan with, kelvin; replaces what the kitchen has learned and the stove's usual value. */
  readonly carryOverKelvin?: number;
};

const stagesToday = (curve: BoilingCurve): Readonly<Record<Stage, number>> =>
  Object.fromEntries(
    stages.map((stage) => {
      const seaLevel = stageFromSeaLevelCelsius[stage];
      return [stage, Number.isFinite(seaLevel) ? curve.fromSeaLevel(seaLevel) : seaLevel];
    }),
  ) as Record<Stage, number>;

/** Where it begins to boil; a mix drier than the curve knows begins at its end. */
const startsAt = (syrup: Syrup, curve: BoilingCurve): number => {
  const fraction = solidsFraction(syrup) ?? 0;
  return curve.celsiusAt(Math.min(fraction, curve.validSolidsFraction[1]));
};

/**
 * This recipe, in this kitchen, today. Pure, and total for what `refusalOf` lets through. What is odd is said in
 * `notes`. Grams, Celsius (true, at today's pressure), fractions 0 to 1.
 */
export const batchOf = (recipe: Recipe, kitchen: Kitchen, options: BatchOptions = {}): Batch => {
  const { air, dial, notes: hereNotes } = hereToday(kitchen, options.checks, options.thermometer);
  const syrup = syrupOf(recipe);
  const later = laterOf(recipe);
  const curve = boilingCurve(syrup, air.pressurePascal);
  const carryOverKelvin =
    options.carryOverKelvin ??
    kitchen.learned?.carryOverKelvin?.value ??
    stoveTraits[kitchen.stove].carryOverKelvin;
  const window = targetToday(recipe.target.celsius, curve, carryOverKelvin, kitchen.room.humidity);

  const atFloor = cookedAt(syrup, later, curve, window.todayCelsius[0]);
  const atAim = cookedAt(syrup, later, curve, window.aimCelsius);
  const atCeiling = cookedAt(syrup, later, curve, window.todayCelsius[1]);
  const startsCelsius = startsAt(syrup, curve);
  const roomCelsius = kitchen.room.celsius ?? usualRoomCelsius;
  const candy = candyOf(
    atFloor,
    atAim,
    atCeiling,
    invertedInBoil(recipe, syrup, curve, window.aimCelsius),
    roomCelsius,
  );

  const batch: Omit<Batch, 'notes'> = {
    recipe,
    kitchen,
    syrup,
    curve,
    dial,
    totalGrams: totalGrams(syrup),
    waterGrams: syrup.waterGrams,
    solidsGrams: dissolvedGrams(syrup),
    fatGrams: syrup.fatGrams,
    laterGrams: totalGrams(later),
    air,
    target: {
      seaLevelCelsius: recipe.target.celsius,
      todayCelsius: window.todayCelsius,
      feels: recipe.target.feels,
      takeOffCelsius: window.takeOffCelsius,
      aimCelsius: window.aimCelsius,
      carryOverKelvin,
    },
    stageFromCelsius: stagesToday(curve),
    boil: {
      startsCelsius,
      solidsFractionAtTarget: ascending(
        curve.solidsAt(window.todayCelsius[0]),
        curve.solidsAt(window.todayCelsius[1]),
      ),
      waterToBoilAwayGrams: ascending(
        syrup.waterGrams - atFloor.inPot.waterGrams,
        syrup.waterGrams - atCeiling.inPot.waterGrams,
      ),
    },
    candy,
    room:
      kitchen.room.humidity === null
        ? null
        : roomAirFor(candy.equilibriumRelativeHumidity, roomCelsius, kitchen.room.humidity),
    yield: yieldOf({
      cookedGrams: atAim.grams,
      pieceGrams: recipe.piece.grams,
      ropeMillimetres: recipe.piece.ropeMillimetres,
      hands: kitchen.hands,
      pullers: options.pullers ?? null,
      boxShare: boxShareOf(kitchen.learned?.boxShare ?? null),
    }),
    pot: potFor({
      startMillilitres: 1000 * syrupLitres(syrup, Math.min(startsCelsius, 170)),
      endMillilitres: 1000 * syrupLitres(atAim.inPot, Math.min(window.aimCelsius, 170)),
      litres: kitchen.pot.litres,
      diameterMillimetres: kitchen.pot.diameterMillimetres,
      stemMillimetres: dial.present ? dial.stemMillimetres : null,
    }),
  };
  return { ...batch, notes: [...hereNotes, ...notesOf(batch, window), ...recipeNotes(recipe)] };
};
