import type { CompiledLine } from "../../line/index.ts";
import { rowsOf } from "./rowsOf.ts";
import type { StageState } from "./stageState.ts";

/** One vessel while a day runs: what `VesselColumns` says of it, and all that changes. */
export class VesselState {
  readonly index: number;
  readonly name: string;
  readonly slot: number;
  /** Crew that empties it, or -1. */
  readonly crew: number;
  /** Stands still what feeds it when full; else it spills. */
  readonly stopsFeeders: boolean;
  readonly feeders: readonly StageState[];
  // Kilograms and seconds begin as NaN: see DayState.
  readonly capacityKg: number = Number.NaN;
  /** Somebody is called to empty it at this mark. */
  readonly emptyAtKg: number = Number.NaN;
  readonly emptyingSeconds: number = Number.NaN;
  /** What is in it, and the most so far. */
  kg = Number.NaN;
  mostKg = Number.NaN;
  spilledKg = Number.NaN;
  /** Somebody is called or at it; what was in it when the emptying began. */
  isToBeEmptied = false;
  takenKg = Number.NaN;
  /** Times that it was emptied. */
  emptied = 0;
  /** Since when it is full, NaN while it is not; and seconds that it was full before. */
  fullSince = Number.NaN;
  fullSeconds = Number.NaN;

  constructor({ vessels }: CompiledLine, index: number, stageAt: readonly StageState[]) {
    this.index = index;
    this.name = vessels.names[index]!;
    this.slot = vessels.slot[index]!;
    this.crew = vessels.crew[index]!;
    this.stopsFeeders = vessels.stopsFeeders[index] === 1;
    this.feeders = Array.from(rowsOf(vessels.feeder, vessels.feederFrom, index), (stage) => stageAt[stage]!);
    this.capacityKg = vessels.capacityKg[index]!;
    this.emptyAtKg = vessels.emptyAtKg[index]!;
    this.emptyingSeconds = vessels.emptyingSeconds[index]!;
    this.kg = 0;
    this.mostKg = 0;
    this.spilledKg = 0;
    this.takenKg = 0;
    this.fullSeconds = 0;
  }

  get isFull(): boolean {
    return !Number.isNaN(this.fullSince);
  }
}
