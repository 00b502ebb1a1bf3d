import type { Plan } from "../../asked/plan/index.ts";
import { compare } from "./compare.ts";
import { doubtAbout, type Explanation, REACH } from "./explanation.ts";
import { bestMultiple, gapsOf, meansOf, misfitOf, type Yardstick } from "./misfit.ts";
import type { ObservedQuantity } from "./observed.ts";
import { type PlanFigure, parametersOf } from "./parameter.ts";
import { type Simulation, simulatedValues } from "./simulatedValues.ts";

export interface Question {
  plan: Plan;
  observed: readonly ObservedQuantity[];
  /** values[quantity][day] of the plan as it is. */
  base: readonly (readonly (number | null)[])[];
  yardstick: Yardstick;
  days: number;
  confidence: number;
  simulation: Simulation;
  progress: (words: string) => void;
}

/** Days on which every figure is tried first. */
const FEW_DAYS = 3;
/** Logarithm of the factor, or people, by which every figure is moved first. */
const FIRST_MOVE: Record<PlanFigure["kind"], number> = { cycle: 0.1, uptime: 0.5, repair: 0.5, people: 1 };
/** Figures that are looked at more closely. */
const CHOSEN = 5;
/** A move that promises less than this share of the misfit explains nothing. */
const WORTH_A_LOOK = 0.1;
/** Rounds on some days, and on all of them. */
const ROUNDS = 2;
/** Days of a round that only shows how far to go. */
const SOME_DAYS = 6;
/** A next move that differs by less than this share of the last one is not made. */
const STILL = 0.1;

/**
 * Moves every mean cycle time, uptime, repair time and crew of the plan by itself, on the same random numbers as the plan
 * (common random numbers), and tells which of them would take the gap away: first all of them a little on a few days,
 * then the most promising ones as far as it takes. Best first; those that take away less than a tenth are left out.
 */
export async function explain(question: Question): Promise<Explanation[]> {
  const tried: Prospect[] = [];
  const parameters = parametersOf(question.plan);
  for (const [index, parameter] of parameters.entries()) {
    question.progress(`${index + 1} of ${parameters.length}: ${parameter.label}`);
    tried.push(await prospectOf(parameter, question));
  }
  const worth = tried.filter(({ removed }) => removed >= WORTH_A_LOOK).sort((a, b) => b.removed - a.removed);
  const found: Explanation[] = [];
  for (const prospect of worth.slice(0, CHOSEN)) {
    question.progress(`how far: ${prospect.parameter.label}`);
    const explanation = await asFarAsItTakes(prospect, question);
    if (explanation !== null && explanation.removed >= WORTH_A_LOOK) found.push(explanation);
  }
  return found.sort(
    (a, b) => Number(b.closes) - Number(a.closes) || Number(b.plausible) - Number(a.plausible) || b.removed - a.removed,
  );
}

/** What a first small move lets one hope for. */
interface Prospect {
  parameter: PlanFigure;
  /** Logarithm of the factor, or people. */
  move: number;
  removed: number;
}

/** Tries a figure one way, and the other way where that makes the misfit larger. */
async function prospectOf(parameter: PlanFigure, question: Question): Promise<Prospect> {
  const step = FIRST_MOVE[parameter.kind];
  const gaps = gapsOf(meansOf(question.base), question.yardstick);
  const before = misfitOf(gaps);
  for (const move of [step, -step]) {
    const changes = await changesOf(parameter, move, FEW_DAYS, question);
    const wanted = bestMultiple(gaps, changes) * move;
    // A move in the other direction is judged by its own trial: effects are seldom the same both ways.
    if (wanted * move <= 0) continue;
    const within = withinReach(parameter, wanted);
    const left = misfitOf(gaps.map((gap, i) => gap - (within / move) * changes[i]!));
    return { parameter, move: within, removed: 1 - left / before };
  }
  return { parameter, move: 0, removed: 0 };
}

/** What a move does to the mean of each quantity, pair by pair, in standard errors. */
async function changesOf(parameter: PlanFigure, move: number, days: number, question: Question): Promise<number[]> {
  const moved = await valuesAt(parameter, move, days, question);
  const { errors } = question.yardstick;
  return moved.map((values, i) => {
    const pairs = values.flatMap((value, day) => {
      const base = question.base[i]![day]!;
      return value === null || base === null ? [] : [value - base];
    });
    const mean = pairs.length === 0 ? 0 : pairs.reduce((sum, pair) => sum + pair, 0) / pairs.length;
    return mean / errors[i]!;
  });
}

function valuesAt(parameter: PlanFigure, move: number, days: number, { plan, simulation }: Question) {
  return simulatedValues(parameter.moved(plan, amountOf(parameter, move)), days, simulation);
}

/** The factor of a move, or the people. */
function amountOf({ kind }: PlanFigure, move: number): number {
  return kind === "people" ? move : Math.exp(move);
}

function withinReach({ kind }: PlanFigure, move: number): number {
  const { low, high } = REACH[kind];
  if (kind === "people") return Math.min(Math.max(Math.round(move), low), high);
  return Math.min(Math.max(move, Math.log(low)), Math.log(high));
}

/**
 * Follows a prospect: each next move is the one that would be best if effects were straight from no move to the last one.
 * Some days show how far to go, all days what the move does. Null when no move made the misfit smaller.
 */
async function asFarAsItTakes({ parameter, move }: Prospect, question: Question): Promise<Explanation | null> {
  const gaps = gapsOf(meansOf(question.base), question.yardstick);
  const before = misfitOf(gaps);
  let next = withinReach(parameter, move);
  for (let round = 0; round < ROUNDS && next !== 0; round++) {
    const changes = await changesOf(parameter, next, Math.min(SOME_DAYS, question.days), question);
    const wanted = withinReach(parameter, bestMultiple(gaps, changes) * next);
    const still = isStill(wanted, next);
    next = wanted;
    if (still) break;
  }
  let best: { move: number; misfit: number; values: (number | null)[][] } | null = null;
  for (let round = 0; round < ROUNDS && next !== 0; round++) {
    const values = await valuesAt(parameter, next, question.days, question);
    const left = gapsOf(meansOf(values), question.yardstick);
    const misfit = misfitOf(left);
    if (misfit < (best?.misfit ?? before)) best = { move: next, misfit, values };
    const changes = left.map((gap, i) => gaps[i]! - gap);
    const wanted = withinReach(parameter, bestMultiple(gaps, changes) * next);
    if (isStill(wanted, next)) break;
    next = wanted;
  }
  return best === null ? null : explanationOf(parameter, best, before, question);
}

function isStill(wanted: number, last: number): boolean {
  return Math.abs(wanted - last) <= STILL * Math.abs(last);
}

function explanationOf(
  parameter: PlanFigure,
  { move, misfit, values }: { move: number; misfit: number; values: (number | null)[][] },
  before: number,
  { observed, confidence, plan }: Question,
): Explanation {
  const { kind, label, path, value } = parameter;
  const amount = amountOf(parameter, move);
  const left = observed
    .filter((each, i) => compare(each.values, values[i]!, observed.length, confidence)?.shown ?? false)
    .map(({ quantity }) => quantity.label);
  const moved = parametersOf(parameter.moved(plan, amount)).find((each) => each.path === path)!;
  const doubt = doubtAbout(kind, amount);
  const removed = 1 - misfit / before;
  return {
    kind,
    label,
    path,
    from: value,
    to: moved.value,
    removed,
    left,
    closes: left.length === 0,
    plausible: doubt === "",
    doubt,
  };
}
