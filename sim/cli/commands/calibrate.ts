import { basename } from "node:path";
import process from "node:process";
import { setImmediate } from "node:timers/promises";
import { formatFault, listWords, nearestWords, type Plan } from "../../asked/plan/index.ts";
import { stableJson } from "../../days/results/index.ts";
import {
  type Calibration,
  calibrate,
  countingStages,
  type Observed,
  readObserved,
  usualCountingStage,
} from "../../questions/calibrate/index.ts";
import { BadInput } from "../badInput.ts";
import type { CalibrationResults } from "../calibrationResults.ts";
import { calibrationSummary } from "../calibrationSummary.ts";
import { type Ceilings, ceilingsOf } from "../ceilings.ts";
import { checkRunFolder } from "../checkRunFolder.ts";
import { readInputFile, readNamedText } from "../inputFile.ts";
import { loadPlan } from "../loadPlan.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";
import { untilInterrupted } from "../untilInterrupted.ts";

export interface CalibrateCommandOptions {
  at?: string;
  days: number;
  seed: string;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

const CONFIDENCE = 0.95;

/** Compares a plan with observed days; writes a folder only when one is named. */
export async function calibrateCommand(
  terminal: Terminal,
  planPath: string,
  observedPath: string,
  options: CalibrateCommandOptions,
): Promise<void> {
  const { out, overwrite = false, json, seed } = options;
  const ceilings = ceilingsOf(options);
  const plan = loadPlan(readInputFile(planPath, ceilings));
  const observed = readDays(observedPath, plan, ceilings.megabytes);
  const countedAt = stageOf(plan, options.at);
  // Pictures are a heavy thing to load: only when asked for, and before the days, so that a bad folder costs no time.
  const writer = out === undefined ? null : await import("../writeCalibration.ts");
  if (out !== undefined) checkRunFolder(out, overwrite);
  const found = await simulate(terminal, plan, observed, { ...options, countedAt, mostEvents: ceilings.events });
  const results: CalibrationResults = {
    ...found,
    plan: plan.name,
    observedFile: basename(observedPath),
    seed,
    passedOver: observed.passedOver,
  };
  for (const { line, style } of calibrationSummary(results)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) await writer?.writeCalibration(out, results, overwrite);
  terminal.say(
    out === undefined ? "--out FOLDER writes picture and results." : `Written: ${out}/charts, results.json.`,
  );
  if (json) terminal.data(stableJson(results));
}

function readDays(path: string, plan: Plan, megabytes: number): Observed {
  const { observed, faults } = readObserved(readNamedText(path, megabytes), plan);
  if (observed === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  return observed;
}

function stageOf(plan: Plan, at: string | undefined): string {
  if (at === undefined) return usualCountingStage(plan);
  const names = countingStages(plan);
  if (names.includes(at)) return at;
  const remedy = nearestWords(at, names, "write one of these");
  throw new BadInput([`--at: '${at}' is no stage of the plan; allowed: ${listWords(names)}; ${remedy}`]);
}

async function simulate(
  terminal: Terminal,
  plan: Plan,
  observed: Observed,
  options: CalibrateCommandOptions & { countedAt: string; mostEvents: number },
): Promise<Calibration> {
  const { seed, days, countedAt, mostEvents } = options;
  if (!terminal.live) terminal.say("Simulating; a large plant takes a few minutes.");
  try {
    return await untilInterrupted(process, (signal) =>
      calibrate(plan, observed, {
        ...{ seed, days, countedAt, mostEvents, confidence: CONFIDENCE },
        beforeDay: async () => {
          await setImmediate();
          signal.throwIfAborted();
        },
        progress: (words) => terminal.live && terminal.rewrite(words),
      }),
    );
  } finally {
    if (terminal.live) terminal.rewrite("");
  }
}
