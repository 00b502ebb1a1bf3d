import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import { headAt } from "./chainRing.ts";
import { type DayState, NONE } from "./dayState.ts";

/** `stage` is where the item is, or the stage it left when it travels. */
export type Visitor = (item: number, stage: number, travelling: boolean) => void;

/**
 * Visits every head and crate at the stages, each once: waiting, in work, dwelling, riding, and on the way out. Crates at
 * the hanging point stand at no stage and are left out.
 */
export function visitPresent(day: DayState, visit: Visitor): void {
  const { stages } = day.line;
  for (let stage = 0; stage < stages.count; stage++) {
    visitList(day, day.travelling.first[stage]!, day.travelling.length[stage]!, (item) => visit(item, stage, true));
    // A head at a station on a chain hangs on the chain and is met there.
    if (stages.kind[stage] === CHAIN_STATION) continue;
    const here = (item: number) => visit(item, stage, false);
    if (stages.kind[stage] === CHAIN) visitRing(day, stages.chain[stage]!, here);
    else {
      visitList(day, day.queue.first[stage]!, day.queue.length[stage]!, here);
      if (stages.kind[stage] !== DWELL) visitPositions(day, stage, here);
    }
  }
}

/** The items of a list, from its first one. */
export function visitList(day: DayState, first: number, length: number, visit: (item: number) => void): void {
  let item = first;
  for (let rank = 0; rank < length; rank++) {
    visit(item);
    item = day.pool.next[item]!;
  }
}

function visitRing(day: DayState, chain: number, visit: (item: number) => void): void {
  for (let place = 0; place < day.chains.places[chain]!; place++) {
    const item = headAt(day, chain, place);
    if (item !== NONE) visit(item);
  }
}

function visitPositions(day: DayState, stage: number, visit: (item: number) => void): void {
  const { positionFrom } = day.stages;
  for (let position = positionFrom[stage]!; position < positionFrom[stage + 1]!; position++) {
    if (day.item[position] !== NONE) visit(day.item[position]!);
    visitList(day, day.held.first[position]!, day.held.length[position]!, visit);
  }
}
