import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { StateColumns, StateRow } from "../charts/index.ts";
import type { STATES, StageRecord, StateTrace, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { OWN_TIME_WORDS } from "../words/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** The type of the simulator's table holds this one to the same states in the same order. */
const STATE_NAMES: typeof STATES = ["working", "blocked", "starved", "no crew", "down", "on break"];
const BREAK = STATE_NAMES.indexOf("on break");
/** Bins across the strip at most, so that one is about 4 px wide. */
const MOST_BINS = 84;

/** State shares of a variant's first day, by station and time bin and over each station's own time. */
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
      "The busiest station sets the pace: stations before it cannot pass heads on, stations after it wait for them",
    subtitle: `Shares of position time in each ${formatDuration(binSeconds)}, in line order; the line below a strip is the station's own time; ${dayWords(results, variant)}`,
    description: describe(watched.map((pair) => pair.stage)),
    binSeconds,
    states: STATE_NAMES,
    rows: watched.map((pair) => rowOf(pair.stage, pair.trace!, binSeconds, bins)),
    footnote: [
      `${OWN_TIME_WORDS} On break: share of the time from its first head to its last.`,
      ...dwellWords(watched.map((pair) => pair.stage)),
      ...(left.length === 0 ? [] : [`Without states: ${left.join(", ")}.`]),
    ].join(" "),
  };
}

function dwellWords(stages: readonly StageRecord[]): string[] {
  const names = stages.filter((stage) => stage.kind === "dwell").map((stage) => isolated(stage.name));
  return names.length === 0
    ? []
    : [`In ${names.join(" and ")}, a place that holds a head counts as working, an empty one as starved.`];
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

/** The working share on one line, with time on break beside it; the two largest others that reach 1 % on the next. */
function noteOf(shares: readonly number[], breakShare: number | null): string[] {
  if (shares.length === 0) return ["no head could reach it"];
  const others = STATE_NAMES.map((name, state) => ({ name, share: shares[state]! }))
    .slice(1)
    .filter((entry) => entry.share >= 0.01)
    .sort((a, b) => b.share - a.share)
    .slice(0, 2);
  const words = ({ name, share }: { name: string; share: number }) => `${name} ${percent(share)}`;
  const onBreak = breakShare !== null && breakShare >= 0.01 ? `; on break ${percent(breakShare)}` : "";
  const working = `${words({ name: STATE_NAMES[0], share: shares[0]! })}${onBreak}`;
  return others.length === 0 ? [working] : [working, others.map(words).join(", ")];
}

function percent(share: number): string {
  return `${formatDecimals(share * 100, 0)} %`;
}

/** What a station in each state does, for the finding; time on break is planned and no finding. */
const FINDINGS = [
  "Most often unable to pass heads on",
  "Most often waiting for heads",
  "Most often without people",
  "Most often down",
];

/** Which station was busiest, and where each other state took most; every share of every stage stands beside its row and in the table. */
function describe(stages: readonly StageRecord[]): string {
  const stations = stages.filter((stage) => stage.kind === "station" && ownSharesOf(stage).length > 0);
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
