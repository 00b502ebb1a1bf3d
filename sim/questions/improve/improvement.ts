import type { Change } from "../../asked/study/index.ts";
import type {
  DifferenceInWords,
  Estimate,
  Gain,
  NetMoney,
  ResponseInfo,
  VerdictKind,
} from "../../days/results/index.ts";
import type { Kept } from "./keepLimits.ts";
import type { Space, TimeElement } from "./space.ts";

/** The answer in one sentence, and what follows. */
export interface ImproveVerdict {
  answer: VerdictKind;
  verdict: string;
  /** What to do next. */
  next: string[];
}

/** What came of the question: what improve.json holds. */
export interface Improvement extends ImproveVerdict {
  format: 1;
  name: string;
  question: string;
  seed: string;
  confidence: number;
  /** The response that tells how well the goal is met; of a priced budget, what is bought is taken off it. */
  goal: ResponseInfo;
  /** Of a plan with a week: what is called a day below is a week. */
  period?: "week";
  /** The least difference in it that matters, in its own unit. */
  matters: number;
  allocated: {
    kind: Space["kind"];
    unit: string;
    /** Of the total. */
    least: number;
    most: number;
    /** What shares it; `base` is what the plan as it is has, null where that cannot be counted. */
    elements: { name: string; from: number; to: number; base: number | null; time?: TimeElement }[];
  };
  /** Null where no finalist is shown to keep the limits, or a day has no value. */
  recommended: Recommendation | null;
  finalists: Finalist[];
  choice: {
    kind: "selected" | "ceiling" | "only one" | "no value" | "limits not kept";
    /** Least probability that the best finalist is picked when it leads by `difference`; limits included. */
    probability: number;
    difference: number;
  };
  /** Everything the search tried, the best first; few days each, and what looks good there may owe that to luck. */
  tried: TriedDesign[];
  /** The least of the total first; empty where none was asked for. */
  curve: CurvePoint[];
  effort: Effort;
  words: string[];
}

/** What was simulated so many times. */
export function periodOf({ period }: { period?: "week" | undefined }): "day" | "week" {
  return period ?? "day";
}

/** Before it is put into words. */
export type SearchFindings = Omit<Improvement, "words" | keyof ImproveVerdict>;

/** A design in figures; of the plan as it is `uses` can be null. */
export interface Found {
  name: string;
  /** Of each element, in their order: places, people, 1 for an option that is bought, or the number of a moment (`time.moments`). */
  counts: readonly number[] | null;
  /** Of the total. */
  uses: number | null;
  /** Goal over its days, its interval by itself; null where no day has a value. */
  goal: Estimate | null;
}

/** Over days that neither the search nor the choice saw. */
export interface Recommendation extends Found, Change {
  /** Whether it is the plan as it is. */
  isBase: boolean;
  /** Paired difference to the plan as it is; null for that itself. */
  againstBase: DifferenceInWords | null;
  /** The same the wanted way round, set against the least that matters; null for the plan as it is. */
  gain: Gain | null;
  /** What it brings or costs beside the plan as it is; null for that itself, without money, and where purchases are charged in the goal. */
  money: NetMoney | null;
  /** Mean end of work, seconds after the day's start; null where the plan has no end of its own. */
  ends: { today: number; pick: number; startClockSeconds: number } | null;
  /**
   * The share that is allowed, the one that was found, and today's plan's on the same days; null where no head passed the limit.
   * `of`: the share is of the orders of a week, which are late.
   */
  limits: { name: string; share: number; of?: "orders"; found: Estimate | null; today: Estimate | null }[];
}

export interface Finalist extends Found {
  limits: Kept;
  /** Why it may not be picked although it keeps the limits asked for: what is worse than in the plan as it is; null for nothing. */
  harm: string | null;
  /** Observations after which it was dropped; null of the one picked, and of those that were not in the choice. */
  droppedAfter: number | null;
}

export interface TriedDesign extends Found {
  /** Whether it is the plan as it is. */
  isBase: boolean;
  /** Means of the limits' shares lie below what is allowed. */
  keepsLimits: boolean;
  /** Whether its total may be recommended; others are tried for the trade-off curve. */
  allowed: boolean;
  /** Whether the choice was among it and others. */
  finalist: boolean;
  /** What it made worse than the plan as it is on these few days; null for nothing. */
  harm: string | null;
}

export interface CurvePoint extends Found {
  /** Whether it is the plan as it is. */
  isBase: boolean;
  /** No point gives as much for less (means compared). */
  undominated: boolean;
  /** Means of the limits' shares lie below what is allowed. */
  keepsLimits: boolean;
}

/** Days that were simulated, and what trying everything would take. */
export interface Effort {
  designsTried: number;
  designsAllowed: number;
  searchDays: number;
  choiceDays: number;
  curveDays: number;
  /** Of the pick and the plan as it is, for what is told of the pick. */
  comparisonDays: number;
  /** Of all designs the first stage alone. */
  fullEnumerationDays: number;
}
