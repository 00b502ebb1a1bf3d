import type { StepTrace } from "./dayRecord.ts";

/** Records a step function of time as it changes. Values held for no time at all are dropped. */
export interface StepRecorder {
  set(now: number, value: number): void;
  /** Closes the trace at `end`. */
  trace(name: string, end: number): StepTrace;
}

/** Steps of all exact traces of one day together: with more of them, some hundreds of megabytes would be on their way. */
const MAX_EXACT_STEPS = 20_000_000;

/** What the exact recorders of a day may still keep. */
export interface StepBudget {
  left: number;
}

export function stepBudget(): StepBudget {
  return { left: MAX_EXACT_STEPS };
}

/** Keeps every step, as long as there is budget for it; throws a `RangeError` after that. */
export class ExactRecorder implements StepRecorder {
  private readonly times: number[] = [0];
  private readonly values: number[] = [0];
  private readonly budget: StepBudget;

  constructor(budget: StepBudget = stepBudget()) {
    this.budget = budget;
  }

  set(now: number, value: number): void {
    const last = this.times.length - 1;
    if (this.times[last] === now) this.values[last] = value;
    else if (this.values[last] !== value) {
      if (this.budget.left-- <= 0)
        throw new RangeError("the exact course of this day has too many steps to be kept; keep it in bins instead");
      this.times.push(now);
      this.values.push(value);
    }
  }

  trace(name: string, end: number): StepTrace {
    return { kind: "exact", name, endSeconds: end, times: [...this.times], values: [...this.values] };
  }
}

export const MAX_BINS = 1024;
const FIRST_BIN_SECONDS = 1;

/**
 * Keeps lowest, highest and time-weighted mean value per time bin: at most 1024 bins. When the day outgrows them,
 * neighbours are merged and the bins double in width (1 s, 2 s, 4 s ...), so every peak and every trough stays.
 */
export class BinnedRecorder implements StepRecorder {
  private binSeconds = FIRST_BIN_SECONDS;
  private since = 0;
  private value = 0;
  private readonly low = new Float64Array(MAX_BINS).fill(Infinity);
  private readonly high = new Float64Array(MAX_BINS).fill(-Infinity);
  private readonly area = new Float64Array(MAX_BINS);

  set(now: number, value: number): void {
    if (now > this.since) this.hold(now);
    this.value = value;
  }

  trace(name: string, end: number): StepTrace {
    if (end > this.since) this.hold(end);
    const bins = Math.ceil(end / this.binSeconds);
    const covered = (bin: number) => Math.min(end, (bin + 1) * this.binSeconds) - bin * this.binSeconds;
    return {
      kind: "binned",
      name,
      endSeconds: end,
      binSeconds: this.binSeconds,
      low: Array.from(this.low.subarray(0, bins)),
      high: Array.from(this.high.subarray(0, bins)),
      mean: Array.from(this.area.subarray(0, bins), (area, bin) => area / covered(bin)),
    };
  }

  /** Books the current value from `since` up to `now`. */
  private hold(now: number): void {
    while (now > MAX_BINS * this.binSeconds) this.merge();
    const { low, high, area, binSeconds, value } = this;
    let from = this.since;
    for (let bin = Math.floor(from / binSeconds); from < now; bin++) {
      const to = Math.min(now, (bin + 1) * binSeconds);
      if (value < low[bin]!) low[bin] = value;
      if (value > high[bin]!) high[bin] = value;
      area[bin]! += value * (to - from);
      from = to;
    }
    this.since = now;
  }

  private merge(): void {
    const { low, high, area } = this;
    for (let bin = 0; bin < MAX_BINS / 2; bin++) {
      low[bin] = Math.min(low[2 * bin]!, low[2 * bin + 1]!);
      high[bin] = Math.max(high[2 * bin]!, high[2 * bin + 1]!);
      area[bin] = area[2 * bin]! + area[2 * bin + 1]!;
    }
    low.fill(Infinity, MAX_BINS / 2);
    high.fill(-Infinity, MAX_BINS / 2);
    area.fill(0, MAX_BINS / 2);
    this.binSeconds *= 2;
  }
}
