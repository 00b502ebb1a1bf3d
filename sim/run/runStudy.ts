import type { StudyResults } from "../results/index.ts";
import type { Study } from "../study/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { type DayOutcome, DaySimulator } from "./daySimulator.ts";
import { dayTasks, type TraceKind } from "./dayTasks.ts";

export interface RunOptions extends Provenance {
  /** Traces of each variant's replication 0; "binned" when left out. */
  traces?: TraceKind;
  /** Conservation of heads checked at every event (slow). */
  check?: boolean;
  /** Called after each day with the number of days done and of all. */
  progress?: (done: number, total: number) => void;
  /** Stops the run between two days; the promise is then rejected with the signal's reason. */
  signal?: AbortSignal;
  /** Gives way to timers, clicks and signals between two days; a timer of 0 ms when left out. */
  pause?: () => Promise<void>;
}

/**
 * Simulates every variant of a study on the same replications and compares them with the base case.
 *
 * Days are independent tasks whose outcomes are put in place by variant and replication number, so the order in which
 * they are finished cannot show in the results. The results are a pure function of the study and of `gambrel`,
 * `command` and `traces`.
 */
export async function runStudy(study: Study, options: RunOptions): Promise<StudyResults> {
  const plans = study.variants.map(({ plan }) => plan);
  const simulator = new DaySimulator(plans, study.seed, options.check ?? false);
  const tasks = dayTasks(study, options.traces ?? "binned");
  const outcomes: DayOutcome[][] = plans.map(() => []);
  let done = 0;
  for (const task of tasks) {
    options.signal?.throwIfAborted();
    outcomes[task.variant]![task.replication] = simulator.simulate(task);
    done += 1;
    options.progress?.(done, tasks.length);
    await (options.pause ?? shortTimer)();
  }
  options.signal?.throwIfAborted();
  return assembleResults(study, outcomes, options);
}

/** Exists in Node and in browsers alike. */
function shortTimer(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
