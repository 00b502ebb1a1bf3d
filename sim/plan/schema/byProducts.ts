import { z } from "zod";
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
        share: share().describe("Its part of the mass."),
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
