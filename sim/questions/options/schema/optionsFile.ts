import { z } from "zod";
import { freeText, moneyAmount, name, record, share, whole } from "../../../asked/plan/index.ts";
import { changeKeys, planReference, seed } from "../../../asked/study/index.ts";

const MAX_OPTIONS = 100;
const MAX_YEARS = 100;
const DAYS_OF_YEAR = 366;
const MAX_PEOPLE = 1000;
const MAX_DAYS = 100_000;

/** The shape of the options file. What its changes do to the plan is checked by `readOptions`. */
export function optionsFile() {
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the line-up."),
    question: freeText().default("").describe("What is to be decided, in a sentence."),
    plan: planReference().describe(
      "The plan as it is: the path of its file, from the folder of this one, or the plan itself. It needs money.",
    ),
    baseName: name().prefault("as it is").describe("What the plan as it is is called."),
    seed: seed().prefault("1").describe("Any text or whole number; the same seed gives the same results."),
    replications: whole(2, MAX_DAYS)
      .default(40)
      .describe("Days simulated of the plan and of every option, on the same random numbers."),
    confidence: z.number().min(0.5).max(0.9999).default(0.95).describe("Of all intervals at once."),
    interest: share().describe('Interest a year, such as "6 %".'),
    daysPerYear: whole(1, DAYS_OF_YEAR).describe("Working days a year."),
    options: z.array(offer()).min(1).max(MAX_OPTIONS).describe("What suppliers offer, each by itself."),
  });
}

export type OptionsFile = z.output<ReturnType<typeof optionsFile>>;

/** One offer: what it changes, what it costs. */
export function offer() {
  return record({
    name: name().describe("Name of the option."),
    ...changeKeys(),
    crew: z
      .record(z.string(), z.int().min(-MAX_PEOPLE).max(MAX_PEOPLE))
      .optional()
      .describe('People more or fewer by crew: { "skinning": -1 }; in every shift in which the crew has people.'),
    price: moneyAmount().describe("Purchase, set up and running."),
    life: z.number().gt(0).max(MAX_YEARS).describe("Years of use."),
    residual: moneyAmount().optional().describe("What it brings after that. Default: nothing."),
    servicePerYear: moneyAmount().optional().describe("Service and spare parts a year. Default: nothing."),
  });
}
