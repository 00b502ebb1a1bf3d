import { type ScaleLinear, scaleLinear, utcFormat } from "d3";
import { formatConfidence, formatNumber, formatResponse } from "../../sim/text/units/index.ts";
import type { Season, SeasonKey } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawLeftAxis,
  drawText,
  emptyChart,
  isolated,
  type Quantity,
  readable,
  textWidth,
} from "../frame/index.ts";
import { quoted, weeksOf } from "../words/index.ts";
import { type ChartTable, endCells, endColumns, type PartialEnds, textColumn } from "./chartTable.ts";

/** Weeks of one kind, one after another. */
export interface SeasonBand {
  /** Of the entry in the list below the picture, from 1. */
  number: number;
  name: string;
  /** Weeks of the year, from 1. */
  from: number;
  times: number;
}

export interface SeasonPanel {
  quantity: Quantity;
  /** By band. */
  ends: readonly PartialEnds[];
  /** A level to hold it against: the people of the plan; null for none. */
  level: number | null;
  /** Bars stand on 0, and no range goes below it; marks have a height of their own. */
  bars: boolean;
  /** Pixels: a clock needs room for its hours. */
  height: number;
}

export interface SeasonColumns extends ChartWords {
  bands: readonly SeasonBand[];
  panels: readonly SeasonPanel[];
  /** Week and text of what stands below the axis: months, or weeks by number. */
  ticks: readonly { week: number; text: string }[];
}

const GUTTER = 52;
const PANEL = 84;
const CLOCK_PANEL = 134;
const GAP = 40;
const MS_PER_WEEK = 604_800_000;

/** Weeks across; below each other the latest end of work, overtime, late orders, and the people it would take without overtime. */
export function seasonChart(columns: SeasonColumns, context: ChartContext): SVGSVGElement {
  const { bands, panels } = columns;
  if (panels.length === 0) return emptyChart(columns, "No kind of week came to its end.", context);
  const frame = chartFrame(columns, context);
  const weeks = bands.reduce((sum, { times }) => sum + times, 0);
  const x = scaleLinear()
    .domain([1, weeks + 1])
    .range([frame.left + GUTTER, frame.right]);
  let top = frame.top + 8;
  drawNumbers(frame, bands, x, top + 10);
  for (const panel of panels) {
    top += GAP;
    drawPanel(frame, panel, bands, { x, top });
    top += panel.height;
  }
  drawTicks(frame, columns, x, top);
  const list = bands.map(({ number, name, from, times }) => `${number} ${name}: ${weeksOf({ from, times })}`);
  return frame.finish(top + 22, `Weeks: ${list.join("; ")}.`);
}

type X = ScaleLinear<number, number>;

/** The number of the kind above its weeks, where there is room. */
function drawNumbers(frame: ChartFrame, bands: readonly SeasonBand[], x: X, y: number): void {
  for (const { number, name, from, times } of bands) {
    const text = String(number);
    const group = readable(frame.body, `${name}: weeks ${weeksOf({ from, times })}`);
    const [left, right] = [x(from), x(from + times)];
    group
      .append("path")
      .attr("d", `M${(left + 1).toFixed(1)},${y + 6}H${(right - 1).toFixed(1)}`)
      .attr("stroke", frame.colour("rule"))
      .attr("stroke-width", 2);
    if (textWidth(text, 11) <= right - left)
      drawText(group, (left + right) / 2, y, text, { anchor: "middle", bold: true });
  }
}

function drawPanel(
  frame: ChartFrame,
  panel: SeasonPanel,
  bands: readonly SeasonBand[],
  { x, top }: { x: X; top: number },
): void {
  const { quantity, ends, level, bars, height } = panel;
  const y = scaleLinear()
    .domain(domainOf(panel))
    .range([top + height, top]);
  const [left, right] = x.range() as [number, number];
  drawLeftAxis(frame, y, quantity, { left, right, labelY: top - 8 });
  bands.forEach((band, index) => {
    const found = ends[index]!;
    if (found.mean !== null) drawBand(frame, { ...found, mean: found.mean }, band, { x, y, bars });
  });
  frame.body
    .append("path")
    .attr("d", `M${left},${top + height}H${right}`)
    .attr("stroke", frame.colour("rule"));
  if (level === null) return;
  const at = y(level);
  frame.body
    .append("path")
    .attr("d", `M${left},${at.toFixed(1)}H${right}`)
    .attr("stroke", frame.colour("ink"))
    .attr("stroke-dasharray", "4 3");
}

/** A bar from 0, or a thick line at its height; the interval as a thin line in the middle. */
function drawBand(
  frame: ChartFrame,
  { mean, low, high }: PartialEnds & { mean: number },
  { name, from, times }: SeasonBand,
  { x, y, bars }: { x: X; y: X; bars: boolean },
): void {
  const group = readable(frame.body, `${name}: weeks ${weeksOf({ from, times })}`);
  const [left, right] = [x(from) + 1, x(from + times) - 1];
  const height = y(mean);
  const base = y.range()[0]!;
  if (bars)
    group
      .append("rect")
      .attr("x", left.toFixed(1))
      .attr("y", height.toFixed(1))
      .attr("width", (right - left).toFixed(1))
      .attr("height", Math.max(0, base - height).toFixed(1))
      .attr("fill", frame.colour("base"));
  group
    .append("path")
    .attr("d", `M${left.toFixed(1)},${height.toFixed(1)}H${right.toFixed(1)}`)
    .attr("stroke", frame.colour("line"))
    .attr("stroke-width", 3);
  if (low === null || high === null) return;
  const middle = ((left + right) / 2).toFixed(1);
  group
    .append("path")
    .attr("d", `M${middle},${y(bars ? Math.max(0, low) : low).toFixed(1)}V${y(high).toFixed(1)}`)
    .attr("stroke", frame.colour("line"))
    .attr("stroke-width", 1.2);
}

