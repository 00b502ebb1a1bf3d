/** The days of a study -> the answer to its question, and the table that somebody decides by. */

export { decide, decisionKeys, kindOf } from "./decide.ts";
export type { Findings, VariantValues } from "./weighed.ts";
