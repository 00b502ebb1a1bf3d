import type { BreakdownState } from "./breakdownState.ts";
import type { LoadState } from "./loadState.ts";
import type { PositionState } from "./positionState.ts";
import type { StageState } from "./stageState.ts";
import type { Waiting } from "./stunnedState.ts";

/** What the binding path looks at of a day under way; see `DayState`, which is one. */
export interface DayUnderWay {
  /** Seconds after the day's start. */
  readonly now: number;
  /** Heads that were there when the day began: they have the first numbers. */
  readonly keptHeads: number;
  /** By index. */
  readonly stageAt: readonly StageState[];
  readonly positionAt: readonly PositionState[];
  readonly breakdownAt: readonly BreakdownState[];
  /** Loads in the order in which they are due, and how many of them have been due. */
  readonly loadsDue: readonly LoadState[];
  readonly loadRow: number;
  /** What comes back, the next first. */
  readonly returns: readonly Return[];
  /** Stunned heads that are not stuck yet, the next that somebody is called to first; null where the plan says nothing of them. */
  readonly stunned: { readonly waiting: readonly Pick<Waiting, "bound" | "boundSince">[] } | null;
}

/** Something that comes back at a known time: a crew, a machine after a pause, a lorry's crates. */
export interface Return {
  seconds: number;
  /** CREW_BREAK, STAGE_PAUSE or FLEET_BACK. */
  action: number;
  target: number;
  amount: number;
  /** Binding path of what sent it away, and when that was. */
  bound?: Float64Array | undefined;
  boundSince?: number;
}
