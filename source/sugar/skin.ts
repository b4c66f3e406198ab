/**
 * How long hot water on adult skin takes to burn. Children's skin burns faster, and sticky syrup stays on.
 * Source: contact times of the Moritz & Henriques 1947 kind (Am. J. Pathol. 23:695), as tabulated by antiscald.com.
 */
export type BurnTime = {
  readonly celsius: number;
  readonly secondDegreeSeconds: number;
  readonly thirdDegreeSeconds: number;
};

export const burnTimes: readonly BurnTime[] = [
  { celsius: 45, secondDegreeSeconds: 7200, thirdDegreeSeconds: 10_800 },
  { celsius: 47, secondDegreeSeconds: 1200, thirdDegreeSeconds: 2700 },
  { celsius: 48, secondDegreeSeconds: 900, thirdDegreeSeconds: 1200 },
  { celsius: 49, secondDegreeSeconds: 480, thirdDegreeSeconds: 600 },
  { celsius: 51, secondDegreeSeconds: 120, thirdDegreeSeconds: 252 },
  { celsius: 55, secondDegreeSeconds: 17, thirdDegreeSeconds: 30 },
  { celsius: 60, secondDegreeSeconds: 3, thirdDegreeSeconds: 5 },
];

/**
 * Seconds of contact to a second-degree burn, by the table: the logarithm of time falls evenly between its rows.
 * Null below 45 °C, where the table says nothing; the last row's time above 60 °C, where it is shorter still.
 */
export const secondsToBurn = (celsius: number): number | null => {
  const after = burnTimes.findIndex((row) => row.celsius >= celsius);
  const upper = burnTimes.at(after);
  if (after === -1 || upper === undefined) return burnTimes.at(-1)?.secondDegreeSeconds ?? null;
  const lower = burnTimes[after - 1];
  if (lower === undefined) return celsius < upper.celsius ? null : upper.secondDegreeSeconds;
  const share = (celsius - lower.celsius) / (upper.celsius - lower.celsius);
  return lower.secondDegreeSeconds * (upper.secondDegreeSeconds / lower.secondDegreeSeconds) ** share;
};

/** Whose hands pull: `bare` and `gloved` are practised adults, gloves being cotton under nitrile. */
export type Hands = 'bare' | 'gloved' | 'visitors' | 'children';

const handLimits: Readonly<Record<Hands, number>> = { bare: 50, gloved: 55, visitors: 45, children: 43 };

/**
 * The middle of the mass must be no hotter than this before hands go in, true Celsius. Children stands also for older
 * people and thin or numb skin. Our judgement, below the contact times above; no published limit for pulling was found.
 * Air pressure never shifts any of the limits in this file.
 */
export const handLimitCelsius = (hands: Hands): number => handLimits[hands];

/** From here on scorching is close in a pulled-candy cook: off the heat. True Celsius; our judgement. */
export const scorchLimitCelsius = 150;
/** No water into scorched sugar before it reads below this. True Celsius; our judgement. */
export const waterIntoScorchedBelowCelsius = 90;
/** Above this an overcooked batch is not rescued with water but poured as it is. True Celsius; our judgement. */
export const rescueBelowCelsius = 140;
