import type { Dwell, Plan } from "../../asked/plan/index.ts";
import { chillingOf } from "../../maths/chilling/index.ts";
import { meanOf, squaredCvOf } from "../../maths/random/index.ts";
import { inOrderSeconds } from "./inOrderSeconds.ts";
import { type LiveWeight, liveWeight } from "./liveWeight.ts";

/** Mean least stay in a dwell stage, seconds. */
export function meanDwellSeconds(dwell: Dwell, plan: Plan): number {
  return stay(dwell, liveWeight(plan)).mean;
}

/** Mean stay when heads leave in order and come at this rate: longer where stays differ. */
export function dwellSeconds(dwell: Dwell, plan: Plan, headsPerSecond: number): number {
  const { mean, sd } = stay(dwell, liveWeight(plan));
  return inOrderSeconds(mean, sd, 1 / headsPerSecond);
}

function stay({ dwell }: Dwell, { meanKg, sdKg }: LiveWeight): { mean: number; sd: number } {
  if (dwell.kind === "drawn") {
    const mean = meanOf(dwell.seconds);
    return { mean, sd: mean * Math.sqrt(squaredCvOf(dwell.seconds)) };
  }
  const { chilling } = dwell;
  const secondsOf = (weightKg: number): number => chillingOf(chilling, weightKg * chilling.carcassShare).seconds;
  // Nearly straight between a light and a heavy carcass.
  return {
    mean: secondsOf(meanKg),
    sd: (secondsOf(meanKg + sdKg) - secondsOf(Math.max(meanKg - sdKg, meanKg / 2))) / 2,
  };
}
