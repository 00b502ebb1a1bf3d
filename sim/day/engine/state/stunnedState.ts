import { meanOf } from "../../../maths/random/index.ts";
import { CHAIN, CHAIN_STATION, type CompiledLine, OUT } from "../../line/index.ts";
import type { ChainState } from "./chainState.ts";
import type { Item } from "./item.ts";
import type { StageState } from "./stageState.ts";

/** A stretch of the way from stunning to sticking: work or a dwell at a stage, or a ride from one shackle to another. */
export type Leg =
  | { kind: "stage"; stage: StageState }
  | {
      kind: "ride";
      chain: ChainState;
      /** Station on it at whose window the ride begins; null: where heads are hung. */
      from: StageState | null;
      /** Station at whose window it ends; null: where heads are taken off. */
      to: StageState | null;
    };

/** A stunned head that is not stuck yet. */
export interface Waiting {
  item: Item;
  dueSeconds: number;
  /** Binding path of the end of its stunning, and when that was. */
  bound: Float64Array | undefined;
  boundSince: number;
}

/** The care for stunned heads while a day runs. */
export class StunnedState {
  readonly from: StageState;
  readonly to: StageState;
  readonly hold: boolean;
  /** What lies between the two, in the order in which heads pass it; the last leg is the work at `to`. */
  readonly way: readonly Leg[];
  /** Where heads go from `to`; null: they ride on, or leave the line. */
  readonly after: StageState | null;
  /** A planned stop waits until a head between the two is through. */
  readonly isOnProtectedStretch: boolean;
  /** By stage: mean of its own time, seconds. */
  readonly meanSeconds: Float64Array;
  /** By stage: mean of the way from it to the next one, seconds. */
  readonly travelSeconds: Float64Array;
  /** By stage: others that send heads to it, besides the one it usually comes after. */
  readonly feeders: readonly (readonly StageState[])[];

  /** Whether `from` may begin one more head is asked when all that happens at the instant is over. */
  looks = false;
  mayBegin = false;
  /** Something that is known would make the next head wait. */
  isClosed = false;

  /** Stunned and not stuck, by when somebody is to be called. */
  readonly waiting: Waiting[] = [];
  /** Heads for which somebody was called, in that order. */
  readonly called: Item[] = [];
  /** The head that somebody is with, and until when. */
  helped: Item | null = null;
  helpEnds = Number.NaN;
  stunnedAgain = 0;
  stuckThere = 0;

  constructor(line: CompiledLine, stageAt: readonly StageState[]) {
    const { from, to, hold } = line.stunned!;
    const { stages } = line;
    this.from = stageAt[from]!;
    this.to = stageAt[to]!;
    this.hold = hold;
    this.way = wayBetween(this.from, this.to, stageAt);
    this.after = this.to.kind === CHAIN_STATION || this.to.next === OUT ? null : stageAt[this.to.next]!;
    this.isOnProtectedStretch = stages.protected[from] === 1 && stages.protected[to] === 1;
    this.meanSeconds = Float64Array.from(stages.work, meanOf);
    this.travelSeconds = Float64Array.from(stages.travel, (time) => (time === null ? 0 : meanOf(time)));
    this.feeders = stageAt.map((stage) => feedersOf(line, stage, stageAt));
    this.helpEnds = 0;
  }
}

function wayBetween(from: StageState, to: StageState, stageAt: readonly StageState[]): Leg[] {
  const way: Leg[] = [];
  let at = from;
  if (from.kind === CHAIN_STATION) {
    const chain = from.chain!;
    const end = to.kind === CHAIN_STATION && to.chain === chain ? to : null;
    way.push({ kind: "ride", chain, from, to: end });
    if (end !== null) return [...way, { kind: "stage", stage: to }];
    at = chain.stage;
  }
  for (;;) {
    at = stageAt[at.next]!;
    if (at.kind === CHAIN) {
      const chain = at.chain!;
      const end = to.kind === CHAIN_STATION && to.chain === chain ? to : null;
      way.push({ kind: "ride", chain, from: null, to: end });
      if (end !== null) return [...way, { kind: "stage", stage: to }];
    } else way.push({ kind: "stage", stage: at });
    if (at === to) return way;
  }
}

function feedersOf({ stages, chains }: CompiledLine, target: StageState, stageAt: readonly StageState[]): StageState[] {
  const sends = ({ index, kind, branchFrom, branchTo, weightElse, chain }: StageState) => {
    const rows = Array.from({ length: branchTo - branchFrom }, (_, row) => stages.branchTo[branchFrom + row]!);
    const sendsAside = rows.includes(-1 - target.index) || weightElse === target.index;
    const sendsUnfinished = kind === CHAIN && chains.unfinishedTo[chain!.index] === target.index;
    return stages.next[index] === target.index || sendsAside || sendsUnfinished;
  };
  return stageAt.filter((stage) => stage.takesHeads && sends(stage));
}
