import { stretchSeconds } from "../estimate/index.ts";
import { steps, workplace } from "../line/index.ts";
import { type Break, formatPath, type Plan } from "../plan/index.ts";
import type { PlanChange } from "./change.ts";

/** Crews that go less than this apart go at the same time, as far as anybody can tell. */
const SAME_SECONDS = 30;

type Later = (crew: string) => number;

/**
 * Other ways to stagger the breaks along the line: each crew goes when the last head before the break reaches it, half of
 * that later, or all go at once. Every break keeps its length and everybody who goes. Empty where no break has two crews.
 */
export function staggerChanges(plan: Plan): PlanChange[] {
  const lags = lagsOf(plan);
  const asHeadsFlow: Later = (crew) => lags.get(crew) ?? 0;
  return [
    stagger(plan, "as heads flow", "one crew after another on break, as heads flow", asHeadsFlow),
    stagger(
      plan,
      "half",
      "one crew after another on break, half as far apart as heads flow",
      (crew) => asHeadsFlow(crew) / 2,
    ),
    stagger(plan, "together", "all crews on break at once", () => 0),
  ].filter((change) => change !== null);
}

function stagger(plan: Plan, key: string, label: string, later: Later): PlanChange | null {
  const breaks = plan.day.breaks.map((pause) => staggered(pause, later, plan));
  const moved = breaks.some((pause, index) =>
    pause.crews.some((crew) => Math.abs(laterOf(pause, crew) - laterOf(plan.day.breaks[index]!, crew)) >= SAME_SECONDS),
  );
  if (!moved || overlaps(breaks)) return null;
  return {
    ...{ kind: "stagger", of: "the breaks", label, phrase: label, plural: false },
    on: (before) => ({
      plan: { ...before, day: { ...before.day, breaks } },
      set: Object.fromEntries(
        breaks
          .filter(({ crews }) => crews.length > 1)
          .map((pause) => [formatPath(["day", "breaks", pause.name, "later"]), written(pause, key)]),
      ),
    }),
  };
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
    if (
      step.kind === "crates" ||
      !main.some(({ name }) => name === (step.kind === "chain station" ? step.chain.name : step.name))
    )
      continue;
    for (const crew of workplace(step).crews) {
      if (!lags.has(crew)) lags.set(crew, stretchSeconds(plan, main[0]!.name, step.name, false));
    }
  }
  return lags;
}

function laterOf({ laterSeconds }: Break, crew: string): number {
  return laterSeconds[crew] ?? 0;
}

/** Whether somebody would have two breaks at once. */
function overlaps(breaks: readonly Break[]): boolean {
  return breaks.some((one, index) =>
    breaks.slice(index + 1).some((other) =>
      one.crews
        .filter((crew) => other.crews.includes(crew))
        .some((crew) => {
          const [a, b] = [one.atSeconds + laterOf(one, crew), other.atSeconds + laterOf(other, crew)];
          return a < b + other.lengthSeconds && b < a + one.lengthSeconds;
        }),
    ),
  );
}

function written({ laterSeconds }: Break, key: string): unknown {
  const minutes = Object.entries(laterSeconds).map(([crew, seconds]) => [crew, `${seconds / 60} min`]);
  return key === "together" ? {} : Object.fromEntries(minutes.filter(([, text]) => text !== "0 min"));
}
