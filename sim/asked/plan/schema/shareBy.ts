import { z } from "zod";
import { mass, time } from "../../../text/units/index.ts";
import { SHARE_SHAPES } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { point } from "./limit.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";

/** A share that depends on the head's live weight, or on the time it took between two points of its way. */
export function shareBy() {
  const atWeight = record({
    at: quantityAboveZero(mass).describe("Live weight."),
    share: share().describe("Share of heads of that weight."),
  });
  const atTime = record({
    at: quantity(time).describe("Time between the two points."),
    share: share().describe("Share of heads that took that time."),
  });
  return record({
    weight: z
      .array(atWeight)
      .min(1)
      .max(CEILINGS.sharePoints)
      .optional()
      .describe('The share by live weight, lightest first. Either this or "time".'),
    time: z
      .array(atTime)
      .min(1)
      .max(CEILINGS.sharePoints)
      .optional()
      .describe('The share by the time from "from" to "to", shortest first. Either this or "weight".'),
    from: point().optional().describe("With time: where it starts."),
    to: point().optional().describe("With time: where it ends. Default: the end of the work of this stage."),
    between: z
      .enum(SHARE_SHAPES)
      .default("a line")
      .describe("Whether the share runs straight from point to point, or goes in steps: each holds from its point on."),
  });
}
