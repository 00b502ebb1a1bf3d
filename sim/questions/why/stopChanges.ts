import { type Break, breaksOverlap, formatPath, type Plan, staggerWords, stopFit } from "../../asked/plan/index.ts";
import { carrierOf, steps, workplace } from "../../day/line/index.ts";
import { writeClock } from "../../text/units/index.ts";
import { stretchSeconds } from "../estimate/index.ts";
import type { PlanChange } from "./change.ts";

/** Crews that go less than this apart go at the same time, as far as anybody can tell. */
const SAME_SECONDS = 30;

type Later = (crew: string) => number;

/**
 * Other ways to stagger the breaks along the line: the one that `gambrel check` and a day's report name, if they name one;
 * each crew when the last head before the break reaches it, half of that later, or all at once. Every break keeps its
 * length and everybody who goes. Empty where no break has two crews.
 */
export function staggerChanges(plan: Plan): PlanChange[] {
  const lags = lagsOf(plan);
  const asHeadsFlow: Later = (crew) => lags.get(crew) ?? 0;
  const laid = (label: string, later: Later) => ({ label, breaks: plan.day.breaks.map(staggeredBy(later, plan)) });
  const named = stopFit(plan)?.stagger?.breaks;
  const all = [
    ...(named === undefined ? [] : [{ label: staggerWords(named), breaks: inOrderOf(plan.day.breaks, named) }]),
    laid("one crew after another on break, as heads flow", asHeadsFlow),
    laid("one crew after another on break, half as far apart as heads flow", (crew) => asHeadsFlow(crew) / 2),
    laid("breaks for all at the same time", () => 0),
  ];
  const others = all.filter(({ breaks }) => !sameStarts(breaks, plan.day.breaks) && !breaksOverlap(breaks));
  return others
    .filter(({ breaks }, row) => !others.slice(0, row).some((before) => sameStarts(before.breaks, breaks)))
    .map(({ label, breaks }) => stagger(label, breaks));
}

function stagger(label: string, breaks: Break[]): PlanChange {
  return {
    ...{ kind: "stagger", of: "the breaks", label, phrase: label, plural: false },
    on: (before) => ({ plan: { ...before, day: { ...before.day, breaks } }, set: written(before.day.breaks, breaks) }),
  };
}

/** Breaks laid anew come by their time; the plan's own order is the one that its file has. */
function inOrderOf(own: readonly Break[], laid: readonly Break[]): Break[] {
  return own.map(({ name }) => laid.find((pause) => pause.name === name)!);
}

function sameStarts(one: readonly Break[], other: readonly Break[]): boolean {
  return one.every((pause, row) =>
    pause.crews.every((crew) => Math.abs(startOf(pause, crew) - startOf(other[row]!, crew)) < SAME_SECONDS),
  );
}

function startOf(pause: Break, crew: string): number {
  return pause.atSeconds + (pause.laterSeconds[crew] ?? 0);
}

function staggeredBy(later: Later, plan: Plan): (pause: Break) => Break {
  return (pause) => staggered(pause, later, plan);
}

function staggered(pause: Break, later: Later, plan: Plan): Break {
  if (pause.crews.length < 2) return pause;
  const first = Math.min(...pause.crews.map(later));
  const latest = plan.day.shifts.at(-1)!.toSeconds - pause.atSeconds - pause.lengthSeconds;
  const seconds = (crew: string) => Math.max(0, Math.min(latest, Math.round((later(crew) - first) / 60) * 60));
  return { ...pause, laterSeconds: Object.fromEntries(pause.crews.map((crew) => [crew, seconds(crew)])) };
}

/** Seconds on the way from the first stage to the first one that each crew works at; crews off the line are not in it. */
function lagsOf(plan: Plan): Map<string, number> {
  const lags = new Map<string, number>();
  const main = plan.line.filter(({ offLine }) => !offLine);
  for (const step of steps(plan)) {
    const carrier = carrierOf(step);
    if (carrier === null || !main.includes(carrier)) continue;
    for (const crew of workplace(step).crews) {
      if (!lags.has(crew)) lags.set(crew, stretchSeconds(plan, main[0]!.name, step.name, false));
    }
  }
  return lags;
}

/** What the plan's file says of the breaks that move. */
function written(own: readonly Break[], laid: readonly Break[]): Record<string, unknown> {
  const moved = laid.flatMap((pause, row) => {
    const { name, atSeconds, crews, laterSeconds } = pause;
    const later = Object.entries(laterSeconds).filter(([, seconds]) => seconds > 0);
    return [
      ...(atSeconds === own[row]!.atSeconds
        ? []
        : [[formatPath(["day", "breaks", name, "at"]), writeClock(atSeconds)] as const]),
      ...(crews.length < 2
        ? []
        : [
            [
              formatPath(["day", "breaks", name, "later"]),
              Object.fromEntries(later.map(([crew, seconds]) => [crew, `${seconds / 60} min`])),
            ] as const,
          ]),
    ];
  });
  return Object.fromEntries(moved);
}
