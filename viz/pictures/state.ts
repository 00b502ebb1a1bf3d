import { does } from "../../sim/text/kinds/index.ts";
import { formatClock, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { STATES, StageRecord, StateTrace, StudyResults, VariantResults } from "../contract.ts";
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
  type Group,
  isolated,
  type Paint,
  type Texture,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey, stepBandPath } from "../marks/index.ts";
import { OWN_TIME_WORDS } from "../words/index.ts";
import { type Cell, type ChartTable, textColumn } from "./chartTable.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, panelTops } from "./panelWords.ts";
import { meansOnly, scene, type TimeReadings, type TimeSeries } from "./timeReadings.ts";

export interface StateRow {
  name: string;
  /** shares[state][bin], 0..1; the states of a bin add up to 1, or to 0 where nothing was watched. */
  shares: readonly (readonly number[])[];
  /** Shares of the station's own time by state, on break left out; empty where it has none. */
  ownShares: readonly number[];
  /** Time on break, as a share of the time from its first head to its last. */
  breakShare: number | null;
  /** Shares of the whole day by the clock. */
  clockShares: readonly number[];
  /** From its first head to its last, seconds; null where no head could reach it. */
  own: { fromSeconds: number; toSeconds: number } | null;
  /** The largest shares in words, one or two lines. */
  note: readonly string[];
}

export interface StateColumns extends ChartWords, DayScene {
  binSeconds: number;
  /** Names of the states, in stacking order from below. */
  states: readonly string[];
  rows: readonly StateRow[];
  footnote: string;
}

/** One look per state, in the order of the day record's states. */
const LOOKS: readonly { paint: Paint; texture: Texture; ink: Paint }[] = [
  { paint: "working", texture: "plain", ink: "ink" },
  { paint: "blocked", texture: "rising", ink: "ink" },
  { paint: "starved", texture: "dots", ink: "muted" },
  { paint: "noCrew", texture: "level", ink: "ink" },
  { paint: "down", texture: "cross", ink: "paper" },
  { paint: "onBreak", texture: "upright", ink: "rule" },
];

const ROW = 28;

const GAP = 8;

const GUTTER = 116;

const BAR = 64;

const NOTE = 178;

/** The type of the simulator's table holds this one to the same states in the same order. */
const STATE_NAMES: typeof STATES = ["working", "blocked", "starved", "no crew", "down", "on break"];

/** What a reader calls each state: the trade's word once in the key, with what it means; beside the rows in short. */
const WORDS: Record<(typeof STATES)[number], { legend: string; short: string }> = {
  working: { legend: "working", short: "working" },
  blocked: { legend: "cannot pass its head on (blocked)", short: "cannot pass on" },
  starved: { legend: "waits for heads (starved)", short: "waits for heads" },
  "no crew": { legend: "no crew", short: "no crew" },
  down: { legend: "broken down", short: "broken" },
  "on break": { legend: "on break", short: "on break" },
};

const BREAK = STATE_NAMES.indexOf("on break");

/** Bins across the strip at most, so that one is about 4 px wide. */
const MAX_BINS = 84;

/** What a station in each state does, for the finding; time on break is planned and no finding. */
const FINDINGS = [
  "Most often unable to pass heads on",
  "Most often waiting for heads",
  "Most often without people",
  "Most often broken down",
];

/** State shares of a variant's first day, by station and time bin and over each station's own time. */
export function stateView(results: StudyResults, variant: VariantResults): StateColumns {
  const { stages, traces, finishSeconds } = variant.day;
  const finest = traces?.states[0]?.binSeconds ?? finishSeconds;
  const binSeconds = finest * Math.max(1, Math.ceil(finishSeconds / finest / MAX_BINS));
  const bins = Math.max(1, Math.ceil(finishSeconds / binSeconds));
  const watched = stages
    .map((stage, index) => ({ stage, trace: traces?.states[index] }))
    .filter((pair) => pair.trace !== undefined && pair.stage.stateSeconds.some((seconds) => seconds > 0));
  const left = stages
    .filter((stage) => !watched.some((pair) => pair.stage === stage))
    .map((stage) => isolated(stage.name));
  return {
    ...dayScene(results, variant),
    title: "What each station did",
    caption:
      "The busiest station sets the pace: stations before it cannot pass heads on, stations after it wait for them",
    subtitle: `Shares of each ${formatDuration(binSeconds)}, in line order. Line below a strip: the station's own time. ${dayWords(results, variant, true)}`,
    description: describe(watched.map((pair) => pair.stage)),
    binSeconds,
    states: STATE_NAMES.map((name) => WORDS[name].legend),
    rows: watched.map((pair) => rowOf(pair.stage, pair.trace!, binSeconds, bins)),
    footnote: [
      `${OWN_TIME_WORDS} On break: share of the time from first to last head.`,
      ...dwellWords(watched.map((pair) => pair.stage)),
      ...(left.length === 0 ? [] : [`Not recorded: ${left.join(", ")}.`]),
    ].join(" "),
  };
}

