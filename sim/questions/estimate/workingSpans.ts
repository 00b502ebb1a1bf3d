import { type Plan, stationsIn } from "../../asked/plan/index.ts";
import { stretchSeconds } from "./stretchSeconds.ts";

/** Seconds after the day's start. */
export interface Span {
  from: number;
  to: number;
}

/**
 * When heads are hung: the shifts less the checks before them and the breaks of whoever works on the main way; the last
 * shift goes on as overtime, or until hanging stops. A break on the stretch that a planned stop keeps empty takes as
 * much longer as a head needs through it.
 */
export function workingSpans(plan: Plan): Span[] {
  const { shifts, closing, preStartSeconds } = plan.day;
  const end = closing.rule === "finish" ? Number.POSITIVE_INFINITY : closing.atSeconds;
  const spans = shifts.map(({ fromSeconds, toSeconds }, index) => ({
    from: fromSeconds + (index === 0 ? preStartSeconds : 0),
    to: index === shifts.length - 1 ? end : Math.min(end, toSeconds),
  }));
  return stopsOf(plan)
    .reduce(without, spans)
    .filter(({ from, to }) => from < to);
}

function stopsOf(plan: Plan): Span[] {
  const main = plan.line.filter(({ offLine }) => !offLine);
  const stations = main.flatMap(stationsIn);
  const crews = new Set(stations.flatMap((station) => station.crews));
  const names = new Set([...main, ...stations].map(({ name }) => name));
  const kept =
    plan.day.safeStop === null ? 0 : stretchSeconds(plan, plan.day.safeStop.from, plan.day.safeStop.to, true);
  return plan.day.breaks
    .filter((pause) => pause.crews.some((crew) => crews.has(crew)) || pause.stages.some((stage) => names.has(stage)))
    .map(({ atSeconds, lengthSeconds }) => ({ from: atSeconds, to: atSeconds + lengthSeconds + kept }));
}

function without(spans: readonly Span[], stop: Span): Span[] {
  return spans
    .flatMap(({ from, to }) => [
      { from, to: Math.min(to, stop.from) },
      { from: Math.max(from, stop.to), to },
    ])
    .filter(({ from, to }) => from < to);
}

/** When so many seconds of work, begun at `at` or as soon after as is possible, are done; Infinity when never. */
export function workDone(spans: readonly Span[], at: number, seconds: number): number {
  let left = seconds;
  for (const { from, to } of spans) {
    const begins = Math.max(from, at);
    if (begins >= to) continue;
    if (begins + left <= to) return begins + left;
    left -= to - begins;
  }
  return Number.POSITIVE_INFINITY;
}
