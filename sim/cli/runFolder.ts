import type { Study } from "../asked/study/index.ts";
import {
  mendRunFolder,
  type RunFile,
  runFolderProblem,
  type StudyResults,
  writeRunFolder,
} from "../days/results/index.ts";
import { daySource, type TraceKind } from "../days/run/index.ts";
import type { OpenJournal, QuestionJournal } from "../days/run/journal/index.ts";
import { BadInput } from "./faults.ts";
import type { StudyCommandOptions } from "./options.ts";
import { programVersion } from "./project.ts";
import type { RunAnswer } from "./writeRun.ts";

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

/** Writes a folder of results, whole or not at all, while nobody else can. */
export async function writeFolder(folder: string, files: readonly RunFile[], overwrite: boolean): Promise<void> {
  const unlock = await lockFolder(folder);
  try {
    takeRunFolder(folder, overwrite);
    writeRunFolder(folder, files, overwrite);
  } finally {
    unlock();
  }
}

/**
 * Simulates and writes a folder. `beside`, asked when the run is done, gives files that go into it besides those of every
 * run, and an answer that is more than the study's. Nobody else may write to the folder meanwhile, and one that cannot be
 * written costs no time.
 */
export async function runInto(
  folder: string,
  overwrite: boolean,
  plan: unknown,
  simulate: () => StudyResults | Promise<StudyResults>,
  beside: (results: StudyResults) => { files: readonly RunFile[]; answer: RunAnswer } = () => ({
    files: [],
    answer: {},
  }),
): Promise<StudyResults> {
  checkRunFolder(folder, overwrite);
  // The report is a heavy thing to load: only when it is asked for.
  const writer = await import("./writeRun.ts");
  const unlock = await lockFolder(folder);
  try {
    takeRunFolder(folder, overwrite);
    const results = await simulate();
    const { files, answer } = beside(results);
    writer.writeRun(folder, { results, plan, studyText: null }, overwrite, files, answer);
    return results;
  } finally {
    unlock();
  }
}
