import type { ResponseInfo } from "../../day/observations/index.ts";
import type { MeanEstimate } from "./figures.ts";

/** What the official veterinarian asks of a variant: how stunned heads fared over all its days. */
export interface KillLineResults {
  /** The steps that stun and stick, in words of the plan. */
  stunning: string[];
  sticking: string[];
  bleeding: string[];
  /** What the plan leaves open: see `StunnedProtection`. */
  hasGate: boolean;
  breaksAreSafe: boolean;
  /** Limits on the time from stunning to sticking. */
  limits: StunToStick[];
  /** Means over the days, in the order of the responses on stops; empty where the study asks for none of them. */
  stops: { info: ResponseInfo; estimate: MeanEstimate }[];
}

export interface StunToStick {
  name: string;
  maxSeconds: number;
  /** Days with a head outside the limit, and days on which a head was timed. */
  daysBeyond: number;
  days: number;
  /** Share of heads outside it; absent where no head was timed on any day. */
  share?: MeanEstimate;
  /** The longest time of all days, seconds; null where no head was timed. */
  worstSeconds: number | null;
}
