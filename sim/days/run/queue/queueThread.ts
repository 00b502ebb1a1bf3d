import type { Plan } from "../../../asked/plan/index.ts";
import type { Batch, DaySimulator as Simulator } from "../index.ts";
import type { StudyAbout } from "./payloads.ts";

/** One task with all it needs. */
export interface ThreadTask {
  /** Name of the job. */
  task: string;
  study: string;
  about: StudyAbout;
  plan: Plan;
  batch: Batch;
}

// Awaited for the reason given in ../threads/studyThread.ts.
const [{ DaySimulator }, { exactJson }] = await Promise.all([import("../index.ts"), import("../wire/index.ts")]);

/** Tasks of a variant come one after the other, now and then mixed with those of its neighbours. */
const MAX_KEPT = 8;
const kept = new Map<string, Simulator>();

/** The program of a worker's thread: simulates a batch of days, gives the answer as text. */
export default function answer({ task, study, about, plan, batch }: ThreadTask): string {
  return exactJson({ task, ...simulatorOf(study, batch.variant, about, plan).simulateBatch(batch) });
}

function simulatorOf(study: string, variant: number, about: StudyAbout, plan: Plan): Simulator {
  const name = `${study}/${variant}`;
  const plans: Plan[] = [];
  plans[variant] = plan;
  const simulator = kept.get(name) ?? new DaySimulator({ ...about, plans });
  // The one used last stands last; the first one goes.
  kept.delete(name);
  kept.set(name, simulator);
  if (kept.size > MAX_KEPT) kept.delete(kept.keys().next().value!);
  return simulator;
}
