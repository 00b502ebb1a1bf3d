import type { ChartContext, ChartWords } from "../frame/index.ts";
import { differenceChart } from "./differenceChart.ts";

/** How the end of the day moves with one stage's mean cycle time: minutes of the day per second of the cycle. */
export interface SlopeRow {
  name: string;
  minutesPerSecond: number;
  low: number | null;
  high: number | null;
  /** The slope may be relied on; if not, `note` says why. */
  valid: boolean;
  note: string;
  /** The slope in words, with its interval. */
  text: string;
}

export interface SlopeColumns extends ChartWords {
  rows: readonly SlopeRow[];
}

/** Slopes with their intervals about an upright line at 0, the steepest first as given; open dots are not to be relied on. */
export function slopeChart({ rows, ...words }: SlopeColumns, context: ChartContext): SVGSVGElement {
  return differenceChart(
    {
      ...words,
      quantity: { kind: "number", label: "day's end per second of mean cycle time", unit: "min/s" },
      rows: rows.map(({ name, minutesPerSecond, low, high, valid, note, text }) => {
        return { name, mean: minutesPerSecond, low, high, shown: valid, text: note === "" ? text : `${text}\n${note}` };
      }),
      sides: ["a slower cycle ends the day earlier", "later"],
      nothing: "No stage has a slope on this day.",
    },
    context,
  );
}
