import { unitQuantile } from "../../../maths/random/index.ts";
import type { UncertainFactor, UncertainFigure } from "../plan.ts";

/**
 * What a figure is multiplied by where a share `u` (0 < u < 1) of all it may be lies below: one factor for each of its
 * paths. Of draws the row whose first factor has that rank, so that every row stands for as much of 0 to 1.
 */
export function factorsAt({ factor, paths }: Pick<UncertainFigure, "factor" | "paths">, u: number): number[] {
  const found = factor.family === "draws" ? rowAt(factor.rows, u) : [quantileOf(factor, u)];
  return found.length === paths.length ? found : paths.map(() => found[0]!);
}

function rowAt(rows: readonly number[][], u: number): number[] {
  const sorted = rows.toSorted((a, b) => a[0]! - b[0]!);
  return sorted[Math.min(Math.floor(u * rows.length), rows.length - 1)]!;
}

function quantileOf(factor: Exclude<UncertainFactor, { family: "draws" }>, u: number): number {
  const [tail, upper] = u > 0.5 ? [1 - u, true] : [u, false];
  switch (factor.family) {
    case "uniform":
      return factor.min + (factor.max - factor.min) * u;
    case "triangular":
      return triangular(factor, u);
    case "lognormal":
      return factor.mean * unitQuantile({ family: "lognormal", cv: factor.cv }, tail, upper);
    case "normal": {
      const { mean, sd } = factor;
      return mean + sd * unitQuantile({ family: "normal", cut: -mean / sd }, tail, upper);
    }
  }
}

function triangular({ min, mode, max }: { min: number; mode: number; max: number }, u: number): number {
  const span = max - min;
  return u < (mode - min) / span
    ? min + Math.sqrt(u * span * (mode - min))
    : max - Math.sqrt((1 - u) * span * (max - mode));
}
