import { type PairServer, WORK } from "./pairServer.ts";

/** Two stations and the places between them. */
export interface Pair {
  upstream: PairServer;
  downstream: PairServer;
  /** Positions of either station. */
  upstreamPositions: number;
  downstreamPositions: number;
  /** Need not be whole: half a place is one that is there half of the time. */
  places: number;
}

/**
 * A pair as a continuous-time Markov chain. State (heads, up, down) has number (heads x phases upstream + up) x phases
 * downstream + down; `heads` are those between: at downstream positions, in the buffer, and finished upstream without a place.
 */
export interface Jumps {
  states: number;
  /** Jumps into state s: rows first[s] to first[s + 1] of `source` and `speed`. */
  first: Int32Array;
  source: Int32Array;
  /** Per second. */
  speed: Float64Array;
  /** Total speed out of each state. */
  out: Float64Array;
  /** Of it, to one head more and to one head fewer between. */
  more: Float64Array;
  fewer: Float64Array;
  /** States with the same number of heads follow each other, so many. */
  perLevel: number;
}

/** Most heads between two stations. */
export function mostBetween({ upstreamPositions, downstreamPositions, places }: Pair): number {
  return Math.ceil(upstreamPositions + places + downstreamPositions);
}

/** Share of the upstream positions that can work with so many heads between: the others are blocked. */
export function upstreamActive({ upstreamPositions, downstreamPositions, places }: Pair, heads: number): number {
  const blocked = Math.max(0, heads - downstreamPositions - places);
  return 1 - Math.min(upstreamPositions, blocked) / upstreamPositions;
}

/** Share of the downstream positions that have a head. */
export function downstreamActive({ downstreamPositions }: Pair, heads: number): number {
  return Math.min(1, heads / downstreamPositions);
}

/** Speed of a phase: work slows down with the positions that can work. */
export function phaseSpeed(server: PairServer, phase: number, active: number): number {
  return active === 0 ? 0 : server.rate[phase]! * (server.kind[phase] === WORK ? active : 1);
}

export function pairJumps(pair: Pair, room: JumpRoom): Jumps {
  const { upstream, downstream } = pair;
  const [u, d] = [upstream.rate.length, downstream.rate.length];
  const most = mostBetween(pair);
  const states = (most + 1) * u * d;
  room.begin(states, u * d, states * (waysOf(upstream) + waysOf(downstream)));
  for (let heads = 0; heads <= most; heads++) {
    const upActive = upstreamActive(pair, heads);
    const downActive = downstreamActive(pair, heads);
    for (let up = 0; up < u; up++) {
      for (let down = 0; down < d; down++) {
        const state = (heads * u + up) * d + down;
        const upSpeed = phaseSpeed(upstream, up, upActive);
        for (const { phase, chance } of upstream.next[up]!)
          room.add(state, (heads * u + phase) * d + down, upSpeed * chance);
        const comes = upSpeed * upstream.ends[up]!;
        room.more[state] = comes;
        for (const { phase, chance } of upstream.start)
          room.add(state, ((heads + 1) * u + phase) * d + down, comes * chance);
        const downSpeed = phaseSpeed(downstream, down, downActive);
        for (const { phase, chance } of downstream.next[down]!)
          room.add(state, (heads * u + up) * d + phase, downSpeed * chance);
        const goes = downSpeed * downstream.ends[down]!;
        room.fewer[state] = goes;
        for (const { phase, chance } of downstream.start)
          room.add(state, ((heads - 1) * u + up) * d + phase, goes * chance);
      }
    }
  }
  return room.byTarget();
}

/** Most ways out of a phase. */
function waysOf({ next, start }: PairServer): number {
  return Math.max(...next.map(({ length }) => length)) + start.length;
}

/** Room for the jumps of a pair, used again from solution to solution: making it takes longer than filling it. */
export class JumpRoom {
  #count = 0;
  #from = new Int32Array(0);
  #to = new Int32Array(0);
  #rate = new Float64Array(0);
  #first = new Int32Array(1);
  #fill = new Int32Array(1);
  #source = new Int32Array(0);
  #speed = new Float64Array(0);
  #out = new Float64Array(0);
  #perLevel = 1;
  more = new Float64Array(0);
  fewer = new Float64Array(0);

  begin(states: number, perLevel: number, most: number): void {
    this.#count = 0;
    this.#perLevel = perLevel;
    if (this.#out.length !== states) {
      this.#first = new Int32Array(states + 1);
      this.#fill = new Int32Array(states + 1);
      this.#out = new Float64Array(states);
      this.more = new Float64Array(states);
      this.fewer = new Float64Array(states);
    }
    if (this.#from.length >= most) return;
    this.#from = new Int32Array(most);
    this.#to = new Int32Array(most);
    this.#rate = new Float64Array(most);
    this.#source = new Int32Array(most);
    this.#speed = new Float64Array(most);
  }

  add(from: number, to: number, speed: number): void {
    if (speed === 0) return;
    this.#from[this.#count] = from;
    this.#to[this.#count] = to;
    this.#rate[this.#count] = speed;
    this.#count++;
  }

  byTarget(): Jumps {
    const states = this.#out.length;
    this.#out.fill(0);
    this.#first.fill(0);
    for (let row = 0; row < this.#count; row++) {
      this.#out[this.#from[row]!]! += this.#rate[row]!;
      this.#first[this.#to[row]! + 1]!++;
    }
    for (let state = 0; state < states; state++) this.#first[state + 1]! += this.#first[state]!;
    this.#fill.set(this.#first);
    for (let row = 0; row < this.#count; row++) {
      const at = this.#fill[this.#to[row]!]!++;
      this.#source[at] = this.#from[row]!;
      this.#speed[at] = this.#rate[row]!;
    }
    const { more, fewer } = this;
    const rows = { first: this.#first, source: this.#source, speed: this.#speed };
    return { states, ...rows, out: this.#out, more, fewer, perLevel: this.#perLevel };
  }
}
