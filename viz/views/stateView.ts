import type { StateColumns, StateRow } from "../charts/index.ts";
import type { STATES, StageRecord, StateTrace, StudyResults, VariantResults } from "../contract.ts";
import { formatNumber, isolated } from "../frame/index.ts";
import { spanWords } from "../words/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** The type of the simulator's table holds this one to the same states in the same order. */
const STATE_NAMES: typeof STATES = ["working", "blocked", "starved", "no crew", "down", "on break"];
/** Bins across the strip at most, so that one is about 4 px wide. */
const MOST_BINS = 84;

/** State shares of a variant's first day, by station and time bin and over the day. */
export function stateView(results: StudyResults, variant: VariantResults): StateColumns {
  const { stages, traces, finishSeconds } = variant.day;
  const finest = traces?.states[0]?.binSeconds ?? finishSeconds;
  const binSeconds = finest * Math.max(1, Math.ceil(finishSeconds / finest / MOST_BINS));
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
      "The station with the most working and least waiting sets the pace; blocked lies before it, starved behind it",
    subtitle: `Shares of position time in each ${spanWords(binSeconds)}, from top to bottom in line order, ${dayWords(results, variant)}`,
    description: describe(watched.map((pair) => pair.stage)),
    binSeconds,
    states: STATE_NAMES,
    rows: watched.map((pair) => rowOf(pair.stage, pair.trace!, binSeconds, bins)),
    footnote: `${dwellWords(watched.map((pair) => pair.stage))}${left.length === 0 ? "" : ` Without states: ${left.join(", ")}.`}`,
  };
}

function dwellWords(stages: readonly StageRecord[]): string {
  const names = stages.filter((stage) => stage.kind === "dwell").map((stage) => isolated(stage.name));
  return names.length === 0
    ? ""
    : `In ${names.join(" and ")}, a place that holds a head counts as working, an empty one as starved.`;
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
  const dayShares = dailyShares(stage);
  return { name: isolated(stage.name), shares, dayShares, note: noteOf(dayShares) };
}

function dailyShares(stage: StageRecord): number[] {
  const total = stage.stateSeconds.reduce((sum, value) => sum + value, 0);
  return STATE_NAMES.map((_, state) => (total > 0 ? (stage.stateSeconds[state] ?? 0) / total : 0));
}

/** The working share on one line, the two largest others that reach 1 % on the next. */
function noteOf(shares: readonly number[]): string[] {
  const others = STATE_NAMES.map((name, state) => ({ name, share: shares[state]! }))
    .slice(1)
    .filter((entry) => entry.share >= 0.01)
    .sort((a, b) => b.share - a.share)
    .slice(0, 2);
  const words = ({ name, share }: { name: string; share: number }) => `${name} ${formatNumber(share * 100, 0)} %`;
  const working = words({ name: STATE_NAMES[0], share: shares[0]! });
  return others.length === 0 ? [working] : [working, others.map(words).join(", ")];
}

/** Where each state took the largest share of the day; every share of every stage stands beside its row and in the table. */
function describe(stages: readonly StageRecord[]): string {
  const stations = stages.filter((stage) => stage.kind === "station");
  if (stations.length === 0) return "No station recorded.";
  const [working, ...others] = STATE_NAMES.map((name, state) => ({ name, ...largestShare(stations, state) }));
  const words = others
    .filter(({ share }) => share >= 0.01)
    .map(({ name, station, share }) => `${name} at ${station}, ${formatNumber(share * 100, 0)} %`);
  const rest = words.length === 0 ? "" : ` Of the other states, most was ${words.join("; ")}.`;
  return `The largest share of the day was worked at ${working!.station}, ${formatNumber(working!.share * 100, 0)} %.${rest}`;
}

function largestShare(stations: readonly StageRecord[], state: number): { station: string; share: number } {
  const shares = stations.map((stage) => ({ station: isolated(stage.name), share: dailyShares(stage)[state]! }));
  return shares.reduce((most, each) => (each.share > most.share ? each : most));
}
