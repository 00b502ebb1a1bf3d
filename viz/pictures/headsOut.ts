import { scaleLinear } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { StepTrace, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  clockAt,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawLeftAxis,
  drawText,
  emptyChart,
  finishDay,
  isolated,
  type Paint,
  spreadLabels,
  type TimeScale,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawLineKey, type LineSample, stepPath, type TraceColumns } from "../marks/index.ts";
import { hoursOf, overtimeWords } from "../words/index.ts";
import { chillersOf } from "./chiller.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { meansOnly, plain, scene, type TimeReadings } from "./timeReadings.ts";

/** A cumulative count: `heads[i]` holds from `seconds[i]` on (`step`), or runs straight to the next point (`straight`). */
export interface HeadsLine {
  label: string;
  role: "out" | "chiller" | "hung" | "arrived" | "target";
  shape: "step" | "straight";
  seconds: readonly number[];
  heads: readonly number[];
}

export interface HeadsOutColumns extends ChartWords, DayScene {
  /** End of the last shift; what lies beyond is marked as overtime. */
  shiftEndSeconds: number;
  lines: readonly HeadsLine[];
}

const LOOKS: Record<HeadsLine["role"], { paint: Paint; width: number; dash: string }> = {
  hung: { paint: "line", width: 2.4, dash: "" },
  chiller: { paint: "series3", width: 1.8, dash: "9 2 2 2" },
  out: { paint: "series2", width: 1.8, dash: "" },
  arrived: { paint: "muted", width: 1.6, dash: "" },
  target: { paint: "limit", width: 1.8, dash: "7 3" },
};

const GUTTER = 50;

const RIGHT_GUTTER = 138;

const HEIGHT = 260;

/**
 * Cumulative counts of a variant's first day: arrived, hung, into each chiller, carcasses out, and the target. The target
 * counts from the start of the shift and is compared with the heads hung: carcasses leave the chiller hours later.
 */
export function headsOutView(results: StudyResults, variant: VariantResults): HeadsOutColumns {
  const { day } = variant;
  const scene = dayScene(results, variant);
  const target = targetLine(results, day.shiftEndSeconds, day.heads.arrived);
  const counts = countedLines(variant);
  const rate = formatDecimals(results.plan.targetHeadsPerHour ?? 0, 0);
  return {
    ...scene,
    // A target that is reached only after the line was clear still has to end on the axis.
    endSeconds: Math.max(scene.endSeconds, target?.seconds.at(-1) ?? 0),
    title: "Heads in and heads out",
    caption:
      "The steeper, the faster; flat means nothing came. The gap between two lines: heads between the two points",
    subtitle: `Counted from the day's start, ${dayWords(results, variant)}${target ? `. Target: ${rate} heads/h in the shifts, breaks left out; compare it with the heads hung` : ""}`,
    description: describe(results, variant, target, counts),
    shiftEndSeconds: day.shiftEndSeconds,
    lines: target ? [counts[0]!, target, ...counts.slice(1)].filter((line) => line !== undefined) : counts,
  };
}

/** In the order in which heads come by: arrived, hung, into each chiller, out. */
function countedLines(variant: VariantResults): HeadsLine[] {
  const { day } = variant;
  const { traces } = day;
  if (traces === null) return [];
  const clock = (seconds: number) => clockAt(seconds, day.startClockSeconds);
  const last = (words: string, line: HeadsLine): HeadsLine => {
    return { ...line, label: `${words}: ${formatDecimals(line.heads.at(-1) ?? 0, 0)} by ${clock(reachedAt(line))}` };
  };
  const out = formatDecimals(day.heads.out.carcass ?? 0, 0);
  // A load comes all at once. Heads that come one by one are known at the ends of bins, as carcasses out are.
  const shape = day.loads.length > 0 ? "step" : "straight";
  const chillers = chillersOf(variant).flatMap(({ name }) => {
    const trace = traces.entered?.find((entered) => entered.name === name);
    return trace === undefined ? [] : [last(`into ${isolated(name)}`, counted(trace, "chiller", "straight"))];
  });
  return [
    { ...counted(traces.arrived, "arrived", shape), label: `arrived: ${formatDecimals(day.heads.arrived, 0)}` },
    // A run of an earlier version did not count them.
    ...(traces.hung === undefined ? [] : [last("hung", counted(traces.hung, "hung", "straight"))]),
    ...chillers,
    { ...counted(traces.out, "out", "straight"), label: `carcasses out: ${out} by ${clock(day.finishSeconds)}` },
  ];
}

