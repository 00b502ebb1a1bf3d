import { z } from "zod";
import { breakdowns } from "./breakdowns.ts";
import { CEILINGS } from "./ceilings.ts";
import { record } from "./record.ts";
import { reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** How crates get from the lorry to the hanging point. */
export function liveHandling(varying: VaryingQuantities) {
  return record({
    unloading: crateStep(varying).describe("From the lorry to the lairage."),
    lairageCrates: z
      .union([whole(1, CEILINGS.crates), z.null()])
      .describe("Crates the lairage holds; null for no limit. A lorry waits while it is full."),
    feeding: crateStep(varying).describe("From the lairage to the hanging point."),
    cratesAtHanging: whole(1, CEILINGS.cratesPerLoad)
      .default(2)
      .describe("Crates that stand at the hanging point at once, the one being emptied included."),
  });
}

function crateStep(varying: VaryingQuantities) {
  return record({
    positions: whole(1, CEILINGS.positions).default(1).describe("Crates handled side by side."),
    perCrate: varying.time.describe("Time for one crate."),
    crew: reference()
      .nullable()
      .default(null)
      .describe("Crew that holds each position meanwhile. Default: null, nobody."),
    peoplePerPosition: whole(1, CEILINGS.peoplePerPosition).default(1).describe("People it takes at each position."),
    breakdowns: breakdowns(varying),
  });
}