function dwellWords(stages: readonly StageRecord[]): string[] {
  const names = stages.filter((stage) => does(stage, "hold heads")).map((stage) => isolated(stage.name));
  return names.length === 0
    ? []
    : [`In ${names.join(" and ")}, a place that holds a head counts as working, an empty one as waiting for heads.`];
}

function rowOf(stage: StageRecord, trace: StateTrace, binSeconds: number, bins: number): StateRow {
  const step = Math.round(binSeconds / trace.binSeconds);
  const seconds = STATE_NAMES.map(() => new Array<number>(bins).fill(0));
  trace.seconds.forEach((value, index) => {
    const bin = Math.floor(Math.floor(index / STATE_NAMES.length) / step);
    if (bin < bins) seconds[index % STATE_NAMES.length]![bin]! += value;
  });
  const totals = seconds[0]!.map((_, bin) => seconds.reduce((sum, row) => sum + row[bin]!, 0));
  const shares = seconds.map((row) => row.map((value, bin) => (totals[bin]! > 0 ? value / totals[bin]! : 0)));
  const own = stage.ownTime;
  const ownShares = ownSharesOf(stage);
  const breakShare = own === null ? null : (sharesOf(own.stateSeconds)[BREAK] ?? null);
  return {
    name: isolated(stage.name),
    shares,
    ownShares,
    breakShare,
    clockShares: sharesOf(stage.stateSeconds),
    own,
    note: noteOf(ownShares, breakShare),
  };
}

/** Shares of the station's own time by state, on break left out; empty where no head could reach it. */
function ownSharesOf({ ownTime }: StageRecord): number[] {
  if (ownTime === null) return [];
  return sharesOf(ownTime.stateSeconds.map((seconds, state) => (state === BREAK ? 0 : seconds)));
}

function sharesOf(stateSeconds: readonly number[]): number[] {
  const total = stateSeconds.reduce((sum, value) => sum + value, 0);
  return total > 0 ? stateSeconds.map((seconds) => seconds / total) : [];
}

/** The working share on one line, with time on break beside it; on the next the largest others that reach 1 %, two where they fit. */
function noteOf(shares: readonly number[], breakShare: number | null): string[] {
  if (shares.length === 0) return ["no head could reach it"];
  const others = STATE_NAMES.map((name, state) => ({ text: `${WORDS[name].short} ${percent(shares[state]!)}`, state }))
    .slice(1)
    .filter(({ state }) => shares[state]! >= 0.01)
    .sort((a, b) => shares[b.state]! - shares[a.state]!)
    .map(({ text }) => text);
  const onBreak = breakShare !== null && breakShare >= 0.01 ? `; on break ${percent(breakShare)}` : "";
  const working = `working ${percent(shares[0]!)}${onBreak}`;
  const two = others.slice(0, 2).join(", ");
  return others.length === 0 ? [working] : [working, textWidth(two, 11) <= NOTE - 4 ? two : others[0]!];
}

function percent(share: number): string {
  return `${formatDecimals(share * 100, 0)} %`;
}

/** Which station was busiest, and where each other state took most; every share of every stage stands beside its row and in the table. */
function describe(stages: readonly StageRecord[]): string {
  const stations = stages.filter((stage) => does(stage, "work") && ownSharesOf(stage).length > 0);
  if (stations.length === 0) return "No station recorded.";
  const [busiest, ...others] = STATE_NAMES.slice(0, BREAK).map((_, state) => largestShare(stations, state));
  const words = others.flatMap(({ station, share }, index) =>
    share < 0.01 ? [] : [`${FINDINGS[index]}: ${station}, ${percent(share)}.`],
  );
  return [`Busiest was ${busiest!.station}: working ${percent(busiest!.share)} of its own time.`, ...words].join(" ");
}

function largestShare(stations: readonly StageRecord[], state: number): { station: string; share: number } {
  const shares = stations.map((stage) => ({ station: isolated(stage.name), share: ownSharesOf(stage)[state]! }));
  return shares.reduce((most, each) => (each.share > most.share ? each : most));
}

