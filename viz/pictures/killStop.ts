import { formatClock, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { DayRecord, KillStop, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawText,
  emptyChart,
  finishDay,
  isolated,
  type Paint,
  type Texture,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import { headsWords, STOP_CAUSES, stopEndWords, stopReasonWords, waitWords } from "../words/index.ts";
import { type ChartTable, secondsColumn, textColumn } from "./chartTable.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, panelTops } from "./panelWords.ts";
import { scene, type TimeReadings } from "./timeReadings.ts";

/** One stop of the kill line. */
export interface KillStopRow {
  /** What it stood for at first. */
  cause: string;
  where: string;
  /** The breakdown's name, say; "" where there is none. */
  what: string;
  /** Seconds after the day's start. */
  from: number;
  to: number;
  /** When it began and how long it lasted, in words. */
  time: string;
  /** Stunned heads, not yet stuck: when it began, and at most during it. Bleeding ones the same. */
  stunned: number;
  stunnedMost: number;
  bleeding: number;
  bleedingMost: number;
  /** Stunned heads that it caught, and the longest wait of one; null where it caught none. */
  caught: number;
  longestWait: number | null;
  longestWaitWords: string;
  ended: string;
}

export interface KillStopColumns extends ChartWords, DayScene {
  /** Causes in the order of the key. */
  causes: readonly string[];
  rows: readonly KillStopRow[];
  footnote: string;
}

/** One look per cause, in the order of the engine's causes. */
const LOOKS: readonly { paint: Paint; texture: Texture; ink: Paint }[] = [
  { paint: "down", texture: "cross", ink: "paper" },
  { paint: "fill4", texture: "falling", ink: "ink" },
  { paint: "onBreak", texture: "upright", ink: "muted" },
  { paint: "noCrew", texture: "level", ink: "ink" },
  { paint: "blocked", texture: "rising", ink: "ink" },
  { paint: "fill1", texture: "dots", ink: "ink" },
];

const ROW = 32;

const BAR = 18;

const LABEL = 178;

const HEADS = 84;

const WAIT = 72;

/** A bar is seen even where it lasts no longer than a pixel. */
const MIN_BAR = 3;

/** The axis ends a little after the last head has left the kill line: dressing and chilling go on for hours. */
const AFTER_WORK = 1.03;

/** Rows that are drawn: the longest stops, in the order of the day. */
const MAX_DRAWN = 24;

/** The stops of the kill line on a variant's first day; null where none were recorded. */
export function killStopView(results: StudyResults, variant: VariantResults): KillStopColumns | null {
  const { killStops, startClockSeconds } = variant.day;
  if (killStops === null) return null;
  const rows = killStops.stops.map((stop) => rowOf(stop, startClockSeconds));
  const least = [...rows].map(({ from, to }) => to - from).sort((a, b) => b - a)[MAX_DRAWN - 1] ?? 0;
  const drawn = rows.filter(({ from, to }) => to - from >= least).slice(0, MAX_DRAWN);
  const scene = dayScene(results, variant);
  return {
    ...{ ...scene, endSeconds: Math.min(scene.endSeconds, AFTER_WORK * lastOf(variant.day, killStops)) },
    title: "Stops of the kill line",
    caption: "Each bar is a stop. Beside it: heads between stunning and the end of bleeding, and how long one waited",
    subtitle: `Heads when the stop began; most while it lasted. Longest wait of a stunned head until it was stuck. ${dayWords(results, variant, true)}`,
    description: describe(killStops),
    causes: Object.values(STOP_CAUSES),
    rows: drawn,
    footnote: footnoteOf(killStops, drawn.length),
  };
}

/** When the last head left the kill line, or the last stop ended; the end of work where no stage tells. */
function lastOf(
  { stages, workFinishSeconds }: DayRecord,
  { steps, stops }: NonNullable<DayRecord["killStops"]>,
): number {
  const left = stages.flatMap(({ name, ownTime }) => (steps.includes(name) && ownTime ? [ownTime.toSeconds] : []));
  return Math.max(1, ...(left.length > 0 ? left : [workFinishSeconds]), ...stops.map(({ toSeconds }) => toSeconds));
}

function rowOf(stop: KillStop, startClockSeconds: number): KillStopRow {
  const { fromSeconds, toSeconds, reasons, caught, longestWaitSeconds } = stop;
  const clock = formatClock(startClockSeconds + fromSeconds, true);
  return {
    cause: STOP_CAUSES[reasons[0]!.cause],
    where: isolated(reasons[0]!.where),
    what: reasons[0]!.what === "" ? "" : isolated(reasons[0]!.what),
    from: fromSeconds,
    to: toSeconds,
    time: `${clock}, ${formatDuration(Math.round(toSeconds - fromSeconds))}`,
    stunned: stop.stunned,
    stunnedMost: stop.stunnedMost,
    bleeding: stop.bleeding,
    bleedingMost: stop.bleedingMost,
    caught,
    longestWait: caught === 0 ? null : longestWaitSeconds,
    longestWaitWords: caught === 0 ? "" : waitWords(longestWaitSeconds),
    ended: [...reasons.slice(1).map((reason) => `Then also ${stopReasonWords(reason)}.`), stopEndWords(stop)].join(" "),
  };
}

function describe(stops: NonNullable<DayRecord["killStops"]>): string {
  const { count, seconds, unplanned, caught, worstWaitSeconds, shorter } = stops;
  const short =
    shorter.count === 0
      ? ""
      : ` Stands too short to count as stops: ${formatDecimals(shorter.count, 0)}, ${formatDuration(shorter.seconds)} in all.`;
  if (count === 0) return `The kill line did not stop on this day.${short}`;
  const heads =
    caught === 0
      ? "No stunned head was caught before sticking."
      : `${headsWords(caught)} ${caught === 1 ? "was" : "were"} caught between stunning and sticking; the longest wait of one was ${waitWords(worstWaitSeconds)}.`;
  const times = count === 1 ? "once" : `${formatDecimals(count, 0)} times`;
  const planned = count - unplanned.count;
  const byPlan = planned === 0 ? "" : `, ${formatDecimals(planned, 0)} of them by plan`;
  const longest =
    unplanned.count === 0
      ? ""
      : `; the longest that was not planned lasted ${formatDuration(unplanned.longestSeconds)}`;
  return `The kill line stopped ${times}${byPlan}, for ${formatDuration(seconds)} in all${longest}. ${heads}${short}`;
}

function footnoteOf({ count }: NonNullable<DayRecord["killStops"]>, drawn: number): string {
  return drawn === count
    ? ""
    : `The ${drawn} longest of ${formatDecimals(count, 0)} stops are drawn; stops.csv lists more.`;
}

/** Each stop as a bar over the clock with its cause in words; heads on the stretch and the longest wait stand beside it. */
export function killStopChart(columns: KillStopColumns, context: ChartContext): SVGSVGElement {
  if (columns.rows.length === 0) return emptyChart(columns, columns.description, context);
  const frame = dayFrame(columns, context, { left: LABEL, right: HEADS + HEADS + WAIT + 12 });
  const fills = new Map(
    columns.causes.map((cause, index) => {
      const { paint, texture, ink } = LOOKS[index % LOOKS.length]!;
      return [
        cause,
        textureFill(frame.defs, frame.id(`cause-${index}`), texture, frame.colour(paint), frame.colour(ink)),
      ];
    }),
  );
  const met = columns.causes.filter((cause) => columns.rows.some((row) => row.cause === cause));
  const key = met.map((name) => ({ name, fill: fills.get(name)! }));
  const top = drawKey(frame, key, frame.top + 4) + (frame.narrow ? 26 : 42);
  const { tops, bottom } = panelTops(frame, columns.rows.map(headOf), { top, height: ROW, gap: 0 });
  if (!frame.narrow) drawHeads(frame, top - 20);
  drawDayPlot(frame, top, bottom, { above: 2 });
  columns.rows.forEach((row, index) => {
    drawStop(frame, row, fills.get(row.cause)!, tops[index]!);
  });
  return finishDay(frame, bottom + 6, columns.footnote);
}

function drawHeads(frame: DayFrame, y: number): void {
  const left = frame.plot.right + 12;
  const heads = [
    ["stunned, not", "stuck; most"],
    ["bleeding;", "most (heads)"],
    ["longest", "wait"],
  ];
  heads.forEach((lines, column) => {
    lines.forEach((line, row) => {
      drawText(frame.body, left + column * HEADS, y + row * 13, line, { fill: frame.colour("muted") });
    });
  });
}

function drawStop(frame: DayFrame, row: KillStopRow, fill: string, top: number): void {
  const group = frame.body.append("g");
  if (frame.narrow) drawPanelHead(frame, headOf(row), top);
  else drawStopWords(frame, group, row, top);
  const x = frame.time(row.from);
  const width = Math.max(MIN_BAR, frame.time(row.to) - x);
  const bar = group
    .append("rect")
    .attr("x", x.toFixed(1))
    .attr("y", top + (ROW - BAR) / 2)
    .attr("width", width.toFixed(1));
  bar.attr("height", BAR).attr("fill", fill).attr("stroke", frame.colour("ink")).attr("stroke-width", 0.8);
  if (frame.narrow) return;
  nameBar(frame, group, row, { x, width, y: top + ROW / 2 + 4 });
  drawCells(frame, group, row, top);
}

/** What a narrow picture says above a stop: in words what a wide one has in columns. */
function headOf(row: KillStopRow): { name: string; notes: string[] } {
  const what = row.what === "" ? "" : `, ${row.what}`;
  const wait = row.longestWait === null ? "none caught" : `longest wait ${row.longestWaitWords}`;
  const stunned = `stunned, not stuck ${row.stunned}, most ${row.stunnedMost}`;
  return {
    name: row.where,
    notes: [
      `${row.time}: ${row.cause}${what}`,
      `heads: ${stunned}; bleeding ${row.bleeding}, most ${row.bleedingMost}; ${wait}`,
    ],
  };
}

function drawStopWords(frame: DayFrame, group: DayFrame["body"], row: KillStopRow, top: number): void {
  drawText(group, frame.left, top + 13, fitted(row.where, LABEL - 10, true), { bold: true });
  drawText(group, frame.left, top + 26, row.time, { fill: frame.colour("muted") });
}

/** Heads on the stretch and the longest wait, in columns beside the bar. */
function drawCells(frame: DayFrame, group: DayFrame["body"], row: KillStopRow, top: number): void {
  const left = frame.plot.right + 12;
  const cells = [
    `${row.stunned}; ${row.stunnedMost}`,
    `${row.bleeding}; ${row.bleedingMost}`,
    row.longestWait === null ? "\u2013" : row.longestWaitWords,
  ];
  cells.forEach((cell, column) => {
    drawText(group, left + column * HEADS, top + ROW / 2 + 4, cell, { bold: column === 2 && row.longestWait !== null });
  });
}

/** The cause beside its bar: behind it, or before it where there is no room behind. */
function nameBar(
  frame: DayFrame,
  group: DayFrame["body"],
  { cause, what }: KillStopRow,
  { x, width, y }: { x: number; width: number; y: number },
): void {
  const { left, right } = frame.plot;
  const [behind, before] = [right - (x + width + 5), x - 5 - left];
  const most = Math.max(behind, before);
  const words = [what === "" ? cause : `${cause}, ${what}`, cause].find((each) => textWidth(each, 11) <= most);
  const style = { halo: frame.colour("paper") };
  if (words === undefined) drawText(group, x + width / 2, y, cause, { ...style, anchor: "middle" });
  else if (textWidth(words, 11) <= behind) drawText(group, x + width + 5, y, words, style);
  else drawText(group, x - 5, y, words, { ...style, anchor: "end" });
}

function fitted(words: string, room: number, bold: boolean): string {
  return wrapText(words, room, 11, 1, bold)[0]!;
}

/** A picture of a day with many stops shows the longest ones only. */
const NO_STOP = "no stop in this picture";

export function killStopReadings(columns: KillStopColumns): TimeReadings {
  let free = 0;
  const spans = columns.rows.flatMap(({ from, to, cause, where }) => {
    const found = [
      ...(from > free ? [{ from: free, to: from, text: NO_STOP }] : []),
      { from, to, text: `${cause}, ${where}` },
    ];
    free = to;
    return found;
  });
  const rest = columns.endSeconds > free ? [{ from: free, to: columns.endSeconds + 1, text: NO_STOP }] : [];
  return { ...scene(columns), series: [], spans: [{ name: "kill line", spans: [...spans, ...rest] }] };
}

export function killStopTable(columns: KillStopColumns): ChartTable {
  const heads = (name: string) => ({ name, unit: "heads" });
  return {
    columns: [
      { name: "began", unit: "clock time" },
      secondsColumn("lasted"),
      ...[textColumn("cause"), textColumn("where"), textColumn("more")],
      ...[
        heads("stunned, not stuck"),
        heads("the same, most"),
        heads("bleeding"),
        heads("the same, most"),
        heads("caught"),
      ],
      ...[secondsColumn("longest wait until stuck"), textColumn("then")],
    ],
    rows: columns.rows.map((row) => [
      formatClock(row.from + columns.startClockSeconds, true),
      row.to - row.from,
      ...[row.cause, row.where, row.what, row.stunned, row.stunnedMost, row.bleeding, row.bleedingMost, row.caught],
      ...[row.longestWait, row.ended],
    ]),
  };
}
