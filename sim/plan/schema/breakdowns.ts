import { z } from "zod";
import { CEILINGS } from "./ceilings.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";

/** Breakdowns and short stops of one station or crate step. */
export function breakdowns(varying: VaryingQuantities) {
  return z
    .array(breakdown(varying))
    .max(CEILINGS.breakdowns)
    .default([])
    .describe("Breakdowns and short stops. Default: none.");
}

function breakdown(varying: VaryingQuantities) {
  return record({
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
  });
}
