import { type Message, message } from '../texts/message.js';
import type { Batch } from './batch.js';
import { splitFor } from './split.js';
import type { TodaysTarget } from './target.js';
import { mostGramsForAPair } from './yield.js';

type Unnoted = Omit<Batch, 'notes'>;

/** Less sugar than this heats too fast to follow and hardly covers a thermometer: about a cup. Our judgement. */
const leastSolidsGrams = 200;
/** A piece longer than a finger or thinner than a coin: rope and mass do not go together. Our judgement. */
const cutLimitsMillimetres = { short: 4, long: 80 } as const;
/** From this target (sea level) glass is what is wanted: hard crack begins. */
const hardCandyCelsius = 146;
/** Below this water freezes: the damp of the air is reckoned as at 0 °C, and cups of water turn to ice. */
const frostCelsius = 0;
/** Mass of dry solids in a gram of ordinary glucose syrup. */
const syrupSolids = 0.8;

type Note = (batch: Unnoted, window: TodaysTarget) => Message | null;

const pot: Note = (batch) => {
  const split = splitFor(batch.pot);
  const { neededLitres, haveLitres } = batch.pot;
  return split === null || haveLitres === null
    ? null
    : message('plan.note.pot', {
        neededLitres,
        haveLitres,
        batches: split.batches,
        eachGrams: batch.totalGrams * split.share,
        mostShare: split.mostShare,
      });
};

const stem: Note = ({ pot: { stemCovered, depthMillimetres }, dial }) =>
  stemCovered !== false || depthMillimetres === null || dial.stemMillimetres === null
    ? null
    : message('plan.note.stem', {
        depthMillimetres: depthMillimetres[1],
        stemMillimetres: dial.stemMillimetres,
      });

const beyond: Note = (_, { beyondCurve }) => (beyondCurve ? message('plan.note.beyond-curve') : null);

const dry: Note = ({ boil, target }) =>
  boil.startsCelsius < target.todayCelsius[0]
    ? null
    : message('plan.note.dry', { startsCelsius: boil.startsCelsius, floorCelsius: target.todayCelsius[0] });

const damp: Note = ({ room }) => (room?.damp ? message('plan.note.damp', { humidity: room.humidity }) : null);

const frost: Note = ({ kitchen: { room } }) =>
  room.celsius !== null && room.celsius < frostCelsius
    ? message('plan.note.frost', { celsius: room.celsius, known: room.humidity !== null })
    : null;

const sticky: Note = ({ room, candy }) =>
  room === null || room.stickySeconds === null || room.humidity <= candy.equilibriumRelativeHumidity[1]
    ? null
    : message('plan.note.sticky', { seconds: room.stickySeconds, humidity: room.humidity });

const grain: Note = ({ candy: { grainRisk, doctorMissingGrams } }) =>
  grainRisk === 'low'
    ? null
    : message('plan.note.grain', { risk: grainRisk, syrupGrams: doctorMissingGrams / syrupSolids });

const firmness: Note = ({ candy, target }) =>
  candy.firmness === 'runny'
    ? message('plan.note.runny')
    : candy.firmness === 'glassy' && target.seaLevelCelsius[0] < hardCandyCelsius
      ? message('plan.note.glassy')
      : null;

const pair: Note = ({ yield: { expectedGrams } }) =>
  expectedGrams.typical > mostGramsForAPair
    ? message('plan.note.pair', { grams: expectedGrams.typical, mostGrams: mostGramsForAPair })
    : null;

const small: Note = ({ solidsGrams }) =>
  solidsGrams < leastSolidsGrams ? message('plan.note.small', { solidsGrams }) : null;

const cut: Note = ({ yield: { cutMillimetres }, recipe: { piece } }) =>
  cutMillimetres < cutLimitsMillimetres.short || cutMillimetres > cutLimitsMillimetres.long
    ? message('plan.note.cut', { cutMillimetres, grams: piece.grams, ropeMillimetres: piece.ropeMillimetres })
    : null;

/** What is odd about a batch and what to do, most pressing first. */
export const notesOf = (batch: Unnoted, window: TodaysTarget): readonly Message[] =>
  [pot, beyond, dry, stem, grain, firmness, damp, frost, sticky, pair, small, cut].flatMap(
    (note) => note(batch, window) ?? [],
  );
