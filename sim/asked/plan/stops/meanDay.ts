import { writtenMeanOf } from "../../../maths/varying/index.ts";
import type { Plan } from "../plan.ts";
import { type MeanUnit, meanUnits } from "./meanUnits.ts";
import { offDuty, plannedStops, type Window } from "./stopWindows.ts";

/** So many heads say how stops meet; a capacity run has more than any day. */
const MAX_HEADS = 12_000;

/**
 * When the last work on a head ends, seconds, if every time is its mean: heads follow each other in order, each station
 * with its positions, places and people, blocking after service (a recursion over heads and stages, no random number).
 *
 * Left out: removals, diversions, weights, gates, vessels, walking, absences, computed chilling, and what a head can
 * lose to a window that it passes unfinished. So it tells how planned stops, places and times fit, not how days are.
 * `placesOf` gives some stages other places than the plan's.
 */
export function meanDayEnd(plan: Plan, placesOf: ReadonlyMap<string, number> = new Map()): number {
  const units = meanUnits(plan).map((unit) => ({ ...unit, places: placesOf.get(unit.name) ?? unit.places }));
  return new MeanDay(plan, units).run(arrivalsOf(plan));
}

/** When the last head begins at each stage of such a day, seconds, by every name of the stage (a chain's stations too). */
export function lastBegins(plan: Plan): Map<string, number> {
  const units = meanUnits(plan);
  const day = new MeanDay(plan, units);
  day.run(arrivalsOf(plan));
  return new Map(units.flatMap(({ names }, at) => names.map((name) => [name, day.begun[at]!] as const)));
}

/** When heads are there, in order; at most as many as are worth following. */
function arrivalsOf({ supply, day }: Plan): Float64Array {
  if (supply.kind === "loads") {
    const times = supply.loads.flatMap(({ atSeconds, delay, crates, headsPerCrate, comesShare }) => {
      const arrived = atSeconds + (delay === null ? 0 : writtenMeanOf(delay));
      return new Array<number>(Math.round(crates * headsPerCrate * comesShare)).fill(arrived);
    });
    return Float64Array.from(times.slice(0, MAX_HEADS)).sort();
  }
  const spacing = supply.kind === "stream" ? writtenMeanOf(supply.interarrival) : 0;
  const first = supply.kind === "stream" ? spacing : (day.shifts[0]?.fromSeconds ?? 0);
  return Float64Array.from({ length: Math.min(supply.heads, MAX_HEADS) }, (_, head) => first + head * spacing);
}

/** A stop that waits until a stretch is empty. */
interface Due {
  at: number;
  length: number;
  /** Where it is put once it begins. */
  window: Window;
}

class MeanDay {
  private readonly units: readonly MeanUnit[];
  private readonly crews: Map<string, Window[]>;
  private readonly stages: Map<string, Window[]>;
  private readonly due: Due[];
  private readonly stretchFrom: number;
  private readonly stretchTo: number;
  private readonly hangingEnds: number;
  /** By unit and head: when it leaves its place there; when the head before began. */
  private readonly left: Float64Array[] = [];
  readonly begun: Float64Array;
  /** When the last head that began the stretch was through it. */
  private through = 0;

  constructor(plan: Plan, units: readonly MeanUnit[]) {
    const { safeStop, closing } = plan.day;
    this.units = units;
    this.stretchFrom = safeStop === null ? -1 : unitIndex(units, safeStop.from);
    this.stretchTo = safeStop === null ? -2 : unitIndex(units, safeStop.to);
    this.hangingEnds = closing.rule === "finish" ? Infinity : closing.atSeconds;
    this.begun = new Float64Array(units.length).fill(-Infinity);
    const { crews, stages } = plannedStops(plan);
    const stretch = safeStop === null ? [] : units.slice(this.stretchFrom, this.stretchTo + 1);
    const kept = {
      crews: new Set(stretch.flatMap(({ manned }) => manned.flat())),
      stages: new Set(stretch.flatMap((u) => u.stops)),
    };
    this.due = [];
    this.crews = new Map(
      plan.crews.map(({ name, people }) => {
        const own = crews.get(name)!;
        const windows = kept.crews.has(name) ? this.putOff(own) : [...own];
        return [name, [...windows, ...offDuty(plan, people)].sort((a, b) => a.from - b.from)];
      }),
    );
    // The windows of a crew that waits for the stretch are put into the list that its units look at.
    this.stages = new Map([...stages].map(([name, own]) => [name, kept.stages.has(name) ? this.putOff(own) : own]));
    this.due.sort((a, b) => a.at - b.at);
  }

