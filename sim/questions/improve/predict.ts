import type { Plan } from "../../asked/plan/index.ts";
import { estimateDay, estimateLine, type LineEstimate } from "../estimate/index.ts";
import type { CandidateDesign } from "./designs.ts";
import { lastShiftEnd } from "./goal.ts";
import type { ImproveQuestion } from "./question.ts";
import { meanOf } from "./score.ts";
import type { Trial } from "./trials.ts";

/** A day in the two figures that every goal follows from. */
export interface DayGuess {
  finishSeconds: number;
  carcasses: number;
}

/** Coarse analytic estimates of a search, each worked out once: they only have to tell designs apart. */
export class Estimates {
  readonly #known = new Map<string, DayGuess>();
  readonly #most: number;
  readonly #line: LineEstimate | undefined;

  /** `sameLine`: a plan that has the line of every design, where hours alone are moved. */
  constructor(most: number, sameLine: Plan | null = null) {
    this.#most = most;
    this.#line = sameLine === null ? undefined : estimateLine(sameLine, "coarse");
  }

  /** How many more can be had. */
  get left(): number {
    return this.#most - this.#known.size;
  }

  /** Null when as many as may be were worked out. */
  of({ key, plan }: CandidateDesign): DayGuess | null {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    if (this.left <= 0) return null;
    const { workFinishSeconds, carcasses } = estimateDay(plan, "coarse", this.#line);
    const guess = { finishSeconds: workFinishSeconds, carcasses };
    this.#known.set(key, guess);
    return guess;
  }
}

/**
 * How well a day of the design would meet the goal, more being better; unlike the goal itself it goes on to tell days
 * apart that end before overtime begins. `perCarcass`: margin before pay of each carcass.
 */
export function promiseOf(
  { plan, chargePerDay }: CandidateDesign,
  { finishSeconds, carcasses }: DayGuess,
  goal: ImproveQuestion["goal"],
  perCarcass: number,
): number {
  if (goal === "overtime") return lastShiftEnd(plan) - finishSeconds;
  if (goal === "throughput") return carcasses / Math.max(1, finishSeconds - (plan.day.shifts[0]?.fromSeconds ?? 0));
  // Of cost the margin before pay is 0.
  return carcasses * perCarcass - payOf(plan, finishSeconds) - chargePerDay;
}

/** Margin before pay of a carcass, from days of a design; 0 where no margin is asked for. */
export function marginPerCarcass({ design, values, responses }: Trial, goal: ImproveQuestion["goal"]): number {
  const carcasses = mean(responses.carcasses!);
  if (goal !== "margin" || carcasses <= 0) return 0;
  const margin = design.plan.week === undefined ? mean(values) + design.chargePerDay : mean(responses.margin!);
  return (margin + payOf(design.plan, mean(responses.finish!))) / carcasses;
}

export function guessOf({ responses }: Trial): DayGuess {
  return { finishSeconds: mean(responses.finish!), carcasses: mean(responses.carcasses!) };
}

/** Pay inside the shifts, and of the last shift's people until the end of work. */
function payOf({ crews, day, money }: Plan, finishSeconds: number): number {
  const overtime = Math.max(0, finishSeconds - (day.shifts.at(-1)?.toSeconds ?? 0)) * (money?.overtimeFactor ?? 1);
  return crews.reduce((total, { people, payPerSecond }) => {
    const regular = day.shifts.reduce(
      (sum, { fromSeconds, toSeconds }, shift) => sum + (people[shift] ?? 0) * (toSeconds - fromSeconds),
      0,
    );
    return total + (payPerSecond ?? 0) * (regular + (people.at(-1) ?? 0) * overtime);
  }, 0);
}

function mean(values: readonly (number | null)[]): number {
  return meanOf(values.filter((value) => value !== null)) ?? 0;
}
