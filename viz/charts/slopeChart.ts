import type { ChartContext, ChartWords } from "../frame/index.ts";
import { differenceChart } from "./differenceChart.ts";

/** How the end of work moves with one mean time, near today's value. */
export interface SlopeRow {
  name: string;
  /** Seconds by which work ends later for a tenth of a second more of the time, with the ends of the interval. */
  secondsPerTenth: number;
  low: number | null;
  high: number | null;
  /** The slope in words, with its interval. */
  text: string;
}

export interface SlopeColumns extends ChartWords {
  rows: readonly SlopeRow[];
  /** Said where there is no row. */
  nothing: string;
  /** Which slopes are missing, and why, below the picture. */
  footnotes: readonly string[];
}

/** Slopes with their intervals about an upright line at 0, in the order given. */
export function slopeChart({ rows, ...words }: SlopeColumns, context: ChartContext): SVGSVGElement {
  return differenceChart(
    {
      ...words,
      quantity: { kind: "number", label: "end of work, for 0.1 s more of the mean", unit: "s" },
      rows: rows.map(({ name, secondsPerTenth, low, high, text }) => {
        return { name, mean: secondsPerTenth, low, high, shown: true, text };
      }),
      sides: ["a longer time ends work earlier", "later"],
    },
    context,
  );
}
