/**
 * Departure times of a serial line by recursion, without any calendar of events: a second way to the engine's whole table
 * of passing times, fed the same draws.
 *
 * `work[k]` is the time of the k-th head to *start* at the station (first in, first out, so also the k-th to join it).
 */
export interface RecursionStation {
  positions: number;
  /** Places before the positions. */
  places: number;
  work: number[];
  /** Travel to the next station by order of leaving; null for none. */
  travel: number[] | null;
  /** Holds heads side by side and lets them out in the order they came; `places` + `positions` is what it holds. */
  isDwell: boolean;
}

/** By order of joining the station: when each head joined, started, was done and left; `order[k]`: k-th to leave. */
export interface StationTimes {
  entry: number[];
  start: number[];
  end: number[];
  exit: number[];
  order: number[];
}

/**
 * Single positions only, head by head:
 * start = max(D[i-1][j], D[i][j-1]); end = start + work; D[i][j] = max(end, D[i+1][j-b-1]).
 * `arrivals[j]`: when head j is there; all 0 for a saturated line. Returns D[station][head].
 */
export function singlePositionDepartures(stations: RecursionStation[], arrivals: number[]): number[][] {
  const departures = stations.map((): number[] => []);
  arrivals.forEach((arrival, j) => {
    stations.forEach(({ work }, i) => {
      const joined = i === 0 ? arrival : departures[i - 1]![j]!;
      const start = Math.max(joined, departures[i]![j - 1] ?? 0);
      const next = stations[i + 1];
      const hold = next === undefined ? 0 : (departures[i + 1]![j - next.places - 1] ?? 0);
      departures[i]!.push(Math.max(start + work[j]!, hold));
    });
  });
  return departures;
}

/**
 * Any number of positions, finite buffers, travel and dwell. Blocked heads move on in the order they blocked, so the m-th
 * head to be done is the m-th to leave and to join the next station:
 *   start[k] = max(entry[k], (k - positions)-th leaving),  end = start + work,
 *   m-th leaving = max(m-th end, (m - places - positions)-th leaving of the next station).
 * Each station is solved in order of leaving for the holds known so far; holds start at 0 and rise until nothing moves.
 */
export function departures(stations: RecursionStation[], arrivals: number[] | null, heads: number): StationTimes[] {
  const leaving = stations.map(() => new Array<number>(heads).fill(0));
  for (let round = 0; round <= heads * stations.length; round++) {
    let moved = false;
    let entry = arrivals;
    const times = stations.map((station, i) => {
      const solved = (station.isDwell ? dwellTimes : workTimes)(station, entry, holdsOf(stations, leaving, i));
      if (solved.leaving.some((time, m) => time !== leaving[i]![m])) moved = true;
      leaving[i] = solved.leaving;
      entry = joiningTimes(solved.leaving, station.travel);
      return solved;
    });
    if (!moved) return times;
  }
  throw new Error("the recursion does not settle");
}

type Solved = StationTimes & { leaving: number[] };

/** When the next station lets the m-th head in: its (m - places - positions)-th head has left. */
function holdsOf(stations: RecursionStation[], leaving: number[][], i: number): number[] {
  const next = stations[i + 1];
  if (next === undefined) return leaving[i]!.map(() => 0);
  return leaving[i]!.map((_, m) => leaving[i + 1]![m - next.places - next.positions] ?? 0);
}

/** A saturated station (`entry` null) takes a head when a position frees: it joins and starts at once. */
function workTimes({ positions, work }: RecursionStation, entry: number[] | null, holds: number[]): Solved {
  const solved = blank();
  const busy: number[] = [];
  const begin = (k: number, freed: number) => {
    if (k >= holds.length) return;
    solved.start[k] = Math.max(entry?.[k] ?? 0, freed);
    solved.entry[k] = entry?.[k] ?? solved.start[k];
    solved.end[k] = solved.start[k] + work[k]!;
    busy.push(k);
  };
  for (let k = 0; k < positions; k++) begin(k, 0);
  holds.forEach((hold, m) => {
    const first = busy.reduce((best, k) => (solved.end[k]! < solved.end[best]! ? k : best));
    busy.splice(busy.indexOf(first), 1);
    leave(solved, first, Math.max(solved.end[first]!, hold));
    begin(m + positions, solved.leaving[m]!);
  });
  return solved;
}

/** Side by side for its dwell each, out in the order they came. */
function dwellTimes({ work }: RecursionStation, entry: number[] | null, holds: number[]): Solved {
  const solved = blank();
  holds.forEach((hold, m) => {
    const joined = entry![m]!;
    solved.entry.push(joined);
    solved.start.push(joined);
    solved.end.push(joined + work[m]!);
    leave(solved, m, Math.max(solved.end[m]!, solved.leaving[m - 1] ?? 0, hold));
  });
  return solved;
}

function blank(): Solved {
  return { entry: [], start: [], end: [], exit: [], order: [], leaving: [] };
}

function leave(solved: Solved, k: number, time: number): void {
  solved.order.push(k);
  solved.leaving.push(time);
  solved.exit[k] = time;
}

/** Travel keeps the order of heads. */
function joiningTimes(leaving: number[], travel: number[] | null): number[] {
  if (travel === null) return leaving;
  let before = 0;
  return leaving.map((time, m) => {
    before = Math.max(before, time + travel[m]!);
    return before;
  });
}
