import { welfareLead } from "../../viz/index.ts";
import { type CrewRecord, STATES, type StageRecord } from "../day/engine/index.ts";
import { OWN_TIME, ownShare, WORK_IN_HAND } from "../day/observations/index.ts";
import type { StudyResults } from "../days/results/index.ts";
import { formatResponse, textTable } from "../text/units/index.ts";
import { partsTable } from "./partsTable.ts";
import { whereTimeWent } from "./whyTables.ts";

/** One day as lines of text: what came out, when it ended, limits, people, then the stages with what they did. */
export function daySummary(results: StudyResults): string[] {
  const { day, values, dayNotes = [] } = results.variants[0]!;
  const rows = results.responses
    // Said in a sentence of its own where it applies.
    .filter(({ key }) => key !== "unfinished")
    .map((info) => {
      const value = values[info.key]?.[0] ?? null;
      return [info.label, value === null ? "no value" : formatResponse(value, info, day.startClockSeconds)];
    });
  const ending = day.status === "finished" ? [] : [unfinishedNote(day.status)];
  const capacity = results.capacity === null ? [] : ["", results.capacity.words];
  const why = results.variants[0]!.why;
  const owed = why === null ? [] : ["", ...whereTimeWent(why), "", ...partsTable(why)];
  const lead = welfareLead(results);
  return [
    ...(lead === null ? [] : [lead]),
    ...ending,
    ...dayNotes,
    ...textTable(rows),
    ...capacity,
    "",
    ...stageTable(day.stages),
    ...crewTable(day.crews),
    ...owed,
  ];
}

function unfinishedNote(status: "ceiling" | "stuck"): string {
  const reason = status === "ceiling" ? "it was cut off at the plan's longest day" : "nothing could move any more";
  return `This day did not end by itself: ${reason}.`;
}

/** Shares of each station's own time; time on break stands beside them. */
function stageTable(stages: readonly StageRecord[]): string[] {
  const header = ["stage, share of own time", ...STATES, "waiting, mean", "most"];
  return [...textTable([header, ...stages.map(stageRow)]), `${OWN_TIME} ${ON_BREAK}`];
}

const ON_BREAK = "On break: share of the time from its first head to its last.";

function stageRow({ name, ownTime, queue }: StageRecord): string[] {
  const shares = STATES.map((state) => {
    const share = ownShare(ownTime, state);
    return share === null ? "-" : `${(share * 100).toFixed(1)} %`;
  });
  return [name, ...shares, queue.mean.toFixed(1), String(queue.max)];
}

/** What each crew's work in hand was, in person-hours. */
function crewTable(crews: readonly CrewRecord[]): string[] {
  if (crews.length === 0) return [];
  const header = [
    "crew, person-hours",
    "on duty",
    "with work in hand",
    "at its stations",
    "repairs waited out",
    "jobs",
  ];
  return ["", ...textTable([header, ...crews.map(crewRow)]), WORK_IN_HAND];
}

function crewRow({ name, presentSeconds, busySeconds, work, jobSeconds }: CrewRecord): string[] {
  const hours = (seconds: number) => (seconds / 3600).toFixed(1);
  const waited = work.reduce((sum, { repairSeconds }) => sum + repairSeconds, 0);
  return [name, ...[presentSeconds, busySeconds, busySeconds - jobSeconds - waited, waited, jobSeconds].map(hours)];
}
