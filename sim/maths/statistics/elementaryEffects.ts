import { type Estimate, estimate } from "./estimate.ts";

/** One point of a trajectory: a coordinate from 0 to 1 for every factor, and the response there. */
export interface TrajectoryPoint {
  point: readonly number[];
  value: number | null;
}

/** The effect of one factor on the response, in the response's unit per whole range of the factor. */
export interface ElementaryEffects {
  /** Number of effects; one per trajectory that has both values. */
  n: number;
  /** Mean: the direction. Near 0 also where the factor works both ways. */
  mu: number;
  /** Mean of the absolute effects: how much the factor matters. */
  muStar: number;
  /** Half-widths over trajectories; null with one effect. */
  muHalfWidth: number | null;
  muStarHalfWidth: number | null;
  /** Standard deviation: large where the effect depends on the other factors or is not straight. Null with one effect. */
  sigma: number | null;
}

/**
 * Elementary effects of a screening: for each factor the changes of the response along the trajectories by the change of
 * the factor (Morris 1991, Technometrics 33(2)), their mean, standard deviation, and mean absolute value (Campolongo,
 * Cariboni and Saltelli 2007, Environmental Modelling and Software 22(10)).
 *
 * Neighbouring points of a trajectory differ in exactly one factor, else a RangeError. One entry per factor, null where
 * no trajectory has both values. Values that are means of simulated days carry their own noise into sigma; common random
 * numbers keep it small. The Student-t intervals take trajectories as independent, which they are drawn to be.
 */
export function elementaryEffects(
  trajectories: readonly (readonly TrajectoryPoint[])[],
  factors: number,
  confidence: number,
): (ElementaryEffects | null)[] {
  const effects: number[][] = Array.from({ length: factors }, () => []);
  for (const points of trajectories) {
    for (let step = 1; step < points.length; step++) {
      const [before, after] = [points[step - 1]!, points[step]!];
      const factor = movedFactor(before.point, after.point);
      if (before.value === null || after.value === null) continue;
      effects[factor]!.push((after.value - before.value) / (after.point[factor]! - before.point[factor]!));
    }
  }
  return effects.map((list) => summary(list, confidence));
}

function movedFactor(before: readonly number[], after: readonly number[]): number {
  const moved = after.flatMap((value, factor) => (value === before[factor] ? [] : [factor]));
  if (moved.length === 1) return moved[0]!;
  throw new RangeError(`elementaryEffects: a step moves ${moved.length} factors; it must move exactly one`);
}

function summary(effects: readonly number[], confidence: number): ElementaryEffects | null {
  const plain = estimate(effects, confidence);
  if (plain === null) return null;
  const absolute = estimate(effects.map(Math.abs), confidence) as Estimate;
  return {
    n: plain.n,
    mu: plain.mean,
    muStar: absolute.mean,
    muHalfWidth: plain.halfWidth,
    muStarHalfWidth: absolute.halfWidth,
    sigma: plain.n < 2 ? null : plain.sd,
  };
}
