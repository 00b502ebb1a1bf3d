import { z } from "zod";
import { time } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { quantity } from "./readBy.ts";
import { record } from "./record.ts";
import { liveWeight } from "./supply.ts";
import { name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** What stands and hangs in the plant when the day begins, or the first day of a week. */
export function atStart(varying: VaryingQuantities) {
  const lot = () => name().nullable().default(null).describe("Farm or lot. Default: null, a lot of its own.");
  const crates = record({
    lot: lot(),
    crates: whole(1, CEILINGS.cratesPerLoad).describe("Crates in lairage."),
    headsPerCrate: whole(1, CEILINGS.headsPerCrate).describe("Heads in each crate."),
    for: quantity(time).describe("How long they have been there when the day's clock starts."),
    liveWeight: liveWeight(varying),
  });
  const carcasses = record({
    in: reference().describe("Dwell stage in which they hang, a chiller."),
    lot: lot(),
    heads: whole(1, CEILINGS.places).describe("How many."),
    for: quantity(time).describe("How long they have hung there when the day's clock starts."),
    liveWeight: liveWeight(varying),
  });
  return record({
    crates: z.array(crates).max(CEILINGS.loads).default([]).describe("Animals in lairage. Default: none."),
    carcasses: z.array(carcasses).max(CEILINGS.loads).default([]).describe("Carcasses in chillers. Default: none."),
  });
}
