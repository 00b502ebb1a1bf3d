import type { Plan } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { does } from "../../text/kinds/index.ts";
import { type EstimatePrecision, estimateLine, type LineEstimate } from "./estimateLine.ts";
import { headFlow } from "./headFlow.ts";
import { lastHold } from "./lastHold.ts";
import { pacedPlan, paceHours } from "./pacedPlan.ts";
import { stretchSeconds } from "./stretchSeconds.ts";
import { workDone, workingSpans } from "./workingSpans.ts";

export interface DayEstimate {
  line: LineEstimate;
  carcasses: number;
  /** End of the last work at a station, seconds after the day's start; Infinity when no head is ever hung. */
  workFinishSeconds: number;
  /** Carcasses per hour from the start of the first shift to the end of work, as the simulation counts them. */
  headsPerHour: number;
}

/** Heads that come at once. */
interface Arrival {
  atSeconds: number;
  heads: number;
}

/**
 * A day of a plan without simulating it: animals that are there when it begins and loads at their mean times, each with the heads that it brings on the average, are hung one after another at the rate of the line or of
 * crate handling, whichever is less, hour by hour where their speed depends on it, in the time that breaks leave and as the chiller has room; then the last head runs
 * down the line. `line`: the estimate of the plan's line, where that is known already.
 */
export function estimateDay(
  plan: Plan,
  precision: EstimatePrecision = "fine",
  line: LineEstimate = estimateLine(plan, precision),
): DayEstimate {
  const { hung, lastAt } = hang(plan, rateOf(line), ratesByHour(plan, precision));
  const workFinishSeconds = Math.max(lastAt + lastWorkSeconds(plan), lastHeldSeconds(plan, line));
  const there = (plan.atStart?.carcasses ?? []).reduce((sum, { heads }) => sum + heads, 0);
  const carcasses = there + hung * headFlow(plan).carcasses;
  const start = plan.day.shifts[0]?.fromSeconds ?? 0;
  return { line, carcasses, workFinishSeconds, headsPerHour: (carcasses / (workFinishSeconds - start)) * 3600 };
}

/** Heads hung per second while the chiller is not full. */
function rateOf({ ceilings, fillingHeadsPerSecond }: LineEstimate): number {
  const crates = ceilings.find(({ kind }) => kind === "crates")?.headsPerSecond ?? Number.POSITIVE_INFINITY;
  return Math.min(fillingHeadsPerSecond, crates);
}

/** From which second on the line does how much; empty where its speed does not depend on the hour. */
function ratesByHour(plan: Plan, precision: EstimatePrecision): { from: number; rate: number }[] {
  return paceHours(plan).map((from) => ({ from, rate: rateOf(estimateLine(pacedPlan(plan, from), precision)) }));
}

/** The day's heads are hung in so many parts; one that the end of hanging cuts off does not count. */
const PARTS = 500;

/** Part by part: when it has come, when the one before is hung, and when the chiller has room for it. */
function hang(
  plan: Plan,
  usual: number,
  byHour: readonly { from: number; rate: number }[],
): { hung: number; lastAt: number } {
  const spans = workingSpans(plan);
  const arrivals = arrivalsOf(plan);
  const heads = arrivals.reduce((sum, load) => sum + load.heads, 0);
  const part = heads / PARTS;
  const hold = lastHold(plan, usual);
  const inHold = hold === null ? Number.POSITIVE_INFINITY : Math.max(1, Math.floor(hold.places / part));
  const hungAt: number[] = [];
  for (let count = 0; count < PARTS; count++) {
    const room = count < inHold ? 0 : hungAt[count - inHold]! + hold!.seconds;
    const rate = byHour.findLast(({ from }) => from <= (hungAt.at(-1) ?? 0))?.rate ?? usual;
    const begins = Math.max(hungAt.at(-1) ?? 0, room - part / rate, arrivedAt(arrivals, (count + 0.5) * part));
    const ends = workDone(spans, begins, part / rate);
    if (ends === Number.POSITIVE_INFINITY) break;
    hungAt.push(ends);
  }
  return { hung: hungAt.length * part, lastAt: hungAt.at(-1) ?? Number.POSITIVE_INFINITY };
}

/** When so many heads have come. */
function arrivedAt(arrivals: readonly Arrival[], heads: number): number {
  let come = 0;
  const last = arrivals.find((load) => {
    come += load.heads;
    return come >= heads;
  });
  return last?.atSeconds ?? 0;
}

function arrivalsOf(plan: Plan): Arrival[] {
  const waiting = (plan.atStart?.crates ?? []).map(({ crates, headsPerCrate }) => crates * headsPerCrate);
  return [...waiting.map((heads) => ({ atSeconds: 0, heads })), ...supplied(plan)];
}

function supplied({ supply }: Plan): Arrival[] {
  if (supply.kind === "saturated") return [{ atSeconds: 0, heads: supply.heads }];
  if (supply.kind === "stream") {
    const gap = meanOf(supply.interarrival);
    const heads = supply.heads / PARTS;
    return Array.from({ length: PARTS }, (_, part) => ({ atSeconds: (part + 1) * heads * gap, heads }));
  }
  return supply.loads
    .map(({ atSeconds, delay, crates, headsPerCrate, comesShare }) => ({
      atSeconds: atSeconds + (delay === null ? 0 : meanOf(delay)),
      heads: crates * headsPerCrate * comesShare,
    }))
    .toSorted((a, b) => a.atSeconds - b.atSeconds);
}

/** When the heads of held lots are worked on after their release, at the line's rate; 0 where there are none. */
function lastHeldSeconds({ supply, line }: Plan, { fillingHeadsPerSecond: rate }: LineEstimate): number {
  if (supply.kind !== "loads") return 0;
  const main = line.filter(({ offLine }) => !offLine);
  const ends = supply.loads.flatMap(({ held, crates, headsPerCrate, comesShare }) => {
    if (held === undefined) return [];
    const after = main.slice(main.findIndex(({ name }) => name === held.in) + 1);
    return after.every((stage) => does(stage, "hold heads"))
      ? []
      : [held.untilSeconds + (crates * headsPerCrate * comesShare) / rate];
  });
  return Math.max(0, ...ends);
}

/** From hanging to the end of the last work on a head: dwells behind the last station are no work. */
function lastWorkSeconds(plan: Plan): number {
  const main = plan.line.filter(({ offLine }) => !offLine);
  const last = main.findLast((stage) => !does(stage, "hold heads"));
  return last === undefined ? 0 : stretchSeconds(plan, main[0]!.name, last.name, true);
}
