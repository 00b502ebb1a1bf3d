import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import { headAt } from "./chainRing.ts";
import { type DayState, NONE } from "./dayState.ts";

/** Every head or crate at a stage: waiting, in work, dwelling, riding, and on the way out of it. Cost: what is there. */
export function itemsAt(day: DayState, stage: number): number[] {
  const { stages } = day.line;
  const leaving = listed(day, day.travelling.first[stage]!, day.travelling.length[stage]!);
  // A head at a station on a chain hangs on the chain and is counted there.
  if (stages.kind[stage] === CHAIN_STATION) return leaving;
  if (stages.kind[stage] === CHAIN) return [...ridingOn(day, stages.chain[stage]!), ...leaving];
  return [...listed(day, day.queue.first[stage]!, day.queue.length[stage]!), ...inWorkAt(day, stage), ...leaving];
}

/** In the hands of the stage's positions. */
export function inWorkAt(day: DayState, stage: number): number[] {
  const { stages } = day.line;
  if (stages.kind[stage] === DWELL || stages.kind[stage] === CHAIN) return [];
  const items: number[] = [];
  for (let position = stages.positionFrom[stage]!; position < stages.positionFrom[stage + 1]!; position++) {
    if (day.item[position] !== NONE) items.push(day.item[position]!);
    items.push(...listed(day, day.held.first[position]!, day.held.length[position]!));
  }
  return items;
}

export function ridingOn(day: DayState, chain: number): number[] {
  const places = Array.from({ length: day.line.chains.places[chain]! }, (_, place) => headAt(day, chain, place));
  return places.filter((item) => item !== NONE);
}

/** The items of a list, from its first one. */
export function listed(day: DayState, first: number, length: number): number[] {
  const items: number[] = [];
  for (let item = first; items.length < length; item = day.pool.next[item]!) items.push(item);
  return items;
}
