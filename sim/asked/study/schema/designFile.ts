import { z } from "zod";
import { name, oneKeyOf, record, saidText, whole } from "../../plan/index.ts";
import { changeKeys } from "./changeFile.ts";
import { factorFile } from "./factorFile.ts";
import { seed } from "./seed.ts";

export const MAX_VARIANTS = 10_000;
const MAX_COMBINED = 10;
const MAX_FACTORS = 50;

/** What is varied: exactly one of five designs. */
export function designFile() {
  return oneKeyOf({
    list: z
      .array(
        record({
          name: name().describe("Name of the variant."),
          plan: saidText()
            .optional()
            .describe(
              "Path of another plan file, from the folder of the study: the variant starts from it, not from the base.",
            ),
          ...changeKeys(),
        }),
      )
      .min(1)
      .max(MAX_VARIANTS)
      .optional()
      .describe("Named variants; each sets, puts in or takes out what it says."),
    factorial: record({ factors: factors(MAX_COMBINED, "every combination is run") })
      .optional()
      .describe("Every combination of the levels of all factors."),
    oneAtATime: record({ factors: factors(MAX_FACTORS, "one differs from the base at a time") })
      .optional()
      .describe("Every level of every factor by itself, all else as in the base. A range stands for its two ends."),
    latinHypercube: record({
      factors: factors(MAX_FACTORS, "all vary at once"),
      points: whole(2, MAX_VARIANTS).describe("How many variants are drawn."),
      seed: seed().optional().describe("Seed of the drawing. Default: the study's seed."),
    })
      .optional()
      .describe("Random variants of which every factor's range is covered evenly (McKay, Beckman and Conover 1979)."),
    screening: record({
      factors: factors(MAX_FACTORS, "which of them matter is asked"),
      trajectories: whole(2, 200)
        .default(10)
        .describe("How many random walks; each costs one variant more than factors."),
      levels: whole(2, 20).default(4).describe("Levels of every factor, an even number; ranges are cut into so many."),
      seed: seed().optional().describe("Seed of the drawing. Default: the study's seed."),
    })
      .optional()
      .describe("Elementary effects: which of many factors matter, and which interact (Morris 1991)."),
  });
}

export type DesignFile = z.output<ReturnType<typeof designFile>>;

function factors(most: number, what: string) {
  return z.array(factorFile()).min(1).max(most).describe(`What is varied; ${what}.`);
}
