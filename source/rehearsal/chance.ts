/** Numbers that look like chance and are the same for the same seed. */
export type Chance = {
  /** Evenly in [0, 1). */
  even(): number;
  /** Normally distributed, mean 0, standard deviation 1. */
  normal(): number;
};

/**
 * A 32-bit generator of the kind that adds a constant and mixes the bits (Steele, Lea & Flood 2014, Fast Splittable
 * Pseudorandom Number Generators), with the mixing constants of MurmurHash3's finaliser (Appleby 2011, public domain).
 * Good enough for a rehearsal; not for secrets.
 */
export const chanceFrom = (seed: number): Chance => {
  let state = seed >>> 0;
  let spare: number | null = null;
  const even = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let bits = state;
    bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
    return ((bits ^ (bits >>> 16)) >>> 0) / 2 ** 32;
  };
  return {
    even,
    /** Source: Box & Muller 1958, Ann. Math. Statist. 29:610. */
    normal: () => {
      if (spare !== null) {
        const kept = spare;
        spare = null;
        return kept;
      }
      const radius = Math.sqrt(-2 * Math.log(1 - even()));
      const angle = 2 * Math.PI * even();
      spare = radius * Math.sin(angle);
      return radius * Math.cos(angle);
    },
  };
};
