/**
 * Exact steady state of a serial line of exponential stations with blocking after service, as a continuous-time Markov
 * chain: a second way to the same figures that shares nothing with the engine.
 *
 * Rates are per unit of time and of one server. `places` is the buffer before the station, servers not counted.
 */
export interface ChainStation {
  rate: number;
  servers?: number;
  places?: number;
  /** Failures of one server per unit of working time; the interrupted work goes on after the repair. */
  failure?: number;
  repair?: number;
}

export interface ChainLine {
  stations: ChainStation[];
  /** Poisson arrivals, lost when the first station has no place; absent: the first station never starves. */
  arrivals?: number;
}

export interface ChainSolution {
  throughput: number;
  /** Share of arrivals lost; 0 for a saturated line. */
  lost: number;
  /** Time averages over one server, and mean heads in the buffer. */
  stations: { working: number; blocked: number; starved: number; down: number; waiting: number }[];
  states: number;
}

/** Counts per station within a state: heads waiting, servers working, down (holding a head) and blocked. */
const WAITING = 0;
const WORKING = 1;
const DOWN = 2;
const BLOCKED = 3;
const WIDTH = 4;

type State = number[];

export function solveLine(line: ChainLine): ChainSolution {
  const { states, from, to, rate } = reachable(line);
  const probability = steadyState(states.length, from, to, rate);
  return summary(line, states, probability);
}

/** All states that can be reached from the empty line, and every jump between them. */
function reachable(line: ChainLine) {
  const states: State[] = [];
  const index = new Map<string, number>();
  const from: number[] = [];
  const to: number[] = [];
  const rate: number[] = [];
  const numberOf = (state: State) => {
    const key = state.join();
    let number = index.get(key);
    if (number === undefined) {
      number = states.push(state) - 1;
      index.set(key, number);
    }
    return number;
  };
  numberOf(firstState(line));
  for (let number = 0; number < states.length; number++) {
    for (const [speed, state] of jumps(line, states[number]!)) {
      from.push(number);
      to.push(numberOf(state));
      rate.push(speed);
    }
  }
  return { states, from, to, rate };
}

function firstState(line: ChainLine): State {
  const state = new Array<number>(line.stations.length * WIDTH).fill(0);
  if (line.arrivals === undefined) state[WORKING] = serversOf(line, 0);
  return state;
}

function* jumps(line: ChainLine, state: State): Generator<[rate: number, state: State]> {
  if (line.arrivals !== undefined && hasRoom(line, state, 0)) {
    yield [line.arrivals, changed(state, (next) => join(line, next, 0))];
  }
  for (let i = 0; i < line.stations.length; i++) {
    const { rate, failure = 0, repair = 0 } = line.stations[i]!;
    const working = state[i * WIDTH + WORKING]!;
    const down = state[i * WIDTH + DOWN]!;
    if (working > 0) yield [working * rate, changed(state, (next) => finish(line, next, i))];
    if (working > 0 && failure > 0) yield [working * failure, changed(state, (next) => turn(next, i, WORKING, DOWN))];
    if (down > 0) yield [down * repair, changed(state, (next) => turn(next, i, DOWN, WORKING))];
  }
}

function changed(state: State, change: (next: State) => void): State {
  const next = [...state];
  change(next);
  return next;
}

function turn(state: State, station: number, before: number, after: number): void {
  state[station * WIDTH + before]!--;
  state[station * WIDTH + after]!++;
}

function finish(line: ChainLine, state: State, station: number): void {
  state[station * WIDTH + WORKING]!--;
  const isLast = station === line.stations.length - 1;
  if (!isLast && !hasRoom(line, state, station + 1)) {
    state[station * WIDTH + BLOCKED]!++;
    return;
  }
  if (!isLast) join(line, state, station + 1);
  serverFreed(line, state, station);
}

function join(line: ChainLine, state: State, station: number): void {
  const isIdle = serversTaken(state, station) < serversOf(line, station);
  state[station * WIDTH + (isIdle ? WORKING : WAITING)]!++;
}

