import type { Check } from "./checks/index.ts";
import type { FamilyName } from "./family.ts";
import type { GoodnessOfFit } from "./goodnessOfFit.ts";
import type { Subject } from "./times/subject.ts";

/** All that is found in one column; plain data, times and lengths in `unit`. */
export interface ColumnFit {
  heading: string;
  subject: Subject;
  unit: string;
  /** Ended times, ascending, zeros left out; and open ones. */
  ended: number[];
  open: number[];
  zeros: number;
  /** Step to which times were noted; 0 when there is none. */
  resolution: number;
  summary: Summary | null;
  checks: Check[];
  /** By AIC, best first. Empty when there is too little to fit. */
  fits: FamilyFit[];
  /** Families that were not fitted, and why. */
  notFitted: { family: FamilyName; reason: string }[];
  advice: FitAdvice;
}

/** Of the ended times; null in a column with open ones, where such figures would mislead. */
export interface Summary {
  mean: number;
  /** Divisor n - 1; null with one time. */
  sd: number | null;
  cv: number | null;
  min: number;
  median: number;
  max: number;
  /** Student interval of the mean at 95 %, which takes the times as independent; null with one time. */
  meanLow: number | null;
  meanHigh: number | null;
  /** Times that would give a mean within 5 % of itself at 95 %; null with one time. */
  needed: number | null;
}

export interface FamilyFit {
  family: FamilyName;
  parameters: Record<string, number>;
  /** Mean of the distribution as a plan draws from it (a normal one is cut at 0), standard deviation as fitted. */
  mean: number;
  sd: number;
  logLikelihood: number;
  aic: number;
  /** AIC above the best one. */
  behind: number;
  /** Null when the simulated samples could not be fitted. */
  test: GoodnessOfFit | null;
  /** Anderson and Darling's p-value, the more telling one, is at least 0.05. */
  passes: boolean;
  /** Why a plan had better not use it; "" when nothing speaks against it. */
  objection: string;
  /** As a plan writes it. */
  inPlan: unknown;
}

/** What to put into the plan. */
export interface FitAdvice {
  kind: "family" | "empirical" | "constant" | "nothing";
  family: FamilyName | null;
  /** The value as a plan writes it; null for "nothing". */
  inPlan: unknown;
  words: string;
}
