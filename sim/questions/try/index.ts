/** What is tried of a plan, in the words of the trade -> tries -> the study that answers "what if". See README.md. */

export { OR, readTries, TRY_OPTIONS, type TriesReading, type Try, type WrittenOption } from "./tries.ts";
export { questionFaults, type TryQuestion, tryFaultWords, tryStudyFile } from "./tryStudy.ts";
