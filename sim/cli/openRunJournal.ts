import type { Study } from "../asked/study/index.ts";
import { daySource, type TraceKind } from "../days/run/index.ts";
import type { OpenJournal, QuestionJournal } from "../days/run/journal/index.ts";
import { BadInput } from "./badInput.ts";
import { programVersion } from "./programVersion.ts";
import type { StudyCommandOptions } from "./studyOptions.ts";

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
