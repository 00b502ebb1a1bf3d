import { decimalsFor, formatDecimals, intervalDecimals } from "../../sim/text/units/index.ts";
import type { SlopeEstimate, StudyResults, VariantResults, Why } from "../contract.ts";
import type { ChartContext, ChartWords } from "../frame/index.ts";
import { rankedSlopes, slopeName, timesEstimate, withheldWords } from "../words/index.ts";
import { whyScope } from "./binding.ts";
import { type ChartTable, textColumn } from "./chartTable.ts";
import { differenceChart } from "./difference.ts";

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

const MAX_ROWS = 10;

/** Seconds: as little as a slope speaks of, and so much that its effect is seen. */
const STEP = 0.1;

/**
 * How the end of a variant's work moves with the means that matter most, in the order of what the same relative change of
 * each would do. A slope is told near today's value only and is never drawn out to a larger change. One that a run cannot
 * tell has no figure: its reason stands below the picture.
 */
export function slopeView(results: StudyResults, variant: VariantResults, why: Why): SlopeColumns {
  const told = rankedSlopes(why.slopes).slice(0, MAX_ROWS);
  const missing = withheldWords(why);
  const rows = told.map((slope) => {
    const { mean, low, high } = timesEstimate(slope.slope, STEP);
    return { name: slopeName(slope), secondsPerTenth: mean, low, high, text: slopeText(slope) };
  });
  return {
    title: "How 0.1 s more of each time moves the end of work",
    caption: "On top: the time where one per cent more or less moves the end of work most",
    subtitle: `${whyScope(results, variant)}. Near today's values only: simulate a larger change to see what it brings`,
    description: describe(told, missing),
    rows,
    nothing: missing[0] ?? "No time of this plan moves the end of work in a way that can be told.",
    footnotes: missing,
  };
}

/** "+15.6 s (+14.1 to +17.1 s)", for a tenth of a second more. */
function slopeText({ slope }: SlopeEstimate): string {
  const { mean, low, high, halfWidth } = timesEstimate(slope, STEP);
  const decimals = Math.min(
    4,
    halfWidth === null ? decimalsFor(Math.abs(mean) / 10, 1) : halfWidth > 0 ? intervalDecimals(halfWidth) : 2,
  );
  const signed = (value: number) => {
    const text = formatDecimals(value, decimals);
    return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
  };
  return low === null || high === null
    ? `${signed(mean)} s`
    : `${signed(mean)} s (${signed(low)} to ${signed(high)} s)`;
}

function describe(slopes: readonly SlopeEstimate[], missing: readonly string[]): string {
  const first = slopes[0];
  if (first === undefined)
    return missing.join(" ") || "No time of this plan moves the end of work in a way that can be told.";
  const all = slopes.map((slope) => `${slopeName(slope)} ${slopeText(slope)}`).join("; ");
  return [
    `Each 0.1 s more of a mean time ends work later by, near today's values, the one that matters most first: ${all}.`,
    ...missing,
  ].join(" ");
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

export function slopeTable(columns: SlopeColumns): ChartTable {
  const slope = (name: string) => ({ name, unit: "s for 0.1 s more" });
  return {
    columns: [textColumn("time"), slope("end of work"), slope("low"), slope("high")],
    rows: columns.rows.map((row) => [row.name, row.secondsPerTenth, row.low, row.high]),
  };
}
