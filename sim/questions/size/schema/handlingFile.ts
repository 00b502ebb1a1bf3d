import type { z } from "zod";
import {
  breakdowns,
  quantity,
  quantityAboveZero,
  record,
  share,
  type VaryingQuantities,
  whole,
} from "../../../asked/plan/index.ts";
import { power, volume } from "../../../text/units/index.ts";

const MAX_AT_ONCE = 1000;
const MAX_PEOPLE = 20;

/** What a demand says of the crate steps of each way; keys left out are those of the usual step. */
export function handlingFile(varying: VaryingQuantities) {
  const step = (words: string) => crateStep(varying).optional().describe(words);
  const common = {
    unloading: step("From the lorry to the lairage."),
    feeding: step("From the lairage to the hanging point."),
    washing: step("Of the emptied crates."),
    restacking: step("Of the washed crates, for the lorry."),
  };
  return record({
    "hand-slid": record(common).prefault({}).describe("Crates slid by hand."),
    lift: record(common).prefault({}).describe("A lift for the top crate of a stack."),
    automatic: record({ ...common, palletsOut: step("Of the stacked pallets.") })
      .prefault({})
      .describe("Pallets unstacked and stacked by machine."),
  });
}

/** One step on crates. */
export function crateStep(varying: VaryingQuantities) {
  return record({
    time: varying.timeAboveZero.optional().describe("Time for the crates that are handled at once."),
    cratesAtOnce: whole(1, MAX_AT_ONCE).optional().describe("Crates handled at once: a stack, say. Default: 1."),
    people: whole(0, MAX_PEOPLE).optional().describe("People at each position; 0 for a machine."),
    waterPerCrate: quantity(volume).optional().describe("Water for each crate; of washing."),
    waterReused: share().optional().describe("Share of that water that is used again; of washing."),
    power: quantityAboveZero(power).optional().describe("Power of one machine, drawn as long as the line runs."),
    breakdowns: breakdowns(varying).optional(),
  });
}

export type CrateStepFile = z.output<ReturnType<typeof crateStep>>;
