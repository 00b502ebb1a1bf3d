import type { Study } from "../asked/study/index.ts";
import {
  mendRunFolder,
  type RunFile,
  type RunParts,
  runFiles,
  runFolderProblem,
  weekCalendar,
  writeRunFolder,
} from "../days/results/index.ts";
import { daySource, type TraceKind } from "../days/run/index.ts";
import type { OpenJournal, QuestionJournal } from "../days/run/journal/index.ts";
import type { Improvement } from "../questions/improve/index.ts";
import type { OptionsResult } from "../questions/options/index.ts";
import type { Season } from "../questions/season/index.ts";
import { BadInput } from "./faults.ts";
import type { StudyCommandOptions } from "./options.ts";
import { programVersion } from "./project.ts";

/** The journal of a run into `folder`; `BadInput` says what is in its way. */
export async function openRunJournal(
  folder: string,
  study: Study,
  { traces, verify = false, resume = false, overwrite = false }: StudyCommandOptions & { traces: TraceKind },
): Promise<OpenJournal> {
  const { openJournal } = await import("../days/run/journal/index.ts");
  const options = { maker: await maker(), resume, overwrite };
  return unlessInTheWay(() => openJournal(folder, daySource(study, traces, verify), options));
}

/** The journal of a search into `folder`; `question` is all that its studies depend on. */
export async function openSearchJournal(
  folder: string,
  question: unknown,
  { resume = false, overwrite = false }: { resume?: boolean; overwrite?: boolean },
): Promise<QuestionJournal> {
  const { openQuestionJournal } = await import("../days/run/journal/index.ts");
  const options = { maker: await maker(), resume, overwrite };
  return unlessInTheWay(() => openQuestionJournal(folder, question, options));
}

async function maker() {
  const { makerMark } = await import("../days/run/wire/index.ts");
  return makerMark(programVersion());
}

/** Locks a folder that is written in one go; gives what ends that. `BadInput` when another run has it. */
export async function lockFolder(folder: string): Promise<() => void> {
  const { lockRunFolder } = await import("../days/run/journal/index.ts");
  return unlessInTheWay(() => lockRunFolder(folder));
}

async function unlessInTheWay<Result>(open: () => Result): Promise<Result> {
  const { JournalProblem } = await import("../days/run/journal/index.ts");
  try {
    return open();
  } catch (error) {
    throw error instanceof JournalProblem ? new BadInput([error.message]) : error;
  }
}

/** Refuses a folder that cannot take a run, before anything heavy is loaded or time is spent on the run. */
export function checkRunFolder(folder: string, overwrite: boolean): void {
  const problem = runFolderProblem(folder, overwrite);
  if (problem !== null) throw new BadInput([problem]);
}

/** The same once nobody else can use the folder: what a kill left of it is put right first. */
export function takeRunFolder(folder: string, overwrite: boolean): void {
  mendRunFolder(folder);
  checkRunFolder(folder, overwrite);
}

/** The answer of a run that is more than its study. */
export interface RunAnswer {
  improvement?: Improvement | undefined;
  offers?: OptionsResult | undefined;
  season?: Season | undefined;
}

interface Written extends Pick<RunParts, "results" | "plan"> {
  /** As it was read; null for a run that is no study's. */
  studyText?: string | null;
  /** Files besides those of every run. */
  more?: readonly RunFile[];
  answer?: RunAnswer;
}

/** Draws the report, with the answer first in it, and the charts, and writes the folder whole or not at all. */
type WriteRun = (run: Written) => Promise<void>;

/** Holds a folder while work goes on in it, and says what is kept of work that is stopped. */
type Hold<Held> = <Result>(work: (held: Held) => Promise<Result>) => Promise<Result>;

/** Simulates and writes a run folder. One that cannot be written costs no time. */
export async function runInto<Held, Result>(
  folder: string,
  overwrite: boolean,
  hold: Hold<Held>,
  work: (write: WriteRun, held: Held) => Promise<Result>,
): Promise<Result> {
  checkRunFolder(folder, overwrite);
  // The report is a heavy thing to load: only when it is asked for, and before the run, so that an installation that is
  // not whole costs no time.
  const { chartFiles, renderReport } = await import("../../viz/index.ts");
  const write: WriteRun = async ({ results, plan, studyText = null, more = [], answer = {} }) => {
    const reportHtml = renderReport(results, { planFile: plan, ...answer });
    const [charts, calendar] = [chartFiles(results, answer), await weekCalendar(results)];
    const files = runFiles({ results, plan, studyText, reportHtml, charts, calendar });
    writeRunFolder(folder, [...files, ...more], overwrite);
  };
  return hold(async (held) => {
    takeRunFolder(folder, overwrite);
    return work(write, held);
  });
}

/** A folder that is written in one go: nobody else can write to it meanwhile. */
export function alone(folder: string): Hold<null> {
  return async (work) => {
    const unlock = await lockFolder(folder);
    try {
      return await work(null);
    } finally {
      unlock();
    }
  };
}

/** Writes a folder of results that are no study's, whole or not at all, while nobody else can. */
export function writeFolder(folder: string, files: readonly RunFile[], overwrite: boolean): Promise<void> {
  return alone(folder)(async () => {
    takeRunFolder(folder, overwrite);
    writeRunFolder(folder, files, overwrite);
  });
}

export { finishedRun } from "./finishedRun.ts";
