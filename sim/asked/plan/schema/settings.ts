import { z } from "zod";
import { CEILINGS } from "./ceilings.ts";
import { record } from "./record.ts";
import { name, saidText } from "./text.ts";

/** Figures that are recorded and reported, and never computed or recommended. */
export function settings() {
  return z
    .array(
      record({
        name: name().describe("What is set, such as stunning current."),
        value: saidText().describe("As the plate, manual or rule has it, with its unit."),
        source: saidText().describe("Where the figure comes from."),
      }),
    )
    .max(CEILINGS.settings)
    .default([])
    .describe("Settings that are recorded and reported, never computed or recommended. Default: none.");
}
