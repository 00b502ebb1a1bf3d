import { formatNumber } from "../../../text/units/index.ts";
import { type Check, fine, look, notChecked } from "./check.ts";

/** Coarser than this share of the standard deviation, the steps of the stopwatch begin to show. Our own rule. */
const COARSE = 0.5;

/** Whether times were noted finely enough for their spread. `sd` null: too few times. */
export function roundingCheck(resolution: number, sd: number | null, unit: string): Check {
  if (sd === null || sd === 0) return notChecked("rounding", "Nothing varies.");
  if (resolution === 0) return fine("rounding", "Noted to the last digit.");
  const step = `${formatNumber(resolution)} ${unit}`;
  if (resolution <= COARSE * sd) return fine("rounding", `Noted to ${step}.`);
  return look(
    "rounding",
    `Noted to ${step}, though the times differ by only ${formatNumber(sd)} ${unit} (standard deviation): time more finely.`,
  );
}
