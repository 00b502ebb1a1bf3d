import type { Study } from "../../asked/study/index.ts";
import { nextBatch } from "../../maths/statistics/index.ts";
import type { StudyResults } from "../results/index.ts";
import { assembleResults, type Provenance } from "./assembleResults.ts";
import { countDays } from "./batch.ts";
import { MAX_DAYS, TooManyDays } from "./ceilings.ts";
import { DayLedger } from "./dayLedger.ts";
import type { DayRunner, OpenRunner } from "./dayRunner.ts";
import { DaySimulator } from "./daySimulator.ts";
import { daySource, knownResponse, type TraceKind } from "./daySource.ts";
import { DaysFailed } from "./daysFailed.ts";
import { inThisThread } from "./inThisThread.ts";
import { type RuleValues, selectionOf } from "./selectionOf.ts";
import type { FailedDay, SimulatedDay } from "./simulatedDay.ts";
import { studyProgress } from "./studyProgress.ts";

/** Observations of each variant in one round of a selection, at least. */
const MIN_PER_ROUND = 10;

/** Observations of all variants in one round, about: work for many threads. Never their number, which must not show. */
const ROUND = 64;

/** Days that outlive the run: those known from an earlier, unfinished run of the same study, and a place for new ones. */
export interface DayJournal {
  known: Iterable<SimulatedDay>;
  note(day: SimulatedDay): void;
}

/**
 * Simulates a study for a question that needs many of them. Days that the journal knows are not simulated again; new ones
 * are noted in it. Traces of the first days that are drawn, or none.
 */
export type Simulate = (study: Study, journal: DayJournal, traces: "none" | "binned") => Promise<StudyResults>;

export interface RunOptions extends Provenance {
  /** What is kept of first days (`TraceKind`); "binned" when left out: of the variants whose day is drawn. */
  traces?: TraceKind;
  /** Conservation of heads checked at every event (slow). */
  check?: boolean;
  /**
   * Called at the start of each round and after each day with the number of days done and of all asked for so far, those
   * known from a journal counted in both. A study whose number of days is fixed has one round.
   */
  progress?: (done: number, total: number) => void;
  /** A day with more events fails; 100 million when left out. */
  mostEvents?: number;
  /** A study that asks for more days, all variants together, is stopped with `TooManyDays`; a million when left out. */
  mostDays?: number;
  /** Stops the run between two days; the promise is then rejected with the signal's reason. */
  signal?: AbortSignal;
  /** Where the days are simulated; one after another in this thread when left out. */
  runner?: OpenRunner;
  journal?: DayJournal;
}

/**
 * Simulates every variant of a study on the same replications and compares them with today's plan (the base). Days come in rounds
 * where a stopping rule or a selection decides how many there are.
 *
 * Days are independent tasks whose outcomes are put in place by variant and replication number, so neither where they
 * are simulated nor the order in which they are finished can show in the results. The results are a pure function of
 * the study and of `gambrel`, `command` and `traces`. A day that fails does not keep the others from being simulated
 * and noted; the promise is rejected with `DaysFailed` when they are through, and with `TooManyDays` when the study asks for
 * more of them than `mostDays`. Example:
 *
 *     const { study } = readStudy(json, files, { knownResponses: responsesOf });
 *     const { variants } = await runStudy(study, { gambrel: "my program 1.0", command: "" });
 *     variants[1].differences.headsPerHour.words; // one sentence with its interval
 */
export async function runStudy(study: Study, options: RunOptions): Promise<StudyResults> {
  const source = daySource(study, options.traces ?? "binned", options.check ?? false, options.mostEvents);
  const ledger = new DayLedger(study.variants.length, source.keys);
  for (const day of options.journal?.known ?? []) ledger.place(day);
  const runner = await (options.runner ?? inThisThread())(source);
  try {
    const days = await simulateRounds(study, ledger, runner, options);
    const simulator = new DaySimulator(source);
    const drawnDay = (variant: number) => simulator.drawnDay(variant);
    const outcomes = days.map((until, variant) => ledger.daysOf(variant, until));
    return assembleResults(study, outcomes, options, { all: source.traces === "all", drawnDay });
  } finally {
    await runner.close();
  }
}

