/** What a check of a column found. */
export interface Check {
  name: CheckName;
  /** "strong": find out before the times are used. "look": worth a look, though it may be chance. */
  verdict: "fine" | "look" | "strong" | "not checked";
  /** One sentence, with the figures and what to do. */
  words: string;
  /** Probability of such a figure, or one further out, when nothing is wrong; null where the check is no test. */
  p: number | null;
}

export const CHECK_NAMES = [
  "number of times",
  "zeros",
  "rounding",
  "outliers",
  "drift",
  "lag-1 correlation",
  "runs",
  "two populations",
] as const;
export type CheckName = (typeof CHECK_NAMES)[number];

/**
 * A test's finding is strong below the first and worth a look below the second. In data without fault a column's four tests
 * give a strong one in 4 of 100 columns and one worth a look in 18 of 100. The second is as wide as it is because a missed
 * drift spoils every day that is simulated from the times, while a look costs a minute. Our own rule.
 */
export const STRONG_ALPHA = 0.01;
export const LOOK_ALPHA = 0.05;

/** The verdict of a test, with its words when something is found and when not. */
export function found(name: CheckName, p: number, words: { told: string; fine: string }): Check {
  if (p >= LOOK_ALPHA) return fine(name, words.fine, p);
  return { name, verdict: p < STRONG_ALPHA ? "strong" : "look", words: words.told, p };
}

export function fine(name: CheckName, words: string, p: number | null = null): Check {
  return { name, verdict: "fine", words, p };
}

export function look(name: CheckName, words: string): Check {
  return { name, verdict: "look", words, p: null };
}

export function strong(name: CheckName, words: string): Check {
  return { name, verdict: "strong", words, p: null };
}

export function notChecked(name: CheckName, words: string): Check {
  return { name, verdict: "not checked", words, p: null };
}
