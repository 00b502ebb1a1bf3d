import type { Tally } from "../dayRecord.ts";

/** 128 bins to every doubling, from 2^-10 s to 2^24 s; what is smaller falls into the first bin, what is larger into the last. */
const BIN_BITS = 7;
const LOWEST_EXPONENT = -10;
const OCTAVES = 34;
const BINS = OCTAVES << BIN_BITS;
const FIRST = (1023 + LOWEST_EXPONENT) << BIN_BITS;
const QUANTILES = { p05: 0.05, p25: 0.25, p50: 0.5, p75: 0.75, p90: 0.9, p95: 0.95, p99: 0.99 };

const asDouble = new Float64Array(1);
const asWords = new Uint32Array(asDouble.buffer);
asDouble[0] = 1;
const HIGH_WORD = asWords[1] === 0 ? 0 : 1;

/**
 * A distribution of non-negative times in bounded memory (18 kB): exact count, mean, sd (one-pass update), extremes, and a
 * histogram whose bins are read off the bits of the double, 0.8 % wide, so quantiles are good to 0.4 % of their value.
 */
export class TallyBuilder {
  private count = 0;
  private mean = 0;
  private squares = 0;
  private min = Infinity;
  private max = -Infinity;
  private readonly bins = new Int32Array(BINS);

  add(value: number): void {
    const step = value - this.mean;
    this.count++;
    this.mean += step / this.count;
    this.squares += step * (value - this.mean);
    if (value < this.min) this.min = value;
    if (value > this.max) this.max = value;
    asDouble[0] = value;
    const bin = value > 0 ? (asWords[HIGH_WORD]! >>> (20 - BIN_BITS)) - FIRST : 0;
    this.bins[bin < 0 ? 0 : bin >= BINS ? BINS - 1 : bin]!++;
  }

  reset(): void {
    this.count = 0;
    this.mean = 0;
    this.squares = 0;
    this.min = Infinity;
    this.max = -Infinity;
    this.bins.fill(0);
  }

  /** With no value at all, every figure is 0 and `count` says so. */
  tally(): Tally {
    const { count } = this;
    const quantiles = { ...QUANTILES };
    for (const name of Object.keys(QUANTILES) as (keyof typeof QUANTILES)[]) {
      quantiles[name] = count === 0 ? 0 : this.quantile(QUANTILES[name]);
    }
    return {
      count,
      mean: this.mean,
      sd: count > 1 ? Math.sqrt(this.squares / (count - 1)) : 0,
      min: count === 0 ? 0 : this.min,
      max: count === 0 ? 0 : this.max,
      quantiles,
      bins: this.filledBins(),
    };
  }

  /** Linear inside the bin that holds the rank, never outside the observed range. */
  private quantile(share: number): number {
    const rank = share * this.count;
    let below = 0;
    for (let bin = 0; bin < BINS; bin++) {
      const inside = this.bins[bin]!;
      if (below + inside >= rank && inside > 0) {
        const within = (rank - below) / inside;
        return this.clamp(lowerEdge(bin) + within * (lowerEdge(bin + 1) - lowerEdge(bin)));
      }
      below += inside;
    }
    return this.max;
  }

  private clamp(value: number): number {
    return Math.min(Math.max(value, this.min), this.max);
  }

  private filledBins(): Tally["bins"] {
    const filled: Tally["bins"] = [];
    this.bins.forEach((count, bin) => {
      if (count > 0) filled.push({ from: bin === 0 ? 0 : lowerEdge(bin), to: lowerEdge(bin + 1), count });
    });
    return filled;
  }
}

function lowerEdge(bin: number): number {
  const octave = 2 ** ((bin >> BIN_BITS) + LOWEST_EXPONENT);
  return octave * (1 + (bin & ((1 << BIN_BITS) - 1)) / (1 << BIN_BITS));
}
