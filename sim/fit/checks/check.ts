/** What a check of a column came to. */
export interface Check {
  name: CheckName;
  /** "look": somebody should look at the data before they are used. */
  verdict: "fine" | "look" | "not checked";
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

/** Each test raises a false alarm with this probability in data without fault. */
export const CHECK_ALPHA = 0.01;

export function fine(name: CheckName, words: string, p: number | null = null): Check {
  return { name, verdict: "fine", words, p };
}

export function look(name: CheckName, words: string, p: number | null = null): Check {
  return { name, verdict: "look", words, p };
}

export function notChecked(name: CheckName, words: string): Check {
  return { name, verdict: "not checked", words, p: null };
}