function counted(trace: StepTrace, role: HeadsLine["role"], shape: HeadsLine["shape"]): HeadsLine {
  if (trace.kind === "exact") return { label: "", role, shape: "step", seconds: trace.times, heads: trace.values };
  const seconds = trace.high.map((_, bin) => Math.min(trace.endSeconds, (bin + 1) * trace.binSeconds));
  return {
    label: "",
    role,
    shape,
    seconds: [0, ...seconds.slice(0, -1), trace.endSeconds],
    heads: [trace.low[0] ?? 0, ...trace.high],
  };
}

/** When the count reaches its last value. */
function reachedAt({ seconds, heads }: HeadsLine): number {
  return seconds[heads.indexOf(heads.at(-1) ?? 0)] ?? 0;
}

/** The count at an instant, on the line as it is drawn. */
function countAt({ shape, seconds, heads }: HeadsLine, at: number): number {
  const next = seconds.findIndex((time) => time > at);
  if (next < 0) return heads.at(-1) ?? 0;
  if (next === 0) return 0;
  const [from, to] = [seconds[next - 1]!, seconds[next]!];
  const share = shape === "step" ? 0 : (at - from) / (to - from);
  return heads[next - 1]! + share * (heads[next]! - heads[next - 1]!);
}

/** Target rate over shift time less breaks, up to the heads that there are. Null without a target or without shifts. */
function targetLine(results: StudyResults, shiftEnd: number, arrived: number): HeadsLine | null {
  const rate = (results.plan.targetHeadsPerHour ?? 0) / 3600;
  const { shifts, breaks } = hoursOf(results, results.variants[0]!.day);
  if (!(rate > 0) || shifts.length === 0) return null;
  const edges = [...shifts, ...breaks].flatMap((span) => [span.fromSeconds, span.toSeconds]);
  const times = [...new Set([0, ...edges, shiftEnd])].filter((at) => at >= 0 && at <= shiftEnd).sort((a, b) => a - b);
  const within = (spans: readonly { fromSeconds: number; toSeconds: number }[], at: number) =>
    spans.some((span) => at >= span.fromSeconds && at < span.toSeconds);
  const [seconds, heads] = [[times[0]!], [0]];
  for (let i = 1; i < times.length; i++) {
    const [from, to] = [times[i - 1]!, times[i]!];
    const runs = within(shifts, from) && !within(breaks, from);
    const gained = runs ? rate * (to - from) : 0;
    const before = heads.at(-1)!;
    if (arrived > 0 && before + gained > arrived) {
      seconds.push(from + (arrived - before) / rate);
      heads.push(arrived);
      break;
    }
    seconds.push(to);
    heads.push(before + gained);
  }
  const label = `target: ${formatDecimals(heads.at(-1)!, 0)} by ${clockAt(seconds.at(-1)!, results.variants[0]!.day.startClockSeconds)}`;
  return { label, role: "target", shape: "straight", seconds, heads };
}

