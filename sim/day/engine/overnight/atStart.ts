import { uniformStream } from "../../../maths/random/index.ts";
import { type CompiledLoad, NO_LIMIT, type StartedCarcasses } from "../../line/index.ts";
import { noteQueue, noteSection } from "../accounting.ts";
import { dwellOf } from "../flow.ts";
import type { DayState } from "../state/dayState.ts";
import { LoadState } from "../state/loadState.ts";
import type { StageState } from "../state/stageState.ts";
import { ENTRY, passPointAt, START } from "../watchLimits.ts";
import { keepCrate } from "./carryOver.ts";
import { turn } from "./keptHeads.ts";

/**
 * What the plan says is there when the day begins, as if a day before had left it: crates in lairage, whose animals have
 * waited since they came, and carcasses in chillers, who has hung longest first. What was before a carcass hung is not known:
 * limits that begin earlier do not see it, and its time in system counts from there.
 */
export function beginWith(day: DayState): void {
  const { atStart } = day.line;
  if (atStart === null) return;
  for (const entry of atStart.crates) placeCrates(day, entry);
  for (const entry of atStart.carcasses) hangCarcasses(day, entry);
}

function placeCrates(day: DayState, compiled: CompiledLoad): void {
  const { supply } = day.line;
  if (supply.kind !== "loads") return;
  const load = loadOf(day, compiled);
  load.cratesAboard = 0;
  day.toHang += load.headsLeft;
  if (supply.fleet !== NO_LIMIT) day.fleetFree -= load.crates;
  if (supply.firstBack >= 0) day.lorries.push(load);
  else load.left = load.arrived;
  const lairage = day.stageAt[supply.feeding]!;
  for (let crate = 0; crate < load.crates; crate++) keepCrate(day, lairage, load.index, load.headsPerCrate);
}

function hangCarcasses(day: DayState, { load: compiled, stage, heads, leftShare }: StartedCarcasses): void {
  const load = loadOf(day, compiled);
  const here = day.stageAt[stage]!;
  load.headsLeft = 0;
  load.emptied = load.arrived;
  load.left = load.arrived;
  load.hung = heads;
  for (let head = 0; head < heads; head++) hangOne(day, here, load, leftShare);
  noteQueue(day, here, here.queue.length);
}

function hangOne(day: DayState, here: StageState, load: LoadState, leftShare: number): void {
  const item = day.pool.take();
  const since = load.arrived;
  item.load = load.index;
  item.number = day.keptHeads++;
  item.weight = load.liveWeight.draw();
  item.mass = item.weight * leftShare;
  item.arrived = since;
  item.entered = since;
  // Its heat is of the day on which it was hung.
  const { heatJoules } = here;
  item.ready = since + dwellOf(here, item);
  here.heatJoules = heatJoules;
  load.liveKg += item.weight;
  day.keptKg += item.mass;
  day.headsOnLine++;
  here.occupancy++;
  here.headsEntered++;
  here.queue.push(item);
  noteSection(day, here.section, 1);
  day.recorders?.heads?.begin(item.number, item.load, Number.NaN);
  passPointAt(day, item, here, { moment: ENTRY, time: since });
  passPointAt(day, item, here, { moment: START, time: since });
  turn(day, here, item);
}

/** Behind the day's own loads. */
function loadOf(day: DayState, compiled: CompiledLoad): LoadState {
  const { seed, replication, antithetic = false } = day.options;
  const index = day.loadAt.length;
  const owner = JSON.stringify(["at the start", index]);
  const place = { index, destinations: day.line.destinationNames.length };
  const load = new LoadState(compiled, place, (purpose) =>
    uniformStream(seed, replication, owner, purpose, antithetic),
  );
  load.cameAtAll = true;
  load.unloaded = load.arrived;
  day.loadAt.push(load);
  return load;
}
