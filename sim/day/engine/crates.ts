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
  const load = crate.load;
  if (--day.loadCratesAboard[load]! > 0) return;
  day.loadUnloaded[load] = day.now;
  if (supply.firstBack < 0) day.loadLeft[load] = day.now;
  else loadLorries(day);
}

/** A clean crate is ready: it goes onto the lorry that has waited longest, or stands by. */
export function cratesBack(day: DayState, crate: Item): void {
  const load = crate.load;
  if (--day.loadCratesDirty[load]! === 0) day.loadWashed[load] = day.now;
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
    if (day.loadCratesAboard[load]! > 0) return;
    const { crates } = supply.loads[load]!;
    const taken = Math.min(day.cleanCrates, crates - day.loadCratesBack[load]!);
    day.cleanCrates -= taken;
    day.loadCratesBack[load]! += taken;
    if (day.loadCratesBack[load]! < crates) return;
    day.lorries.shift();
    day.loadLeft[load] = day.now;
    if (supply.fleet !== NO_LIMIT) {
      addReturn(day, {
        ...{ seconds: day.now + supply.awaySeconds, action: FLEET_BACK, target: 0, amount: crates },
        ...{ bound: day.path?.snapshot(), boundSince: day.now },
      });
    }
  }
}
