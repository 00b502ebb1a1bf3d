import { availableParallelism } from "node:os";
import process from "node:process";
import { setImmediate } from "node:timers/promises";
import type { Study } from "../asked/study/index.ts";
import type { StudyResults } from "../days/results/index.ts";
import { type DayJournal, inThisThread, type OpenRunner, runStudy, type TraceKind } from "../days/run/index.ts";
import type { LastingThreads } from "../days/run/threads/index.ts";
import { commandLine, queueAddress } from "./commandLine.ts";
import { Stopped } from "./faults.ts";
import { openFilesLimit, threadsFor } from "./openFiles.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "./options.ts";
import { programVersion } from "./project.ts";
import { progress, type Terminal, untilInterrupted } from "./terminal.ts";

/** With fewer days for each, starting a thread and getting its code fast takes longer than it saves. */
const MIN_DAYS_PER_THREAD = 16;
/** A round of a search with fewer days is simulated in the program's own thread. */
const FEW_DAYS = 40;

/** What is simulated, and what was asked for on the command line. */
export interface StudyRun {
  /** The command line that gives the same results, from the command's name on; ceilings are added. */
  words: readonly string[];
  options: { threads?: number; queue?: string; ceiling?: Partial<Ceilings> };
  traces: TraceKind;
  check?: boolean;
  inputsSha256?: string;
  /** It is one of many small rounds of a search, whose threads are kept from round to round. */
  rounds?: SearchThreads;
  journal?: DayJournal | undefined;
}

/** Simulates a study with its progress on the terminal, until it is done or stopped by a signal. */
export async function simulateStudy(terminal: Terminal, study: Study, asked: StudyRun): Promise<StudyResults> {
  const { words, options, rounds, journal, ...rest } = asked;
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const gambrel = programVersion();
  const days = study.variants.length * study.replications;
  const runner =
    rounds === undefined
      ? await chooseRunner(terminal, days, gambrel, options.threads, options.queue)
      : await rounds.runnerFor(days, options.threads);
  const command = commandLine(["gambrel", ...words, ...ceilingWords(options)]);
  const kept = journal === undefined ? {} : { journal };
  const noun = study.variants[0]!.plan.week === undefined ? "days" : "weeks";
  const shown = progress(terminal, () => performance.now(), rounds !== undefined, noun);
  try {
    return await untilInterrupted(process, (signal) =>
      runStudy(study, {
        ...{ ...rest, ...kept, gambrel, command, runner, mostEvents, mostDays, signal },
        progress: shown.update,
      }),
    );
  } finally {
    shown.end();
  }
}

/**
 * Where the days of a study are simulated: on a queue's workers, in as many threads as asked for, else in as many as
 * the machine has cores and the study has work for. Loaded only when it is needed.
 */
async function chooseRunner(
  terminal: Terminal,
  days: number,
  version: string,
  threads: number | undefined,
  queue: string | undefined,
): Promise<OpenRunner> {
  if (queue !== undefined) {
    const { onQueue } = await import("../days/run/queue/index.ts");
    return onQueue(queueAddress(queue), { gambrel: version, say: (words) => terminal.say(words, "yellow") });
  }
  const count = threadsOf(days, threads);
  if (count <= 1) return inThisThread(setImmediate);
  const { inThreads } = await import("../days/run/threads/index.ts");
  return inThreads(count);
}

/** As many as there are cores, and as the limit on open files lets start. */
function usefulThreads(): number {
  return Math.min(availableParallelism(), threadsFor(openFilesLimit()));
}

function threadsOf(days: number, threads: number | undefined): number {
  return Math.min(threads ?? Math.min(usefulThreads(), Math.ceil(days / MIN_DAYS_PER_THREAD)), days);
}

/** Threads of a search, started for the first round that has work for them and kept to its end. */
export class SearchThreads {
  #threads: LastingThreads | null = null;

  /** Where a round of so many days is simulated. */
  async runnerFor(days: number, threads: number | undefined): Promise<OpenRunner> {
    const few = threads === undefined && days < FEW_DAYS;
    if (few || threadsOf(days, threads) <= 1) return inThisThread(setImmediate);
    const { lastingThreads } = await import("../days/run/threads/index.ts");
    this.#threads ??= lastingThreads(threads ?? usefulThreads());
    return this.#threads.runner;
  }

  async close(): Promise<void> {
    await this.#threads?.close();
  }
}

/** Does something with threads that are given back at its end, whatever comes of it. */
export async function withSearchThreads<Result>(work: (rounds: SearchThreads) => Promise<Result>): Promise<Result> {
  const rounds = new SearchThreads();
  try {
    return await work(rounds);
  } finally {
    await rounds.close();
  }
}

/** A journal as far as its end goes. */
interface Kept {
  folder: string;
  keep(): number;
  discard(): void;
}

interface KeepingWords {
  /** What the run comes to (" of 600"); "" where nobody knows beforehand. */
  ofAll: string;
  /** The command line that goes on. */
  goOn: string;
}

/**
 * Ends a journal when the work is done. After a stop or a failure the days simulated so far stay, and it is said where
 * they are and how to go on with them.
 */
export function keepingDays<Journal extends Kept>(
  terminal: Terminal,
  open: () => Promise<Journal>,
  words: KeepingWords,
): <Result>(work: (journal: Journal) => Promise<Result>) => Promise<Result> {
  return async (work) => kept(terminal, await open(), words, work);
}

async function kept<Journal extends Kept, Result>(
  terminal: Terminal,
  journal: Journal,
  { ofAll, goOn }: KeepingWords,
  work: (journal: Journal) => Promise<Result>,
): Promise<Result> {
  try {
    const result = await work(journal);
    journal.discard();
    return result;
  } catch (error) {
    const days = journal.keep();
    if (days === 0) throw error;
    const kept = `${days}${ofAll} ${days === 1 && ofAll === "" ? "day is" : "days are"} kept in ${journal.folder}. Continue with: ${goOn}`;
    if (error instanceof Stopped) throw new Stopped(error.signal, `Stopped. ${kept}`);
    terminal.say(kept);
    throw error;
  }
}

/**
 * A search's own journal joined with one on disk: of the days that this study asks for, those that the disk knows are
 * told to the search as if they were new, so that it counts as it would have counted in one go.
 */
export function withKept(own: DayJournal, kept: DayJournal, { replications }: Pick<Study, "replications">): DayJournal {
  const known = [...own.known];
  const places = new Set(known.map(({ variant, replication }) => `${variant} ${replication}`));
  for (const day of kept.known) {
    const place = `${day.variant} ${day.replication}`;
    if (day.replication >= replications || places.has(place)) continue;
    places.add(place);
    known.push(day);
    own.note(day);
  }
  return {
    known,
    note(day) {
      own.note(day);
      kept.note(day);
    },
  };
}

export { resumeLine } from "./commandLine.ts";
