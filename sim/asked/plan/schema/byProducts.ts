import { z } from "zod";
import { CHILL_LOSS, REMOVABLE_PARTS } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { share } from "./readBy.ts";
import { record } from "./record.ts";
import { name, reference } from "./text.ts";

/** What the work takes off the head. */
export function byProducts() {
  return z
    .array(
      record({
        name: name().describe("Name of the by-product or product, such as blood, skins, hind legs."),
        share: share().optional().describe('Its part of the mass. Either this or "parts".'),
        parts: z
          .array(z.enum([...REMOVABLE_PARTS, CHILL_LOSS]))
          .min(1)
          .optional()
          .describe(
            'Body parts in it, whose shares "bodyParts" gives; one that the presentation keeps stays on. Or "chillLoss", the drip. Either this or "share".',
          ),
        of: z
          .enum(["live weight", "what is left"])
          .default("live weight")
          .describe("What it is a share of: the live weight, or what is still on the head."),
        vessel: reference().nullable().default(null).describe("Vessel it runs into. Default: null, away at once."),
      }),
    )
    .max(CEILINGS.byProducts)
    .default([])
    .describe("What is taken off the head when the work here ends. Default: nothing.");
}
