import { headAt } from "../chainRing.ts";
import type { ChainState } from "../state/chainState.ts";
import type { DayState } from "../state/dayState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { nextStepSeconds, stepsUntil } from "./chainSteps.ts";

/** When heads can be hung on a chain, one on each shackle that comes by, as long as it moves. One object for look after look. */
export class HangingTimes {
  chain!: ChainState;
  /** When the last head so far is hung. */
  last = Number.NaN;
  private nextStep = Number.NaN;
  /** From when on the shackle at the loading point is empty. */
  private emptyFrom = Number.NaN;

  /** Turns to the chain as it is now. */
  begin(day: DayState, care: StunnedState, chain: ChainState): this {
    this.chain = chain;
    this.nextStep = nextStepSeconds(day, care, chain);
    this.emptyFrom = headAt(chain, 0) === null ? day.now : this.nextStep;
    this.last = day.now;
    return this;
  }

  /** Hangs a head that is ready at that time; Infinity while the chain stands. */
  take(ready: number): number {
    const hung = Math.max(ready, this.emptyFrom);
    this.emptyFrom = this.stepAfter(hung);
    this.last = Math.max(this.last, hung);
    return hung;
  }

  /** The first step after that time: until then the shackle at the loading point stays there. */
  stepAfter(seconds: number): number {
    return this.nextStep + stepsUntil(this.chain, this.nextStep, seconds) * this.chain.secondsPerShackle;
  }

  /** There are shackles for so many heads, those counted that are back by then. */
  suffices(heads: number): boolean {
    const { freeShackles, shacklesBack } = this.chain;
    let back = 0;
    while (back < shacklesBack.length && shacklesBack[back]! <= this.last) back++;
    return freeShackles + back >= heads;
  }
}
