import { z } from "zod";
import { mass, time } from "../../../text/units/index.ts";
import { crewName } from "./crewNames.ts";
import { quantity, quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";

/** A tank, bin or trough that by-products run into. */
export function vessel() {
  return record({
    name: name().describe("Name of the vessel."),
    capacity: quantityAboveZero(mass).describe("What it holds."),
    emptyAt: quantityAboveZero(mass)
      .optional()
      .describe("Emptying is called for when so much is in it. Default: its capacity."),
    emptying: quantity(time).describe("Time it takes to empty or exchange it."),
    crew: crewName("Crew that gives one person for the emptying. Default: null, it needs nobody."),
    whenFull: z
      .enum(["stop", "spill"])
      .default("stop")
      .describe("Full: the stages that feed it stop, or it spills and the spill is counted."),
  });
}
