import { z } from "zod";
import { foundWords, type Reading } from "../../../text/units/index.ts";
import { freeText, isRecord, name, readBy, record, saidText } from "../../plan/index.ts";
import { ERROR_RATES, QUESTION_KINDS } from "../study.ts";
import { designFile, MAX_VARIANTS } from "./designFile.ts";
import { controls, matters, replications, selection } from "./procedureFile.ts";
import { seed } from "./seed.ts";

const MAX_RESPONSES = 100;

/** The shape of the study file. That its paths and responses exist is checked by `readStudy`. */
export function studyFile() {
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the study."),
    question: freeText().default("").describe("What the study is to answer, in a sentence."),
    asks: z
      .enum(QUESTION_KINDS)
      .optional()
      .describe(
        "What kind of question it is, so that the answer fits it: is a change worth it, which plan is best, how much of " +
          "something is enough, where is the bottleneck, is a limit kept, what will the day be, what matters most, " +
          "what happens if something comes otherwise than planned. " +
          "Default: as what is varied and asked for suggests.",
      ),
    matters: matters().default([]),
    reader: saidText()
      .default("process engineer")
      .describe(
        "For whom it is written: planner, engineer, owner, veterinarian or trainer, in your own words. Shown in the " +
          "report; sets what the first sentence and the first columns tell.",
      ),
    plan: planReference().describe(
      "The base plan: the path of its file, from the folder of the study, or the plan itself.",
    ),
    baseName: name().prefault("base").describe("What the base plan is called among the variants."),
    seed: seed()
      .prefault("1")
      .describe("Any text or whole number; the same seed gives the same results to the last digit."),
    replications: replications().optional(),
    antithetic: z
      .boolean()
      .default(false)
      .describe("Run days in pairs, the second on the first one's random numbers mirrored; a pair is one observation."),
    controls: controls().default([]),
    confidence: z.number().min(0.5).max(0.9999).default(0.95).describe("Two-sided confidence of every interval."),
    errorRate: z
      .enum(ERROR_RATES)
      .default("family-wise")
      .describe(
        "What is kept small when several variants are compared with the base: the chance of even one false difference " +
          "(family-wise, Bonferroni), the share of false ones among those shown (false discovery, Benjamini and Hochberg), " +
          "or the chance of a false one each time (per comparison).",
      ),
    selection: selection().optional(),
    responses: z
      .array(name())
      .max(MAX_RESPONSES)
      .default([])
      .describe("Keys of the responses to report, the headline first. Default: empty, the program's own choice."),
    why: z
      .boolean()
      .default(true)
      .describe(
        "Tell what the line waited for up to the end of work, and which station was the bottleneck; takes a little time.",
      ),
    design: designFile()
      .optional()
      .describe(`What is varied; at most ${MAX_VARIANTS} variants besides the base. Default: the base alone.`),
  });
}

export type StudyFile = z.output<ReturnType<typeof studyFile>>;

/** A plan by the path of its file, or the plan itself. */
export function planReference() {
  return readBy(readPlanReference, { anyOf: [{ type: "string", minLength: 1 }, { type: "object" }] });
}

function readPlanReference(written: unknown): Reading<string | Record<string, unknown>> {
  if (isRecord(written) || (typeof written === "string" && written !== "")) return { value: written, fault: null };
  const allowed = "the path of a plan file, or a plan";
  return {
    value: null,
    fault: {
      found: `${foundWords(written)} is not a plan`,
      allowed,
      remedy: 'write for example "../plans/small.json"',
    },
  };
}
