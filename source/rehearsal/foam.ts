/** Foam over the syrup. Metres, seconds, watts. */
export type Foam = {
  advance(seconds: number, watts: number, boiling: boolean): void;
  heightMetres(): number;
  /** For a while it holds the steam longer: fat used up, a drop of something that foams. */
  stiffen(times: number): void;
};

const steamJoulePerGram = 2250;
/** Steam at 100 °C and one atmosphere, grams a cubic metre; thinner air gives more room. */
const steamGramsPerCubicMetre = 590;
/** It climbs and sinks within this. Our judgement. */
const followsInSeconds = 15;

/** It stands as high as the steam rises while a bubble lasts (`foamSeconds`). */
export const foamOf = (foamSeconds: number, areaSquareMetres: number, pressureShare: number): Foam => {
  let height = 0;
  let times = 1;
  return {
    advance: (seconds, watts, boiling) => {
      const grams = boiling ? Math.max(0, watts) / steamJoulePerGram : 0;
      const rising = grams / (steamGramsPerCubicMetre * pressureShare) / areaSquareMetres;
      const goal = foamSeconds * times * rising;
      height = goal + (height - goal) * Math.exp(-seconds / followsInSeconds);
    },
    heightMetres: () => height,
    stiffen: (to) => {
      times = to;
    },
  };
};