/**
 * What questions that simulate many studies (`answerWhy`, `improve`) ask for: each study run with these options. Example:
 *
 *     const simulate = simulateWith({ gambrel: "my program 1.0", command: "", runner: inThreads(4) });
 */
export function simulateWith(options: Omit<RunOptions, "journal" | "traces">): Simulate {
  return (study, journal, traces) => runStudy(study, { ...options, journal, traces });
}

/** Rounds until the study's procedure asks for no more; gives the number of days of each variant. */
async function simulateRounds(
  study: Study,
  ledger: DayLedger,
  runner: DayRunner,
  options: RunOptions,
): Promise<number[]> {
  const key = ruleResponse(study);
  let days = firstDays(study);
  for (;;) {
    refuseTooManyDays(study, days, options.mostDays ?? MAX_DAYS);
    await simulateMissing(study, days, ledger, runner, options);
    if (key === null) return days;
    const next = nextDays(study, days, valuesOf(key, ledger, days));
    if (next === null) return days;
    days = next;
  }
}

/** A week is as many days as it has working days. */
function refuseTooManyDays({ variants }: Study, days: readonly number[], most: number): void {
  const daysOf = (variant: number) =>
    variants[variant]!.plan.week?.days.filter(({ plan }) => plan !== null).length ?? 1;
  const asked = days.reduce((sum, until, variant) => sum + until * daysOf(variant), 0);
  if (asked > most) throw new TooManyDays(asked, most);
}

/** Days beyond the round that a journal may know already are not looked at: a run in one go would not have them yet. */
function valuesOf(key: string, ledger: DayLedger, days: readonly number[]): (number | null)[][] {
  return days.map((until, variant) => ledger.daysOf(variant, until).valuesOf(key));
}

/** Brings every variant to its number of days. */
async function simulateMissing(
  study: Study,
  days: readonly number[],
  ledger: DayLedger,
  runner: DayRunner,
  { journal, progress, signal }: RunOptions,
): Promise<void> {
  const batches = days.flatMap((until, variant) => ledger.missing(variant, until));
  const total = ledger.count + countDays(batches);
  const failed: FailedDay[] = [];
  progress?.(ledger.count, total);
  const take = (day: SimulatedDay): void => {
    if (!ledger.place(day)) return;
    journal?.note(day);
    progress?.(ledger.count, total);
  };
  await runner.run(
    batches,
    (result) => {
      for (const day of result.days) take(day);
      failed.push(...result.failed);
    },
    signal,
  );
  signal?.throwIfAborted();
  if (failed.length > 0)
    throw new DaysFailed(
      failed,
      study.variants.map(({ name }) => name),
    );
}

/** Key of the response that decides how many days are run; null when their number is fixed. */
export function ruleResponse({ procedure }: Pick<Study, "procedure">): string | null {
  return procedure.stopping?.response ?? procedure.selection?.response ?? null;
}

/** Days of each variant before the first look: all of them where the study has no rule. */
export function firstDays({ variants, replications, procedure }: Study): number[] {
  const days = procedure.stopping?.atLeast ?? procedure.selection?.firstStage ?? replications;
  return variants.map(() => days);
}

/**
 * Days of each variant at the end of the next round; null when the study's rule is satisfied or its ceiling reached. A
 * function of the days themselves, so that neither threads nor stops can show in how many are run.
 */
export function nextDays(study: Study, days: readonly number[], values: RuleValues): number[] | null {
  const { stopping, selection, antithetic } = study.procedure;
  if (stopping !== null) {
    const { kind, nextDays } = studyProgress(values, study, knownResponse(study, stopping.response));
    return kind === "more" ? days.map(() => nextDays) : null;
  }
  if (selection === null) return null;
  const state = selectionOf(study, values);
  if (state === null) return null;
  const batch = nextBatch(state, Math.max(MIN_PER_ROUND, Math.ceil(ROUND / state.survivors.length)));
  if (batch === null) return null;
  const until = (batch.from + batch.count) * (antithetic ? 2 : 1);
  return days.map((before, variant) => (batch.variants.includes(variant) ? until : before));
}
