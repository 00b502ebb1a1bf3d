import { z } from "zod";
import { freeText, isRecord, name, oneKeyOf, readBy, record, saidText, whole } from "../plan/index.ts";
import { foundWords, type Reading } from "../units/index.ts";

export const MOST_VARIANTS = 2000;
const MOST_REPLICATIONS = 100_000;
const MOST_FACTORS = 10;
const MOST_RESPONSES = 100;

/** The shape of the study file. That its paths and responses exist is checked by `readStudy`. */
export function studyFile() {
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the study."),
    question: freeText().default("").describe("What the study is to answer, in a sentence."),
    reader: saidText().default("process engineer").describe("For whom it is written: shown in the report."),
    plan: planReference().describe(
      "The base plan: the path of its file, from the folder of the study, or the plan itself.",
    ),
    baseName: name().prefault("base").describe("What the base plan is called among the variants."),
    seed: seed()
      .prefault("1")
      .describe("Any text or whole number; the same seed gives the same results to the last digit."),
    replications: whole(1, MOST_REPLICATIONS).default(20).describe("How many days are simulated of every variant."),
    confidence: z.number().min(0.5).max(0.9999).default(0.95).describe("Two-sided confidence of every interval."),
    responses: z
      .array(name())
      .max(MOST_RESPONSES)
      .default([])
      .describe("Keys of the responses to report, the headline first. Default: empty, the program's own choice."),
    design: design()
      .optional()
      .describe(`What is varied; at most ${MOST_VARIANTS} variants besides the base. Default: the base alone.`),
  });
}

export type StudyFile = z.output<ReturnType<typeof studyFile>>;

function design() {
  return oneKeyOf({
    list: z
      .array(
        record({
          name: name().describe("Name of the variant."),
          set: changes().describe("What it changes: path in the plan -> new value, set in this order."),
        }),
      )
      .min(1)
      .max(MOST_VARIANTS)
      .optional()
      .describe("Named variants, each with its changes."),
    factorial: record({
      factors: z.array(factor()).min(1).max(MOST_FACTORS).describe("What is varied; every combination is run."),
    })
      .optional()
      .describe("Every combination of the levels of all factors."),
  });
}

function factor() {
  return record({
    name: name().describe("Name of the factor, for tables and charts."),
    path: saidText().describe('What it sets: such as "line.skinning.buffer".'),
    levels: z
      .array(z.unknown())
      .min(2)
      .max(MOST_VARIANTS)
      .describe("The values it takes, as the plan file would write them."),
    labels: z.array(name()).optional().describe("Words for the levels, one each. Default: the values themselves."),
  });
}

function planReference() {
  return readBy(readPlanReference, { anyOf: [{ type: "string", minLength: 1 }, { type: "object" }] });
}

function readPlanReference(written: unknown): Reading<string | Record<string, unknown>> {
  if (isRecord(written) || (typeof written === "string" && written !== "")) return { value: written, fault: null };
  const allowed = "the path of a plan file, or a plan";
  return {
    value: null,
    fault: { found: `${foundWords(written)} is no plan`, allowed, remedy: 'write for example "../plans/small.json"' },
  };
}

function seed() {
  return readBy(readSeed, { anyOf: [{ type: "string", minLength: 1, maxLength: 60 }, { type: "integer" }] });
}

function readSeed(written: unknown): Reading<string> {
  if (Number.isSafeInteger(written)) return { value: String(written), fault: null };
  if (typeof written === "string" && written.length >= 1 && written.length <= 60)
    return { value: written, fault: null };
  const allowed = "a text of 1 to 60 characters, or a whole number";
  return {
    value: null,
    fault: { found: `${foundWords(written)} is no seed`, allowed, remedy: 'write for example "2026"' },
  };
}

/** Kept as written: a schema of keys and values would pass over a key such as "__proto__" in silence. */
function changes() {
  return readBy(readChanges, { type: "object", minProperties: 1 });
}

function readChanges(written: unknown): Reading<Record<string, unknown>> {
  if (isRecord(written) && Object.keys(written).length > 0) return { value: written, fault: null };
  const remedy = 'write for example { "line.skinning.buffer": 12 }';
  return {
    value: null,
    fault: { found: `${foundWords(written)} changes nothing`, allowed: "paths with their new values", remedy },
  };
}
