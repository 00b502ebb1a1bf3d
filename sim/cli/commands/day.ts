import type { StudyResults } from "../../results/index.ts";
import { stableJson } from "../../results/index.ts";
import { runSingleDay, type TraceKind } from "../../run/index.ts";
import { CAUTION } from "../caution.ts";
import { commandLine } from "../commandLine.ts";
import { daySummary } from "../daySummary.ts";
import { readInputFile } from "../inputFile.ts";
import { loadPlan } from "../loadPlan.ts";
import { programVersion } from "../programVersion.ts";
import type { Terminal } from "../terminal.ts";

export interface DayCommandOptions {
  seed: string;
  replication: number;
  traces: TraceKind;
  verify?: boolean;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
}

/** Simulates one day of a plan; writes a run folder only when one is named. */
export async function dayCommand(terminal: Terminal, path: string, options: DayCommandOptions): Promise<void> {
  const file = readInputFile(path);
  const plan = loadPlan(file);
  const { seed, replication, traces, verify = false, out, overwrite = false } = options;
  // The report is a heavy thing to load: only when it is asked for, and before the run, so that a bad folder costs no
  // time.
  const writer = out === undefined ? null : await import("../writeRun.ts");
  if (out !== undefined) writer?.checkRunFolder(out, overwrite);
  const command = commandLine(["gambrel", "day", path, "--seed", seed, "--replication", String(replication)]);
  const results = runSingleDay(plan, seed, traces, { gambrel: programVersion(), command, replication, check: verify });
  if (out !== undefined) writer?.writeRun(out, { results, plan: file.json, studyText: null }, overwrite);
  tell(terminal, results, options);
}

function tell(terminal: Terminal, results: StudyResults, { seed, replication, out, json }: DayCommandOptions): void {
  terminal.say(results.study.name, "bold");
  terminal.say(`One day, seed "${seed}", replication ${replication}. One day has no interval: use a study to compare.`);
  for (const line of daySummary(results)) terminal.say(line);
  terminal.say(CAUTION, "dim");
  terminal.say(
    out === undefined
      ? "Nothing was written; --out FOLDER writes report, charts and tables."
      : `Written: ${out}/report.html and more.`,
  );
  if (json) terminal.data(stableJson(results));
}