function describe(
  results: StudyResults,
  variant: VariantResults,
  target: HeadsLine | null,
  counts: readonly HeadsLine[],
): string {
  const { day } = variant;
  const clock = (seconds: number) => clockAt(seconds, day.startClockSeconds);
  const heads = (count: number) => formatDecimals(count, 0);
  const hung = counts.find(({ role }) => role === "hung");
  const last = hung === undefined || day.heads.hung === 0 ? "" : `, the last of them by ${clock(reachedAt(hung))}`;
  const stop = day.status === "finished" ? [] : ["The day did not end by itself: heads were left on the line."];
  return [
    `${heads(day.heads.arrived)} heads arrived and ${heads(day.heads.hung)} were hung${last}.`,
    ...targetWords(results, variant, target, hung),
    overtimeWords(results, day),
    `${heads(day.heads.out.carcass ?? 0)} carcasses were out by ${clock(day.finishSeconds)}.`,
    ...stop,
  ].join(" ");
}

/** What was hung by the time at which the target ends. */
function targetWords(
  results: StudyResults,
  { day }: VariantResults,
  target: HeadsLine | null,
  hung: HeadsLine | undefined,
): string[] {
  if (target === null) return [];
  const [wanted, until] = [target.heads.at(-1)!, target.seconds.at(-1)!];
  const rate = formatDecimals(results.plan.targetHeadsPerHour!, 0);
  const words = `The target, ${rate} heads an hour without breaks, is ${formatDecimals(wanted, 0)} heads by ${clockAt(until, day.startClockSeconds)}`;
  if (hung === undefined) return [`${words}.`];
  return [`${words}; ${formatDecimals(Math.floor(countAt(hung, until)), 0)} were hung by then.`];
}

