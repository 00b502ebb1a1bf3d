import { CHAIN, CHAIN_STATION, DWELL } from "../line/index.ts";
import { headAt } from "./chainRing.ts";
import type { ChainState } from "./chainState.ts";
import { type DayState, NONE } from "./dayState.ts";
import type { Fifo } from "./fifo.ts";
import type { StageState } from "./stageState.ts";

/** `stage` is where the item is, or the stage it left when it travels. */
export type Visitor = (item: number, stage: StageState, travelling: boolean) => void;

/**
 * Visits every head and crate at the stages, each once: waiting, in work, dwelling, riding, and on the way out. Crates at
 * the hanging point stand at no stage and are left out.
 */
export function visitPresent(day: DayState, visit: Visitor): void {
  for (const stage of day.stageAt) {
    visitList(day, stage.travelling, (item) => visit(item, stage, true));
    // A head at a station on a chain hangs on the chain and is met there.
    if (stage.kind === CHAIN_STATION) continue;
    const here = (item: number) => visit(item, stage, false);
    if (stage.kind === CHAIN) visitRing(stage.chain!, here);
    else {
      visitList(day, stage.queue, here);
      if (stage.kind !== DWELL) visitPositions(day, stage, here);
    }
  }
}

/** The items of a list, from its first one. */
export function visitList(day: DayState, { first, length }: Fifo, visit: (item: number) => void): void {
  let item = first;
  for (let rank = 0; rank < length; rank++) {
    visit(item);
    item = day.pool.next[item]!;
  }
}

function visitRing(chain: ChainState, visit: (item: number) => void): void {
  for (let place = 0; place < chain.places; place++) {
    const item = headAt(chain, place);
    if (item !== NONE) visit(item);
  }
}

function visitPositions(day: DayState, stage: StageState, visit: (item: number) => void): void {
  for (const { item, held } of stage.positions) {
    if (item !== NONE) visit(item);
    visitList(day, held, visit);
  }
}
