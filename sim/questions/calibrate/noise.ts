import { uniformStream } from "../../maths/random/index.ts";
import { studentQuantile } from "../../maths/statistics/index.ts";
import { confidenceOfEach } from "./compare.ts";
import type { ObservedQuantity } from "./observed.ts";

/** One quantity of a comparison that luck alone made. */
interface Luck {
  /** Mean of the observed days and of the simulated ones, and their squared deviations from it, summed. */
  seen: Days;
  drawn: Days;
  /** From the squared deviations to half the width of the interval, squared. */
  factor: number;
}

interface Days {
  mean: number;
  squares: number;
}

/** What luck alone does to a calibration: many comparisons of a plan with its own days. */
export interface Noise {
  /** luck[draw][quantity]; null for a quantity that is not reckoned with. */
  luck: (Luck | null)[][];
}

const DRAWS = 400;
/**
 * Share of the draws that find it. More than POWER, as spread and shift come from few simulated days: on the plan of
 * the tests an aim of 0.8 was found in 0.71 of new cases. A margin chosen there, not derived; on two other plans it gives
 * 0.82 on average (tests/proofs/calibrate.ts).
 */
const AIM = 0.87;

/**
 * Draws observed and simulated days again, with replacement, from the simulated days of the plan as it is (bootstrap;
 * Efron 1979): as many as there are of each, whole days, so that what the quantities have in common stays. Quantities
 * without a value on some simulated day are not reckoned with.
 *
 * @param base values[quantity][day] of the plan as it is.
 */
export function noiseOf(
  observed: readonly ObservedQuantity[],
  base: readonly (readonly (number | null)[])[],
  confidence: number,
  seed: string,
): Noise {
  const uniforms = uniformStream(seed, 0, "calibrate", "luck");
  const days = base[0]!.length;
  const centred = base.map(deviations);
  const each = confidenceOfEach(observed.length, confidence);
  const factors = observed.map(({ values }) => {
    const seen = values.filter((value) => value !== null).length;
    const df = Math.max(1, seen + days - 2);
    return (studentQuantile((1 + each) / 2, df) ** 2 / df) * (1 / seen + 1 / days);
  });
  const someDays = (count: number) => Array.from({ length: count }, () => Math.floor(uniforms.next() * days));
  const luck = Array.from({ length: DRAWS }, () => {
    const [seenDays, drawnDays] = [someDays(observed[0]!.values.length), someDays(days)];
    return observed.map(({ values }, quantity) => {
      const of = centred[quantity]!;
      if (of === null) return null;
      const seen = seenDays.filter((_, day) => values[day] !== null).map((day) => of[day]!);
      if (seen.length === 0) return null;
      const drawn = drawnDays.map((day) => of[day]!);
      return { seen: daysOf(seen), drawn: daysOf(drawn), factor: factors[quantity]! };
    });
  });
  return { luck };
}

/** From the mean, widened as a sample's own spread is too small by (n - 1) / n; null when a day has no value. */
function deviations(values: readonly (number | null)[]): number[] | null {
  const present = values.filter((value) => value !== null);
  if (present.length < values.length) return null;
  const mean = meanOf(present);
  const wider = Math.sqrt(present.length / (present.length - 1));
  return present.map((value) => wider * (value - mean));
}

function daysOf(values: readonly number[]): Days {
  const mean = meanOf(values);
  return { mean, squares: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/**
 * How many times as large a shift of the means would have to be, to be found in some quantity in four of five cases (by
 * Student's interval of two means, as `compare` makes it): 1 when it is just large enough, below 1 when it is larger than
 * that, infinite when it shifts nothing. `wider`: the spread of the observed days in that of the simulated ones.
 */
export function multipleFound(shifts: readonly number[], wider: readonly number[], { luck }: Noise): number {
  const multiples = luck.map((quantities) => {
    let least = Number.POSITIVE_INFINITY;
    quantities.forEach((each, i) => {
      const shift = shifts[i]!;
      if (each === null || shift === 0) return;
      const { seen, drawn, factor } = each;
      const halfWidth = Math.sqrt(factor * (wider[i]! ** 2 * seen.squares + drawn.squares));
      const lacking = halfWidth - Math.sign(shift) * (wider[i]! * seen.mean - drawn.mean);
      least = Math.min(least, Math.max(0, lacking / Math.abs(shift)));
    });
    return least;
  });
  const rank = Math.ceil(AIM * multiples.length) - 1;
  return multiples.sort((a, b) => a - b)[rank]!;
}
