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
    // A head at a station on a chain hangs on the chain and is met there.
    if (stage.kind === CHAIN_STATION) continue;
    const here = (item: Item) => visit(item, stage, false);
    if (stage.kind === CHAIN) visitRing(stage.chain!, here);
    else {
      visitList(stage.queue, here);
      if (stage.kind !== DWELL) visitPositions(stage, here);
    }
  }
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

function visitPositions(stage: StageState, visit: (item: Item) => void): void {
  for (const { item, held } of stage.positions) {
    if (item !== null) visit(item);
    visitList(held, visit);
  }
}
