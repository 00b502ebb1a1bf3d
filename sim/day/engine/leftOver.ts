import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import type { LeftRecord } from "./dayRecord.ts";
import { isHeld, vesselIsFull } from "./gates.ts";
import { notHung } from "./leaveLine.ts";
import { crewFor } from "./people.ts";
import { peopleHere } from "./state/crewState.ts";
import { BLOCKED, type DayState, DOWN, WORKING } from "./state/dayState.ts";
import { nextOut, type StageState } from "./state/stageState.ts";

/**
 * What is left where, and what it waits for, on a day that did not end by itself; in line order. Stages whose heads only
 * wait for the next stage come out as "the next stage": what holds them is told at a stage further down.
 */
export function leftOver(day: DayState): LeftRecord[] {
  return day.stageAt.flatMap((stage) => {
    const count = countOf(day, stage);
    return count === 0 ? [] : [{ stage: day.stages.names[stage.index]!, count, ...reasonOf(day, stage) }];
  });
}

/** Heads that nobody has hung wait at the hanging stage, in whatever they came. */
function countOf(day: DayState, stage: StageState): number {
  if (!stage.isHanging || day.line.supply.kind !== "loads") return stage.occupancy;
  return stage.occupancy + (day.hangingClosed ? 0 : headsBefore(day));
}

/** Live heads in the crates that stand at the hanging point. */
function headsBefore({ hanging }: DayState): number {
  return hanging.shown.heads - hanging.queue.length;
}

type Reason = Pick<LeftRecord, "reason" | "of">;

function reasonOf(day: DayState, stage: StageState): Reason {
  if (stage.isHanging && day.hangingClosed && stage.occupancy === notHung(day))
    return { reason: "hanging is over", of: [] };
  if (stage.isClosed) return { reason: "tomorrow", of: [] };
  if (vesselIsFull(stage)) return { reason: "a full vessel", of: vesselNames(stage) };
  if (stage.kind === DWELL || stage.kind === CHAIN) return dwelling(day, stage);
  const some = (state: number) => stage.positions.some((position) => position.state === state);
  if (some(WORKING)) return { reason: "time", of: [] };
  const lack = lackOfHands(day, stage);
  if (lack !== null && stage.positions.some(({ item, downCauses }) => item === null && downCauses === 0)) return lack;
  if (some(DOWN)) return { reason: "a repair", of: repairers(day, stage) };
  if (some(BLOCKED)) return nextFull(stage);
  if (stage.pauses > 0) return { reason: "a pause", of: [] };
  if (stage.isHeldForStunned && day.stunned!.isClosed) return { reason: "the hold before stunning", of: [] };
  if (isHeld(day, stage)) return { reason: "a gate", of: [] };
  return lack ?? nextFull(stage);
}

/** A head that has not dwelt or ridden to its end waits for that, another one for a place. */
function dwelling(day: DayState, stage: StageState): Reason {
  const isReady =
    stage.kind === DWELL ? (nextOut(stage)?.ready ?? Infinity) <= day.now : stage.positions[0]!.item !== null;
  if (isReady) return nextFull(stage);
  const waitsForStations = stage.kind === CHAIN && stage.chain!.stations.some((station) => station.queue.length > 0);
  return waitsForStations ? { reason: "the next stage", of: [] } : { reason: "time", of: [] };
}

function nextFull(stage: StageState): Reason {
  return { reason: stage.kind === CHAIN_STATION ? "time" : "the next stage", of: [] };
}

/** Null where the people would be there. */
function lackOfHands(day: DayState, stage: StageState): Reason | null {
  if (stage.people === 0 || crewFor(stage) !== null) return null;
  const of = stage.crews.map(({ index }) => day.line.crews.names[index]!);
  return { reason: stage.crews.some((crew) => peopleHere(crew) > 0) ? "more people" : "people", of };
}

function vesselNames({ vessels }: StageState): string[] {
  return vessels.filter(({ isFull }) => isFull).map(({ name }) => name);
}

/** Crews that would have to repair what stands there. */
function repairers(day: DayState, stage: StageState): string[] {
  const crews = day.breakdownAt.flatMap(({ crew, stages }) => (crew >= 0 && stages.includes(stage) ? [crew] : []));
  return [...new Set(crews.map((crew) => day.line.crews.names[crew]!))];
}