  /** Windows that stand far away until they begin. */
  private putOff(own: readonly Window[]): Window[] {
    return own.map(({ from, to }) => {
      const window = { from: Infinity, to: Infinity };
      this.due.push({ at: from, length: to - from, window });
      return window;
    });
  }

  run(arrivals: Float64Array): number {
    const { units, left } = this;
    for (const _ of units) left.push(new Float64Array(arrivals.length));
    let end = 0;
    for (let head = 0; head < arrivals.length; head++) {
      const worked = this.passLine(head, arrivals[head]!);
      if (worked === null) break;
      end = Math.max(end, worked);
    }
    return end;
  }

  /** When the last work on the head ends; null when it is not hung any more. */
  private passLine(head: number, arrival: number): number | null {
    const { units, left } = this;
    let ready = arrival;
    let worked = arrival;
    for (let at = 0; at < units.length; at++) {
      const unit = units[at]!;
      const begins = this.begin(at, head, ready);
      if (at === 0 && begins >= this.hangingEnds) return null;
      this.begun[at] = begins;
      const ends = unit.flow === "carried" ? this.ride(unit, begins) : begins + unit.seconds;
      if (unit.flow !== "held") worked = ends;
      const place = at + 1 < units.length ? before(left[at + 1]!, head, units[at + 1]!.places) : -Infinity;
      const order = unit.flow === "served" ? -Infinity : before(left[at]!, head, 1);
      ready = Math.max(ends, place, order);
      left[at]![head] = ready;
      if (at === this.stretchTo) this.through = ends;
    }
    return worked;
  }

  private begin(at: number, head: number, ready: number): number {
    const unit = this.units[at]!;
    if (unit.flow === "held") return ready;
    const free = unit.flow === "carried" ? this.begun[at]! + unit.spacing : before(this.left[at]!, head, unit.servers);
    const could = Math.max(ready, free);
    return at === this.stretchFrom ? this.beginStretch(could) : this.opens(unit, could);
  }

  /** A stop that is due begins when the last head is through; none begins the stretch before all on it are back. */
  private beginStretch(could: number): number {
    const { due, units } = this;
    let begins = could;
    for (;;) {
      while (due.length > 0 && due[0]!.at <= begins) this.beginStop(due.shift()!);
      let opens = begins;
      for (let at = this.stretchFrom; at <= this.stretchTo; at++)
        opens = Math.max(opens, this.opens(units[at]!, begins));
      if (opens === begins) return begins;
      begins = opens;
    }
  }

  private beginStop({ at, length, window }: Due): void {
    window.from = Math.max(at, this.through);
    window.to = window.from + length;
  }

  /** The ride lasts longer by the time for which the chain stands. */
  private ride(unit: MeanUnit, begins: number): number {
    let now = begins;
    let rest = unit.seconds;
    for (;;) {
      const stops = this.nextStop(unit, now);
      if (now + rest <= stops) return now + rest;
      rest -= stops - now;
      now = this.opens(unit, stops);
    }
  }

  private nextStop(unit: MeanUnit, from: number): number {
    let next = Infinity;
    const look = (windows: readonly Window[] | undefined) => {
      for (const window of windows ?? []) if (window.from > from && window.from < next) next = window.from;
    };
    for (const names of unit.manned) for (const name of names) look(this.crews.get(name));
    for (const name of unit.stops) look(this.stages.get(name));
    return next;
  }

  /** The first moment from `time` on at which the unit may begin a head. */
  private opens(unit: MeanUnit, time: number): number {
    let now = time;
    for (;;) {
      const later = this.reopens(unit, now);
      if (later === now) return now;
      now = later;
    }
  }

  private reopens({ manned, stops }: MeanUnit, now: number): number {
    let opens = now;
    for (const names of manned) {
      let first = Infinity;
      for (const name of names) first = Math.min(first, endOf(this.crews.get(name), now));
      opens = Math.max(opens, first);
    }
    for (const name of stops) opens = Math.max(opens, endOf(this.stages.get(name), now));
    return opens;
  }
}

function unitIndex(units: readonly MeanUnit[], name: string): number {
  return units.findIndex((unit) => unit.names.includes(name));
}

/** When the head `count` before this one left; long ago for the first ones. */
function before(left: Float64Array, head: number, count: number): number {
  return count > head ? -Infinity : left[head - count]!;
}

/** The end of the window that `now` lies in, or `now`. */
function endOf(windows: readonly Window[] | undefined, now: number): number {
  if (windows === undefined) return now;
  for (const { from, to } of windows) if (from <= now && now < to) return to;
  return now;
}
