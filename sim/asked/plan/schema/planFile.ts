import { z } from "zod";
import { rate } from "../../../text/units/index.ts";
import type { TextFiles } from "../textFiles.ts";
import { CEILINGS } from "./ceilings.ts";
import { crew } from "./crew.ts";
import { day } from "./day.ts";
import { gate } from "./gate.ts";
import { limit } from "./limit.ts";
import { liveHandling } from "./liveHandling.ts";
import { money } from "./money.ts";
import { plantUtilities } from "./plantUtilities.ts";
import { bodyParts, presentation } from "./presentation.ts";
import { quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { sharedBreakdown } from "./sharedBreakdown.ts";
import { source } from "./source.ts";
import { stage } from "./stage.ts";
import { stunned } from "./stunned.ts";
import { supply } from "./supply.ts";
import { freeText, name } from "./text.ts";
import { varyingQuantities } from "./varying.ts";
import { vessel } from "./vessel.ts";

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
    sharedBreakdowns: z
      .array(sharedBreakdown(varying))
      .max(CEILINGS.sharedBreakdowns)
      .default([])
      .describe("Breakdowns that stop several stages at once. Default: none."),
    line: z
      .array(stage(varying))
      .min(1)
      .max(CEILINGS.stages)
      .describe(
        `Stages in the order heads pass them; the first takes heads out of the crates. At most ${CEILINGS.stages}, stations on chains included.`,
      ),
    limits: z.array(limit()).max(CEILINGS.limits).default([]).describe("Watched times. Default: none."),
    gates: z
      .array(gate())
      .max(CEILINGS.gates)
      .default([])
      .describe("At most so many heads between two points of their way. Default: none."),
    stunned: stunned()
      .nullable()
      .default(null)
      .describe("What is done so that no stunned animal waits for its sticking. Default: null, nothing."),
    vessels: z
      .array(vessel())
      .max(CEILINGS.vessels)
      .default([])
      .describe("Tanks, bins and troughs that by-products run into. Default: none."),
    utilities: plantUtilities()
      .nullable()
      .default(null)
      .describe(
        "What the plant uses beside its stages: hot water, cleaning, compressed air, ventilation. Default: null.",
      ),
    money: money().nullable().default(null).describe("What it all costs and earns. Default: null, no money."),
    dressing: freeText()
      .default("")
      .describe(
        'What stays on the carcass, in words, where no "presentation" says it: a dressing percentage means nothing without it.',
      ),
    presentation: presentation()
      .nullable()
      .default(null)
      .describe(
        "What is sold as a carcass; yields and the parts that stages take off follow. Default: null, not said.",
      ),
    bodyParts: bodyParts()
      .nullable()
      .default(null)
      .describe('What an animal is made of; together 100 %. Needed where a stage takes off "parts". Default: null.'),
  });
}

/** A plan file of sound shape: SI numbers, clock times in seconds after midnight, defaults filled in. */
export type PlanFile = z.output<ReturnType<typeof planFile>>;
