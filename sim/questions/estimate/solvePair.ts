import {
  downstreamActive,
  type JumpRoom,
  type Jumps,
  mostBetween,
  type Pair,
  pairJumps,
  phaseSpeed,
  upstreamActive,
} from "./pairJumps.ts";
import { type Chance, type Delay, LONG, type PairServer, WORK } from "./pairServer.ts";

export interface PairSolution {
  /** Heads per second. */
  throughput: number;
  /** Waiting of the upstream station for places, and of the downstream station for heads, per head. */
  blocking: Delay;
  starving: Delay;
  /** Probability of each state, for the next solution to begin with. */
  probability: Float64Array;
}

/**
 * Steady state of a pair with blocking after service: Gauss-Seidel on the balance equations of its Markov chain, sweeps
 * to and fro, from `before` on (changed in place) where it has as many states, at most so many `sweeps`.
 */
export function solvePair(pair: Pair, before: Float64Array | null, room: JumpRoom, sweeps: number): PairSolution {
  const jumps = pairJumps(pair, room);
  const { states } = jumps;
  const probability = before?.length === states ? before : new Float64Array(states).fill(1 / states);
  relaxInPlace(jumps, probability, sweeps);
  return { ...new Measures(pair).of(probability), probability };
}

/** Sum of the changes of a sweep below which it is enough. */
const ENOUGH = 1e-7;

function relaxInPlace(jumps: Jumps, probability: Float64Array, sweeps: number): void {
  for (let sweep = 0; sweep < sweeps; sweep++) {
    const change = sweepInPlace(jumps, probability, sweep % 2 === 1);
    balanceLevelsInPlace(jumps, probability);
    if (change < ENOUGH) return;
  }
}

/** One sweep of Gauss and Seidel; gives the change as a share of the whole. */
function sweepInPlace(
  { states, first, source, speed, out }: Jumps,
  probability: Float64Array,
  backwards: boolean,
): number {
  let change = 0;
  let sum = 0;
  for (let step = 0; step < states; step++) {
    const state = backwards ? states - 1 - step : step;
    let inflow = 0;
    for (let row = first[state]!; row < first[state + 1]!; row++) inflow += probability[source[row]!]! * speed[row]!;
    const value = out[state] === 0 ? 0 : inflow / out[state]!;
    change += Math.abs(value - probability[state]!);
    probability[state] = value;
    sum += value;
  }
  return change / sum;
}

/**
 * Gives every number of heads the weight that makes as many jumps up from it as down to it (aggregation after Takahashi
 * 1975, from memory; the numbers of heads are a birth-death chain). Sweeps alone carry weight from one to the next only slowly.
 */
function balanceLevelsInPlace({ states, more, fewer, perLevel }: Jumps, probability: Float64Array): void {
  let weight = 1;
  let sum = 0;
  let upBefore = 0;
  for (let from = 0; from < states; from += perLevel) {
    let [mass, up, down] = [0, 0, 0];
    for (let state = from; state < from + perLevel; state++) {
      mass += probability[state]!;
      up += probability[state]! * more[state]!;
      down += probability[state]! * fewer[state]!;
    }
    if (from > 0) weight = down > 0 ? upBefore / down : 0;
    for (let state = from; state < from + perLevel; state++) probability[state]! *= weight;
    upBefore = up * weight;
    sum += mass * weight;
  }
  for (let state = 0; state < states; state++) probability[state]! /= sum;
}

/** Lost seconds per second, and how often the losses begin, by whether the other side works (0) or is down (1). */
class Waiting {
  readonly lost = [0, 0];
  readonly begins = [0, 0];

  perHead(throughput: number): Delay {
    const long = chanceOf(this.lost[1]! / throughput, this.begins[1]! / throughput, 1);
    return { short: chanceOf(this.lost[0]! / throughput, this.begins[0]! / throughput, 1 - long.chance), long };
  }
}

class Measures {
  readonly #pair: Pair;

  constructor(pair: Pair) {
    this.#pair = pair;
  }

  of(probability: Float64Array): Omit<PairSolution, "probability"> {
    const { upstream, downstream, downstreamPositions, places } = this.#pair;
    const [u, d] = [upstream.rate.length, downstream.rate.length];
    const [blocked, starved] = [new Waiting(), new Waiting()];
    let throughput = 0;
    for (let heads = 0; heads <= mostBetween(this.#pair); heads++) {
      const upActive = upstreamActive(this.#pair, heads);
      const downActive = downstreamActive(this.#pair, heads);
      for (let up = 0; up < u; up++) {
        for (let down = 0; down < d; down++) {
          const p = probability[(heads * u + up) * d + down]!;
          const upDown = Number(upstream.kind[up] === LONG);
          const downDown = Number(downstream.kind[down] === LONG);
          const upSpeed = p * phaseSpeed(upstream, up, upActive);
          const downSpeed = p * phaseSpeed(downstream, down, downActive);
          const goes = downSpeed * downstream.ends[down]!;
          throughput += goes;
          if (heads <= downstreamPositions) starved.begins[upDown]! += goes;
          if (heads + 1 > downstreamPositions + places) blocked.begins[downDown]! += upSpeed * upstream.ends[up]!;
          if (downActive < 1 && upDown === 0) starved.begins[1]! += upSpeed * toLong(upstream, up);
          if (upActive < 1 && downDown === 0) blocked.begins[1]! += downSpeed * toLong(downstream, down);
          if (downstream.kind[down] === WORK) starved.lost[upDown]! += p * (1 - downActive);
          if (upstream.kind[up] === WORK || upActive === 0) blocked.lost[downDown]! += p * (1 - upActive);
        }
      }
    }
    return { throughput, blocking: blocked.perHead(throughput), starving: starved.perHead(throughput) };
  }
}

/** Chance that a phase is followed by one of being down. */
function toLong({ next, kind }: PairServer, phase: number): number {
  let sum = 0;
  for (const way of next[phase]!) if (kind[way.phase] === LONG) sum += way.chance;
  return sum;
}

/** The same seconds per head, with a chance that leaves room for the others. */
function chanceOf(secondsPerHead: number, chance: number, most: number): Chance {
  const possible = Math.min(chance, most);
  return possible > 0 ? { chance: possible, seconds: secondsPerHead / possible } : { chance: 0, seconds: 0 };
}
