/** What goes into it; times in seconds of positions, counts in heads. */
export interface OeeElements {
  /** PBT: planned operation time less planned down time. */
  plannedBusySeconds: number;
  /** APT: seconds in which something was worked on. */
  productionSeconds: number;
  /** PRI: planned run time per item. */
  itemSeconds: number;
  /** PQ and GQ. */
  produced: number;
  good: number;
}

/** Shares; null where there is nothing to divide by. */
export interface Oee {
  availability: number | null;
  effectiveness: number | null;
  quality: number | null;
  oee: number | null;
}

/**
 * Overall equipment effectiveness and its factors after ISO 22400-2:2014: availability A = APT / PBT, effectiveness
 * E = PRI x PQ / APT, quality ratio Q = GQ / PQ, OEE index = A x E x Q, which is PRI x GQ / PBT.
 *
 * Element names and formulas as quoted by others; the standard itself was not at hand. Our reading: blocked, starved and
 * down time lie inside PBT but outside APT, so they lower A, not E; breaks lie outside both. E is above 1 for work that was
 * faster than planned.
 */
export function oee({ plannedBusySeconds, productionSeconds, itemSeconds, produced, good }: OeeElements): Oee {
  const ratio = (part: number, whole: number) => (whole > 0 ? part / whole : null);
  return {
    availability: ratio(productionSeconds, plannedBusySeconds),
    effectiveness: ratio(itemSeconds * produced, productionSeconds),
    quality: ratio(good, produced),
    oee: ratio(itemSeconds * good, plannedBusySeconds),
  };
}
