/** Reproducible numbers of 0…1: a small generator of uniform numbers from a seed (mulberry32, from memory). */
function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Reproducible normal numbers of mean 0 and standard deviation 1 (Box and Muller). */
export function normalNumbers(seed: number): () => number {
  const next = randomNumbers(seed);
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}
