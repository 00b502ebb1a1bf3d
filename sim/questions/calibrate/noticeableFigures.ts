import type { Plan } from "../../asked/plan/index.ts";
import { estimate } from "../../maths/statistics/index.ts";
import { multipleFound, type Noise, noiseOf } from "./noise.ts";
import type { ObservedQuantity } from "./observed.ts";
import { type PlanFigure, parametersOf } from "./parameter.ts";
import { type Simulation, simulatedValues } from "./simulatedValues.ts";

/** How far a figure of the plan could be out, for the worse, before the observed days would show it. */
export interface NoticeableFigure {
  kind: PlanFigure["kind"];
  label: string;
  path: string;
  /** Seconds, or people. */
  from: number;
  /** As bad as this, or worse, some difference is found in four of five cases; null when not even `limit` is. */
  to: number | null;
  /** The worst that was tried. */
  limit: number;
}

export interface NoticeQuestion {
  plan: Plan;
  observed: readonly ObservedQuantity[];
  /** values[quantity][day] of the plan as it is. */
  base: Values;
  confidence: number;
  simulation: Simulation;
  progress: (words: string) => void;
}

/** The worst that is tried: factors, or people. Our own rule: worse than this nobody needs a calibration to notice. */
const WORST: Record<PlanFigure["kind"], number> = { cycle: 2, uptime: 0.2, repair: 5, people: -2 };
/** Days that are added at a time, until it is sure on which side of 1 a size lies, or the size is known closely enough. */
const BATCH_DAYS = 3;
/** Standard errors that make sure. */
const SURE = 2;
/** Of a size near 1. */
const CLOSE_ENOUGH = 0.07;
/** A size this close to 1, when known closely enough, ends the search. */
const NEAR = 0.2;
const MAX_STEPS = 8;
/** Days of one trial at most. */
const MAX_DAYS = 24;
/** So many days of an unchanged spread are added when the spread of a worse plan's days is measured. Our own rule. */
const SPREAD_DAYS = 4;

type Values = readonly (readonly (number | null)[])[];

/**
 * For every mean cycle time, uptime, repair time and crew: how much worse than in the plan it would have to be (longer, more
 * often, fewer people) for the observed days to show it in four of five cases, in whichever quantity. Worse plans are
 * simulated on the same random numbers as the plan itself; the shift of each mean is set against what luck does to the
 * comparison, the spread of the worse plan's days as it is seen. Crews of one are left out.
 */
export async function noticeableFigures(question: NoticeQuestion): Promise<NoticeableFigure[]> {
  const { plan, observed, base, confidence, simulation, progress } = question;
  const noise = noiseOf(observed, base, confidence, simulation.seed);
  const parameters = parametersOf(plan).filter((parameter) => movedValue(parameter, plan, 1) !== parameter.value);
  const found: NoticeableFigure[] = [];
  for (const [index, parameter] of parameters.entries()) {
    progress(`what would be noticed: ${index + 1} of ${parameters.length}: ${parameter.label}`);
    const { kind, label, path, value } = parameter;
    const trial = (part: number) => tryPart(parameter, part, question, noise);
    const part = kind === "people" ? await fewestPeople(parameter, trial) : await leastPart(trial);
    const to = part === null ? null : movedValue(parameter, plan, part);
    found.push({ kind, label, path, from: value, to, limit: movedValue(parameter, plan, 1) });
  }
  return found;
}

/** Part of the way to the worst, 0 to 1, as a factor (on a scale of ratios) or whole people. */
function amountOf({ kind }: PlanFigure, part: number): number {
  return kind === "people" ? Math.round(part * WORST.people) : Math.exp(part * Math.log(WORST[kind]));
}

function movedValue(parameter: PlanFigure, plan: Plan, part: number): number {
  const moved = parameter.moved(plan, amountOf(parameter, part));
  return parametersOf(moved).find(({ path }) => path === parameter.path)!.value;
}

/** How large the shifts of a worse plan are, in the size that is just found: 1 and above is found. */
interface Tried {
  part: number;
  size: number;
}

type Trial = (part: number) => Promise<Tried>;

