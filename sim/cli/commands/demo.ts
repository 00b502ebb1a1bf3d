import { existsSync } from "node:fs";
import { join } from "node:path";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import type { TraceKind } from "../../days/run/index.ts";
import { pathFromHere, projectRoot } from "../project.ts";
import type { Terminal } from "../terminal.ts";
import { runStudyFile } from "./study.ts";

export interface DemoOptions {
  seed?: string;
  replications?: number;
  traces?: TraceKind;
  threads?: number;
  out: string;
  json?: boolean;
}

/** Runs the example studies that come with the program, each into a folder of its own below `out`. */
export async function demoCommand(terminal: Terminal, options: DemoOptions): Promise<void> {
  const { out, json, ...rest } = options;
  const folder = join(projectRoot(), "experiments", "studies");
  const names = studyFiles(folder);
  terminal.say("Example studies of an invented plant; every figure in them is invented.");
  const all: StudyResults[] = [];
  for (const name of names) {
    terminal.say();
    // A demo is made to be run again: its own earlier folder is replaced, and nothing else (see runFolderProblem).
    const target = join(out, name.replace(/\.json$/, ""));
    all.push(await runStudyFile(terminal, pathFromHere(join(folder, name)), { ...rest, out: target, overwrite: true }));
  }
  if (json) terminal.data(stableJson(all));
}

/** One study for each kind of user: process engineer, trainer, planner. */
const EXAMPLES = ["buffers.json", "moving-bottleneck.json", "one-more-operator.json"];

function studyFiles(folder: string): string[] {
  const missing = EXAMPLES.filter((name) => !existsSync(join(folder, name)));
  if (missing.length > 0) throw new Error(`${folder}: ${missing.join(", ")} is missing; is the installation complete?`);
  return EXAMPLES;
}
