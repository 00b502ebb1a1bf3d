import type { CompiledLine } from "../../line/index.ts";
import { MOVES, STANDS } from "./codes.ts";
import type { Item } from "./item.ts";
import type { PositionState } from "./positionState.ts";
import type { StageState } from "./stageState.ts";

/** One chain while a day runs: what `ChainColumns` says of it, and all that changes. */
export class ChainState {
  readonly index: number;
  /** The chain as a stage, with its way out, and the stations on it in their order. */
  readonly stage: StageState;
  readonly wayOut: PositionState;
  readonly stations: readonly StageState[];
  /** The station whose window reaches to the unloading point, or null. */
  readonly lastStation: StageState | null;
  readonly places: number;
  readonly slot: number;
  // Seconds begin as NaN: see DayState.
  /** At the pace that holds now, and as written. */
  secondsPerShackle = Number.NaN;
  readonly usualSeconds: number = Number.NaN;
  readonly backSeconds: number = Number.NaN;
  readonly unfinishedTo: number;
  /** What hangs on each shackle; place 0 is at `shift` less than nothing: see chainRing.ts. */
  readonly shackles: (Item | null)[];
  shift = 0;
  /** Its step is due: it moves as soon as nothing holds it. */
  isDue = false;
  /** Looks again, when the event is over, whether it can move. */
  looksAgain = false;
  /** Time left of the interrupted step, seconds. */
  left = Number.NaN;
  /** Causes to stand that are in force: breakdowns, its own and those at its stations, and planned pauses. */
  downCauses = 0;
  pauses = 0;
  /** Why it stands, or MOVES, since when, and seconds by reason. */
  stand = MOVES;
  standSince = Number.NaN;
  readonly standSeconds = new Float64Array(STANDS);
  passed = 0;
  gaps = 0;
  missing = 0;
  /** Since the last head hung: shackles, and missing ones, that count only if another head follows. NaN before the first. */
  passedSince = Number.NaN;
  missingSince = 0;
  freeShackles: number;
  /** Times at which shackles are back, ascending. */
  readonly shacklesBack: number[] = [];

  /** Makes itself known to its stages. */
  constructor(line: CompiledLine, index: number, stageAt: readonly StageState[]) {
    const { chains } = line;
    const stage = chains.stage[index]!;
    this.index = index;
    this.stage = stageAt[stage]!;
    this.wayOut = this.stage.positions[0]!;
    this.stations = stageAt.slice(stage + 1, stage + 1 + chains.stationCount[index]!);
    this.places = chains.places[index]!;
    const last = this.stations.at(-1);
    this.lastStation = last !== undefined && last.windowTo === this.places ? last : null;
    this.slot = chains.slot[index]!;
    this.usualSeconds = chains.secondsPerShackle[index]!;
    this.secondsPerShackle = chains.secondsPerShackle[index]!;
    this.backSeconds = chains.backSeconds[index]!;
    this.unfinishedTo = chains.unfinishedTo[index]!;
    this.shackles = new Array(this.places).fill(null);
    this.freeShackles = chains.shackles[index]!;
    this.left = 0;
    this.standSince = 0;
    this.stage.chain = this;
    for (const station of this.stations) station.chain = this;
  }
}
