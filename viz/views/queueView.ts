import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { QueueColumns, QueuePanel, TraceColumns } from "../charts/index.ts";
import type { StageRecord, StepTrace, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** More change points than this are drawn as low, high and mean by bin: at page width nobody could tell them apart. */
const MOST_POINTS = 1500;

/** Queue traces of a variant's first day, heads only (crates: `loadView`); stages where nothing ever waited are named below instead of drawn. */
export function queueView(results: StudyResults, variant: VariantResults): QueueColumns {
  const { stages, traces, finishSeconds } = variant.day;
  const pairs = stages
    .map((stage, index) => ({ stage, trace: traces?.queues[index] }))
    .filter((pair) => pair.stage.kind !== "crates");
  const drawn = pairs.filter(
    (pair) => pair.stage.queue.max > 0 && pair.trace !== undefined && pointsOf(pair.trace) > 0,
  );
  const idle = pairs.filter((pair) => pair.stage.queue.max === 0).map((pair) => isolated(pair.stage.name));
  const panels = drawn.map((pair) => panelOf(pair.stage, traceColumns(pair.trace!, finishSeconds)));
  const footnote =
    traces === null ? "This day was run without traces, so the queues cannot be drawn." : idleWords(idle);
  return {
    ...dayScene(results, variant),
    title: "What waits before each station",
    caption: "A trace that lies on the dashed line is a full buffer, and what comes before it has to wait",
    subtitle: `Heads waiting (heads present in a dwell stage), ${dayWords(results, variant)}. ${shapeWords(panels)}`,
    description: describe(drawn.map((pair) => pair.stage)),
    panels,
    footnote,
  };
}

/** A trace as it is drawn: every step where they are few, bins where they are many. */
export function traceColumns(trace: StepTrace, endSeconds: number): TraceColumns {
  if (trace.kind === "exact" && trace.times.length <= MOST_POINTS) return trace;
  return { kind: "binned", ...binnedTrace(trace, drawingBinSeconds(endSeconds)) };
}

function pointsOf(trace: StepTrace): number {
  return trace.kind === "exact" ? trace.times.length : trace.mean.length;
}

/** Queue before one stage, with its places. */
export function panelOf(stage: StageRecord, trace: TraceColumns): QueuePanel {
  const crates = stage.kind === "crates";
  const limited = Number.isFinite(stage.places) && stage.places > 0;
  // A line four times above everything that happened would flatten the trace; then the words alone carry it.
  const drawn = limited && stage.places <= 4 * stage.queue.max;
  return {
    name: isolated(stage.name),
    note: `${crates ? "crates" : "heads"}: most ${formatDecimals(stage.queue.max, 0)}, mean ${formatDecimals(stage.queue.mean, stage.queue.mean < 100 ? 1 : 0)}`,
    capacity: drawn ? stage.places : null,
    capacityText: capacityWords(stage),
    largest: stage.queue.max,
    trace,
  };
}

/** Heads can wait where there is no place: in the crate at the hanging point, or at a position that has no crew. */
function capacityWords(stage: StageRecord): string {
  if (!Number.isFinite(stage.places)) return "no limit of places";
  if (stage.places === 0) return "no places of its own";
  const things = stage.kind === "crates" ? "crate" : "place";
  return `${formatDecimals(stage.places, 0)} ${things}${stage.places === 1 ? "" : "s"}`;
}

function shapeWords(panels: readonly QueuePanel[]): string {
  const binned = panels.map((panel) => panel.trace).find((trace) => trace.kind === "binned");
  const band = binned ? `Band: lowest to highest in each ${formatDuration(binned.binSeconds)}, line: mean. ` : "";
  return `${band}Dashed: places there are.`;
}

function idleWords(names: readonly string[]): string {
  return names.length === 0 ? "" : `Nothing ever waited before: ${names.join(", ")}.`;
}

function describe(stages: readonly StageRecord[]): string {
  const full = stages.filter(
    (stage) => stage.places > 0 && Number.isFinite(stage.places) && stage.queue.max >= stage.places,
  );
  const names = full.map((stage) => isolated(stage.name)).join(", ");
  const longest = [...stages]
    .filter((stage) => stage.kind === "station")
    .sort((a, b) => b.queue.mean - a.queue.mean)[0];
  const first = longest
    ? `On average most heads waited before ${isolated(longest.name)}: ${formatDecimals(longest.queue.mean, 1)}, at most ${formatDecimals(longest.queue.max, 0)}. `
    : "";
  return `${first}${full.length === 0 ? "No stage ran out of places." : `All places were taken at some time at: ${names}.`}`;
}
