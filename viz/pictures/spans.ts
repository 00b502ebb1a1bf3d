import type { Doubt, DoubtEstimate } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  chartFrame,
  emptyChart,
  type Quantity,
  textureFill,
} from "../frame/index.ts";
import { drawKey, drawTwoTone, type TwoTone } from "../marks/index.ts";
import { figuresWanted, planName, quoted, responseFormat, shortLabel, variantsShown } from "../words/index.ts";
import { type BarWords, barRows } from "./barRows.ts";
import { type ChartTable, quantityCell, quantityUnit, textColumn } from "./chartTable.ts";
import { MAX_TOLD, meaningOf, paddedDomain } from "./response.ts";

/** What days of one variant come to: luck inside, what is not known outside, in the response's own unit. */
export type SpanRow = BarWords & TwoTone;

export interface SpansColumns extends ChartWords {
  quantity: Quantity;
  rows: readonly SpanRow[];
  /** "day" or "week". */
  period: string;
  /** Said below the picture; "" is nothing. */
  footnote: string;
}

const BAR = 24;

/** A result of every variant that there is room for, in two tones; a variant of which some world has no value is left out. */
export function spansView(doubt: Doubt, response: number): SpansColumns {
  const { calendar, confidence, variants } = doubt;
  const info = doubt.responses[response]!;
  const format = responseFormat(info, calendar.startClockSeconds, undefined, calendar.period);
  const often = `${Math.round(100 * confidence)} of 100 ${calendar.period}s`;
  const known = variantsShown(doubt).flatMap((variant) => {
    const estimate = doubt.estimates[response]![variant] ?? null;
    return estimate === null ? [] : [{ name: planName(doubt, variant), estimate, ...figuresWanted(estimate, format) }];
  });
  const left = variants.length - known.length;
  return {
    title: `${shortLabel(info)}: luck, and what we do not know`,
    caption: `Inside: what luck of the ${calendar.period} alone would leave. Outside: what not knowing the figures adds`,
    subtitle: `Bar: ${often} in ${doubt.counts.worlds} worlds of ${doubt.counts.days} simulated ${calendar.period}s, in each of which every uncertain figure is one thing that it may be. Upright line: mean${meaningOf(info)}`,
    description: known
      .slice(0, MAX_TOLD)
      .map(({ name, days, luck }) => `${quoted(name)}: ${often} ${days}; luck alone would leave ${luck}.`)
      .join(" "),
    quantity: format.quantity,
    rows: known.map(({ name, estimate, days, luck }) => ({
      ...{ name, text: `${days}\nluck alone: ${luck}` },
      ...spanOf(estimate),
    })),
    period: calendar.period,
    footnote: left === 0 ? "" : `${known.length} of ${variants.length} plans; all of them are in doubt.json.`,
  };
}

function spanOf({ days, luck, mean }: DoubtEstimate): TwoTone {
  return { low: days.low, high: days.high, insideLow: luck.low, insideHigh: luck.high, mean };
}

export function spansChart(columns: SpansColumns, context: ChartContext): SVGSVGElement {
  const { rows, quantity, period, footnote } = columns;
  if (rows.length === 0) return emptyChart(columns, "No world gave a value for this result.", context);
  const frame = chartFrame(columns, context);
  const { colour, defs, id } = frame;
  const fills = {
    inside: colour("working"),
    outside: textureFill(defs, id("not-known"), "rising", colour("starved"), colour("muted")),
    ink: colour("ink"),
  };
  const key = [
    { name: `luck of the ${period}`, fill: fills.inside },
    { name: "what we do not know", fill: fills.outside },
  ];
  const domain = paddedDomain(rows.flatMap(({ low, high, mean }) => [{ low, high, mean }]));
  const top = drawKey(frame, key, frame.top) + 12;
  const end = barRows(frame, rows, { domain, quantity, top, bar: BAR }, (group, row, value, y) => {
    drawTwoTone(group, value, row, y, fills);
  });
  return frame.finish(end, footnote);
}

export function spansTable({ quantity, rows }: SpansColumns): ChartTable {
  const columns = ["mean", "low", "high", "luck alone, low", "luck alone, high"];
  return {
    columns: [textColumn("plan"), ...columns.map((name) => ({ name, unit: quantityUnit(quantity) }))],
    rows: rows.map(({ name, mean, low, high, insideLow, insideHigh }) => [
      name,
      ...[mean, low, high, insideLow, insideHigh].map((value) => quantityCell(quantity, value)),
    ]),
  };
}
