import type { ChartContext, ChartWords } from "../frame/index.ts";
import { differenceChart } from "./differenceChart.ts";

/** How the end of work moves with one mean time: minutes later for each second more of it. */
export interface SlopeRow {
  name: string;
  minutesPerSecond: number;
  low: number | null;
  high: number | null;
  /** The slope may be relied on; if not, `note` says why. */
  valid: boolean;
  note: string;
  /** The slope in words, with its interval; refers to the footnote that holds its caution. */
  text: string;
}

export interface SlopeColumns extends ChartWords {
  rows: readonly SlopeRow[];
  /** The cautions of slopes that may not be relied on, below the picture. */
  footnotes: readonly string[];
}

/** Slopes with their intervals about an upright line at 0, in the order given; open dots are not to be relied on. */
export function slopeChart({ rows, ...words }: SlopeColumns, context: ChartContext): SVGSVGElement {
  return differenceChart(
    {
      ...words,
      quantity: { kind: "number", label: "end of work, for each second more of the mean", unit: "min/s" },
      rows: rows.map(({ name, minutesPerSecond, low, high, valid, text }) => {
        return { name, mean: minutesPerSecond, low, high, shown: valid, text };
      }),
      sides: ["a longer time ends work earlier", "later"],
      nothing: "No time of this plan has a slope.",
    },
    context,
  );
}
