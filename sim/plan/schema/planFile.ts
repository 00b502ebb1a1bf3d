import { z } from "zod";
import { rate } from "../../units/index.ts";
import type { TextFiles } from "../textFiles.ts";
import { CEILINGS } from "./ceilings.ts";
import { crew } from "./crew.ts";
import { day } from "./day.ts";
import { limit } from "./limit.ts";
import { liveHandling } from "./liveHandling.ts";
import { quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { source } from "./source.ts";
import { stage } from "./stage.ts";
import { supply } from "./supply.ts";
import { freeText, name } from "./text.ts";
import { varyingQuantities } from "./varying.ts";

/** The shape of the plan file. What one part says of another is checked by the rules; see `readPlan`. */
export function planFile(files: TextFiles) {
  const varying = varyingQuantities(files);
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the plan."),
    notes: freeText().default("").describe("Anything a reader should know."),
    target: quantityAboveZero(rate)
      .nullable()
      .default(null)
      .describe("Heads per hour the owner wants: drawn and reported, never enforced. Default: null, none."),
    sources: z.array(source()).max(CEILINGS.sources).default([]).describe("Where the figures come from."),
    day: day().describe("Shifts, breaks and how the day ends."),
    supply: supply(varying).describe(`Where the heads come from. At most ${CEILINGS.heads} heads in all.`),
    liveHandling: liveHandling(varying)
      .nullable()
      .default(null)
      .describe("Crates; with a supply in loads, and only then."),
    crews: z.array(crew()).max(CEILINGS.crews).default([]).describe("Pools of people. Default: none."),
    line: z
      .array(stage(varying))
      .min(1)
      .max(CEILINGS.stages)
      .describe(
        `Stages in the order heads pass them; the first takes heads out of the crates. At most ${CEILINGS.stages}.`,
      ),
    limits: z.array(limit()).max(CEILINGS.limits).default([]).describe("Watched times. Default: none."),
  });
}

/** A plan file of sound shape: SI numbers, clock times in seconds after midnight, defaults filled in. */
export type PlanFile = z.output<ReturnType<typeof planFile>>;
