import type { Plan } from "../../sim/asked/plan/index.ts";
import { exponential, planOf, saturated, station } from "../support/plans.ts";

/** Places before each station but the first one. */
export const PLACES = 5;

/** The saturated line of the references: machines with exponential cycles of mean 1 s. */
export function serialLine(stations: number, heads: number): Plan {
  const line = Array.from({ length: stations }, (_, at) =>
    station(`s${at}`, exponential(1), { buffer: at === 0 ? 0 : PLACES }),
  );
  return planOf(saturated(heads), line);
}
