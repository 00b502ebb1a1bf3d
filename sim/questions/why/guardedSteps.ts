import type { Plan } from "../../asked/plan/index.ts";
import { type Step, steps } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";

/** Words of the trade for steps whose time is there for animals or for hygiene, whatever a plan says about them. */
const BY_NAME = /\b(stun|stick|bleed|inspect|chill)/i;

/**
 * Names of the steps that nobody is advised to run quicker, because their time is there for animals or for hygiene:
 *
 * - those of the stretch that no planned stop may leave a head on (`day.safeStop`: from stunning to the end of bleeding);
 * - those between the two points of a gate, which holds heads back before stunning until there is room for them, and those between stunning and sticking of `stunned`;
 * - those where a time limit with a minimum begins, ends or lies between;
 * - dwells, chains that carry heads through a dwell's time included;
 * - those with one of the trade's words in their name (stunning, sticking, bleeding, inspection, chilling).
 *
 * A second position there shortens no head's time and may be tried.
 */
export function guardedSteps(plan: Plan): ReadonlySet<string> {
  const all = steps(plan);
  const names = all.map(({ name }) => name);
  const stretches = [
    ...stunnedStretches(plan),
    ...plan.limits
      .filter(({ minSeconds }) => minSeconds !== null)
      .map(({ from, to }) => [from.stage, to.stage] as const),
  ];
  return new Set([
    ...stretches.flatMap(([from, to]) => between(names, from, to)),
    ...all.filter(isGuarded).map(({ name }) => name),
  ]);
}

/**
 * Names of the steps before which a stunned or stuck head would wait: on those stretches all but the first step, and whatever is
 * called sticking. Nobody is advised to give more places there.
 */
export function noWaitingBefore(plan: Plan): ReadonlySet<string> {
  const names = steps(plan).map(({ name }) => name);
  return new Set([
    ...stunnedStretches(plan).flatMap(([from, to]) => between(names, from, to).slice(1)),
    ...names.filter((name) => /\bstick/i.test(name)),
  ]);
}

/** From stunning to the end of bleeding, as far as the plan says where that is. */
function stunnedStretches({ day, gates, stunned }: Plan): (readonly [string | null, string | null])[] {
  return [
    ...(day.safeStop === null ? [] : [[day.safeStop.from, day.safeStop.to] as const]),
    ...gates.map(({ from, to }) => [from, to.stage] as const),
    ...(stunned === null ? [] : [[stunned.from, stunned.to] as const]),
  ];
}

function isGuarded(step: Step): boolean {
  return !does(step, "work") || BY_NAME.test(step.name);
}

/** Null stands for the plant's gate: before the first step or behind the last one. */
function between(names: readonly string[], from: string | null, to: string | null): string[] {
  const first = from === null ? 0 : names.indexOf(from);
  const last = to === null ? names.length - 1 : names.lastIndexOf(to);
  return first < 0 || last < 0 ? [] : names.slice(first, last + 1);
}
