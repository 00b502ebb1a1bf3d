import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import { headAt } from "./chainRing.ts";
import type { ChainState } from "./state/chainState.ts";
import type { DayState } from "./state/dayState.ts";
import type { Fifo } from "./state/fifo.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** `stage` is where the item is, or the stage it left when it travels. */
export type Visitor = (item: Item, stage: StageState, travelling: boolean) => void;

/**
 * Visits every head and crate at the stages, each once: waiting, in work, dwelling, riding, and on the way out. Crates at
 * the hanging point stand at no stage and are left out.
 */
export function visitPresent(day: DayState, visit: Visitor): void {
  for (const stage of day.stageAt) {
    visitList(stage.travelling, (item) => visit(item, stage, true));
    const here = (item: Item) => visit(item, stage, false);
    if (waitsInQueue(stage)) visitList(stage.queue, here);
    visitOthers(stage, here);
  }
}

/** A head at a station on a chain hangs on the chain and is met there. */
export function waitsInQueue({ kind }: StageState): boolean {
  return kind !== CHAIN_STATION && kind !== CHAIN;
}

/** The same at one stage, without those that wait or dwell in its queue. */
export function visitMoving(stage: StageState, visit: (item: Item, travelling: boolean) => void): void {
  visitList(stage.travelling, (item) => visit(item, true));
  visitOthers(stage, (item) => visit(item, false));
}

function visitOthers({ kind, chain, positions }: StageState, here: (item: Item) => void): void {
  if (kind === CHAIN) visitRing(chain!, here);
  else if (kind !== CHAIN_STATION && kind !== DWELL) visitPositions(positions, here);
}

/** The items of a list, from its first one. */
export function visitList({ first, length }: Fifo, visit: (item: Item) => void): void {
  let item = first;
  for (let rank = 0; rank < length && item !== null; rank++) {
    visit(item);
    item = item.next;
  }
}

function visitRing(chain: ChainState, visit: (item: Item) => void): void {
  for (let place = 0; place < chain.places; place++) {
    const item = headAt(chain, place);
    if (item !== null) visit(item);
  }
}

function visitPositions(positions: StageState["positions"], visit: (item: Item) => void): void {
  for (const { item, held } of positions) {
    if (item !== null) visit(item);
    visitList(held, visit);
  }
}
