import type { Plan } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import { MAX_EVENTS } from "../../days/run/index.ts";
import { type ComparedDays, compare } from "./compare.ts";
import { usualCountingStage } from "./countingStage.ts";
import { explain } from "./explain.ts";
import type { Explanation } from "./explanation.ts";
import type { Yardstick } from "./misfit.ts";
import { type NoticeableFigure, noticeableFigures } from "./noticeableFigures.ts";
import type { Observed, ObservedQuantity } from "./observed.ts";
import { infoOf } from "./quantity.ts";
import { type Simulation, simulatedValues } from "./simulatedValues.ts";

export interface CalibrationOptions {
  seed: string;
  /** Simulated days of the plan, and of every move that is followed up; 2 or more. */
  days: number;
  /** Of all intervals at once, between 0 and 1; 0.95 when left out. */
  confidence?: number;
  /** Stage at the end of whose work heads are counted; the last work that every head passes when left out. */
  countedAt?: string;
  /** A day with more events fails; 100 million when left out. */
  mostEvents?: number;
  /** Called before each day; rejects when the work is to stop. */
  beforeDay?: () => Promise<void>;
  /** Told what is being done. */
  progress?: (words: string) => void;
}

/** Plain data. */
export interface Calibration {
  days: number;
  observedDays: number;
  confidence: number;
  countedAt: string;
  startClockSeconds: number;
  quantities: ComparedQuantity[];
  /** Some difference is shown. */
  gap: boolean;
  /** Best first; empty when there is no gap, or when nothing alone takes away a tenth of it. */
  explanations: Explanation[];
  /** What the observed days could have shown, figure by figure; null when there is a gap, which is explained instead. */
  noticeable: NoticeableFigure[] | null;
}

export interface ComparedQuantity {
  info: ResponseInfo;
  /** Stretch of the day of a count, seconds after its start; null for a response. */
  stretch: { fromSeconds: number; toSeconds: number } | null;
  /** Observed days, as the file has them. */
  values: (number | null)[];
  /** Null where the plan's days give no value. */
  comparison: ComparedDays | null;
}

/**
 * Compares the days of a plan with observed ones. Where a difference is shown, looks for the figures that would explain
 * it; where none is, tells how far each figure could be out unnoticed. The same plan, days, seed and number of days give the same result.
 * Throws `DayTooLong` when a day has more events than `mostEvents`. Method and sources: the room's README. Example:
 *
 *     const { observed, faults } = readObserved(csvText, plan);
 *     const { gap, quantities } = await calibrate(plan, observed, { seed: "a", days: 30 });
 */
export async function calibrate(plan: Plan, observed: Observed, options: CalibrationOptions): Promise<Calibration> {
  const { seed, days, confidence = 0.95, mostEvents = MAX_EVENTS } = options;
  const { countedAt = usualCountingStage(plan), beforeDay = async () => {}, progress = () => {} } = options;
  const list = observed.quantities;
  const simulation: Simulation = {
    seed,
    quantities: list.map(({ quantity }) => quantity),
    countedAt,
    mostEvents,
    beforeDay,
  };
  progress("the plan as it is");
  const base = await simulatedValues(plan, days, simulation);
  const comparisons = list.map(({ values }, i) => compare(values, base[i]!, list.length, confidence));
  const gap = comparisons.some((comparison) => comparison?.shown ?? false);
  const yardstick = yardstickOf(comparisons);
  const question = { plan, observed: list, base, yardstick, days, confidence, simulation, progress };
  return {
    days,
    observedDays: observed.lines.length,
    confidence,
    countedAt,
    startClockSeconds: plan.day.startClockSeconds,
    quantities: list.map((each, i) => comparedQuantity(each, comparisons[i]!)),
    gap,
    explanations: gap ? await explain(question) : [],
    noticeable: gap ? null : await noticeableFigures(question),
  };
}

function comparedQuantity({ quantity, values }: ObservedQuantity, comparison: ComparedDays | null): ComparedQuantity {
  const stretch =
    quantity.kind === "count" ? { fromSeconds: quantity.fromSeconds, toSeconds: quantity.toSeconds } : null;
  return { info: infoOf(quantity), stretch, values, comparison };
}

/**
 * Quantities that never vary on either side have no standard error; they are measured by a ten-thousandth of their value,
 * so that they weigh much and nothing is divided by 0.
 */
function yardstickOf(comparisons: readonly (ComparedDays | null)[]): Yardstick {
  const targets = comparisons.map((comparison) => comparison?.observed.mean ?? null);
  const errors = comparisons.map((comparison) => {
    if (comparison === null) return 1;
    return comparison.standardError > 0 ? comparison.standardError : 1e-4 * Math.abs(comparison.observed.mean) || 1;
  });
  return { targets, errors };
}
