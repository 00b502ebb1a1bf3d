import { FLEET_BACK, NO_LIMIT } from "../line/index.ts";
import { checkFinished } from "./leaveLine.ts";
import { addReturn } from "./returns.ts";
import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";

/** A crate leaves a crate stage; with the last one off the lorry its load is unloaded, and the lorry waits for empty ones. */
export function noteUnloaded(day: DayState, stage: StageState, crate: Item): void {
  const { supply } = day.line;
  if (supply.kind !== "loads" || stage.index !== supply.unloading) return;
  const load = day.loadAt[crate.load]!;
  if (--load.cratesAboard > 0) return;
  load.unloaded = day.now;
  if (supply.firstBack < 0) load.left = day.now;
  else loadLorries(day);
}

/** A clean crate is ready: it goes onto the lorry that has waited longest, or stands by. */
export function cratesBack(day: DayState, crate: Item): void {
  const load = day.loadAt[crate.load]!;
  if (--load.cratesDirty === 0) load.washed = day.now;
  day.pool.give(crate);
  day.emptyCrates--;
  day.cleanCrates++;
  loadLorries(day);
  checkFinished(day);
}

/** Lorries leave in the order in which they came, each with as many crates as it brought. */
function loadLorries(day: DayState): void {
  const { supply } = day.line;
  if (supply.kind !== "loads") return;
  while (day.lorries.length > 0 && day.cleanCrates > 0) {
    const load = day.lorries[0]!;
    if (load.cratesAboard > 0) return;
    const { crates } = load;
    const taken = Math.min(day.cleanCrates, crates - load.cratesBack);
    day.cleanCrates -= taken;
    load.cratesBack += taken;
    if (load.cratesBack < crates) return;
    day.lorries.shift();
    load.left = day.now;
    if (supply.fleet !== NO_LIMIT) {
      const seconds = day.now + supply.awaySeconds;
      const owed = { bound: day.path?.snapshot(), boundSince: day.now };
      addReturn(day, { seconds, action: FLEET_BACK, target: 0, amount: crates, ...owed });
    }
  }
}
