import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Estimate } from "../contract.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** An estimate told with its interval and number of days, or that there is none. A share never seen says so. */
export interface EstimateWords {
  /** The mean with its unit. */
  mean: string;
  /** "584.0 to 592.4"; "none in 20 simulated days"; "one day, no interval" where n < 2; "" where there is no value at all. */
  interval: string;
  /** Both in one phrase: "588.2 heads/h (584.0 to 592.4 at 95 %, 20 simulated days)". */
  phrase: string;
}

export function estimateWords(
  estimate: Estimate | undefined,
  format: ResponseFormat,
  confidence: number,
  noun = "simulated days",
): EstimateWords {
  const { period } = format;
  if (!estimate || estimate.n === 0) {
    const phrase = `no value ${period === "day" ? "on" : "in"} any simulated ${period}`;
    return { mean: "no value", interval: "", phrase };
  }
  if (estimate.low === null || estimate.high === null) {
    const mean = format.value(estimate.mean, null);
    return { mean, interval: `one ${period}, no interval`, phrase: `${mean} (one ${period}, no interval)` };
  }
  if (format.quantity.kind === "share" && estimate.mean === 0 && estimate.high > 0) {
    const interval = `none in ${estimate.n} ${noun}`;
    const most = format.value(estimate.high, estimate.high);
    return { mean: "0 %", interval, phrase: `${interval} (at most ${most} at ${formatConfidence(confidence)})` };
  }
  const mean = format.value(estimate.mean, estimate.halfWidth);
  const interval = format.range(estimate.low, estimate.high, estimate.halfWidth);
  const phrase = `${mean} (${interval} at ${formatConfidence(confidence)}, ${estimate.n} ${noun})`;
  return { mean, interval, phrase };
}