/** The freed server takes the next head; the place that frees lets a blocked head in, and so on upstream. */
function serverFreed(line: ChainLine, state: State, station: number): void {
  if (station === 0 && line.arrivals === undefined) state[WORKING]!++;
  else if (state[station * WIDTH + WAITING]! > 0) turn(state, station, WAITING, WORKING);
  if (station === 0 || state[(station - 1) * WIDTH + BLOCKED] === 0 || !hasRoom(line, state, station)) return;
  state[(station - 1) * WIDTH + BLOCKED]!--;
  join(line, state, station);
  serverFreed(line, state, station - 1);
}

function hasRoom(line: ChainLine, state: State, station: number): boolean {
  const present = serversTaken(state, station) + state[station * WIDTH + WAITING]!;
  return present < serversOf(line, station) + (line.stations[station]!.places ?? 0);
}

function serversTaken(state: State, station: number): number {
  const at = station * WIDTH;
  return state[at + WORKING]! + state[at + DOWN]! + state[at + BLOCKED]!;
}

function serversOf(line: ChainLine, station: number): number {
  return line.stations[station]!.servers ?? 1;
}

/** Gauss-Seidel on the balance equations, sweeps to and fro, until no probability moves by more than 1e-13 of itself. */
export function steadyState(count: number, from: number[], to: number[], rate: number[]): Float64Array {
  const { start, source, speed, out } = byTarget(count, from, to, rate);
  const probability = new Float64Array(count).fill(1 / count);
  for (let sweep = 0; sweep < 200_000; sweep++) {
    let change = 0;
    for (let step = 0; step < count; step++) {
      const state = sweep % 2 === 0 ? step : count - 1 - step;
      let inflow = 0;
      for (let row = start[state]!; row < start[state + 1]!; row++) inflow += probability[source[row]!]! * speed[row]!;
      const value = inflow / out[state]!;
      change = Math.max(change, Math.abs(value - probability[state]!) / (value + 1e-250));
      probability[state] = value;
    }
    const sum = probability.reduce((total, value) => total + value, 0);
    for (let state = 0; state < count; state++) probability[state]! /= sum;
    if (change < 1e-13) return probability;
  }
  throw new Error(`no steady state found for ${count} states`);
}

/** Jumps sorted by the state they lead to, and the total rate out of each state. */
function byTarget(count: number, from: number[], to: number[], rate: number[]) {
  const out = new Float64Array(count);
  const start = new Int32Array(count + 1);
  for (let row = 0; row < from.length; row++) {
    out[from[row]!]! += rate[row]!;
    start[to[row]! + 1]!++;
  }
  for (let state = 0; state < count; state++) start[state + 1]! += start[state]!;
  const fill = start.slice();
  const source = new Int32Array(from.length);
  const speed = new Float64Array(from.length);
  for (let row = 0; row < from.length; row++) {
    const at = fill[to[row]!]!++;
    source[at] = from[row]!;
    speed[at] = rate[row]!;
  }
  return { start, source, speed, out };
}

function summary(line: ChainLine, states: State[], probability: Float64Array): ChainSolution {
  const mean = (value: (state: State) => number) =>
    states.reduce((sum, state, number) => sum + value(state) * probability[number]!, 0);
  const last = line.stations.length - 1;
  return {
    throughput: line.stations[last]!.rate * mean((state) => state[last * WIDTH + WORKING]!),
    lost: line.arrivals === undefined ? 0 : mean((state) => (hasRoom(line, state, 0) ? 0 : 1)),
    stations: line.stations.map((_, i) => {
      const servers = serversOf(line, i);
      const share = (column: number) => mean((state) => state[i * WIDTH + column]!) / servers;
      const [working, blocked, down] = [share(WORKING), share(BLOCKED), share(DOWN)];
      const starved = mean((state) => servers - serversTaken(state, i)) / servers;
      return { working, blocked, down, starved, waiting: share(WAITING) * servers };
    }),
    states: states.length,
  };
}
