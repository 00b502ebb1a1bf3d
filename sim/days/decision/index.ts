/** The days of a study -> the answer to its question, and the table that somebody decides by. */

export { decide, decisionKeys, kindOf } from "./decide.ts";
export type { Findings, VariantValues } from "./weighed.ts";

// For other questions: what a difference and its money come to, and the words for it

export { gainOf } from "./gain.ts";
export { usualMatters } from "./matters.ts";
export { MONEY_KEYS, netMoney } from "./money.ts";
export { amountWords, changeWords, listed, moneyWords, named, paceOf, paceWords, yearWords } from "./phrases.ts";
