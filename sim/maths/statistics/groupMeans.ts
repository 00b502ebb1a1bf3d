import { compensatedSum } from "./compensatedSum.ts";

/** Means of consecutive groups of `size` values; values after the last whole group are left out. */
export function groupMeans(values: readonly number[], size: number): number[] {
  if (!(Number.isInteger(size) && size >= 1))
    throw new RangeError(`groupMeans: a size of ${size}; it must be 1 or more`);
  return Array.from({ length: Math.floor(values.length / size) }, (_, group) => {
    return compensatedSum(values.slice(group * size, (group + 1) * size)) / size;
  });
}
