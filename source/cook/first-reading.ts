import { heatAlongCurve, otherGrams } from '../sugar/heat.js';
import { headline } from './candy.js';
import type { Cook } from './cook.js';

/** Net watts that no home ring gives a pot for long: a large one has 3 kW, and half of it goes past. Our judgement. */
const mostWatts = 2000;
/** An unchecked dial and a batch weighed carelessly are off by so much together, kelvin. Our judgement. */
const slackKelvin = 8;
/** Whoever reads for the first time so far above the take-off is asked, however long it has boiled, kelvin. Our judgement. */
const pastKelvin = 4;

/** When the heating began, as far as it was seen: nothing is known of a pot that was joined on the way. */
const heatedSince = (cook: Cook): number | null => {
  const { dissolve, boil } = cook.enteredAt;
  if (dissolve === undefined) return null;
  const phase = headline(cook);
  if (phase === 'dissolve') return dissolve;
  return phase === 'boil' ? (boil ?? null) : null;
};

/** The hottest that the syrup can be after so many seconds over the strongest ring, from where its boil starts. */
const hottestAfter = ({ batch }: Cook, seconds: number): number => {
  const heat = heatAlongCurve(batch.curve, otherGrams(batch.syrup));
  const [lowest, highest] = heat.validCelsius;
  const starts = Math.min(highest, Math.max(lowest, batch.boil.startsCelsius));
  const joule = heat.jouleAt(starts) + mostWatts * Math.max(0, seconds);
  return joule >= heat.validJoule[1] ? highest : heat.celsiusAt(joule);
};

/**
 * Whether a first reading is hotter than its pot can be, or already past what is wanted: "291" typed for "219" has no
 * reading before it from which it could jump. Celsius, true; `t` in seconds since the opening.
 */
export const tooHotSoSoon = (cook: Cook, celsius: number, t: number): boolean => {
  const since = heatedSince(cook);
  if (since === null) return false;
  const reached = hottestAfter(cook, t - since) + slackKelvin;
  return celsius > Math.min(reached, cook.takeOffCelsius + pastKelvin);
};
