import { decompose, type SerialStation } from "./decompose.ts";

/** Least coefficients of variation that the line is taken with, the last one as costly as is worth it. */
const FLOORS = [0.55, 0.45, 0.35] as const;
const [, , FLOOR] = FLOORS;
const STEP = 0.1;
/** Gains that grow faster than this from floor to floor are not carried on. */
const MOST_GROWTH = 1.15;

/**
 * Heads per second of a serial line (see `decompose`). Times that vary less than a few phases can are taken with three
 * least variations, and what each step down gains is carried on to their own variation as a geometric series (the idea of Aitken 1926).
 */
export function serialThroughput(stations: readonly SerialStation[]): number {
  const steadier = stations.map(({ work }) => Math.sqrt(work.squaredCv)).filter((cv) => cv < FLOOR);
  if (steadier.length === 0 || stations.length < 2) return decompose(stations, FLOOR ** 2).throughput;
  const [first, second, last] = FLOORS.map((cv) => decompose(stations, cv ** 2).throughput) as [number, number, number];
  const steps = (FLOOR - mean(steadier)) / STEP;
  return last + furtherGain(second - first, last - second, steps);
}

/** What `steps` more steps gain when each gains as much more or less than the one before as the last two did. */
function furtherGain(before: number, now: number, steps: number): number {
  if (now <= 0) return 0;
  const growth = before <= 0 ? MOST_GROWTH : Math.min(MOST_GROWTH, now / before);
  const series = Math.abs(growth - 1) < 1e-9 ? steps : (growth * (1 - growth ** steps)) / (1 - growth);
  return now * series;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
