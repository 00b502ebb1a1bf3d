import type { Sample } from "../sample.ts";
import { sumOf } from "../sample.ts";
import { normalHazard } from "./standardNormal.ts";

const MAX_ROUNDS = 10_000;
const STILL = 1e-14;

/**
 * Maximum likelihood mean and standard deviation (divisor n) of a normal sample. With open values by the EM algorithm
 * (Dempster, Laird and Rubin 1977): each stands for the mean and square of what lies above it, until nothing moves by
 * more than 1e-14 of the standard deviation.
 */
export function normalMoments({ ended, open }: Sample): { mean: number; sd: number } {
  const n = ended.length + open.length;
  let mean = sumOf(ended) / ended.length;
  let sd = Math.sqrt(sumOf(ended, (x) => (x - mean) ** 2) / ended.length);
  if (open.length === 0) return { mean, sd };
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const [m, s] = [mean, sd];
    const hazard = (c: number) => normalHazard((c - m) / s);
    const nextMean = (sumOf(ended) + sumOf(open, (c) => m + s * hazard(c))) / n;
    // E[(X - a)^2 | X > c] about the new mean a: spread above c, and its distance.
    const squares =
      sumOf(ended, (x) => (x - nextMean) ** 2) +
      sumOf(open, (c) => s * s * (1 + hazard(c) * ((c - m) / s - hazard(c))) + (m + s * hazard(c) - nextMean) ** 2);
    mean = nextMean;
    sd = Math.sqrt(squares / n);
    if (Math.abs(mean - m) + Math.abs(sd - s) <= STILL * s) break;
  }
  return { mean, sd };
}