async function tryPart(parameter: PlanFigure, part: number, question: NoticeQuestion, noise: Noise): Promise<Tried> {
  const { plan, base, simulation } = question;
  const worse = parameter.moved(plan, amountOf(parameter, part));
  const days = Math.min(MAX_DAYS, base[0]!.length);
  const moved: (number | null)[][] = base.map(() => []);
  for (;;) {
    const done = moved[0]!.length;
    const more = await simulatedValues(worse, Math.min(BATCH_DAYS, days - done), simulation, done);
    more.forEach((values, quantity) => {
      moved[quantity]!.push(...values);
    });
    const { size, error } = sizeOf(base, moved, noise);
    const sure = Math.abs(size - 1) > SURE * error || error <= CLOSE_ENOUGH * size;
    if (sure || moved[0]!.length === days) return { part, size };
  }
}

/** With its standard error, by leaving out each day in turn (jackknife; Efron 1982). */
function sizeOf(base: Values, moved: Values, noise: Noise): { size: number; error: number } {
  const days = moved[0]!.length;
  const wider = moved.map((values, quantity) => widerBy(base[quantity]!, values));
  const without = (left: number | null) => {
    const shifts = moved.map((values, quantity) => shiftOf(base[quantity]!, values, left));
    return Math.min(LARGEST, 1 / multipleFound(shifts, wider, noise));
  };
  const sizes = moved[0]!.map((_, day) => without(day));
  const mean = sizes.reduce((sum, size) => sum + size, 0) / days;
  const squares = sizes.reduce((sum, size) => sum + (size - mean) ** 2, 0);
  return { size: without(null), error: Math.sqrt(((days - 1) / days) * squares) };
}

/** Sizes are not told apart beyond this: a shift of something that never varies has no end. */
const LARGEST = 100;

/** Of the mean, over the same days, one of them left out; 0 where some day has no value. */
function shiftOf(base: readonly (number | null)[], moved: readonly (number | null)[], left: number | null): number {
  const shifts = moved.flatMap((value, day) => {
    const before = base[day]!;
    if (day === left) return [];
    return [value === null || before === null ? Number.NaN : value - before];
  });
  const mean = shifts.reduce((sum, shift) => sum + shift, 0) / shifts.length;
  return Number.isNaN(mean) ? 0 : mean;
}

/** How many times as wide the moved days spread as the plan's own on the same days, drawn towards 1 as if by some more. */
function widerBy(base: readonly (number | null)[], moved: readonly (number | null)[]): number {
  const present = (values: readonly (number | null)[]) => values.filter((value) => value !== null);
  const prior = SPREAD_DAYS * varianceOf(present(base));
  if (prior === 0) return 1;
  const squares = (values: number[]) => Math.max(0, values.length - 1) * varianceOf(values);
  return Math.sqrt((squares(present(moved)) + prior) / (squares(present(base.slice(0, moved.length))) + prior));
}

function varianceOf(values: readonly number[]): number {
  return values.length < 2 ? 0 : estimate(values, 0.95)!.sd ** 2;
}

async function fewestPeople({ value }: PlanFigure, trial: Trial): Promise<number | null> {
  for (const part of value > 2 ? [0.5, 1] : [0.5]) if ((await trial(part)).size >= 1) return part;
  return null;
}

/**
 * The part of the way at which the size is 1. Straight lines between the ends of a bracket, halving it where a line did not:
 * most figures do nothing until their stage has no time to spare any more.
 */
async function leastPart(trial: Trial): Promise<number | null> {
  let high = await trial(1);
  if (high.size < 1) return null;
  let low: Tried = { part: 0, size: 0 };
  let halve = false;
  for (let step = 0; step < MAX_STEPS; step++) {
    const width = high.part - low.part;
    const tried = await trial(halve ? low.part + width / 2 : between(low, high));
    if (tried.size < 1) low = tried;
    else high = tried;
    if (Math.abs(tried.size - 1) <= NEAR) break;
    halve = high.part - low.part > width / 2;
  }
  return between(low, high);
}

/** Where a straight line reaches 1, never in the outer twentieths of the bracket. */
function between(low: Tried, high: Tried): number {
  const share = (1 - low.size) / (high.size - low.size);
  return low.part + (high.part - low.part) * Math.min(0.95, Math.max(0.05, share));
}
