import type { Estimate } from "../../maths/statistics/index.ts";
import type { Difference, Gain } from "../results/index.ts";

/** By itself, or as one of several that hold at once. */
type DifferenceEnds = Pick<Difference, "mean" | "low" | "high"> &
  Partial<Pick<Difference, "joint" | "familyLow" | "familyHigh">>;

/** A difference to today's plan, turned so that above 0 is better, and set against the least that matters. */
export function gainOf(difference: DifferenceEnds, better: "more" | "less", matters: number): Gain {
  const { mean, joint } = difference;
  const low = (joint ? difference.familyLow : difference.low) ?? mean;
  const high = (joint ? difference.familyHigh : difference.high) ?? mean;
  return better === "more" ? sized(mean, low, high, matters) : sized(-mean, -high, -low, matters);
}

/** The same for what is counted the wanted way round already. */
export function sizedEstimate({ mean, low, high }: Estimate, matters: number): Gain {
  return sized(mean, low ?? mean, high ?? mean, matters);
}

function sized(mean: number, low: number, high: number, matters: number): Gain {
  return { size: sizeOf(mean, low, high, matters), mean, low, high };
}

function sizeOf(mean: number, low: number, high: number, matters: number): Gain["size"] {
  if (low > 0) return mean >= matters ? "gain" : "too small";
  if (high < 0) return -mean >= matters ? "loss" : "no difference";
  return high < matters && -low < matters ? "no difference" : "open";
}
