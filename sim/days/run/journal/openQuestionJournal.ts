import { createHash } from "node:crypto";
import { z } from "zod";
import { dayRecordShape } from "../../results/index.ts";
import type { DayJournal, DaySource } from "../index.ts";
import { exactJson, simulatedDayShape, sourceDigest } from "../wire/index.ts";
import { type JournalOptions, type OpenLines, openLines } from "./openLines.ts";

/** A day, and what it was simulated from. */
const LINE = z.strictObject({
  /** `sourceDigest` of its study. */
  source: z.string(),
  variant: z.int(),
  replication: z.int(),
  values: z.array(z.unknown()),
  day: dayRecordShape().nullable(),
});

type Line = z.output<typeof LINE>;

/** One of `keep` and `discard` ends it. */
export interface QuestionJournal extends Pick<OpenLines<Line>, "folder" | "keep" | "discard"> {
  /** The journal of one of the studies: what an earlier, unfinished run knew of it, and a place for new days. */
  of(source: DaySource): DayJournal;
}

/**
 * The journal of a run that asks one study after another, each by what the ones before it brought, such as a search;
 * see `openLines`. `question` is all that the studies depend on, as plain data. Days are found again by what they were
 * simulated from, so a study that is asked again in the same way finds its own, and no other one's. A day that is none of
 * its study (a number of values that it cannot have) is passed over, and so simulated again.
 */
export function openQuestionJournal(folder: string, question: unknown, options: JournalOptions): QuestionJournal {
  const digest = createHash("sha256").update(exactJson(question)).digest("hex");
  const { known, add, ...journal } = openLines(folder, { of: "question", digest, shape: LINE }, options);
  return {
    ...journal,
    of(source) {
      const key = sourceDigest(source);
      const shape = simulatedDayShape(source);
      const days = known.flatMap(({ source, ...day }) => {
        const found = source === key ? shape.safeParse(day) : null;
        return found?.success ? [found.data] : [];
      });
      return { known: days, note: (day) => add({ source: key, ...day }) };
    },
  };
}
