import type { Study } from "../../asked/study/index.ts";
import { uniformStream } from "../../maths/random/index.ts";
import { compensatedSum, jointEffects } from "../../maths/statistics/index.ts";
import type { StudyEffect, StudyEffects } from "../results/index.ts";

type Observed = readonly (readonly (number | null)[])[];

/** Samples of days drawn anew. */
const SAMPLES = 100;
/** A factorial with more points or with more terms (levels less one, and their products) is fitted by curves as a hypercube is. */
const MAX_GRID_POINTS = 1100;
const MAX_GRID_TERMS = 120;
/** A curve through fewer points says nothing. */
const MIN_POINTS = 4;

/**
 * What each factor, and each pair of factors, did to one response over all points of a factorial or Latin hypercube, the
 * greatest first. `values[variant][observation]` on common random numbers; observations without a value anywhere are left
 * out. Null of other designs, where nothing varies, and without observations. See `jointEffects`.
 */
export function studyEffects(
  { design, factors, variants, confidence }: Pick<Study, "design" | "factors" | "variants" | "confidence">,
  values: Observed,
): StudyEffects | null {
  if (design.kind !== "factorial" && design.kind !== "latin hypercube") return null;
  const points = variants.flatMap(({ levels }, variant) =>
    levels.length > 0 && levels.every((level) => level >= 0) ? [{ levels, values: values[variant]! }] : [],
  );
  const days = wholeDays(points.map((point) => point.values));
  if (points.length < MIN_POINTS || days.length === 0) return null;
  const columns = factors.map((_, factor) => [points.map(({ levels }) => levels[factor]!)]);
  const grid = isSmallGrid(columns.map(([column]) => column!));
  const response = meansOver(days, points.length);
  const found = jointEffects({
    ...{ response, noise: noiseOf(days, response), figures: columns, grid, confidence },
    ...(grid ? { otherDays: otherDays(days, points.length) } : {}),
  });
  if (found === null) return null;
  const levels = points.map((point) => point.levels);
  const effect = (which: number[], own: Pick<StudyEffect, "share" | "total">, adds: readonly number[]): StudyEffect => {
    const [low, high] = [adds.indexOf(Math.min(...adds)), adds.indexOf(Math.max(...adds))];
    const at = (point: number) => which.map((factor) => levels[point]![factor]!);
    return { factors: which, ...own, span: adds[high]! - adds[low]!, lowest: at(low), highest: at(high) };
  };
  const singles = found.figures.map(({ alone, total, values: adds }, factor) =>
    effect([factor], { share: alone, total }, adds),
  );
  const pairs = found.pairs.map(({ figures, share, values: adds }) => effect(figures, { share, total: null }, adds));
  return {
    points: points.length,
    explained: found.explained,
    ranked: [...singles, ...pairs].sort((a, b) => b.share.value - a.share.value),
  };
}

/** Every combination of the levels that occur, once, and few enough of them. */
function isSmallGrid(columns: readonly (readonly number[])[]): boolean {
  const counts = columns.map((column) => new Set(column).size);
  const points = columns[0]!.length;
  if (counts.reduce((product, count) => product * count, 1) !== points || points > MAX_GRID_POINTS) return false;
  if (new Set(columns[0]!.map((_, point) => columns.map((column) => column[point]).join())).size !== points)
    return false;
  const terms = counts.map((count) => count - 1);
  const pairs = terms.flatMap((one, index) => terms.slice(index + 1).map((other) => one * other));
  return compensatedSum([...terms, ...pairs]) <= MAX_GRID_TERMS;
}

/** Days on which every point has a value: `[day][point]`. */
function wholeDays(values: Observed): number[][] {
  const count = Math.min(...values.map(({ length }) => length));
  const days = Array.from({ length: count }, (_, day) => values.map((point) => point[day]!));
  return days.filter((day): day is number[] => day.every((value) => value !== null));
}

function meansOver(days: readonly (readonly number[])[], points: number): number[] {
  return Array.from({ length: points }, (_, point) => compensatedSum(days.map((day) => day[point]!)) / days.length);
}

/** Days move all points alike (common random numbers); what is left of each value varies by luck. 0 of one day. */
function noiseOf(days: readonly (readonly number[])[], response: readonly number[]): number {
  if (days.length < 2) return 0;
  const all = compensatedSum(response) / response.length;
  const squares = days.flatMap((day) => {
    const shift = compensatedSum(day) / day.length - all;
    return day.map((value, point) => (value - shift - response[point]!) ** 2);
  });
  return compensatedSum(squares) / (days.length - 1) / (response.length - 1) / days.length;
}

/** Means over as many days, drawn from these with replacement; none of one day, which tells no luck. */
function otherDays(days: readonly (readonly number[])[], points: number): number[][] {
  if (days.length < 2) return [];
  const uniforms = uniformStream("study effects", 0, "samples", "days");
  return Array.from({ length: SAMPLES }, () =>
    meansOver(
      days.map(() => days[Math.floor(uniforms.next() * days.length)]!),
      points,
    ),
  );
}
