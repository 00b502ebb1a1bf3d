import process from "node:process";
import { setImmediate } from "node:timers/promises";
import type { Study } from "../asked/study/index.ts";
import type { StudyResults } from "../days/results/index.ts";
import { inThisThread, type RunOptions, runStudy } from "../days/run/index.ts";
import { progress } from "./progress.ts";
import type { Terminal } from "./terminal.ts";
import { untilInterrupted } from "./untilInterrupted.ts";

/** Runs a study with its progress on the terminal, until it is done or stopped by a signal. */
export async function simulateStudy(terminal: Terminal, study: Study, options: RunOptions): Promise<StudyResults> {
  const shown = progress(terminal, () => performance.now());
  const runner = options.runner ?? inThisThread(setImmediate);
  try {
    return await untilInterrupted(process, (signal) =>
      runStudy(study, { ...options, runner, signal, progress: shown.update }),
    );
  } finally {
    shown.end();
  }
}
