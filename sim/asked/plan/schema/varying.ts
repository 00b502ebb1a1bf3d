import { z } from "zod";
import type { Varying } from "../../../maths/varying/index.ts";
import { mass, time, type UnitFamily } from "../../../text/units/index.ts";
import type { TextFiles } from "../textFiles.ts";
import { CEILINGS } from "./ceilings.ts";
import { csvColumn } from "./csvColumn.ts";
import { quantity, quantityAboveZero } from "./readBy.ts";
import { oneKeyOf, record } from "./record.ts";

const MAX_CV = 10;
const MAX_PHASES = 1000;

/** The varying quantities of a plan: each is a quantity (always the same) or one of the distributions. */
export function varyingQuantities(files: TextFiles) {
  return {
    time: varying(time, quantity(time), files).meta({ id: "varyingTime", description: words("A time") }),
    timeAboveZero: varying(time, quantityAboveZero(time), files).meta({
      id: "varyingTimeAboveZero",
      description: words("A time of more than 0 s"),
    }),
    massAboveZero: varying(mass, quantityAboveZero(mass), files).meta({
      id: "varyingMass",
      description: words("A mass of more than 0 kg"),
    }),
  };
}

export type VaryingQuantities = ReturnType<typeof varyingQuantities>;

function words(what: string): string {
  return `${what}: always the same ("${what.includes("mass") ? "2.5 kg" : "4.2 s"}"), or a distribution.`;
}

function varying(family: UnitFamily, constant: ReturnType<typeof quantity>, files: TextFiles) {
  const always = constant.transform((value): Varying => ({ family: "constant", value }));
  const choice = oneKeyOf({ ...byMean(family), ...byLimits(family), empirical: empirical(family, files).optional() });
  return z.union([always, choice.transform((chosen) => Object.values(chosen)[0] as Varying)]);
}

function byMean(family: UnitFamily) {
  const mean = quantityAboveZero(family).describe("Mean.");
  const cv = z.number().gt(0).max(MAX_CV).describe("Coefficient of variation: standard deviation divided by mean.");
  const k = z.int().min(1).max(MAX_PHASES).describe("Number of equal exponential phases.");
  const sd = quantityAboveZero(family).describe("Standard deviation, before the cut at 0.");
  return {
    exponential: record({ mean })
      .transform(named("exponential"))
      .optional()
      .describe("Exponential: no memory; the coefficient of variation is 1."),
    lognormal: record({ mean, cv })
      .transform(named("lognormal"))
      .optional()
      .describe("Lognormal: skewed to the right."),
    gamma: record({ mean, cv }).transform(named("gamma")).optional().describe("Gamma."),
    weibull: record({ mean, cv })
      .transform(named("weibull"))
      .optional()
      .describe("Weibull: often fits times to failure."),
    erlang: record({ mean, k })
      .transform(named("erlang"))
      .optional()
      .describe("Erlang: a sum of k exponential phases."),
    normal: record({ mean, sd })
      .transform(named("normal"))
      .optional()
      .describe("Normal, cut at 0 and renormalised; mean and sd are those before the cut."),
  };
}

function byLimits(family: UnitFamily) {
  const min = quantity(family).describe("Smallest value.");
  const max = quantity(family).describe("Largest value.");
  const mode = quantity(family).describe("Most frequent value.");
  const three = record({ min, mode, max }).superRefine(ordered);
  return {
    uniform: record({ min, max })
      .superRefine(ordered)
      .transform(named("uniform"))
      .optional()
      .describe("Uniform: every value from min to max is equally likely."),
    triangular: three.transform(named("triangular")).optional().describe("Triangular: for guesses in three figures."),
    pert: three
      .transform(named("pert"))
      .optional()
      .describe("PERT: beta distribution on min to max with shape 4 (Malcolm and others, 1959)."),
  };
}

function named<Family extends Varying["family"]>(family: Family) {
  return <Given extends object>(given: Given) => ({ family, ...given });
}

function ordered(given: { min: number; mode?: number; max: number }, context: z.core.$RefinementCtx): void {
  const { min, mode = min, max } = given;
  if (min < max && min <= mode && mode <= max) return;
  const isMode = min < max;
  const found = isMode ? "the mode lies outside min to max" : "min is not smaller than max";
  const allowed = isMode ? "min <= mode <= max" : "min < max";
  context.addIssue({ code: "custom", params: { found, allowed, remedy: "put the values in order" } });
}

function empirical(family: UnitFamily, files: TextFiles) {
  const list = z.array(quantity(family)).min(1).max(CEILINGS.observedValues).describe("Observed values.");
  const table = record({
    csv: z.string().min(1).describe("Path of a CSV file, from the folder of the plan."),
    column: z.string().min(1).describe("Heading of the column."),
    unit: z
      .string()
      .min(1)
      .describe("Unit of the numbers in the column.")
      .meta({ examples: [family.si] }),
  }).transform((reference, context) => {
    const reading = csvColumn(reference, family, files);
    if (reading.fault === null) return reading.value;
    context.addIssue({ code: "custom", path: [reading.about], params: { ...reading.fault } });
    return z.NEVER;
  });
  return z
    .union([list, table])
    .superRefine((values, context) => {
      if (values.some((value) => value > 0)) return;
      context.addIssue({
        code: "custom",
        params: {
          found: "nothing but zeros",
          allowed: "at least one value above 0",
          remedy: "check the values",
        },
      });
    })
    .transform((values): Varying => ({ family: "empirical", values: values.toSorted((a, b) => a - b) }))
    .describe("One of the observed values, each equally likely.");
}
