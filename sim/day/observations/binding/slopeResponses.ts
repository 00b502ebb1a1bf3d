import type { Plan } from "../../../asked/plan/index.ts";
import type { DayRecord } from "../../engine/index.ts";
import { CARCASS } from "../../line/index.ts";
import type { Response } from "../response.ts";
import { row } from "../row.ts";
import { SLOPE } from "./bindingKeys.ts";
import { accountedSeconds, reasonsOf } from "./reasonSeconds.ts";
import { type Slope, slopesThatHold } from "./slopes.ts";

/**
 * How much later work ends, and how much more comes out in an hour, for one second more of each mean time: near today's
 * value, and only where the figure is right.
 */
export function slopeResponses(plan: Plan): Response[] {
  const startSeconds = plan.day.shifts[0]?.fromSeconds ?? 0;
  return slopesThatHold(plan).flatMap((slope) => [
    row(slopeKey("end", slope), slopeLabel("end", slope), "s per s", (day) => slopeIn(day, slope)),
    row(slopeKey("rate", slope), slopeLabel("rate", slope), "carcasses/h per s", (day) =>
      rateSlopeIn(day, slope, startSeconds),
    ),
  ]);
}

/** "end": of the end of work; "rate": of the throughput. */
export type SlopeOf = "end" | "rate";

/** `slope.end.cycle.skinning`, `slope.rate.repair.skinning.jam`, `slope.end.arrival.first lorry`. */
export function slopeKey(of: SlopeOf, { parameter, stage, detail }: Slope): string {
  return [SLOPE, of, parameter.split(" ")[0], stage, detail].filter((part) => part !== "").join(".");
}

export function slopeLabel(of: SlopeOf, { parameter, stage, detail }: Slope): string {
  const where = [stage, detail].filter((part) => part !== "").join(", ");
  const what = of === "end" ? "ends the day later by" : "changes the throughput by";
  return `Each extra second of ${parameter}${where === "" ? "" : ` (${where})`} ${what}`;
}

/**
 * d(end of work)/d(mean), seconds per second, from one run: the seconds of the path that grow with the mean, by the mean
 * (infinitesimal perturbation analysis of a time that scales with its mean; Ho and Cao 1983; Glasserman 1991, from
 * memory). For a load: 1 when the path begins with its arrival, else 0. Null without a binding path.
 */
export function slopeIn(day: DayRecord, { meanSeconds, weight }: Slope): number | null {
  const reasons = reasonsOf(day);
  if (reasons === null) return null;
  if (meanSeconds === 0) return reasons.some((cell) => weight(cell) > 0) ? 1 : 0;
  return reasons.reduce((sum, cell) => sum + weight(cell) * cell.seconds, 0) / meanSeconds;
}

/** The same of the throughput: as many carcasses in a time that is so much longer. */
function rateSlopeIn(day: DayRecord, slope: Slope, startSeconds: number): number | null {
  const later = slopeIn(day, slope);
  const seconds = accountedSeconds(day) - Math.max(0, startSeconds - day.watchedFromSeconds);
  if (later === null || seconds <= 0) return null;
  return ((-3600 * (day.heads.out[CARCASS] ?? 0)) / seconds ** 2) * later;
}
