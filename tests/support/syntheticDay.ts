import seedrandom from "seedrandom";
import type { DayRecord, LimitRecord, OwnTime, StageRecord, StepTrace, Tally } from "../../sim/day/engine/dayRecord.ts";

/**
 * An invented day on an invented plant, for pictures only: a naive walk second by second, with whole heads, so that the
 * columns hang together (what leaves one stage enters the next). It is no engine and is compared with none.
 */
export interface SyntheticPlant {
  eviscerationPositions: number;
  eviscerationPlaces: number;
  firstLoadSeconds: number;
}

export const SYNTHETIC_BASE: SyntheticPlant = { eviscerationPositions: 3, eviscerationPlaces: 8, firstLoadSeconds: 0 };

const START_CLOCK = 6 * 3600;
const SHIFT_END = 8 * 3600;
const BIN = 120;
const STATE_COUNT = 6;
const [WORKING, BLOCKED, STARVED, NO_CREW, DOWN, ON_BREAK] = [0, 1, 2, 3, 4, 5] as const;
const HEADS_PER_CRATE = 16;

export const SYNTHETIC_BREAKS = [
  { name: "breakfast", fromSeconds: 9000, toSeconds: 10_800 },
  { name: "midday", fromSeconds: 19_800, toSeconds: 22_200 },
];

/** Nothing here is sent elsewhere, held back or chilled by computation. */
const PLAIN_STAGE = { unworked: 0, unfinished: 0, diverted: 0, heldSeconds: 0, heatJoules: 0 };

interface Head {
  arrived: number;
  stunned: number;
  stuck: number;
  opened: number;
}

interface Station {
  name: string;
  section: string;
  kind: "station" | "dwell";
  places: number;
  cycle: number;
  positions: { head: Head | null; left: number }[];
  waiting: Head[];
  downFor: number;
  stopEvery: number;
  stopLength: number;
  stops: number;
  processed: number;
}

const LINE: [string, string, "station" | "dwell", number, number, number, number, number][] = [
  // name, section, kind, places, positions, cycle, mean seconds between stops, mean stop
  ["Shackling", "kill", "station", 4, 3, 16.2, 0, 0],
  ["Stunning", "kill", "station", 1, 1, 5.3, 2400, 45],
  ["Sticking", "kill", "station", 1, 1, 4.9, 0, 0],
  ["Bleeding", "kill", "dwell", 34, 34, 180, 0, 0],
  ["Hind-leg cutting", "dressing", "station", 6, 2, 10.4, 0, 0],
  ["Skinning", "dressing", "station", 6, 1, 5.1, 3000, 150],
  ["Four-leg cutting", "dressing", "station", 4, 1, 4.8, 0, 0],
  ["Abdomen opening", "dressing", "station", 4, 1, 5.2, 0, 0],
  ["Evisceration", "dressing", "station", 8, 3, 16.9, 0, 0],
  ["Post-mortem inspection", "inspection", "station", 4, 2, 9.6, 0, 0],
  ["Final trim", "inspection", "station", 10, 2, 9.1, 0, 0],
  ["Chilling", "chilling", "dwell", 1400, 1400, 7800, 0, 0],
];

class Recorder {
  readonly low: number[] = [];
  readonly high: number[] = [];
  readonly sum: number[] = [];
  readonly count: number[] = [];
  max = 0;
  total = 0;
  seen = 0;
  take(second: number, value: number): void {
    const bin = Math.floor(second / BIN);
    if (this.low.length <= bin) {
      this.low.push(value);
      this.high.push(value);
      this.sum.push(0);
      this.count.push(0);
    }
    this.low[bin] = Math.min(this.low[bin]!, value);
    this.high[bin] = Math.max(this.high[bin]!, value);
    this.sum[bin]! += value;
    this.count[bin]! += 1;
    this.max = Math.max(this.max, value);
    this.total += value;
    this.seen += 1;
  }
  trace(name: string, endSeconds: number): StepTrace {
    const mean = this.sum.map((sum, bin) => sum / this.count[bin]!);
    return { kind: "binned", name, endSeconds, binSeconds: BIN, low: this.low, high: this.high, mean };
  }
  queue() {
    return { mean: this.total / Math.max(1, this.seen), max: this.max };
  }
}

const walked = new Map<string, DayRecord>();

/** One synthetic day; the same plant and seed give the same record. Walked once a process; each caller gets a copy. */
export function syntheticDay(plant: SyntheticPlant = SYNTHETIC_BASE, seed = "gable", replication = 0): DayRecord {
  const key = JSON.stringify([plant, seed, replication]);
  const known = walked.get(key) ?? walkDay(plant, seed, replication);
  walked.set(key, known);
  return structuredClone(known);
}

