import type { DayJournal, DaySource, SimulatedDay } from "../index.ts";
import { simulatedDayShape, sourceDigest } from "../wire/index.ts";
import { type JournalOptions, type OpenLines, openLines } from "./openLines.ts";

/** One of `keep` and `discard` ends it. */
export interface OpenJournal extends DayJournal, Pick<OpenLines<SimulatedDay>, "folder" | "keep" | "discard"> {
  known: readonly SimulatedDay[];
}

/** Opens the journal of a study's run into `folder`; see `openLines`. */
export function openJournal(folder: string, source: DaySource, options: JournalOptions): OpenJournal {
  const shape = simulatedDayShape(source);
  const { add, ...journal } = openLines(folder, { of: "study", digest: sourceDigest(source), shape }, options);
  return { ...journal, note: add };
}
