import { z } from "zod";
import { freeText, name, readBy, readDate, record, share, whole } from "../../asked/plan/index.ts";
import { planReference, seed } from "../../asked/study/index.ts";

/** Weeks of a year, and one more. */
const MAX_ENTRIES = 60;
const MAX_TIMES = 60;
const MAX_WEEKS = 10_000;

/** The shape of the file. What it says of the plan is checked by `readSeason`. */
export function seasonFile() {
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the season."),
    question: freeText().default("").describe("What is to be found out, in a sentence."),
    plan: planReference().describe(
      "A plan with a week: the path of its file, from the folder of this one, or the plan itself.",
    ),
    begins: readBy(readDate, { type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$", examples: ["2031-01-06"] })
      .nullable()
      .default(null)
      .describe("Monday of the first week. Default: null, weeks are counted from 1."),
    seed: seed().prefault("1").describe("Any text or whole number; the same seed gives the same results."),
    runs: whole(2, MAX_WEEKS).default(8).describe("How many weeks are simulated of every kind of week."),
    confidence: z.number().min(0.5).max(0.9999).default(0.95).describe("Of every interval."),
    absent: share()
      .optional()
      .describe(
        "Chance of each person of every crew to be missing on a day, before the weeks' own factors. Default: as the plan says of its crews.",
      ),
    set: z
      .record(z.string(), z.unknown())
      .default({})
      .describe("What is otherwise in all weeks, by path of the plan. Default: nothing."),
    weeks: z.array(entry()).min(1).max(MAX_ENTRIES).describe("In the order of the calendar."),
  });
}

export type SeasonFile = z.output<ReturnType<typeof seasonFile>>;

function entry() {
  return record({
    name: name().describe("What these weeks are called."),
    notes: freeText().default("").describe("Why they are as they are."),
    times: whole(1, MAX_TIMES).default(1).describe("So many of them, one after another."),
    heads: factor(0.1, 3).describe(
      "Animals of every lorry, and what is ordered, so many times the plan's: whole crates. Default: 1.",
    ),
    weight: factor(0.5, 2).describe("Their live weight, so many times the plan's. Default: 1."),
    absence: factor(0, 20).describe("The chance that somebody is missing, so many times the usual. Default: 1."),
    set: z
      .record(z.string(), z.unknown())
      .default({})
      .describe("What else is otherwise in these weeks, by path of the plan. Default: nothing."),
  });
}

function factor(least: number, most: number) {
  return z.number().min(least).max(most).default(1);
}

/** The JSON Schema (draft 2020-12) of files of seasons, made from the validator itself. */
export function seasonJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(seasonFile(), { io: "input", target: "draft-2020-12" });
  const description = "A plan with a week, and the weeks of a year by how they differ from it.";
  return { $schema, title: "Gambrel season", description, ...rest };
}
