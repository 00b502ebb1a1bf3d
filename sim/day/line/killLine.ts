import type { Plan, Point, TimeLimit } from "../../asked/plan/plan.ts";
import { does } from "../../text/kinds/index.ts";
import { carrierOf, type Step, steps } from "./steps.ts";

/** The kill line of a plan, by names of its steps in line order: from stunning to the end of bleeding. */
export interface KillLine {
  /** A head is stunned at the end of one of these. */
  stunning: string[];
  /** It is stuck at the start of one of these. */
  sticking: string[];
  /** Bleeding is over at the end of these (of a chain: when the head is taken off it); empty: at the end of sticking. */
  bleeding: string[];
  /** Every step on the line from the first stunning to the last bleeding; of what rides on a chain, the chain. */
  steps: string[];
}

const STUNS = /\bstun/iu;
const STICKS = /\bstick/iu;
const BLEEDS = /\bbleed/iu;

/**
 * Finds the kill line in a plan. Steps say by their names that heads are stunned, stuck or bled there; where names are
 * silent, stunning is the first step of the stretch that planned stops leave empty (`day.safeStop`) and bleeding its
 * last one, and sticking is where a limit on the time after stunning ends, or else the next step. Null where
 * nothing says where heads are stunned, or nothing is done to them after it.
 */
export function killLineOf(plan: Plan): KillLine | null {
  const all: Step[] = steps(plan).filter((step) => !does(step, "handle crates"));
  const onLine = all.filter((step) => !isOffLine(step));
  const stunning = onLine.filter((step) => does(step, "work") && STUNS.test(step.name));
  const first = onLine.indexOf(stunning[0] ?? onLine.find(({ name }) => name === plan.day.safeStop?.from)!);
  if (first === -1) return null;
  const stuns = names(stunning.length > 0 ? stunning : [onLine[first]!]);
  const after = all.slice(all.indexOf(onLine[first]!) + 1);
  const sticking = stickingOf(plan, stuns, after);
  if (sticking.length === 0) return null;
  const stuckAt = Math.max(...onLine.map(({ name }, index) => (sticking.includes(name) ? index : -1)));
  const bleeding = bleedingOf(plan, onLine, stuckAt);
  const last = Math.max(stuckAt, ...bleeding.map((step) => onLine.indexOf(step)));
  return {
    stunning: stuns,
    sticking,
    bleeding: names(bleeding),
    steps: [...new Set(onLine.slice(first, last + 1).map(carrier))],
  };
}

/** Limits on the time from the end of stunning to sticking. */
export function stunToStickLimits(plan: Plan, line: KillLine): TimeLimit[] {
  return plan.limits.filter(
    ({ from, to, maxSeconds }) => maxSeconds !== null && isAt(from, line.stunning) && isAt(to, line.sticking),
  );
}

function stickingOf({ limits }: Plan, stuns: readonly string[], after: readonly Step[]): string[] {
  const named = names(after.filter((step) => does(step, "work") && STICKS.test(step.name)));
  if (named.length > 0) return named;
  const ends = limits.filter(({ from, maxSeconds }) => maxSeconds !== null && isAt(from, stuns));
  const places = after.filter(
    (step) => !isOffLine(step) && !does(step, "carry stations") && !stuns.includes(step.name),
  );
  const place = places.find(({ name }) => ends.some(({ to }) => to.stage === name)) ?? places[0];
  return place === undefined ? [] : [place.name];
}

/** Behind sticking, or where heads are stuck, or the chain that carries them from there. */
function bleedingOf({ day }: Plan, onLine: readonly Step[], stuckAt: number): Step[] {
  const from = onLine.filter((step, index) => index >= stuckAt || step.name === carrier(onLine[stuckAt]!));
  const named = from.filter(({ name }) => BLEEDS.test(name));
  if (named.length > 0) return named;
  return from.filter((step) => step !== onLine[stuckAt] && step.name === day.safeStop?.to);
}

function isAt({ stage }: Point, places: readonly string[]): boolean {
  return stage !== null && places.includes(stage);
}

function isOffLine(step: Step): boolean {
  return carrierOf(step)?.offLine ?? true;
}

function carrier(step: Step): string {
  return carrierOf(step)?.name ?? step.name;
}

function names(list: readonly Step[]): string[] {
  return list.map(({ name }) => name);
}
