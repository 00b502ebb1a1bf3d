import { dayTold, decisionLines, welfareLead, wrappedLines } from "../../../viz/index.ts";
import { type CrewRecord, STATES, type StageRecord } from "../../day/engine/index.ts";
import { OWN_TIME, ownShare, WORK_IN_HAND } from "../../day/observations/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import { daySource, runSingleDay, singleDayStudy } from "../../days/run/index.ts";
import { formatResponse, textTable } from "../../text/units/index.ts";
import { commandLine } from "../commandLine.ts";
import { loadPlanWithWarnings, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../options.ts";
import { programVersion } from "../project.ts";
import { alone, runInto } from "../runFolder.ts";
import { CAUTION, type Terminal } from "../terminal.ts";
import { partsTable, whereTimeWent } from "../whyTables.ts";

const ON_BREAK = "On break: share of the time from the first head to the last.";

export interface DayCommandOptions {
  seed: string;
  /** Counted from 1. */
  day: number;
  traces: "none" | "binned" | "exact";
  verify?: boolean;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates one day of a plan; writes a run folder only when one is named. */
export async function dayCommand(terminal: Terminal, path: string, options: DayCommandOptions): Promise<void> {
  const ceilings = ceilingsOf(options);
  const file = readInputFile(path, ceilings);
  const { plan, warnings } = loadPlanWithWarnings(file);
  for (const warning of warnings) terminal.say(warning, "yellow");
  const { seed, day: number, traces, verify = false, out, overwrite = false } = options;
  const command = commandLine([
    "gambrel",
    "day",
    path,
    "--seed",
    seed,
    "--day",
    String(number),
    ...ceilingWords(options),
  ]);
  const { sourceDigest } = await import("../../days/run/wire/index.ts");
  const simulate = (): StudyResults =>
    runSingleDay(plan, seed, traces, {
      ...{ gambrel: programVersion(), command, replication: number - 1, check: verify, mostEvents: ceilings.events },
      inputsSha256: sourceDigest(daySource(singleDayStudy(plan, seed), traces, verify)),
    });
  const results =
    out === undefined
      ? simulate()
      : await runInto(out, overwrite, alone(out), async (write) => {
          const results = simulate();
          await write({ results, plan: file.json });
          return results;
        });
  tell(terminal, results, options);
}

function tell(terminal: Terminal, results: StudyResults, { seed, day, out, json }: DayCommandOptions): void {
  terminal.say(results.study.name, "bold");
  terminal.say(`Day ${day} of seed "${seed}". One day has no range: use a study to compare.`);
  for (const line of daySummary(results)) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  terminal.say(
    out === undefined
      ? "Nothing was written. Add --out FOLDER for report, charts and tables."
      : `Report: ${out}/report.html, with charts and tables beside it`,
  );
  if (json) terminal.data(stableJson(results));
}

/** One day as lines of text: what happened and its row of figures, then every figure, the stages with what they did, the crews. */
export function daySummary(results: StudyResults): string[] {
  const { day, values } = results.variants[0]!;
  const rows = results.responses
    // Said in a sentence of its own where it applies.
    .filter(({ key }) => key !== "unfinished")
    .map((info) => {
      const value = values[info.key]?.[0] ?? null;
      return [info.label, value === null ? "no value" : formatResponse(value, info, day.startClockSeconds)];
    });
  const why = results.variants[0]!.why;
  const owed = why === null ? [] : ["", ...whereTimeWent(why), "", ...partsTable(why)];
  const lead = welfareLead(results);
  const { verdict, words, table } = dayTold(results);
  return [
    ...(lead === null ? [] : [lead]),
    ...wrappedLines(verdict),
    ...words.flatMap((line) => wrappedLines(line, "  ")),
    "",
    ...decisionLines(table),
    "",
    ...textTable(rows),
    "",
    ...stageTable(day.stages),
    ...crewTable(day.crews),
    ...owed,
  ];
}

/** Shares of each station's own time; time on break stands beside them. */
function stageTable(stages: readonly StageRecord[]): string[] {
  const header = ["stage, share of own time", ...STATES, "waiting, mean", "most"];
  return [...textTable([header, ...stages.map(stageRow)]), `${OWN_TIME} ${ON_BREAK}`];
}

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
