/** Source of numbers that look random and are the same for the same seed. */
export interface SeededRandom {
  /** Uniform in [0, 1). */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
  /** Whole number from 0 to `below` − 1. */
  readonly below: (below: number) => number;
}

/**
 * A stream of pseudo-random numbers: SplitMix32 over a counter, normals by the Box–Muller transform.
 *
 * @param seed whole number; the same seed gives the same stream.
 * @see Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators; the 32-bit mixing constants are
 *   those of MurmurHash3's finaliser. Box and Muller (1958).
 */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    below: (below) => Math.floor(uniform() * below),
  };
}
