import { formatFault } from "../../sim/asked/plan/index.ts";
import { inThisThread, runStudy, type Simulate } from "../../sim/days/run/index.ts";
import { type ImproveQuestion, readImprove } from "../../sim/questions/improve/index.ts";
import { NO_FILES } from "./demands.ts";
import { improveFileOf } from "./improveCases.ts";

/** Simulates in this thread, without pauses. */
export const simulateHere: Simulate = (study, journal) =>
  runStudy(study, { gambrel: "test", command: "test", traces: "none", journal, runner: inThisThread(async () => {}) });

/** The question of a sound file. */
export function improveQuestion(json: Record<string, unknown>): ImproveQuestion {
  const { question, faults } = readImprove(json, NO_FILES);
  if (question === null) throw new Error(faults.map(formatFault).join("\n"));
  return question;
}

/** One of the ten cases, with some keys of its file changed. */
export function caseQuestion(changes: Record<string, unknown> = {}, index = 0): ImproveQuestion {
  return improveQuestion(improveFileOf(changes, index));
}
