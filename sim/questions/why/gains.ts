import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Difference } from "../../days/results/index.ts";

/** Which way a response is better. */
type Direction = Pick<ResponseInfo, "better">;

/** Whether a change is shown to gain: the verdict of the comparison, which goes by the interval of `gainEnds`. */
export function isShownToGain({ shown, mean }: Difference, { better }: Direction): boolean {
  return shown && (better === "less" ? mean < 0 : mean > 0);
}

/**
 * The least and the most that a change gains, in the response's unit, negative where it loses: by the interval that holds for all
 * changes at once where there are several. The mean stands for an end that is not known.
 */
export function gainEnds(difference: Difference, { better }: Direction): [number, number] {
  const { mean, joint } = difference;
  const low = (joint ? difference.familyLow : difference.low) ?? mean;
  const high = (joint ? difference.familyHigh : difference.high) ?? mean;
  return better === "less" ? [-high, -low] : [low, high];
}
