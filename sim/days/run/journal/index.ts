/** The days of a run that is not finished, kept on disk. Needs Node. */

export { JournalProblem } from "./journalProblem.ts";
export { lockRunFolder } from "./lockRunFolder.ts";
export { type OpenJournal, openJournal } from "./openJournal.ts";
export type { JournalOptions } from "./openLines.ts";
export { openQuestionJournal, type QuestionJournal } from "./openQuestionJournal.ts";
export { partialFolder } from "./partialFolder.ts";
