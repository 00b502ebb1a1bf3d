import { Sampler, type UniformStream } from "../../../maths/random/index.ts";
import type { CompiledLoad } from "../../line/index.ts";
import { NONE } from "./codes.ts";

/** Its place among the day's loads, and the number of destinations that heads can leave for. */
interface LoadPlace {
  index: number;
  destinations: number;
}

/** What tells lots apart: the name of a farm or lot, or the load. */
export type Lot = string | object;

/** One load of live animals while a day runs: what the plan says of it, what was drawn for it, and all that changes. */
export class LoadState {
  /** Its place among the day's loads. */
  index: number;
  readonly name: string;
  /** Its lot, or itself where it is one of its own. */
  readonly lot: Lot;
  /** Crates that it brings, and when by plan, seconds after the day's start. */
  readonly crates: number;
  readonly headsPerCrate: number;
  dueSeconds: number;
  readonly deadOnArrivalShare: number;
  /** Decides which heads are dead on arrival; null where none can be. */
  readonly deadDraw: UniformStream | null;
  readonly liveWeight: Sampler;
  /** Its lorry comes today. */
  readonly comes: boolean;
  /** Stage at whose end all its heads are taken off, -1 where that is not so; and where they go. */
  readonly withdrawnAt: number;
  readonly withdrawnTo: number;
  /** Stage in which its carcasses are held, -1 where they are not; and until when, seconds after the day's start. */
  readonly heldIn: number;
  heldUntil: number;
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
  /** Its lorry is or was there. */
  cameAtAll = false;
  /** Its heads so far: hung, with their live weight; the first and the last of them; and when the last one left, and for where. */
  hung = 0;
  liveKg = Number.NaN;
  firstHung = Number.NaN;
  lastHung = Number.NaN;
  lastOut = Number.NaN;
  readonly out: Float64Array;
  readonly outKg: Float64Array;

  /** `stream`: what is left to chance about the load, by purpose. */
  constructor(load: CompiledLoad, place: LoadPlace, stream: (purpose: string) => UniformStream) {
    const { index, destinations } = place;
    this.index = index;
    this.name = load.name;
    this.lot = load.lot ?? this;
    this.crates = load.crates;
    this.headsPerCrate = load.headsPerCrate;
    this.dueSeconds = load.seconds;
    this.deadOnArrivalShare = load.deadOnArrivalShare;
    this.deadDraw = load.deadOnArrivalShare > 0 ? stream("dead on arrival") : null;
    this.liveWeight = new Sampler(load.liveWeightKg, stream("live weight"));
    this.comes = load.comesShare === 1 || stream("comes").next() < load.comesShare;
    const isWithdrawn = load.withdrawnChance > 0 && stream("withdrawn").next() < load.withdrawnChance;
    this.withdrawnAt = isWithdrawn ? load.withdrawnAt : NONE;
    this.withdrawnTo = load.withdrawnTo;
    this.heldIn = load.heldIn;
    this.heldUntil = load.heldUntil;
    this.arrived = load.seconds + (load.delay === null ? 0 : new Sampler(load.delay, stream("delay")).draw());
    this.headsLeft = load.crates * load.headsPerCrate;
    this.cratesAboard = load.crates;
    this.cratesDirty = load.crates;
    this.liveKg = 0;
    this.out = new Float64Array(destinations);
    this.outKg = new Float64Array(destinations);
  }

  /** One of its heads is hung. */
  noteHung(kilograms: number, now: number): void {
    if (this.hung++ === 0) this.firstHung = now;
    this.lastHung = now;
    this.liveKg += kilograms;
  }

  /** One of its heads leaves the line. */
  noteOut(destination: number, kilograms: number, now: number): void {
    this.out[destination]!++;
    this.outKg[destination]! += kilograms;
    this.lastOut = now;
  }

  /** Its times on the clock of a day that begins so many seconds later, and its place among that day's loads. */
  goInto(index: number, later: number): void {
    this.index = index;
    this.dueSeconds -= later;
    this.arrived -= later;
    this.heldUntil -= later;
    this.unloaded -= later;
    this.emptied -= later;
    this.washed -= later;
    this.left -= later;
    this.firstHung -= later;
    this.lastHung -= later;
    this.lastOut -= later;
  }
}

/** The loads that come today, in the order in which they are due. */
export function dueLoads(loads: readonly LoadState[]): LoadState[] {
  return loads.filter(({ comes }) => comes).sort((a, b) => a.arrived - b.arrived || a.index - b.index);
}
