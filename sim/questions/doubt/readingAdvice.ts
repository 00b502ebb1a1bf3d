import { afterReadings, type MainEffect, worthOfKnowing } from "../../maths/statistics/index.ts";
import type { Between, DoubtEstimate, DoubtFigure, FigureEffect, MoreReadings, ReadingAdvice } from "./doubt.ts";

/** How many more readings are weighed. */
const STEPS = [5, 10, 20, 40, 80, 160, 320];
/** A figure of less than this share of what is not known is not worth reading for the span's sake. */
const NOTHING = 0.05;
/** So much of what exact knowledge would bring is enough: each further part costs many times more readings. */
const ENOUGH = 0.5;

/** Benefit of one option: its mean, and what one figure adds to it in each world. */
export interface OptionCurve {
  mean: number;
  adds: readonly number[];
}

/** What is known of the figure's effects. */
export interface FigureFindings {
  estimate: DoubtEstimate;
  effect: FigureEffect;
  /** What the figure adds to the response in each world. */
  curve: Pick<MainEffect, "variance" | "values">;
  /** What it is worth to know it exactly before choosing, with the options' benefits by it; null without a choice. */
  choice: { worth: number; curves: readonly OptionCurve[] } | null;
}

/** The value of knowing what these curves hang on before choosing. */
export function worthOfCurves(options: readonly OptionCurve[]): number {
  return worthOfKnowing(options.map(({ mean, adds }) => adds.map((value) => mean + value))).value;
}

/**
 * What more readings of one figure would bring on average: the span of days narrower, the choice better by the value of
 * sample information (`afterReadings`). Null where nobody can tell how much a reading tells.
 */
export function readingAdvice(figure: DoubtFigure, findings: FigureFindings): ReadingAdvice | null {
  const { readings } = figure;
  if (readings === null) return null;
  const { effect, choice } = findings;
  const steps = STEPS.map((more) => stepOf(more, { ...figure, readings }, findings));
  const narrows = (effect.share?.value ?? 0) >= NOTHING && effect.narrower > 0;
  const turns = choice !== null && choice.worth > 0;
  const enough = steps.findIndex(
    ({ narrower, worth }) =>
      (!narrows || narrower >= ENOUGH * effect.narrower) && (!turns || worth! >= ENOUGH * choice.worth),
  );
  return { steps, enough: (narrows || turns) && enough !== -1 ? enough : null };
}

function stepOf(
  more: number,
  { factors, readings }: DoubtFigure & { readings: NonNullable<DoubtFigure["readings"]> },
  { estimate, curve, choice }: FigureFindings,
): MoreReadings {
  const { known, secondsEach } = readings;
  const after = (values: readonly number[]) => afterReadings(values, factors[0]!, known, more);
  const all = squares(afterReadings(curve.values, factors[0]!, known, Number.POSITIVE_INFINITY));
  const told = all > 0 ? Math.min(1, squares(after(curve.values)) / all) : 0;
  return {
    readings: more,
    seconds: secondsEach === null ? null : more * secondsEach,
    left: Math.sqrt(known / (known + more)),
    narrower: narrowerBy(estimate.days, estimate.notKnownSd ** 2, estimate.luckSd ** 2, told * curve.variance),
    worth: choice && worthOfCurves(choice.curves.map(({ mean, adds }) => ({ mean, adds: after(adds) }))),
  };
}

/** How much narrower the span of days is, on average, without so much of the variance between worlds. */
export function narrowerBy(days: Between, between: number, luck: number, variance: number): number {
  // Between is what all figures do together, so that no figure takes more than that off.
  const left = between + luck === 0 ? 1 : 1 - Math.min(variance, between) / (between + luck);
  return (days.high - days.low) * (1 - Math.sqrt(left));
}

function squares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}