/** Room for every interval and for the level; of bars from 0, of marks with a little air. */
function domainOf({ ends, level, bars }: SeasonPanel): [number, number] {
  const values = ends.flatMap(({ mean, low, high }) => [mean, low, high]).filter((value) => value !== null);
  const all = level === null ? values : [...values, level];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const air = (most - least) * 0.15 || Math.abs(most) * 0.05 || 1;
  return bars ? [0, most + air] : [least - air, most + air];
}

function drawTicks(frame: ChartFrame, { ticks }: SeasonColumns, x: X, y: number): void {
  let occupied = Number.NEGATIVE_INFINITY;
  for (const { week, text } of ticks) {
    const at = x(week);
    frame.body
      .append("path")
      .attr("d", `M${at.toFixed(1)},${y}V${y + 5}`)
      .attr("stroke", frame.colour("rule"));
    if (at < occupied + 6) continue;
    drawText(frame.body, at, y + 17, text, { fill: frame.colour("muted") });
    occupied = at + textWidth(text, 11);
  }
}

/** The year of a season; null where it has nothing to draw. */
export function seasonView(season: Season): SeasonColumns {
  const { kinds, orders, people, runs, confidence, begins } = season;
  const bands = kinds.map(({ name, from, times }, index) => ({ number: index + 1, name: isolated(name), from, times }));
  const panel = (
    key: SeasonKey,
    quantity: Quantity,
    bars: boolean,
    level: SeasonPanel["level"] = null,
  ): SeasonPanel[] => {
    const ends = kinds.map(({ figures }) => endsOf(figures[key]));
    const height = quantity.kind === "clock" ? CLOCK_PANEL : PANEL;
    return ends.every(({ mean }) => mean === null) ? [] : [{ quantity, ends, level, bars, height }];
  };
  const { startClockSeconds } = season;
  return {
    title: "The year, week by week",
    caption: "High marks are hard weeks",
    subtitle: `Means of ${runs} simulated weeks of each kind with their ${formatConfidence(confidence)} intervals; the numbers above name the kinds of week`,
    description: kinds.map((kind) => kindWords(kind, season)).join(" "),
    bands,
    panels: [
      ...panel("end", { kind: "clock", label: "Latest end of work of the week", startClockSeconds }, false),
      ...panel("overtimeHours", { kind: "number", label: "Overtime a week", unit: "person-hours" }, true),
      ...(orders === 0
        ? []
        : panel("late", { kind: "number", label: `Orders late a week, of ${orders}`, unit: "" }, true)),
      ...panel(
        "people",
        { kind: "number", label: `People to do without overtime; dashed: the plan's ${people}`, unit: "" },
        false,
        people,
      ),
    ],
    ticks: ticksOf(
      begins,
      kinds.reduce((sum, { times }) => sum + times, 0),
    ),
  };
}

/** One kind of week in words, for those who cannot see the picture. */
function kindWords({ name, from, times, figures }: Season["kinds"][number], season: Season): string {
  const weeks = times === 1 ? `week ${from}` : `weeks ${weeksOf({ from, times })}`;
  if (figures.end === null || figures.overtimeHours === null) return `${quoted(name)}, ${weeks}: no end.`;
  const end = formatResponse(figures.end.mean, { unit: "s", format: "clock" }, season.startClockSeconds);
  return `${quoted(name)}, ${weeks}: latest end ${end}, overtime ${formatNumber(Math.round(figures.overtimeHours.mean))} person-hours a week.`;
}

function endsOf(found: Season["kinds"][number]["figures"][SeasonKey]): PartialEnds {
  return found === null
    ? { mean: null, low: null, high: null }
    : { mean: found.mean, low: found.low, high: found.high };
}

/** The first week of each month, or every fourth week by its number. */
function ticksOf(begins: string | null, weeks: number): SeasonColumns["ticks"] {
  const all = Array.from({ length: weeks }, (_, index) => index + 1);
  if (begins === null) return all.filter((week) => week % 4 === 1).map((week) => ({ week, text: `week ${week}` }));
  const first = Date.parse(`${begins}T00:00:00Z`);
  const month = utcFormat("%b");
  const monthOf = (week: number) => month(new Date(first + (week - 1) * MS_PER_WEEK));
  return all
    .filter((week) => week === 1 || monthOf(week) !== monthOf(week - 1))
    .map((week) => ({ week, text: monthOf(week) }));
}

export function seasonChartTable({ bands, panels }: SeasonColumns): ChartTable {
  return {
    columns: [
      textColumn("kind of week"),
      textColumn("weeks"),
      ...panels.flatMap(({ quantity }) => endColumns(quantity)),
    ],
    rows: bands.map(({ name, from, times }, index) => [
      ...[name, weeksOf({ from, times })],
      ...panels.flatMap(({ quantity, ends }) => endCells(quantity, ends[index]!)),
    ]),
  };
}
