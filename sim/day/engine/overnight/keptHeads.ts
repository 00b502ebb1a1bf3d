import { noteQueue, noteSection } from "../accounting.ts";
import { endHold } from "../flow.ts";
import { vesselIsFull } from "../gates.ts";
import { visitList } from "../present.ts";
import { takeProducts } from "../products.ts";
import { type DayState, NONE } from "../state/dayState.ts";
import { HELD, type Item, UNDRAINED } from "../state/item.ts";
import type { StageState } from "../state/stageState.ts";
import { END, passPointAt } from "../watchLimits.ts";

/** The place of the item's load among the new day's, or -1. */
export type LoadOf = (item: Item) => number;

/** From one day to the next: seconds between their starts. */
interface Passing {
  later: number;
  loadOf: LoadOf;
}

/**
 * Carcasses in a stage that was closed stay in it in their order. The time of some was up in the night: limits see that
 * moment, on the new day's account, and what drips off them runs off in the morning.
 */
export function keepDwelling(day: DayState, stage: StageState, here: StageState, night: Passing): void {
  const { queue, headsPerHook, headsEntered, headsLeft } = stage;
  if (queue.length === 0) return;
  // A hook that is half empty stays so.
  const offWhole = headsLeft - (headsLeft % headsPerHook);
  here.headsLeft = headsLeft - offWhole;
  here.headsEntered = headsEntered - offWhole;
  visitList(queue, (item) => {
    const kept = keepHead(day, item, night);
    here.occupancy++;
    here.queue.push(kept);
    noteSection(day, here.section, 1);
    if ((kept.flags & HELD) !== 0) here.heldHeads++;
    if (item.doneAt !== stage.index) turn(day, here, kept);
  });
  noteQueue(day, here, here.queue.length);
}

/** Its time was up in the night, or will be today. */
export function turn(day: DayState, here: StageState, kept: Item): void {
  kept.doneAt = NONE;
  if (kept.ready > 0) {
    here.ends.push(kept);
    return;
  }
  kept.doneAt = here.index;
  if ((kept.flags & HELD) !== 0) endHold(here, kept);
  passPointAt(day, kept, here, { moment: END, time: kept.ready });
  here.processed++;
  if (vesselIsFull(here)) kept.flags |= UNDRAINED;
  else takeProducts(day, here, kept);
}

/** Heads of a stream that were not hung any more stand where they stood. */
export function keepWaiting(day: DayState, stage: StageState, here: StageState, night: Passing): void {
  if (stage.queue.length === 0) return;
  day.keptOutside += stage.queue.length;
  visitList(stage.queue, (item) => {
    here.occupancy++;
    here.headsEntered++;
    here.queue.push(keepHead(day, item, night));
    noteSection(day, here.section, 1);
  });
  noteQueue(day, here, here.queue.length);
}

/** A head as it was, its times on the new day's clock. */
function keepHead(day: DayState, item: Item, { later, loadOf }: Passing): Item {
  const kept = day.pool.take();
  kept.load = loadOf(item);
  kept.number = day.keptHeads++;
  kept.destination = item.destination;
  kept.flags = item.flags;
  kept.doneAt = item.doneAt;
  kept.weight = item.weight;
  kept.mass = item.mass;
  kept.arrived = item.arrived - later;
  kept.entered = item.entered - later;
  kept.ready = item.ready - later;
  day.keptKg += item.mass;
  day.headsOnLine++;
  keepStamps(day, item, kept, later);
  keepGates(day, item, kept);
  day.recorders?.heads?.begin(kept.number, kept.load, kept.arrived);
  return kept;
}

/** Moments go over to the new clock, times between two moments stay. */
function keepStamps({ limits, points }: DayState, item: Item, kept: Item, later: number): void {
  const moments = limits.count + points.spans;
  for (let row = 0; row < item.stamps.length; row++) kept.stamps[row] = item.stamps[row]! - (row < moments ? later : 0);
}

function keepGates(day: DayState, item: Item, kept: Item): void {
  kept.inside = item.inside;
  for (const [gate, inside] of day.headsInGate.entries()) {
    if ((item.inside & (1 << gate)) !== 0) inside.set(inside.heads + 1, day.now);
  }
}