function walkDay(plant: SyntheticPlant, seed: string, replication: number): DayRecord {
  const random = seedrandom.alea(`${seed}/${replication}`);
  const vary = (mean: number) => mean * (0.7 + 0.6 * random());
  const stations: Station[] = LINE.map(([name, section, kind, places, positions, cycle, stopEvery, stopLength]) => {
    const count = name === "Evisceration" ? plant.eviscerationPositions : positions;
    return {
      name,
      section,
      kind,
      places: name === "Evisceration" ? plant.eviscerationPlaces : places,
      cycle,
      positions: Array.from({ length: kind === "dwell" ? 0 : count }, () => ({ head: null, left: 0 })),
      waiting: [],
      downFor: 0,
      stopEvery,
      stopLength,
      stops: 0,
      processed: 0,
    };
  });
  const dwellEnds: number[][] = stations.map(() => []);
  const loads = [0, 5400, 11_400, 16_800].map((at, index) => ({
    name: `Lorry ${index + 1}`,
    heads: 70 * HEADS_PER_CRATE,
    crates: 70,
    dueSeconds: at + plant.firstLoadSeconds,
    arrivedSeconds: at + plant.firstLoadSeconds + Math.round(random() * 600),
    unloadedSeconds: 0,
    emptiedSeconds: null as number | null,
    washedSeconds: null,
    leftSeconds: null as number | null,
  }));
  const crates = { onLorry: 0, lairage: 0, unloading: 0, feeding: 0, openHeads: 0 };
  const crateStates = [new Array<number>(STATE_COUNT).fill(0), new Array<number>(STATE_COUNT).fill(0)];
  const states = [...crateStates, ...stations.map(() => new Array<number>(STATE_COUNT).fill(0))];
  const stateBins: number[][] = states.map(() => []);
  const queues = states.map(() => new Recorder());
  const sections = ["kill", "dressing", "inspection", "chilling"];
  const wip = sections.map(() => new Recorder());
  const outTrace = new Recorder();
  const arrivedTrace = new Recorder();
  const hungTrace = new Recorder();
  const dwells = stations.filter(({ kind }) => kind === "dwell");
  const enteredTraces = dwells.map(() => new Recorder());
  const stunToStick: number[] = [];
  const stickToOpen: number[] = [];
  const inSystem: number[] = [];
  const [unloadedCrates, fedCrates] = [{ n: 0 }, { n: 0 }];
  let arrived = 0;
  let hung = 0;
  let carcass = 0;
  let condemned = 0;
  const total = loads.reduce((sum, load) => sum + load.heads, 0);
  let second = 0;
  const count = (row: number, state: number) => {
    states[row]![state]! += 1;
    const at = Math.floor(second / BIN) * STATE_COUNT + state;
    while (stateBins[row]!.length <= at) stateBins[row]!.push(0);
    stateBins[row]![at]! += 1;
  };
  for (; second < 60_000 && carcass + condemned < total; second++) {
    const pause = SYNTHETIC_BREAKS.some((b) => second >= b.fromSeconds && second < b.toSeconds);
    const stopHanging = SYNTHETIC_BREAKS.some((b) => second >= b.fromSeconds - 150 && second < b.toSeconds);
    for (const load of loads) {
      if (second === load.arrivedSeconds) {
        crates.onLorry += load.crates;
        arrived += load.heads;
      }
    }
    crateStep(second);
    for (let i = stations.length - 1; i >= 0; i--) stationStep(i, pause, stopHanging);
    queues[0]!.take(second, crates.onLorry);
    queues[1]!.take(second, crates.lairage);
    stations.forEach((station, i) => {
      queues[i + 2]!.take(second, station.kind === "dwell" ? dwellEnds[i]!.length : station.waiting.length);
    });
    sections.forEach((name, s) => {
      let present = 0;
      stations.forEach((station, i) => {
        if (station.section !== name) return;
        present += station.waiting.length + station.positions.filter((p) => p.head).length;
        if (station.kind === "dwell") present += dwellEnds[i]!.length - station.waiting.length;
      });
      wip[s]!.take(second, present);
    });
    outTrace.take(second, carcass);
    arrivedTrace.take(second, arrived);
    hungTrace.take(second, hung);
    dwells.forEach(({ processed, waiting }, index) => {
      enteredTraces[index]!.take(second, processed + waiting.length);
    });
  }

  function crateStep(now: number): void {
    if (crates.unloading > 0) crates.unloading--;
    if (crates.unloading === 0 && crates.onLorry > 0 && crates.lairage < 90) {
      crates.onLorry--;
      crates.lairage++;
      unloadedCrates.n++;
      crates.unloading = 18 + Math.floor(random() * 10);
      const load = loads[Math.floor((unloadedCrates.n - 1) / 70)];
      if (load) {
        load.unloadedSeconds = now;
        load.leftSeconds = now;
      }
    }
    count(0, crates.unloading > 0 ? WORKING : crates.onLorry > 0 ? BLOCKED : STARVED);
    if (crates.feeding > 0) crates.feeding--;
    if (crates.feeding === 0 && crates.openHeads < 8 && crates.lairage > 0) {
      crates.lairage--;
      crates.openHeads += HEADS_PER_CRATE;
      fedCrates.n++;
      crates.feeding = 30 + Math.floor(random() * 15);
      const load = loads[Math.floor((fedCrates.n - 1) / 70)];
      if (load) load.emptiedSeconds = now;
    }
    count(1, crates.feeding > 0 ? WORKING : crates.openHeads >= 8 ? BLOCKED : STARVED);
  }

  function room(index: number): boolean {
    const next = stations[index];
    if (!next) return true;
    return next.kind === "dwell" ? dwellEnds[index]!.length < next.places : next.waiting.length < next.places;
  }

  function pass(index: number, head: Head): void {
    const next = stations[index];
    if (!next) {
      carcass++;
      inSystem.push(second - head.arrived);
      return;
    }
    next.waiting.push(head);
    if (next.kind === "dwell") dwellEnds[index]!.push(second + vary(next.cycle) * 0.1 + next.cycle * 0.9);
  }

  function stationStep(index: number, pause: boolean, stopHanging: boolean): void {
    const station = stations[index]!;
    if (station.kind === "dwell") {
      dwellStep(index);
      return;
    }
    if (station.downFor > 0) station.downFor--;
    else if (station.stopEvery > 0 && random() < 1 / station.stopEvery) {
      station.downFor = Math.ceil(vary(station.stopLength));
      station.stops++;
    }
    if (index === 0 && !stopHanging && station.waiting.length < station.places && crates.openHeads > 0) {
      crates.openHeads--;
      hung++;
      station.waiting.push({ arrived: Math.max(0, second - 3000), stunned: 0, stuck: 0, opened: 0 });
    }
    const shortOfPeople = station.name === "Final trim" && Math.floor(second / 700) % 3 === 0;
    station.positions.forEach((position, p) => {
      const absent = pause || (shortOfPeople && p > 0);
      count(index + 2, positionStep(index, position, absent, pause));
    });
  }

  /** Moves one position on by a second and says what it did. */
  function positionStep(
    index: number,
    position: Station["positions"][number],
    absent: boolean,
    pause: boolean,
  ): number {
    const station = stations[index]!;
    if (pause && !position.head) return ON_BREAK;
    if (station.downFor > 0) return DOWN;
    if (!position.head) {
      if (absent) return station.waiting.length > 0 ? NO_CREW : STARVED;
      const head = station.waiting.shift();
      if (!head) return STARVED;
      begin(station, head);
      position.head = head;
      position.left = vary(station.cycle);
    }
    position.left -= 1;
    if (position.left > 0) return WORKING;
    if (!room(index + 1)) return BLOCKED;
    finish(index, station, position.head);
    position.head = null;
    return WORKING;
  }

  function begin(station: Station, head: Head): void {
    if (station.name === "Sticking") {
      head.stuck = second;
      stunToStick.push(second - head.stunned + random());
    }
    if (station.name === "Evisceration") stickToOpen.push(second - head.stuck + random());
  }

  function finish(index: number, station: Station, head: Head): void {
    station.processed++;
    if (station.name === "Stunning") head.stunned = second;
    if (station.name === "Post-mortem inspection" && random() < 0.006) {
      condemned++;
      return;
    }
    pass(index + 1, head);
  }

  function dwellStep(index: number): void {
    const station = stations[index]!;
    const ends = dwellEnds[index]!;
    let held = 0;
    if (ends.length > 0 && ends[0]! <= second) {
      if (room(index + 1)) {
        ends.shift();
        pass(index + 1, station.waiting.shift()!);
        station.processed++;
      } else held = 1;
    }
    const row = states[index + 2]!;
    row[WORKING]! += ends.length - held;
    row[BLOCKED]! += held;
    row[STARVED]! += station.places - ends.length;
    const base = Math.floor(second / BIN) * STATE_COUNT;
    while (stateBins[index + 2]!.length < base + STATE_COUNT) stateBins[index + 2]!.push(0);
    stateBins[index + 2]![base + WORKING]! += ends.length - held;
    stateBins[index + 2]![base + BLOCKED]! += held;
    stateBins[index + 2]![base + STARVED]! += station.places - ends.length;
  }

  const crateRow = (name: string, index: number, places: number, processed: number): StageRecord => ({
    name,
    section: "live",
    kind: "crates",
    places,
    positions: 1,
    processed,
    queue: queues[index]!.queue(),
    stateSeconds: states[index]!,
    ownTime: ownTimeOf(stateBins[index]!),
    stops: 0,
    ...PLAIN_STAGE,
  });
  const stages: StageRecord[] = [
    crateRow("Unloading", 0, Number.POSITIVE_INFINITY, unloadedCrates.n),
    crateRow("Crate feeding", 1, 90, fedCrates.n),
    ...stations.map((station, i) => ({
      name: station.name,
      section: station.section,
      kind: station.kind,
      places: station.places,
      positions: station.kind === "dwell" ? station.places : station.positions.length,
      processed: station.processed,
      queue: queues[i + 2]!.queue(),
      stateSeconds: states[i + 2]!,
      ownTime: ownTimeOf(stateBins[i + 2]!),
      stops: station.stops,
      ...PLAIN_STAGE,
    })),
  ];
  return {
    replication,
    status: "finished",
    stuckAt: [],
    left: [],
    watchedFromSeconds: 0,
    perHead: null,
    binding: null,
    killStops: null,
    startClockSeconds: START_CLOCK,
    finishSeconds: second,
    workFinishSeconds: second,
    shiftEndSeconds: SHIFT_END,
    events: hung * 30,
    heads: {
      arrived,
      hung,
      out: { carcass, condemned },
      turnedAway: 0,
      fromBefore: { inLairage: 0, onLine: 0 },
      inLairage: 0,
      onLine: 0,
    },
    stages,
    crews: [],
    sections: sections.map((name, s) => ({ name, wip: wip[s]!.queue() })),
    limits: [limitOf("Stun to stick", null, 10, stunToStick), limitOf("Stick to evisceration", null, 900, stickToOpen)],
    timeInSystem: syntheticTally(inSystem),
    loads,
    chains: [],
    gates: [],
    stunned: null,
    vessels: [],
    sharedBreakdowns: [],
    masses: { liveKg: 0, byProductsKg: {}, outKg: {}, onLineKg: 0, carcassLiveKg: 0 },
    lairage: queues[1]!.queue(),
    traces: {
      queues: stages.map((stage, i) => queues[i]!.trace(stage.name, second)),
      wip: sections.map((name, s) => wip[s]!.trace(name, second)),
      out: outTrace.trace("out", second),
      arrived: arrivedTrace.trace("arrived", second),
      hung: hungTrace.trace("heads hung", second),
      entered: dwells.map(({ name }, index) => enteredTraces[index]!.trace(name, second)),
      crews: [],
      states: stages.map((stage, i) => ({
        name: stage.name,
        endSeconds: second,
        binSeconds: BIN,
        seconds: stateBins[i]!,
      })),
    },
  };
}

