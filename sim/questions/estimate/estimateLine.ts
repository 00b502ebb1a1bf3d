import type { Plan } from "../../asked/plan/index.ts";
import type { Ceiling } from "./ceiling.ts";
import { ceilings } from "./ceilings.ts";
import { gatedPlaces } from "./gatedPlaces.ts";
import { lastDwells } from "./lastHold.ts";
import { type RowStation, serialLine } from "./serialLine.ts";
import { serialThroughput } from "./serialThroughput.ts";

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
export function estimateLine(plan: Plan): LineEstimate {
  const bounds = ceilings(plan);
  const most = lowest(bounds, []);
  const behind = lastDwells(plan);
  const stretches = cutApart(decoupled(plan, most));
  const found = stretches.map((stations) => serialThroughput(stations));
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
