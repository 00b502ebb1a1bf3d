import type { Sample } from "./sample.ts";

/** One time at which something ended. */
export interface SurvivalStep {
  time: number;
  /** Share that ended before this time, and up to and with it. */
  before: number;
  after: number;
}

/**
 * The empirical distribution function with open times (Kaplan and Meier 1958, Journal of the American Statistical
 * Association 53): a time that is open at the very moment another one ends lasts longer than it. Without open times the
 * plain steps of 1/n. Ascending, one step for each different ended time.
 */
export function kaplanMeier({ ended, open }: Sample): SurvivalStep[] {
  const steps: SurvivalStep[] = [];
  let atRisk = ended.length + open.length;
  let lasting = 1;
  let dropped = 0;
  for (let i = 0; i < ended.length; ) {
    const time = ended[i]!;
    for (; dropped < open.length && open[dropped]! < time; dropped++) atRisk--;
    let count = 0;
    for (; i < ended.length && ended[i] === time; i++) count++;
    const before = 1 - lasting;
    // Exactly 0 at the end, where rounding would leave a trace.
    lasting = count === atRisk ? 0 : lasting * (1 - count / atRisk);
    atRisk -= count;
    steps.push({ time, before, after: 1 - lasting });
  }
  return steps;
}
