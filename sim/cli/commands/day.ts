import type { StudyResults } from "../../days/results/index.ts";
import { stableJson } from "../../days/results/index.ts";
import { daySource, runSingleDay, singleDayStudy, type TraceKind } from "../../days/run/index.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { commandLine } from "../commandLine.ts";
import { daySummary } from "../daySummary.ts";
import { readInputFile } from "../inputFile.ts";
import { loadPlanWithWarnings } from "../loadPlan.ts";
import { programVersion } from "../programVersion.ts";
import { runInto } from "../runInto.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";

export interface DayCommandOptions {
  seed: string;
  /** Counted from 1. */
  day: number;
  traces: TraceKind;
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
  const results = out === undefined ? simulate() : await runInto(out, overwrite, file.json, simulate);
  tell(terminal, results, options);
}

function tell(terminal: Terminal, results: StudyResults, { seed, day, out, json }: DayCommandOptions): void {
  terminal.say(results.study.name, "bold");
  terminal.say(`Day ${day} of seed "${seed}". One day has no interval: use a study to compare.`);
  for (const line of daySummary(results)) terminal.say(line);
  terminal.say(CAUTION, "dim");
  terminal.say(
    out === undefined
      ? "Nothing was written; --out FOLDER writes report, charts and tables."
      : `Written: ${out}/report.html and more.`,
  );
  if (json) terminal.data(stableJson(results));
}
