import { kaplanMeier } from "./kaplanMeier.ts";
import type { Law } from "./law.ts";
import type { Sample } from "./sample.ts";

/** How far a sample lies from a law. */
export interface Distances {
  /** D: greatest distance of the distribution functions (Kolmogorov 1933). */
  kolmogorov: number;
  /** A squared: their squared distance, weighted so that the tails count (Anderson and Darling 1954). */
  andersonDarling: number;
}

/** Probabilities nearer to 0 or 1 are taken as this near: one wild value must not make the sum infinite. */
const EDGE = 1e-15;

/**
 * Both distances between the Kaplan-Meier steps of a sample and a law. Without open times they are the textbook's D and
 * A squared. With them both reach up to the longest time watched, as nothing is known beyond (Koziol 1980, Biometrika
 * 67, for such a range); that is no textbook statistic, and its p-value comes from simulated samples only.
 */
export function distances(law: Law, sample: Sample): Distances {
  const within = (time: number) => Math.min(Math.max(law.below(time), EDGE), 1 - EDGE);
  const n = sample.ended.length + sample.open.length;
  let kolmogorov = 0;
  let integral = 0;
  let from = 0;
  let share = 0;
  for (const { time, before, after } of kaplanMeier(sample)) {
    const here = within(time);
    kolmogorov = Math.max(kolmogorov, Math.abs(here - before), Math.abs(after - here));
    integral += between(from, here, share);
    from = here;
    share = after;
  }
  const end = sample.open.length === 0 ? 1 : within(Math.max(sample.ended.at(-1)!, sample.open.at(-1)!));
  if (end < 1) kolmogorov = Math.max(kolmogorov, Math.abs(end - share));
  return { kolmogorov, andersonDarling: n * (integral + between(from, end, share)) };
}

/** Integral of (share - u)^2 / (u (1 - u)) over u, whose terms are share^2 / u + (1 - share)^2 / (1 - u) - 1. */
function between(from: number, to: number, share: number): number {
  const low = share === 0 ? 0 : share ** 2 * Math.log(to / from);
  const high = share === 1 ? 0 : (1 - share) ** 2 * Math.log((1 - from) / (1 - to));
  return low + high - (to - from);
}
