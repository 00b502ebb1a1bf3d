/** A unit to write a span of time in. */
export interface TimeUnit {
  seconds: number;
  unit: "s" | "min" | "h";
}

const SECOND: TimeUnit = { seconds: 1, unit: "s" };
const MINUTE: TimeUnit = { seconds: 60, unit: "min" };
const HOUR: TimeUnit = { seconds: 3600, unit: "h" };

/** Seconds up to 2 min, minutes up to 5 h, hours beyond: the unit that suits the largest of the spans shown. */
export function timeUnitFor(largestSeconds: number): TimeUnit {
  const size = Math.abs(largestSeconds);
  if (size < 120) return SECOND;
  return size < 18_000 ? MINUTE : HOUR;
}
