import { meanOf } from "../../../maths/random/index.ts";
import { formatNumber } from "../../../text/units/index.ts";
import type { Fitted } from "../family.ts";

/** A plan takes no more. */
const MAX_CV = 10;
/** Share below 0 that may be cut off without a word. */
const CUT = 0.001;

/** Why a plan had better not use a fit, in words; "" when nothing speaks against it. */
export function objectionTo({ law, varying }: Fitted): string {
  if (varying.family === "normal") return cutObjection(law.below(0), law.mean, varying);
  if ("cv" in varying && varying.cv > MAX_CV) return `its spread is more than ${MAX_CV} times its mean`;
  return "";
}

function cutObjection(below: number, mean: number, varying: Fitted["varying"]): string {
  if (mean <= 0) return "its mean is not above 0";
  if (below <= CUT) return "";
  return `${formatNumber(100 * below, 2)} % of it lies below 0, which a plan cuts off, so the mean becomes ${formatNumber(meanOf(varying))} instead of ${formatNumber(mean)}`;
}