/** From the first bin with work to the last one. */
function ownTimeOf(bins: readonly number[]): OwnTime {
  const worked = bins.flatMap((seconds, cell) =>
    cell % STATE_COUNT === WORKING && seconds > 0 ? [Math.floor(cell / STATE_COUNT)] : [],
  );
  const [from, to] = [worked[0]!, worked.at(-1)! + 1];
  const stateSeconds = Array.from({ length: STATE_COUNT }, (_, state) => {
    let sum = 0;
    for (let bin = from; bin < to; bin++) sum += bins[bin * STATE_COUNT + state]!;
    return sum;
  });
  return { fromSeconds: from * BIN, toSeconds: to * BIN, stateSeconds };
}

function limitOf(name: string, minSeconds: number | null, maxSeconds: number | null, values: number[]): LimitRecord {
  const beyond = values.filter((value) => value > (maxSeconds ?? Infinity) || value < (minSeconds ?? -Infinity)).length;
  return { name, minSeconds, maxSeconds, tally: syntheticTally(values), beyond };
}

/** Moments, quantiles and bins (relative width 0.9 %) of a list of values in seconds. */
export function syntheticTally(values: readonly number[]): Tally {
  const sorted = [...values].sort((a, b) => a - b);
  const count = sorted.length;
  const mean = sorted.reduce((sum, value) => sum + value, 0) / count;
  const at = (share: number) => sorted[Math.min(count - 1, Math.floor(share * count))]!;
  const bins = new Map<number, number>();
  for (const value of sorted) {
    const key = Math.floor(Math.log(Math.max(value, 1e-3)) / Math.log(1.009));
    bins.set(key, (bins.get(key) ?? 0) + 1);
  }
  return {
    count,
    mean,
    sd: Math.sqrt(sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, count - 1)),
    min: sorted[0]!,
    max: sorted[count - 1]!,
    quantiles: {
      p05: at(0.05),
      p25: at(0.25),
      p50: at(0.5),
      p75: at(0.75),
      p90: at(0.9),
      p95: at(0.95),
      p99: at(0.99),
    },
    bins: [...bins].map(([key, n]) => ({ from: 1.009 ** key, to: 1.009 ** (key + 1), count: n })),
  };
}
