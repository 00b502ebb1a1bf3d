import { Sampler, type UniformStream } from "../../../maths/random/index.ts";
import type { CompiledLoad } from "../../line/index.ts";

/** One load of live animals while a day runs: what the plan says of it, what was drawn for it, and all that changes. */
export class LoadState {
  readonly index: number;
  readonly name: string;
  /** Crates that it brings, and when by plan, seconds after the day's start. */
  readonly crates: number;
  readonly headsPerCrate: number;
  readonly dueSeconds: number;
  readonly deadOnArrivalShare: number;
  /** Decides which heads are dead on arrival; null where none can be. */
  readonly deadDraw: UniformStream | null;
  readonly liveWeight: Sampler;
  /** Its lorry comes today. */
  readonly comes: boolean;
  /** When its lorry is due with its delay, and once it has come, when it came. */
  arrived: number;
  /** When its last crate was off the lorry, its last head hung, its last crate clean; and when its lorry left. NaN before. */
  unloaded = Number.NaN;
  emptied = Number.NaN;
  washed = Number.NaN;
  left = Number.NaN;
  headsLeft: number;
  cratesAboard: number;
  /** Crates that are not back, washed and ready; and those put onto its lorry again. */
  cratesDirty: number;
  cratesBack = 0;

  /** `stream`: what is left to chance about the load, by purpose. */
  constructor(load: CompiledLoad, index: number, stream: (purpose: string) => UniformStream) {
    this.index = index;
    this.name = load.name;
    this.crates = load.crates;
    this.headsPerCrate = load.headsPerCrate;
    this.dueSeconds = load.seconds;
    this.deadOnArrivalShare = load.deadOnArrivalShare;
    this.deadDraw = load.deadOnArrivalShare > 0 ? stream("dead on arrival") : null;
    this.liveWeight = new Sampler(load.liveWeightKg, stream("live weight"));
    this.comes = load.comesShare === 1 || stream("comes").next() < load.comesShare;
    this.arrived = load.seconds + (load.delay === null ? 0 : new Sampler(load.delay, stream("delay")).draw());
    this.headsLeft = load.crates * load.headsPerCrate;
    this.cratesAboard = load.crates;
    this.cratesDirty = load.crates;
  }
}

/** The loads that come today, in the order in which they are due. */
export function dueLoads(loads: readonly LoadState[]): LoadState[] {
  return loads.filter(({ comes }) => comes).sort((a, b) => a.arrived - b.arrived || a.index - b.index);
}
