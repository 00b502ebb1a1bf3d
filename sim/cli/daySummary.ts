import { STATES, type StageRecord } from "../engine/index.ts";
import { formatResponse } from "../observations/index.ts";
import type { StudyResults } from "../results/index.ts";
import { textTable } from "./textTable.ts";
import { partsTable, whereTimeWent } from "./whyTables.ts";

/** One day as lines of text: what came out, when it ended, limits, people, then the stages with what they did. */
export function daySummary(results: StudyResults): string[] {
  const { day, values } = results.variants[0]!;
  const rows = results.responses
    // Said in a sentence of its own where it applies.
    .filter(({ key }) => key !== "unfinished")
    .map((info) => {
      const value = values[info.key]?.[0] ?? null;
      return [info.label, value === null ? "no value" : formatResponse(value, info, day.startClockSeconds)];
    });
  const ending = day.status === "finished" ? [] : [unfinishedNote(day.status, day.stuckAt)];
  const capacity = results.capacity === null ? [] : ["", results.capacity.words];
  const why = results.variants[0]!.why;
  const owed = why === null ? [] : ["", ...whereTimeWent(why), "", ...partsTable(why)];
  return [...ending, ...textTable(rows), ...capacity, "", ...stageTable(day.stages), ...owed];
}

function unfinishedNote(status: "ceiling" | "stuck", stuckAt: readonly string[]): string {
  const held = stuckAt.length === 0 ? "" : ` Heads are left at: ${stuckAt.join(", ")}.`;
  const reason = status === "ceiling" ? "it was cut off at the plan's longest day" : "nothing could move any more";
  return `This day did not end by itself: ${reason}.${held}`;
}

function stageTable(stages: readonly StageRecord[]): string[] {
  const header = ["stage", ...STATES, "waiting, mean", "most"];
  return textTable([header, ...stages.map(stageRow)]);
}

function stageRow({ name, stateSeconds, queue }: StageRecord): string[] {
  const total = stateSeconds.reduce((sum, seconds) => sum + seconds, 0);
  const shares = STATES.map((_, state) => (total > 0 ? `${((stateSeconds[state]! / total) * 100).toFixed(1)} %` : "-"));
  return [name, ...shares, queue.mean.toFixed(1), String(queue.max)];
}
