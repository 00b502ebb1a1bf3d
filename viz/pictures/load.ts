import { does } from "../../sim/text/kinds/index.ts";
import { formatClock, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { LoadRecord, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  clockAt,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawText,
  emptyChart,
  finishDay,
  type Group,
  isolated,
  readable,
  textureFill,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import { type Cell, type ChartTable, textColumn } from "./chartTable.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, PANEL_GUTTERS, panelTops } from "./panelWords.ts";
import {
  drawPanel,
  GAP,
  GUTTER,
  PANEL,
  panelOf,
  type QueuePanel,
  queueHead,
  queueSeries,
  RIGHT_GUTTER,
  traceColumns,
} from "./queue.ts";
import { scene, type TimeReadings } from "./timeReadings.ts";

/** One lorry's crates over the day, seconds after its start; null for what did not happen (or is not followed). */
export interface LoadRow {
  name: string;
  /** Crates and heads in words. */
  note: string;
  dueSeconds: number;
  arrivedSeconds: number;
  unloadedSeconds: number | null;
  emptiedSeconds: number | null;
  washedSeconds: number | null;
  leftSeconds: number | null;
  /** All its times in words, for pointing at. */
  words: string;
}

export interface LoadColumns extends ChartWords, DayScene {
  loads: readonly LoadRow[];
  /** Crates waiting at a step, below the loads. */
  panels: readonly QueuePanel[];
  footnote: string;
}

const ROW = 34;

/** More lorries than this are not told apart in one picture; the first ones are drawn, the others counted below it. */
const MAX_LOADS = 24;

const PHASES = ["crates on the lorry", "in lairage", "crates to the washer"] as const;

type Come = LoadRecord & { arrivedSeconds: number };

/** Lorries and crates of a variant's first day; null when the supply does not come in loads. */
export function loadView(results: StudyResults, variant: VariantResults): LoadColumns | null {
  const { day } = variant;
  if (day.loads.length === 0) return null;
  const all = day.loads.filter(hasCome);
  const came = all.filter(({ arrivedSeconds }) => arrivedSeconds <= day.finishSeconds);
  const drawn = came.sort((a, b) => a.arrivedSeconds - b.arrivedSeconds).slice(0, MAX_LOADS);
  const panels = day.stages.flatMap((stage, index) => {
    const trace = day.traces?.queues[index];
    return does(stage, "handle crates") && stage.queue.max > 0 && trace !== undefined
      ? [panelOf(stage, traceColumns(trace, day.finishSeconds))]
      : [];
  });
  const more = came.length - drawn.length;
  const late = all.length - came.length;
  const away = day.loads.length - all.length;
  const notes = [
    ...(more > 0 ? [`${more} later lorries are not drawn.`] : []),
    ...(late > 0 ? [`${late} ${late === 1 ? "lorry" : "lorries"} came after the end of the day.`] : []),
    ...(away > 0 ? [`${away} ${away === 1 ? "lorry" : "lorries"} did not come.`] : []),
  ];
  return {
    ...dayScene(results, variant),
    title: "Lorries and their crates",
    caption: "Long hatched bar: animals wait in lairage. Long line below it: the lorry waits for its crates",
    subtitle: `Each lorry: its crates, and below them its own stay (dashed tick: when it was due). Last: crates waiting at each step. ${dayWords(results, variant, true)}`,
    description: [describe(came), ...notes.slice(more > 0 ? 1 : 0)].join(" "),
    loads: drawn.map((load) => rowOf(load, day.startClockSeconds)),
    panels,
    footnote: notes.join(" "),
  };
}

function hasCome(load: LoadRecord): load is Come {
  return load.arrivedSeconds !== null;
}

function rowOf(load: Come, start: number): LoadRow {
  const name = isolated(load.name);
  const at = (words: string, seconds: number | null) =>
    seconds === null ? [] : [`${words} ${clockAt(seconds, start)}`];
  const times = [
    ...at("due", load.dueSeconds),
    ...at("in", load.arrivedSeconds),
    ...at("unloaded", load.unloadedSeconds),
    ...at("last head out of its crates", load.emptiedSeconds),
    ...at("crates washed", load.washedSeconds),
    ...at("lorry out", load.leftSeconds),
  ];
  return { ...load, name, note: countWords(load), words: `${name}: ${times.join(", ")}` };
}

function countWords({ crates, heads }: LoadRecord): string {
  return `${formatDecimals(crates, 0)} crates, ${formatDecimals(heads, 0)} heads`;
}

function describe(loads: readonly Come[]): string {
  const waits = loads.flatMap((load) =>
    load.emptiedSeconds === null ? [] : [{ load, seconds: load.emptiedSeconds - load.arrivedSeconds }],
  );
  const longest = waits.sort((a, b) => b.seconds - a.seconds)[0];
  const stays = loads.flatMap((load) => (load.leftSeconds === null ? [] : [load.leftSeconds - load.arrivedSeconds]));
  const left = loads.filter((load) => load.emptiedSeconds === null).length;
  const count = `${loads.length} ${loads.length === 1 ? "lorry" : "lorries"} came.`;
  const wait = longest
    ? ` Animals waited longest on ${isolated(longest.load.name)}: ${formatDuration(longest.seconds)} from its arrival to the last head out of its crates.`
    : "";
  const stay = stays.length > 0 ? ` The longest stay of a lorry was ${formatDuration(Math.max(...stays))}.` : "";
  return `${count}${wait}${stay}${left > 0 ? ` ${left} of them still had heads in their crates at the end.` : ""}`;
}

/** Each lorry's way through the yard: its crates above (on the lorry, in lairage, to the washer), the lorry's stay below. */
export function loadChart(columns: LoadColumns, context: ChartContext): SVGSVGElement {
  if (columns.loads.length === 0) return emptyChart(columns, "No lorry comes on this day.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: RIGHT_GUTTER }, PANEL_GUTTERS);
  const fills = phaseFills(frame);
  const washed = columns.loads.some((load) => load.washedSeconds !== null);
  const key = [
    { name: "crates on the lorry", fill: fills[0]! },
    { name: "in lairage until the last head is out", fill: fills[1]! },
    ...(washed ? [{ name: "until its last crate is washed", fill: fills[2]! }] : []),
    { name: "the lorry is here", fill: frame.colour("ink") },
  ];
  const top = drawKey(frame, key, frame.top + 4) + 26;
  const loads = panelTops(frame, columns.loads.map(loadHead), { top, height: ROW, gap: 0 });
  const panels = panelTops(frame, columns.panels.map(queueHead), {
    top: loads.bottom + GAP,
    height: PANEL,
    gap: GAP,
  });
  const bottom = columns.panels.length === 0 ? loads.bottom : panels.bottom;
  drawDayPlot(frame, top, bottom);
  columns.loads.forEach((load, index) => {
    drawLoad(frame, load, fills, loads.tops[index]!);
  });
  columns.panels.forEach((panel, index) => {
    drawPanel(frame, panel, panels.tops[index]!, PANEL);
  });
  return finishDay(frame, bottom + 6, columns.footnote);
}

function phaseFills(frame: DayFrame): string[] {
  const looks = [
    ["fill1", "plain"],
    ["fill0", "rising"],
    ["fill3", "dots"],
  ] as const;
  return looks.map(([paint, texture], index) =>
    textureFill(frame.defs, frame.id(`phase-${index}`), texture, frame.colour(paint), frame.colour("muted")),
  );
}

function drawLoad(frame: DayFrame, load: LoadRow, fills: readonly string[], top: number): void {
  const { time } = frame;
  const group = readable(frame.body, load.words);
  if (frame.narrow) drawPanelHead(frame, loadHead(load), top);
  else drawLoadWords(frame, group, load, top);
  for (const { phase, from, to } of phasesOf(load, frame.scene.endSeconds)) {
    const bar = group
      .append("rect")
      .attr("x", time(from).toFixed(1))
      .attr("y", top + 4)
      .attr("height", 12);
    bar.attr("width", Math.max(1, time(to) - time(from)).toFixed(1)).attr("fill", fills[phase]!);
    bar.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
  }
  drawStay(frame, group, load, top + 23);
}

function loadHead({ name, note }: LoadRow): { name: string; notes: string[] } {
  return { name, notes: [note] };
}

function drawLoadWords(frame: DayFrame, group: Group, load: LoadRow, top: number): void {
  const [name = ""] = wrapText(load.name, GUTTER - 34, 11, 1, true);
  const [note = ""] = wrapText(load.note, GUTTER - 20, 11, 1);
  drawText(group, frame.left, top + 13, name, { bold: true });
  drawText(group, frame.left, top + 26, note, { fill: frame.colour("muted") });
}

/** What happens to a lorry's crates from when to when. One that never ended runs to the day's end; one that is not followed is left out. */
function phasesOf(load: LoadRow, endSeconds: number): { phase: number; from: number; to: number }[] {
  const turns = [load.arrivedSeconds, load.unloadedSeconds, load.emptiedSeconds, load.washedSeconds];
  return PHASES.flatMap((_, phase) => {
    const from = turns[phase] ?? null;
    const to = turns[phase + 1] ?? (phase < 2 ? endSeconds : null);
    return from === null || to === null || to <= from ? [] : [{ phase, from, to }];
  });
}

/** A line while the lorry is here, closed by a bar when it leaves and open while it does not; a tick where it was due. */
function drawStay(frame: DayFrame, group: Group, load: LoadRow, y: number): void {
  const { time } = frame;
  const [from, to] = [time(load.arrivedSeconds), time(load.leftSeconds ?? frame.scene.endSeconds)];
  const close = load.leftSeconds === null ? "l-5,-4m5,4l-5,4" : "m0,-4v8";
  const stay = group.append("path").attr("d", `M${from.toFixed(1)},${y - 4}v8m0,-4H${to.toFixed(1)}${close}`);
  stay.attr("fill", "none").attr("stroke", frame.colour("ink")).attr("stroke-width", 1.6);
  if (Math.abs(load.dueSeconds - load.arrivedSeconds) < 30 || load.dueSeconds < 0) return;
  const due = group.append("path").attr("d", `M${time(load.dueSeconds).toFixed(1)},${y - 4}v8`);
  due.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.6).attr("stroke-dasharray", "3 2");
}

export function loadReadings(columns: LoadColumns): TimeReadings {
  const spans = columns.loads.map((load) => ({
    name: load.name,
    spans: phasesOf(load, columns.endSeconds).map(({ phase, from, to }) => ({ from, to, text: PHASES[phase]! })),
  }));
  return { ...scene(columns), series: columns.panels.map((panel) => queueSeries(panel, "crates")), spans };
}

export function loadTable(columns: LoadColumns): ChartTable {
  const clock = (seconds: number | null): Cell =>
    seconds === null ? null : formatClock(seconds + columns.startClockSeconds, true);
  const times = ["due", "in", "unloaded", "last head out of its crates", "crates washed", "lorry out"];
  return {
    columns: [textColumn("lorry"), textColumn("load"), ...times.map((name) => ({ name, unit: "clock time" }))],
    rows: columns.loads.map((load) => [
      load.name,
      load.note,
      clock(load.dueSeconds),
      clock(load.arrivedSeconds),
      clock(load.unloadedSeconds),
      clock(load.emptiedSeconds),
      clock(load.washedSeconds),
      clock(load.leftSeconds),
    ]),
  };
}
