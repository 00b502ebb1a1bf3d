import type { Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { Ceiling } from "./ceiling.ts";
import { ceilings } from "./ceilings.ts";
import { decompose, type SerialStation } from "./decompose.ts";
import { lastDwells } from "./lastHold.ts";
import { type RowStation, serialLine } from "./serialLine.ts";

/** Least coefficients of variation that the line is taken with, the last one as costly as is worth it. */
const FLOORS = [0.55, 0.45, 0.35] as const;

const [, , FLOOR] = FLOORS;

const STEP = 0.1;

/** Gains that grow faster than this from floor to floor are not carried on. */
const MAX_GROWTH = 1.15;

/**
 * "fine": as exact as the method is. "coarse": for telling arrangements of one line apart, in about a tenth of the time; the line is solved
 * once, with more varied times, and not to the last digit.
 */
export type EstimatePrecision = "fine" | "coarse";

/** Least coefficient of variation of a coarse estimate, and the change of a throughput in a round below which it is enough. */
const COARSE = { floor: 0.7, settled: 1e-3 } as const;

export interface LineEstimate {
  /** Heads hung per second by a line that is never short of heads, breaks left out; crate handling left out. */
  headsPerSecond: number;
  /** The same while no dwell behind the last station (the chiller) is full. */
  fillingHeadsPerSecond: number;
  /** What each part could do by itself, the lowest first; crate handling included. */
  ceilings: Ceiling[];
}

/** More places than this keep two stretches of a line apart. */
const APART = 80;

/**
 * What the line of a plan can do, without simulating it: the lowest of its ceilings, or what its stations let each other
 * do (see `serialThroughput`), whichever is less. The error, measured, stands in this room's README.
 */
export function estimateLine(plan: Plan, precision: EstimatePrecision = "fine"): LineEstimate {
  const bounds = ceilings(plan);
  const most = lowest(bounds, []);
  const behind = lastDwells(plan);
  const stretches = cutApart(decoupled(plan, most));
  const found = stretches.map((stations) => serialThroughput(stations, precision));
  const filling = Math.min(lowest(bounds, behind), ...found);
  return { headsPerSecond: Math.min(most, filling), fillingHeadsPerSecond: filling, ceilings: bounds };
}

/** Of all ceilings but those of crate handling and of these dwells. */
function lowest(bounds: readonly Ceiling[], dwells: readonly string[]): number {
  const counted = bounds.find(({ kind, what }) => kind !== "crates" && !(kind === "places" && dwells.includes(what)));
  return counted?.headsPerSecond ?? Number.POSITIVE_INFINITY;
}

/**
 * Places that can make up for a difference between two neighbours: those that heads on the way do not need at this rate.
 * Where a station has too few for those that travel to it, they hold its positions for part of the way.
 */
function decoupled(plan: Plan, headsPerSecond: number): RowStation[] {
  return serialLine(plan).map((station) => {
    const dwelling = station.dwells.map(({ places, seconds }) => Math.max(0, places - headsPerSecond * seconds));
    const own = station.places - headsPerSecond * station.travelSeconds;
    const places = dwelling.reduce((sum, each) => sum + each, Math.max(0, own));
    const held = Math.max(0, -own) / headsPerSecond / station.positions;
    const work = { ...station.work, seconds: station.work.seconds + held };
    return { ...station, work, places: Math.min(places, gatedPlaces(station.name, plan)) };
  });
}

function cutApart(stations: readonly RowStation[]): RowStation[][] {
  const stretches: RowStation[][] = [];
  for (const station of stations) {
    if (stretches.length === 0 || station.places > APART) stretches.push([]);
    stretches.at(-1)!.push(station);
  }
  return stretches;
}

/** Most heads that a gate lets stand between a station and the one before it, finished heads without a place not counted. */
function gatedPlaces(name: string, { line, gates }: Plan): number {
  const main = line.filter(({ offLine }) => !offLine);
  const before = main[main.findIndex((stage) => stage.name === name) - 1];
  if (before === undefined) return Number.POSITIVE_INFINITY;
  const spanning = gates.filter(({ from, to }) => from === before.name && to.stage === name && to.moment === "start");
  const positions = does(before, "work") ? before.positions : 0;
  return Math.min(...spanning.map(({ atMost }) => Math.max(0, atMost - positions)));
}

/**
 * Heads per second of a serial line (see `decompose`). Times that vary less than a few phases can are taken with three
 * least variations, and what each step down gains is carried on to their own variation as a geometric series (the idea of Aitken 1926).
 */
export function serialThroughput(stations: readonly SerialStation[], precision: EstimatePrecision = "fine"): number {
  if (precision === "coarse") return decompose(stations, COARSE.floor ** 2, COARSE.settled).throughput;
  const steadier = stations.map(({ work }) => Math.sqrt(work.squaredCv)).filter((cv) => cv < FLOOR);
  if (steadier.length === 0 || stations.length < 2) return decompose(stations, FLOOR ** 2).throughput;
  const [first, second, last] = FLOORS.map((cv) => decompose(stations, cv ** 2).throughput) as [number, number, number];
  const steps = (FLOOR - mean(steadier)) / STEP;
  return last + furtherGain(second - first, last - second, steps);
}

/** What `steps` more steps gain when each gains as much more or less than the one before as the last two did. */
function furtherGain(before: number, now: number, steps: number): number {
  if (now <= 0) return 0;
  const growth = before <= 0 ? MAX_GROWTH : Math.min(MAX_GROWTH, now / before);
  const series = Math.abs(growth - 1) < 1e-9 ? steps : (growth * (1 - growth ** steps)) / (1 - growth);
  return now * series;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
