import { STATES, type StateTrace } from "./dayRecord.ts";
import { MAX_BINS } from "./stepTraces.ts";

const WIDTH = STATES.length;

/** Seconds in each state by time bin, bins merged as in `BinnedRecorder`. Intervals may be booked late and out of order. */
export class StateRecorder {
  private binSeconds = 1;
  private readonly seconds = new Float64Array(MAX_BINS * WIDTH);

  /** Books `weight` positions that were in `state` from `from` to `to`. */
  add(state: number, from: number, to: number, weight = 1): void {
    while (to > MAX_BINS * this.binSeconds) this.merge();
    const { seconds, binSeconds } = this;
    let at = from;
    for (let bin = Math.floor(at / binSeconds); at < to; bin++) {
      const until = Math.min(to, (bin + 1) * binSeconds);
      seconds[bin * WIDTH + state]! += weight * (until - at);
      at = until;
    }
  }

  trace(name: string, end: number): StateTrace {
    const bins = Math.ceil(end / this.binSeconds);
    return {
      name,
      endSeconds: end,
      binSeconds: this.binSeconds,
      seconds: Array.from(this.seconds.subarray(0, bins * WIDTH)),
    };
  }

  private merge(): void {
    const { seconds } = this;
    for (let bin = 0; bin < MAX_BINS / 2; bin++) {
      for (let state = 0; state < WIDTH; state++) {
        seconds[bin * WIDTH + state] = seconds[2 * bin * WIDTH + state]! + seconds[(2 * bin + 1) * WIDTH + state]!;
      }
    }
    seconds.fill(0, (MAX_BINS / 2) * WIDTH);
    this.binSeconds *= 2;
  }
}
