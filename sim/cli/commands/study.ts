import { join } from "node:path";
import { type StudyResults, safeFileName, stableJson } from "../../results/index.ts";
import type { TraceKind } from "../../run/index.ts";
import type { Study } from "../../study/index.ts";
import { CAUTION } from "../caution.ts";
import { commandLine } from "../commandLine.ts";
import { readInputFile } from "../inputFile.ts";
import { loadStudy } from "../loadStudy.ts";
import { programVersion } from "../programVersion.ts";
import { simulateStudy } from "../simulateStudy.ts";
import { studySummary } from "../studySummary.ts";
import type { Terminal } from "../terminal.ts";

export interface StudyCommandOptions {
  seed?: string;
  replications?: number;
  traces: TraceKind;
  verify?: boolean;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
}

/** Runs a study; writes its folder unless only data on standard output is wanted. */
export async function studyCommand(terminal: Terminal, path: string, options: StudyCommandOptions): Promise<void> {
  const results = await runStudyFile(terminal, path, options);
  if (options.json) terminal.data(stableJson(results));
}

/** The whole way from a study file to its folder and the words on the terminal. */
export async function runStudyFile(
  terminal: Terminal,
  path: string,
  options: StudyCommandOptions,
): Promise<StudyResults> {
  const file = readInputFile(path);
  const { study: asRead, basePlan } = loadStudy(file);
  const study = changed(asRead, options);
  const folder = options.out ?? (options.json ? null : join("runs", safeFileName(study.name)));
  const overwrite = options.overwrite ?? false;
  // Loaded before the run, so that a folder that cannot be written costs no time.
  const writer = folder === null ? null : await import("../writeRun.ts");
  if (folder !== null) writer?.checkRunFolder(folder, overwrite);
  terminal.say(study.name, "bold");
  terminal.say(study.question);
  const results = await simulateStudy(terminal, study, {
    traces: options.traces,
    check: options.verify ?? false,
    gambrel: programVersion(),
    command: repeatLine(path, study),
  });
  if (folder !== null) writer?.writeRun(folder, { results, plan: basePlan, studyText: file.text }, overwrite);
  for (const line of studySummary(results)) terminal.say(line);
  terminal.say(CAUTION, "dim");
  if (folder !== null)
    terminal.say(`Written: ${join(folder, "report.html")}, charts, tables and results.json`, "green");
  return results;
}

function changed(study: Study, { seed, replications }: StudyCommandOptions): Study {
  return { ...study, seed: seed ?? study.seed, replications: replications ?? study.replications };
}

function repeatLine(path: string, { seed, replications }: Study): string {
  return commandLine(["gambrel", "study", path, "--seed", seed, "--replications", String(replications)]);
}
