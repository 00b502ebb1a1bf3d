import seedrandom from "seedrandom";
import type { Quantiles, UniformStream } from "./uniforms.ts";

const TWO_TO_MINUS_32 = 2 ** -32;
const TWO_TO_MINUS_53 = 2 ** -53;
const TWO_TO_21 = 2 ** 21;

/**
 * The alea generator (Baagøe 2010), seeded by seedrandom and bit for bit the same as its `double()`: 53 random bits out of
 * two steps. Written out here because a draw stands behind every cycle time, and calling the package's closures costs
 * twice as much.
 */
export class AleaStream implements UniformStream {
  private readonly mirrored: boolean;
  /** Its three numbers, then the carry. An array, because a runtime may put every number stored in a field on the heap. */
  private readonly state: Float64Array;

  /** `mirrored`: gives 1 - u for every u. */
  constructor(seed: string, mirrored: boolean) {
    const { s0, s1, s2, c } = seedrandom.alea(seed, { state: true }).state() as Record<string, number>;
    this.mirrored = mirrored;
    this.state = Float64Array.of(s0!, s1!, s2!, c!);
  }

  next(): number {
    const { state } = this;
    const first = 2091639 * state[0]! + state[3]! * TWO_TO_MINUS_32;
    const firstCarry = first | 0;
    const high = first - firstCarry;
    const second = 2091639 * state[1]! + firstCarry * TWO_TO_MINUS_32;
    const carry = second | 0;
    const low = second - carry;
    state[0] = state[2]!;
    state[1] = high;
    state[2] = low;
    state[3] = carry;
    const u = high + ((low * TWO_TO_21) | 0) * TWO_TO_MINUS_53;
    return this.mirrored ? 1 - u : u;
  }

  /**
   * The step of `next` once more, with its state in variables. Each step has to wait for the one before; the quantile of
   * the last uniform is found meanwhile, at hardly any cost.
   */
  fill(values: Float64Array, from: number, to: number, quantiles: Quantiles): void {
    const { state, mirrored } = this;
    let s0 = state[0]!;
    let s1 = state[1]!;
    let s2 = state[2]!;
    let carry = state[3]!;
    for (let at = from; at < to; at++) {
      const first = 2091639 * s0 + carry * TWO_TO_MINUS_32;
      const firstCarry = first | 0;
      const high = first - firstCarry;
      const second = 2091639 * s1 + firstCarry * TWO_TO_MINUS_32;
      carry = second | 0;
      s0 = s2;
      s1 = high;
      s2 = second - carry;
      const u = high + ((s2 * TWO_TO_21) | 0) * TWO_TO_MINUS_53;
      values[at] = quantiles.quantile(mirrored ? 1 - u : u);
    }
    state[0] = s0;
    state[1] = s1;
    state[2] = s2;
    state[3] = carry;
  }
}
