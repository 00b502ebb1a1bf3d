import type { Plan } from "../../../sim/asked/plan/index.ts";
import type { Study } from "../../../sim/asked/study/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import type { Batch, DaySource, SimulatedDay } from "../../../sim/days/run/index.ts";
import type { WorkerPool } from "./workerPool.ts";

/** Days of the plan as it is: they outlive every change of the variant, as long as plan, seed and responses stay. */
export class BaseDays {
  private key = "";
  private readonly days = new Map<number, SimulatedDay>();

  /** Keeps what is known when the key is the same as before; else begins afresh. */
  begin(key: string): void {
    if (key === this.key) return;
    this.key = key;
    this.days.clear();
  }

  /** A day simulated for this key; one of another key comes too late and is left out. */
  add(key: string, day: SimulatedDay): void {
    if (key === this.key) this.days.set(day.replication, day);
  }

  known(): SimulatedDay[] {
    return [...this.days.values()];
  }

  has(replication: number): boolean {
    return this.days.has(replication);
  }
}

/** Days in one task: short enough that a control that moves on is not waited for. */
const DAYS_PER_TASK = 1;

export interface StudyRun {
  study: Study;
  source: DaySource;
  /** Days of the plan as it is, known and to be added to; `key` names plan, seed and responses. */
  base: BaseDays;
  key: string;
  /** False once another question was asked. */
  wanted: () => boolean;
  /** Called as days come in. */
  progress: (done: number, total: number) => void;
  /** Called once with the figures of the days so far, when all of them are long in coming. */
  onPartialResults: (results: StudyResults) => void;
}

/** From then on it is known well enough how long all days will take. */
const LOOK_MILLISECONDS = 120;
/** When all figures are there by then nobody needs those of fewer days, whose work would only delay them. */
const PATIENCE_MILLISECONDS = 500;
/** Every time the progress is told the browser draws the page anew, on the processors that simulate. */
const TELL_MILLISECONDS = 200;
/** With fewer days an interval says too little. */
const MIN_DAYS = 4;

/**
 * Runs a study on the pool's workers and puts it together there: the same source, simulator and assembly as the command
 * line's, so the same figures to the last digit.
 */
export async function askQuestion(pool: WorkerPool, run: StudyRun): Promise<StudyResults> {
  const { study, source, base, key, wanted, progress } = run;
  const began = performance.now();
  const number = pool.newStudyNumber();
  base.begin(key);
  const variantDays: SimulatedDay[] = [];
  const total = study.variants.length * study.replications;
  const atFirst = total - base.known().length;
  let isTold = false;
  let told = began;
  const put = (replications: number, days: SimulatedDay[]) =>
    pool.ask<"results">({ kind: "results", study: { ...study, replications }, days }, { wanted, urgency: 2 });
  const done = () => Math.min(total, base.known().length + variantDays.length);
  /** Milliseconds since the start at which all days will be there, as fast as they came so far. */
  const expected = (now: number) => ((now - began) * atFirst) / (atFirst - total + done());
  progress(done(), total);
  const take = async (batch: Batch) => {
    const result = await pool.ask<"days">({ kind: "days", number, source, batch }, { wanted });
    if (result.failed.length > 0) throw new Error(result.failed[0]!.message);
    for (const day of result.days) {
      if (day.variant === 0) base.add(key, day);
      else variantDays.push(day);
    }
    if (!wanted()) return;
    const now = performance.now();
    if (now - told > TELL_MILLISECONDS || done() === total) {
      told = now;
      progress(done(), total);
    }
    if (!isTold && now - began > LOOK_MILLISECONDS && expected(now) > PATIENCE_MILLISECONDS) {
      const common = commonDays(study, [...base.known(), ...variantDays]);
      if (common.replications < MIN_DAYS || common.replications === study.replications) return;
      isTold = true;
      run.onPartialResults(await put(common.replications, common.days));
    }
  };
  await Promise.all(missing(study, base).map(take));
  return put(study.replications, [...base.known(), ...variantDays]);
}

/** What is asked of days of which each has a world of its own. */
export interface WorldsRun extends Pick<StudyRun, "study" | "source" | "wanted" | "progress"> {
  /** World by world, those of the study's variants side by side; as many worlds as the study has days. */
  plans: readonly Plan[];
}

/**
 * The same study with uncertain figures drawn anew for each day, which has the luck that it has where every figure is known.
 * All variants of a day are in the same world.
 */
export async function askWorlds(pool: WorkerPool, run: WorldsRun): Promise<StudyResults> {
  const { study, plans, wanted, progress } = run;
  const number = pool.newStudyNumber();
  const source = { ...run.source, plans };
  const { length } = study.variants;
  const days: SimulatedDay[] = [];
  const simulate = async (at: number) => {
    const world = Math.floor(at / length);
    const batch = { variant: at, first: world, count: 1 };
    const result = await pool.ask<"days">({ kind: "days", number, source, batch }, { wanted });
    if (result.failed.length > 0) throw new Error(result.failed[0]!.message);
    for (const day of result.days) days.push({ ...day, variant: at % length });
    if (wanted()) progress(days.length, plans.length);
  };
  await Promise.all(plans.map((_, at) => simulate(at)));
  return pool.ask<"results">({ kind: "results", study, days }, { wanted, urgency: 2 });
}

/** Days 0 to n - 1 that every variant has: what a study of n days would have simulated. */
function commonDays(
  { variants, replications }: Study,
  days: readonly SimulatedDay[],
): { replications: number; days: SimulatedDay[] } {
  const known = new Set(days.map(({ variant, replication }) => variant * replications + replication));
  let count = 0;
  while (count < replications && variants.every((_, variant) => known.has(variant * replications + count))) count++;
  return { replications: count, days: days.filter(({ replication }) => replication < count) };
}

/** The variant's days first: they are what was asked for. */
function missing({ variants, replications }: Study, base: BaseDays): Batch[] {
  const batches: Batch[] = [];
  for (let variant = variants.length - 1; variant >= 0; variant--) {
    for (let first = 0; first < replications; first += DAYS_PER_TASK) {
      const count = Math.min(DAYS_PER_TASK, replications - first);
      const isKnown = Array.from({ length: count }, (_, day) => base.has(first + day)).every(Boolean);
      if (variant > 0 || !isKnown) batches.push({ variant, first, count });
    }
  }
  return batches;
}
