import type { Plan } from "../plan/index.ts";
import { meanOf } from "../random/index.ts";
import { estimateLine, type LineEstimate } from "./estimateLine.ts";
import { headFlow } from "./headFlow.ts";
import { stretchSeconds } from "./stretchSeconds.ts";
import { type Span, workDone, workingSpans } from "./workingSpans.ts";

export interface DayEstimate {
  line: LineEstimate;
  carcasses: number;
  /** End of the last work at a station, seconds after the day's start; Infinity when hanging ends before. */
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
 * A day of a plan without simulating it: loads at their mean times are hung one after another at the rate of the line or of
 * crate handling, whichever is less, in the time that breaks leave; then the last head runs down the line.
 */
export function estimateDay(plan: Plan): DayEstimate {
  const line = estimateLine(plan);
  const crates = line.ceilings.find(({ kind }) => kind === "crates")?.headsPerSecond ?? Number.POSITIVE_INFINITY;
  const rate = Math.min(line.headsPerSecond, crates);
  const spans = workingSpans(plan);
  const arrivals = arrivalsOf(plan);
  const lastHung = arrivals.reduce((at, load) => workDone(spans, Math.max(at, load.atSeconds), load.heads / rate), 0);
  const heads = arrivals.reduce((sum, load) => sum + load.heads, 0);
  const hung = lastHung < Number.POSITIVE_INFINITY ? heads : hungBy(arrivals, spans, rate);
  const ended = Math.min(lastHung, spans.at(-1)?.to ?? 0);
  const workFinishSeconds = ended + lastWorkSeconds(plan);
  const carcasses = hung * headFlow(plan).carcasses;
  const start = plan.day.shifts[0]?.fromSeconds ?? 0;
  return { line, carcasses, workFinishSeconds, headsPerHour: (carcasses / (workFinishSeconds - start)) * 3600 };
}

/** A stream comes as one arrival for every hundredth of it. */
const PARTS = 100;

function arrivalsOf({ supply }: Plan): Arrival[] {
  if (supply.kind === "saturated") return [{ atSeconds: 0, heads: supply.heads }];
  if (supply.kind === "stream") {
    const gap = meanOf(supply.interarrival);
    const heads = supply.heads / PARTS;
    return Array.from({ length: PARTS }, (_, part) => ({ atSeconds: (part + 1) * heads * gap, heads }));
  }
  return supply.loads
    .map(({ atSeconds, delay, crates, headsPerCrate }) => ({
      atSeconds: atSeconds + (delay === null ? 0 : meanOf(delay)),
      heads: crates * headsPerCrate,
    }))
    .toSorted((a, b) => a.atSeconds - b.atSeconds);
}

/** Heads hung when hanging ends before all of them are: load by load, the last one in part. */
function hungBy(arrivals: readonly Arrival[], spans: readonly Span[], rate: number): number {
  let [at, hung] = [0, 0];
  for (const { atSeconds, heads } of arrivals) {
    const begins = Math.max(at, atSeconds);
    at = workDone(spans, begins, heads / rate);
    if (at < Number.POSITIVE_INFINITY) hung += heads;
    else return hung + rate * spans.reduce((sum, { from, to }) => sum + Math.max(0, to - Math.max(from, begins)), 0);
  }
  return hung;
}

/** From hanging to the end of the last work on a head: dwells behind the last station are no work. */
function lastWorkSeconds(plan: Plan): number {
  const main = plan.line.filter(({ offLine }) => !offLine);
  const last = main.findLast(({ kind }) => kind !== "dwell");
  return last === undefined ? 0 : stretchSeconds(plan, main[0]!.name, last.name, true);
}