/** What each station did over the clock: stations in line order, each time bin filled by the shares of its states. */
export function stateChart(columns: StateColumns, context: ChartContext): SVGSVGElement {
  if (columns.rows.length === 0) return emptyChart(columns, "No station of this day has recorded states.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: BAR + NOTE + 20 });
  const fills = LOOKS.map((look, state) =>
    textureFill(frame.defs, frame.id(`state-${state}`), look.texture, frame.colour(look.paint), frame.colour(look.ink)),
  );
  const key = columns.states.map((name, state) => ({ name, fill: fills[state]! }));
  const top = drawKey(frame, key, frame.top + 4) + 24;
  const { tops, bottom } = panelTops(frame, columns.rows.map(headOf), { top, height: ROW, gap: GAP });
  const { right } = frame.plot;
  drawDayPlot(frame, top, bottom, { above: 4, below: 4, grid: false });
  if (!frame.narrow) drawText(frame.body, right + 12, top - 9, "share of own time", { fill: frame.colour("muted") });
  const edges = columns.rows[0]!.shares[0]!.map((_, bin) => frame.time(bin * columns.binSeconds));
  edges.push(right);
  columns.rows.forEach((row, index) => {
    drawRow(frame, row, fills, edges, tops[index]!);
  });
  return finishDay(frame, bottom + 8, columns.footnote);
}

function drawRow(
  frame: DayFrame,
  row: StateRow,
  fills: readonly string[],
  edges: readonly number[],
  top: number,
): void {
  const group = frame.body.append("g");
  if (frame.narrow) drawPanelHead(frame, headOf(row), top);
  else drawNames(frame, group, row.name, top);
  const floor = edges.slice(1).map(() => top + ROW);
  row.shares.forEach((shares, state) => {
    const lower = [...floor];
    shares.forEach((share, bin) => {
      floor[bin]! -= share * ROW;
    });
    const path = stepBandPath(edges, floor, lower);
    if (path !== "") group.append("path").attr("d", path).attr("fill", fills[state]!);
  });
  const { left, right } = frame.plot;
  const outline = group
    .append("rect")
    .attr("x", left)
    .attr("y", top)
    .attr("width", right - left)
    .attr("height", ROW);
  outline.attr("fill", "none").attr("stroke", frame.colour("rule")).attr("stroke-width", 0.7);
  if (row.own !== null) drawOwnTime(frame, group, row.own, top + ROW);
  if (!frame.narrow) drawOwnBar(frame, group, row, fills, top);
}

/** A narrow picture has the shares of a station's own time in words only. */
function headOf({ name, note }: StateRow): { name: string; notes: readonly string[] } {
  return { name, notes: note };
}

function drawNames(frame: DayFrame, group: Group, name: string, top: number): void {
  const names = wrapText(name, GUTTER - 8, 11, 2, true);
  names.forEach((line, i) => {
    drawText(group, frame.left, top + ROW / 2 + 4 + (i - (names.length - 1) / 2) * 13, line, { bold: true });
  });
}

/** A line below the strip from the station's first head to its last. */
function drawOwnTime(frame: DayFrame, group: Group, own: NonNullable<StateRow["own"]>, bottom: number): void {
  const [from, to] = [frame.time(own.fromSeconds), frame.time(own.toSeconds)];
  const y = bottom + 3;
  group
    .append("path")
    .attr("d", `M${from.toFixed(1)},${y - 2.5}V${y}H${to.toFixed(1)}V${y - 2.5}`)
    .attr("fill", "none")
    .attr("stroke", frame.colour("ink"))
    .attr("stroke-width", 1.2);
}

function drawOwnBar(frame: DayFrame, group: Group, row: StateRow, fills: readonly string[], top: number): void {
  const x = frame.plot.right + 12;
  let from = x;
  row.ownShares.forEach((share, state) => {
    if (share <= 0) return;
    const part = group
      .append("rect")
      .attr("x", from.toFixed(1))
      .attr("y", top + 5)
      .attr("width", (share * BAR).toFixed(1));
    part
      .attr("height", ROW - 10)
      .attr("fill", fills[state]!)
      .attr("stroke", frame.colour("muted"))
      .attr("stroke-width", 0.4);
    from += share * BAR;
  });
  const lines = row.note.flatMap((line) => wrapText(line, NOTE - 4, 11, 1));
  lines.forEach((line, i) => {
    drawText(group, x + BAR + 8, top + ROW / 2 + 4 + (i - (lines.length - 1) / 2) * 13, line);
  });
}

export function stateReadings(columns: StateColumns): TimeReadings {
  const series = columns.rows.flatMap((row) =>
    columns.states.map((state, index): TimeSeries => {
      const shares = row.shares[index]!.map((share) => share * 100);
      return { group: row.name, name: state, unit: "%", trace: meansOnly(columns.binSeconds, shares) };
    }),
  );
  return { ...scene(columns), series };
}

export function stateTable(columns: StateColumns): ChartTable {
  const worked = columns.states.filter((name) => name !== WORDS["on break"].legend);
  const clock = (seconds: number): Cell => formatClock(seconds + columns.startClockSeconds, true);
  const percent = (share: number | null): Cell => (share === null ? null : share * 100);
  return {
    columns: [
      textColumn("station"),
      { name: "first head", unit: "clock time" },
      { name: "last head", unit: "clock time" },
      ...worked.map((name) => ({ name, unit: "% of own time" })),
      { name: "on break", unit: "% from first to last head" },
      ...columns.states.map((name) => ({ name: `${name}, by the clock`, unit: "% of the day" })),
    ],
    rows: columns.rows.map((row) => [
      row.name,
      row.own === null ? null : clock(row.own.fromSeconds),
      row.own === null ? null : clock(row.own.toSeconds),
      ...worked.map((_, state) => percent(row.ownShares[state] ?? null)),
      percent(row.breakShare),
      ...row.clockShares.map(percent),
    ]),
  };
}
