import { z } from "zod";
import { time } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { crewName } from "./crewNames.ts";
import { quantity, quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";

/** Breakdowns and short stops of one crate step. */
export function breakdowns(varying: VaryingQuantities) {
  return listed(record(parts(varying)));
}

/** Breakdowns and short stops of a station, which may catch a head in the middle of the work. */
export function stationBreakdowns(varying: VaryingQuantities) {
  const taken = record({ to: reference().describe("Stage it is taken to, its work here unfinished.") });
  const headInHand = z
    .union([z.literal("resume"), taken])
    .default("resume")
    .describe('The head in hand: its work resumes after the repair ("resume"), or it is taken to another stage.');
  return listed(record({ ...parts(varying), headInHand }));
}

function listed<Breakdown extends z.ZodType>(breakdown: Breakdown) {
  return z.array(breakdown).max(CEILINGS.breakdowns).default([]).describe("Breakdowns and short stops. Default: none.");
}

function parts(varying: VaryingQuantities) {
  return {
    name: name().describe("What stops it."),
    clock: z
      .enum(["running", "calendar"])
      .default("running")
      .describe("Whether the uptime counts only while a position works, or always."),
    scope: z
      .enum(["position", "station"])
      .default("position")
      .describe("Whether one position stops, or all positions of the station together."),
    uptime: varying.timeAboveZero.describe("Time from the end of one repair to the next stop."),
    repair: varying.time.describe("Time from the stop until it runs again."),
    replaced: record({
      after: quantityAboveZero(time).describe(
        "So long after the last repair or replacement, on the breakdown's clock.",
      ),
      takes: quantity(time).describe("Time that the replacement takes."),
    })
      .nullable()
      .default(null)
      .describe("What wears is replaced before it breaks. Default: null, it runs until it breaks."),
    crew: crewName(
      "Crew that gives one person for the whole repair, first come first served. Default: null, help is always at hand.",
    ),
  };
}
