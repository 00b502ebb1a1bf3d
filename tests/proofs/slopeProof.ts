import type { Plan } from "../../sim/asked/plan/index.ts";
import { byProductsOf, steps, workplace } from "../../sim/day/line/index.ts";
import { type Slope, slopesOf } from "../../sim/day/observations/index.ts";
import { momentsOf } from "../support/agreesWith.ts";
import { pairsOf, type SlopePair } from "../support/finiteDifference.ts";

/** How one slope of one plan compares with a central difference on the same random numbers. */
export interface Comparison {
  slope: Slope;
  /** Mean slope and mean difference, seconds per second. */
  found: number;
  difference: number;
  /** Standard error of slope minus difference, day by day. */
  gapError: number;
  /** |slope - difference| in standard errors of the gap. */
  t: number;
  /** The difference alone is further from 0 than that many of its own standard errors. */
  isShown: boolean;
  /** It is shown, and the slope has another sign. */
  wrongSign: boolean;
}

export const LIMIT = 3.3;

/** In the order of `slopes`; null when a day of the plan does not end by itself: no slope of it is printed. */
export function compare(
  plan: Plan,
  seed: string,
  slopes: readonly Slope[],
  days: number,
  step: number,
): Comparison[] | null {
  const pairs = pairsOf(plan, slopes, seed, days, step);
  return pairs?.map((each, row) => ({ slope: slopes[row]!, ...verdictOf(each) })) ?? null;
}

function verdictOf(pairs: readonly SlopePair[]) {
  const found = momentsOf(pairs.map(({ slope }) => slope)).mean;
  const { mean: difference, standardError: differenceError } = momentsOf(pairs.map((pair) => pair.difference));
  const gap = momentsOf(pairs.map((pair) => pair.slope - pair.difference));
  // Rounding of times of a thousand seconds, over the step.
  const negligible = Math.abs(gap.mean) <= 1e-7 * (1 + Math.abs(found));
  const t = negligible ? 0 : Math.abs(gap.mean) / gap.standardError;
  const isShown = Math.abs(difference) > LIMIT * differenceError;
  return { found, difference, gapError: gap.standardError, t, isShown, wrongSign: isShown && found * difference <= 0 };
}

/** Those to compare: all of the plan whose figure is given, or all whose figure is withheld. */
export function slopesToCompare(plan: Plan, withheld: boolean): Slope[] {
  return slopesOf(plan).filter((slope) => (slope.withheld !== null) === withheld);
}

type Feature = [name: string, has: (plan: Plan) => boolean];

const breakdownsOf = (plan: Plan) => steps(plan).flatMap((step) => workplace(step).breakdowns);
const stations = (plan: Plan) => plan.line.flatMap((stage) => (stage.kind === "station" ? [stage] : []));

/** What the plans have, for the table of counts. */
export const FEATURES: readonly Feature[] = [
  ["breakdowns on running time", (plan) => breakdownsOf(plan).some(({ clock }) => clock === "running")],
  ["breakdowns by the clock", (plan) => breakdownsOf(plan).some(({ clock }) => clock === "calendar")],
  ["breakdowns of a whole station", (plan) => breakdownsOf(plan).some(({ scope }) => scope === "station")],
  ["a maintenance crew", (plan) => breakdownsOf(plan).some(({ crew }) => crew !== null)],
  ["heads lost to a breakdown", (plan) => breakdownsOf(plan).some(({ headInHand }) => headInHand !== "resume")],
  ["crews with one job", (plan) => crewJobs(plan).some((jobs) => jobs === 1)],
  ["shared crews", (plan) => crewJobs(plan).some((jobs) => jobs > 1)],
  ["relief (two crews at a station)", (plan) => steps(plan).some((step) => workplace(step).crews.length > 1)],
  ["breaks", ({ day }) => day.breaks.length > 0],
  ["a planned safe stop with breaks", ({ day }) => day.safeStop !== null && day.breaks.length > 0],
  ["hanging that stops at an hour", ({ day }) => day.closing.rule === "stop hanging"],
  ["gates", ({ gates }) => gates.length > 0],
  ["chains", ({ line }) => line.some(({ kind }) => kind === "chain")],
  ["diversions", ({ line }) => line.some(({ diversions }) => diversions.length > 0)],
  ["limits of weight", (plan) => stations(plan).some(({ weights }) => weights !== null)],
  ["work that goes by weight", (plan) => stations(plan).some(({ weightFactor }) => weightFactor !== null)],
  ["condemned heads", ({ line }) => line.some(({ removals }) => removals.length > 0)],
  ["several positions", (plan) => stations(plan).some(({ positions }) => positions > 1)],
  ["dwells", ({ line }) => line.some(({ kind }) => kind === "dwell")],
  ["hooks of four", ({ line }) => line.some((stage) => stage.kind === "dwell" && stage.headsPerHook > 1)],
  ["a way between stages", ({ line }) => line.some(({ travelSeconds }) => travelSeconds !== null)],
  ["vessels that stop the line", (plan) => fills(plan, "stop")],
  ["vessels that spill", (plan) => fills(plan, "spill")],
  ["no lack of heads", ({ supply }) => supply.kind === "saturated"],
  ["heads one by one", ({ supply }) => supply.kind === "stream"],
  ["heads turned away", ({ supply }) => supply.kind === "stream" && supply.whenFull === "turn away"],
  ["loads of crates", ({ supply }) => supply.kind === "loads"],
  ["crates that go back", ({ liveHandling }) => (liveHandling?.back.length ?? 0) > 0],
  ["a fleet of crates", ({ liveHandling }) => liveHandling !== null && liveHandling.fleet !== null],
];

function fills(plan: Plan, whenFull: "stop" | "spill"): boolean {
  const fed = steps(plan).flatMap((step) => byProductsOf(step).map(({ vessel }) => vessel));
  return plan.vessels.some((vessel) => vessel.whenFull === whenFull && fed.includes(vessel.name));
}

function crewJobs(plan: Plan): number[] {
  return plan.crews.map(({ name }) => {
    const places = steps(plan).map(workplace);
    const repairs = places.flatMap(({ breakdowns }) => breakdowns).filter(({ crew }) => crew === name).length;
    const vessels = plan.vessels.filter(({ crew }) => crew === name).length;
    return places.filter(({ crews }) => crews.includes(name)).length + repairs + vessels;
  });
}
