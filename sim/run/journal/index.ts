/** The days of a run that is not finished, kept on disk. Needs Node. */

export { JournalProblem } from "./journalProblem.ts";
export { lockRunFolder } from "./lockRunFolder.ts";
export { type JournalOptions, type OpenJournal, openJournal } from "./openJournal.ts";
export { partialFolder } from "./partialFolder.ts";
