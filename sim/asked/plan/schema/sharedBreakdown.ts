import { z } from "zod";
import { SHARED_CLOCKS } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { crewName } from "./crewNames.ts";
import { record } from "./record.ts";
import { name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";

/** One breakdown that stops several stages at once. */
export function sharedBreakdown(varying: VaryingQuantities) {
  return record({
    name: name().describe("What stops them: the power, a control board, the compressor."),
    stops: z
      .array(reference())
      .min(1)
      .max(CEILINGS.stages)
      .describe(
        "Stations, on chains or not, chains and crate steps that it stops, by the names that results give them.",
      ),
    clock: z
      .enum(SHARED_CLOCKS)
      .default("any running")
      .describe("Whether the uptime counts while any of them works, only while all of them do, or always."),
    uptime: varying.timeAboveZero.describe("Time from the end of one repair to the next stop."),
    repair: varying.time.describe("Time from the stop until they run again."),
    crew: crewName(
      "Crew that gives one person for the whole repair, first come first served. Default: null, help is always at hand.",
    ),
  });
}