/** Heads arrived, hung, into the chiller and out, and the target, all counted from the day's start, over the clock. */
export function headsOutChart(columns: HeadsOutColumns, context: ChartContext): SVGSVGElement {
  const largest = Math.max(0, ...columns.lines.flatMap((curve) => curve.heads));
  if (largest === 0) return emptyChart(columns, "No head arrived or left on this day.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: RIGHT_GUTTER }, { left: GUTTER, right: 8 });
  const top = (frame.narrow ? drawLineKey(frame, samplesOf(frame, columns.lines), frame.top) : frame.top) + 36;
  const floor = top + HEIGHT;
  const heads = scaleLinear().domain([0, largest]).nice().range([floor, top]);
  drawOvertime(frame, columns.shiftEndSeconds, top, floor);
  drawDayPlot(frame, top, floor);
  const quantity = { kind: "number", label: "counted since the day's start", unit: "heads" } as const;
  drawLeftAxis(frame, heads, quantity, { ...frame.plot, labelY: top - 24 });
  for (const curve of columns.lines) drawLine(frame, curve, heads);
  if (!frame.narrow) drawEndLabels(frame, columns.lines, heads);
  return finishDay(frame, floor);
}

function samplesOf(frame: DayFrame, lines: readonly HeadsLine[]): LineSample[] {
  return lines.map(({ label, role }) => {
    const { paint, width, dash } = LOOKS[role];
    return { name: label, stroke: frame.colour(paint), width, dash };
  });
}

function drawOvertime(frame: DayFrame, shiftEndSeconds: number, top: number, floor: number): void {
  if (!(frame.scene.endSeconds > shiftEndSeconds)) return;
  const x = frame.time(shiftEndSeconds);
  const room = frame.plot.right - x;
  const fill = textureFill(frame.defs, frame.id("overtime"), "falling", frame.colour("paper"), frame.colour("grid"));
  const band = frame.body
    .append("rect")
    .attr("x", x.toFixed(1))
    .attr("y", top)
    .attr("height", floor - top)
    .attr("fill", fill);
  band.attr("width", room.toFixed(1));
  frame.body
    .append("path")
    .attr("d", `M${x.toFixed(1)},${top}V${floor}`)
    .attr("stroke", frame.colour("rule"));
  const label = ["after the last shift", "overtime"].find((text) => textWidth(text, 11) + 8 < room);
  if (label === undefined) return;
  const style = { anchor: "middle", fill: frame.colour("muted"), halo: frame.colour("paper") } as const;
  drawText(frame.body, x + room / 2, floor - 8, label, style);
}

function drawLine(frame: DayFrame, curve: HeadsLine, heads: TimeScale): void {
  const look = LOOKS[curve.role];
  const X = curve.seconds.map(frame.time);
  const Y = curve.heads.map(heads);
  const straight = X.map((x, i) => `${i === 0 ? "M" : "L"}${x.toFixed(1)},${Y[i]!.toFixed(1)}`).join("");
  const path = frame.body
    .append("path")
    .attr("d", curve.shape === "step" ? stepPath(X, Y, frame.plot.right) : straight);
  path.attr("fill", "none").attr("stroke", frame.colour(look.paint)).attr("stroke-width", look.width);
  if (look.dash !== "") path.attr("stroke-dasharray", look.dash);
}

/** Whether the heads hung are fewer where the curve ends, and run on below it. */
function isAbove(curve: HeadsLine, lines: readonly HeadsLine[]): boolean {
  const hung = lines.find(({ role }) => role === "hung");
  const last = hung?.seconds.findLastIndex((seconds) => seconds <= curve.seconds.at(-1)!) ?? -1;
  return last >= 0 && hung!.heads[last]! < curve.heads.at(-1)!;
}

/**
 * A target that ends early is named inside the plot: on the side of its end on which the heads hung do not run. The others are
 * named in the right gutter.
 */
function drawEndLabels(frame: DayFrame, lines: readonly HeadsLine[], heads: TimeScale): void {
  const { time, plot } = frame;
  const [floor, top] = heads.range() as [number, number];
  const inside = (curve: HeadsLine) => time(curve.seconds.at(-1) ?? 0) + textWidth(curve.label, 11) + 14 < plot.right;
  const early = lines.filter((curve) => curve.role === "target" && inside(curve));
  const late = lines.filter((curve) => !early.includes(curve));
  for (const curve of early) {
    const [x, y] = [time(curve.seconds.at(-1)!), heads(curve.heads.at(-1)!)];
    const style = { fill: frame.colour(LOOKS[curve.role].paint), halo: frame.colour("paper") };
    if (isAbove(curve, lines)) drawText(frame.body, x - 8, y - 7, curve.label, { ...style, anchor: "end" });
    else drawText(frame.body, x + 8, y + 16, curve.label, style);
  }
  const wishes = late.map((curve) => heads(curve.heads.at(-1) ?? 0));
  const places = spreadLabels(wishes, 32, top + 6, floor - 12);
  late.forEach((curve, i) => {
    const style = { fill: frame.colour(LOOKS[curve.role].paint), bold: curve.role === "hung" };
    wrapText(curve.label, RIGHT_GUTTER - 10, 11, 2).forEach((text, row) => {
      drawText(frame.body, plot.right + 9, places[i]! + 4 + row * 14, text, style);
    });
  });
}

export function headsOutReadings(columns: HeadsOutColumns): TimeReadings {
  const series = columns.lines.map(({ role, label, shape, seconds, heads }) =>
    plain(
      role === "chiller" ? label.replace(/: [^:]*:\d\d$/, "") : role === "out" ? "carcasses out" : role,
      "heads",
      shape === "step" ? { kind: "exact", times: seconds, values: heads } : straight(seconds, heads),
    ),
  );
  return { ...scene(columns), series };
}

/** A line between points as means over minutes. */
function straight(seconds: readonly number[], heads: readonly number[]): TraceColumns {
  const minutes = Math.max(1, Math.ceil((seconds.at(-1) ?? 0) / 60));
  let next = 1;
  const values = Array.from({ length: minutes }, (_, minute) => {
    const at = Math.min(minute * 60 + 30, seconds.at(-1) ?? 0);
    while (next < seconds.length - 1 && seconds[next]! < at) next++;
    const [from, to] = [seconds[next - 1] ?? 0, seconds[next] ?? 1];
    const share = to > from ? Math.min(1, Math.max(0, (at - from) / (to - from))) : 1;
    return (heads[next - 1] ?? 0) + share * ((heads[next] ?? 0) - (heads[next - 1] ?? 0));
  });
  return meansOnly(60, values);
}
