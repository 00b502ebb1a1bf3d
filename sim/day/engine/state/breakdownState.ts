import { Sampler, type UniformStream } from "../../../maths/random/index.ts";
import { CHAIN, type CompiledLine } from "../../line/index.ts";
import type { ChainState } from "./chainState.ts";
import type { PositionState } from "./positionState.ts";
import { rowsOf } from "./rowsOf.ts";
import type { StageState } from "./stageState.ts";

/** Where a breakdown finds what it stops. */
interface Plant {
  stageAt: readonly StageState[];
  positionAt: readonly PositionState[];
}

/**
 * One thing that breaks by itself while a day runs: a position, a whole station, or what several stages share. What
 * `BreakdownColumns` says of it, and all that changes.
 */
export class BreakdownState {
  readonly index: number;
  readonly name: string;
  /** Its own slot; -1 where it stops one position on its working time: then it uses the position's. */
  readonly slot: number;
  readonly isShared: boolean;
  /** Its uptime runs with the working of what it stops, once so many of its stages work; else always. */
  readonly onRunningTime: boolean;
  readonly runningLeast: number;
  /** Crew that repairs, or -1. */
  readonly crew: number;
  /** Stage that takes the head in hand, or -1 when its work is resumed. */
  readonly headTo: number;
  /** The stages that it stops, wholly or one position of them. */
  readonly stages: readonly StageState[];
  readonly positions: readonly PositionState[];
  /** The chains that it stops by themselves, not for a station on them; they have no positions. */
  readonly chains: readonly ChainState[];
  readonly uptime: Sampler;
  readonly repair: Sampler;
  /** It is replaced after so much uptime (Infinity: never), which takes so long. */
  readonly replacedAfter: number = Number.NaN;
  readonly replacementSeconds: number = Number.NaN;

  isDown = false;
  /** What comes next, or is under way, is its replacement, not a breakdown; and how many there were. */
  isReplacement = false;
  replacements = 0;
  /** Of the stages whose working its uptime counts: those that work now. */
  runningStages = 0;
  // Seconds begin as NaN: see DayState.
  /** Uptime left until it breaks, as it was at `runStart` while the clock runs. */
  uptimeLeft = Number.NaN;
  runStart = Number.NaN;
  /** Those with a slot of their own: times that it broke, since when it is down, and seconds that it was down before. */
  count = 0;
  downSince = Number.NaN;
  downSeconds = Number.NaN;

  /** `stream`: its uptimes and repairs, by purpose. */
  constructor({ breakdowns }: CompiledLine, index: number, plant: Plant, stream: (purpose: string) => UniformStream) {
    this.index = index;
    this.name = breakdowns.names[index]!;
    this.slot = breakdowns.slot[index]!;
    this.isShared = index >= breakdowns.sharedFrom;
    this.onRunningTime = breakdowns.onRunningTime[index] === 1;
    this.runningLeast = breakdowns.runningLeast[index]!;
    this.crew = breakdowns.crew[index]!;
    this.headTo = breakdowns.headTo[index]!;
    if (this.isShared) {
      const row = index - breakdowns.sharedFrom;
      this.stages = Array.from(rowsOf(breakdowns.stopped, breakdowns.stoppedFrom, row), (at) => plant.stageAt[at]!);
      this.positions = this.stages.flatMap((stage) => (stage.kind === CHAIN ? [] : stage.positions));
      this.chains = this.stages.flatMap(({ kind, chain }) => (kind === CHAIN ? [chain!] : []));
    } else {
      this.stages = [plant.stageAt[breakdowns.stage[index]!]!];
      this.positions = plant.positionAt.slice(breakdowns.positionFrom[index]!, breakdowns.positionTo[index]!);
      this.chains = [];
    }
    this.uptime = new Sampler(breakdowns.uptime[index]!, stream("uptime"));
    this.repair = new Sampler(breakdowns.repair[index]!, stream("repair"));
    this.replacedAfter = breakdowns.replacedAfter[index]!;
    this.replacementSeconds = breakdowns.replacementSeconds[index]!;
    this.renew();
    this.runStart = 0;
    this.downSince = 0;
    this.downSeconds = 0;
  }

  /** As new: its next uptime is drawn, and cut short where it is replaced before. */
  renew(): void {
    const drawn = this.uptime.draw();
    this.isReplacement = drawn > this.replacedAfter;
    this.uptimeLeft = this.isReplacement ? this.replacedAfter : drawn;
  }

  /** How long it is down now. A repair is drawn in any case, to keep later ones in step. */
  downTime(): number {
    const repair = this.repair.draw();
    if (!this.isReplacement) return repair;
    this.replacements++;
    return this.replacementSeconds;
  }
}
