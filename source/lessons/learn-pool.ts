/** What one cook says of a quantity, and how well: standard deviation of that cook's own measurement. */
export type Said = { readonly value: number; readonly sd: number };

/** What is believed before any cook, and how much cooks in one kitchen differ among themselves. */
export type Prior = { readonly mean: number; readonly sd: number; readonly betweenCooksSd: number };

/** One cook counts as being no further from the default than this many of the spreads that were expected. Our judgement. */
const furthestSpreads = 2.5;
/** From so many cooks on the median is taken: one odd cook among them can't move it far. */
const leastForMedian = 3;
/** Variance of a median over that of the mean, for many normal values: pi/2 (Kenney & Keeping 1962, from memory). */
const medianVariance = Math.PI / 2;

type Weighted = { readonly value: number; readonly weight: number };

const meanOf = (values: readonly Weighted[], total: number): number =>
  values.reduce((sum, { value, weight }) => sum + value * weight, 0) / total;

/** The value at which half of the weight lies below; straight between the middles of neighbours. */
const medianOf = (values: readonly Weighted[], total: number): number => {
  const sorted = values.toSorted((one, other) => one.value - other.value);
  let below = 0;
  let median = Number.NaN;
  let last: { readonly value: number; readonly at: number } | null = null;
  for (const { value, weight } of sorted) {
    const at = below + weight / 2;
    const isReached = at >= total / 2;
    median =
      isReached && last !== null
        ? last.value + ((total / 2 - last.at) / (at - last.at)) * (value - last.value)
        : value;
    if (isReached) break;
    last = { value, at };
    below += weight;
  }
  return median;
};

/**
 * Bayesian shrinkage towards the default, of a median: what the cooks say together (their weighted median from three
 * on, their weighted mean before) and the prior are weighed by their precision (Gelman et al. 2013, Bayesian Data
 * Analysis, section 2.5, eq. 2.11-2.12, normal values with known variance). One odd cook of three or more hardly moves
 * the median; alone it counts at most 2.5 spreads. `sd` is that of the next cook's value: what is not yet known of
 * the kitchen, and how cooks differ. Null without any cook.
 */
export const pooled = (said: readonly Said[], prior: Prior): Said | null => {
  const usable = said.filter(({ value, sd }) => Number.isFinite(value) && sd > 0 && Number.isFinite(sd));
  if (usable.length === 0) return null;
  const weighted = usable.map(({ value, sd }): Weighted => {
    const reach = furthestSpreads * Math.hypot(prior.sd, prior.betweenCooksSd, sd);
    const held = Math.min(prior.mean + reach, Math.max(prior.mean - reach, value));
    return { value: held, weight: 1 / (sd ** 2 + prior.betweenCooksSd ** 2) };
  });
  const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
  const few = weighted.length < leastForMedian;
  const centre = few ? meanOf(weighted, total) : medianOf(weighted, total);
  const evidence = few ? total : total / medianVariance;
  const before = 1 / prior.sd ** 2;
  return {
    value: (centre * evidence + prior.mean * before) / (evidence + before),
    sd: Math.hypot(Math.sqrt(1 / (evidence + before)), prior.betweenCooksSd),
  };
};
