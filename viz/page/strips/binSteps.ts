import type { Steps } from "../../../sim/day/course/index.ts";

/**
 * Time average of a step function in `bins` equal bins over [0, end]; before its first row it is 0. A bin is as wide as a
 * pixel or so: what a picture of that width can show.
 */
export function binMeans({ from, times, values }: Steps, list: number, end: number, bins: number): Float64Array {
  const means = new Float64Array(bins);
  const width = end / bins;
  const last = from[list + 1]!;
  for (let row = from[list]!; row < last; row++) {
    const until = Math.min(end, row + 1 < last ? times[row + 1]! : end);
    let at = times[row]!;
    for (let bin = Math.min(bins - 1, Math.floor(at / width)); bin < bins && at < until; bin++) {
      const to = bin === bins - 1 ? until : Math.min(until, (bin + 1) * width);
      means[bin]! += (values[row]! * (to - at)) / width;
      at = to;
    }
  }
  return means;
}

/** Share of each bin in which any of the positions `first .. first + count - 1` is in each state: shares[state][bin], adding up to 1. */
export function binShares(
  { from, times, values }: Steps,
  first: number,
  count: number,
  { end, bins, states }: { end: number; bins: number; states: number },
): Float64Array[] {
  const shares = Array.from({ length: states }, () => new Float64Array(bins));
  const width = end / bins;
  for (let list = first; list < first + count; list++) {
    const last = from[list + 1]!;
    for (let row = from[list]!; row < last; row++) {
      const until = Math.min(end, row + 1 < last ? times[row + 1]! : end);
      const share = shares[values[row]!]!;
      let at = times[row]!;
      for (let bin = Math.min(bins - 1, Math.floor(at / width)); bin < bins && at < until; bin++) {
        const to = bin === bins - 1 ? until : Math.min(until, (bin + 1) * width);
        share[bin]! += (to - at) / (width * count);
        at = to;
      }
    }
  }
  return shares;
}
