import type { PlanFigure } from "./parameter.ts";

/** What changing one figure alone explains. */
export interface Explanation {
  kind: PlanFigure["kind"];
  label: string;
  path: string;
  /** Seconds, or people. */
  from: number;
  to: number;
  /** Share of the misfit (sum of squared differences in standard errors) that goes with the move; 1 is all of it. */
  removed: number;
  /** Labels of the quantities whose difference is still shown after the move. */
  left: string[];
  /** No difference is shown any more. */
  closes: boolean;
  plausible: boolean;
  /** What makes the move implausible, "" when it is not. */
  doubt: string;
}

/** How far the search moves a figure; beyond, the plan is of another plant. People: added or taken away. */
export const REACH: Record<PlanFigure["kind"], { low: number; high: number }> = {
  cycle: { low: 0.5, high: 2 },
  uptime: { low: 0.1, high: 10 },
  repair: { low: 0.1, high: 10 },
  people: { low: -2, high: 2 },
};

/**
 * Further than this a figure is hardly out by itself. Our own rule, no source: a mean of thirty stopwatch times with a
 * coefficient of variation of 0.3 is good to 11 %; stops are rarer and vary more; crews are counted.
 */
const PLAUSIBLE: Record<PlanFigure["kind"], { low: number; high: number; words: string }> = {
  cycle: { low: 1 / 1.2, high: 1.2, words: "a cycle time wrong by more than a fifth would have been noticed" },
  uptime: { low: 0.5, high: 2, words: "stops more than twice as rare or as frequent would have been noticed" },
  repair: { low: 0.5, high: 2, words: "repairs more than twice as long or as short would have been noticed" },
  people: { low: -1, high: 1, words: "two people more or fewer would have been noticed" },
};

/** Why a move is hard to believe; "" when it is not. */
export function doubtAbout(kind: PlanFigure["kind"], by: number): string {
  const { low, high, words } = PLAUSIBLE[kind];
  return by >= low && by <= high ? "" : words;
}
