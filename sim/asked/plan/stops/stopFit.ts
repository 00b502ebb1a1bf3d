import type { Break, Plan } from "../plan.ts";
import { meanDayEnd } from "./meanDay.ts";
import { type MeanUnit, meanUnits } from "./meanUnits.ts";
import { plannedStops, type Window } from "./stopWindows.ts";

/** How the planned stops of a plan fit its places and times, reckoned with mean times (see `meanDayEnd`). Seconds. */
export interface StopFit {
  /** The most that any crew or stage of the line stands by plan, before the end of work. */
  plannedSeconds: number;
  /** By how much the stops put off the end of work. */
  lostSeconds: number;
  /** Where a stage pauses at another time than the next one that can stop, and the places between do not carry it. */
  gaps: StopGap[];
  /** The same breaks at times that cost less; null where none was found. */
  stagger: { breaks: Break[]; lostSeconds: number } | null;
  /** Places at one stage with which the breaks as they are cost less; null where none was found. */
  places: { stage: string; key: "places" | "buffer"; now: number; places: number; lostSeconds: number } | null;
}

/** `first` pauses `leadSeconds` before `second`; `first` is further down the line where `downstreamFirst`. */
export interface StopGap {
  first: string;
  second: string;
  downstreamFirst: boolean;
  atSeconds: number;
  leadSeconds: number;
  lengthSeconds: number;
  /** Stages with places between the two; what they hold in all and how much of it is free while heads flow. */
  between: string[];
  places: number;
  freePlaces: number;
  /** Heads a second that come meanwhile. */
  rate: number;
  /** For how long the places between carry on the one that goes on. */
  carriesSeconds: number;
}

/** A planned stop that is so much longer than planned, and by this part, is worth a word. */
const MIN_SECONDS = 120;
const MIN_PART = 0.1;
/** What is proposed saves at least this part of what is lost beyond the plan. */
const WORTH_PART = 0.5;

/** Whether a loss is so much more than planned that it has to be told. */
export function costsMoreThanPlanned(lostSeconds: number, plannedSeconds: number): boolean {
  return lostSeconds - plannedSeconds >= Math.max(MIN_SECONDS, MIN_PART * plannedSeconds);
}

/** Null where the plan has no planned stop on the line, or nobody is there in its last shift. Pure; some tens of milliseconds. */
export function stopFit(plan: Plan): StopFit | null {
  const units = meanUnits(plan);
  const stopping = units.flatMap((unit, at) => stoppingUnit(plan, unit, at));
  if (stopping.length === 0 || plan.day.closing.rule !== "finish") return null;
  const without = meanDayEnd(withBreaks(plan, []));
  const lost = (changed: Plan, places?: ReadonlyMap<string, number>) => {
    return meanDayEnd(changed, places) - (places === undefined ? without : meanDayEnd(withBreaks(changed, []), places));
  };
  const lostSeconds = lost(plan);
  const plannedSeconds = plannedStopSeconds(plan, without + lostSeconds);
  const found = { plannedSeconds, lostSeconds, gaps: gapsOf(plan, units, stopping), stagger: null, places: null };
  if (!costsMoreThanPlanned(lostSeconds, plannedSeconds)) return found;
  const enough = lostSeconds - WORTH_PART * (lostSeconds - plannedSeconds);
  return {
    ...found,
    stagger: betterStagger(plan, units, stopping, lost, enough),
    places: morePlaces(plan, units, stopping, lost, enough),
  };
}

/**
 * The most that any crew or stage on the line stands by plan between the day's start and `until`, seconds: breaks and
 * pauses that begin after it cost nothing.
 */
export function plannedStopSeconds(plan: Plan, until: number): number {
  const { crews, stages } = plannedStops(plan);
  const onLine = new Set(meanUnits(plan).flatMap(({ manned }) => manned.flat()));
  const lists = [...[...crews].filter(([name]) => onLine.has(name)).map(([, own]) => own), ...stages.values()];
  const total = (own: readonly Window[]) =>
    own.reduce((sum, { from, to }) => (from < until ? sum + (to - from) : sum), 0);
  return Math.max(0, ...lists.map(total));
}

function withBreaks(plan: Plan, breaks: Break[]): Plan {
  return { ...plan, day: { ...plan.day, breaks } };
}

interface Stopping {
  /** Row in the units. */
  at: number;
  windows: Window[];
}

/** When the unit stands by plan: all crews of one of its stations are away, or it pauses itself. */
function stoppingUnit(plan: Plan, unit: MeanUnit, at: number): Stopping[] {
  const { crews, stages } = plannedStops(plan);
  const away = unit.manned.flatMap((names) => names.map((name) => crews.get(name) ?? []).reduce(bothAway));
  const windows = [...away, ...unit.stops.flatMap((name) => stages.get(name) ?? [])].sort((a, b) => a.from - b.from);
  return windows.length === 0 ? [] : [{ at, windows }];
}

function bothAway(one: readonly Window[], other: readonly Window[]): Window[] {
  return one.flatMap((a) =>
    other
      .map((b) => ({ from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) }))
      .filter(({ from, to }) => to > from),
  );
}

/** Neighbours among those that stop, whose stops are apart by more than the places between can carry; the worst first. */
function gapsOf(plan: Plan, units: readonly MeanUnit[], stopping: readonly Stopping[]): StopGap[] {
  const rate = lineRate(plan, units);
  const gaps = stopping.slice(1).flatMap((down, row) => {
    const up = stopping[row]!;
    const found = down.windows.flatMap((window) => {
      const other = nearest(up.windows, window);
      return other === null ? [] : gapOf(units, { at: up.at, window: other }, { at: down.at, window }, rate);
    });
    return found.toSorted((a, b) => notCarried(b) - notCarried(a)).slice(0, 1);
  });
  return gaps.toSorted((a, b) => notCarried(b) - notCarried(a));
}

/** For how long the places between do not carry the one that goes on. */
function notCarried({ leadSeconds, lengthSeconds, carriesSeconds }: StopGap): number {
  return Math.min(leadSeconds, lengthSeconds) - carriesSeconds;
}

function nearest(windows: readonly Window[], { from }: Window): Window | null {
  return windows.reduce<Window | null>(
    (best, each) => (best === null || Math.abs(each.from - from) < Math.abs(best.from - from) ? each : best),
    null,
  );
}

/** One stop of a unit. */
interface UnitStop {
  at: number;
  window: Window;
}

function gapOf(
  units: readonly MeanUnit[],
  { at: up, window: upper }: UnitStop,
  { at: down, window: lower }: UnitStop,
  rate: number,
): StopGap[] {
  const downstreamFirst = lower.from < upper.from;
  const [first, second] = downstreamFirst ? [lower, upper] : [upper, lower];
  const lengthSeconds = Math.min(upper.to - upper.from, lower.to - lower.from);
  const leadSeconds = second.from - first.from;
  const inner = units.slice(up + 1, down);
  const target = units[down]!;
  const waiting = target.flow === "served" ? target.places - target.servers : 0;
  const places = inner.reduce((sum, unit) => sum + unit.places, 0) + waiting;
  const inFlow = inner.reduce((sum, unit) => sum + Math.min(unit.places, rate * unit.seconds), 0);
  const freePlaces = places - inFlow;
  const carriesSeconds = (downstreamFirst ? freePlaces : inFlow) / rate;
  if (Math.min(leadSeconds, lengthSeconds) <= carriesSeconds + 1) return [];
  const between = [
    ...inner.filter((unit) => unit.places > 0 && unit.flow !== "served"),
    ...(waiting > 0 ? [target] : []),
  ];
  const [upName, downName] = [units[up]!.name, target.name];
  return [
    {
      first: downstreamFirst ? downName : upName,
      second: downstreamFirst ? upName : downName,
      ...{ downstreamFirst, atSeconds: first.from, leadSeconds, lengthSeconds },
      ...{ between: between.map(({ name }) => name), places, freePlaces, rate, carriesSeconds },
    },
  ];
}

/** The target, or what the slowest stage does, heads a second. */
function lineRate({ targetHeadsPerSecond }: Plan, units: readonly MeanUnit[]): number {
  const slowest = Math.min(...units.map(unitRate));
  return targetHeadsPerSecond === null ? slowest : Math.min(targetHeadsPerSecond, slowest);
}

function unitRate({ flow, servers, seconds, spacing, places }: MeanUnit): number {
  if (flow === "carried") return 1 / spacing;
  return (flow === "held" ? places : servers) / Math.max(seconds, Number.MIN_VALUE);
}

type Lost = (plan: Plan, places?: ReadonlyMap<string, number>) => number;

/**
 * Two ways to lay the breaks: each crew goes when the last head that its neighbour let through has come down to it, or
 * all go at once. Each break keeps its length and the time at which the first one goes.
 */
function betterStagger(
  plan: Plan,
  units: readonly MeanUnit[],
  stopping: readonly Stopping[],
  lost: Lost,
  enough: number,
): StopFit["stagger"] {
  const tried = [wave(units, stopping), new Map<string, number>()]
    .map((later) => relaid(plan.day.breaks, later))
    .filter((breaks) => !breaksOverlap(breaks))
    .map((breaks) => ({ breaks, lostSeconds: lost(withBreaks(plan, breaks)) }));
  const [best] = tried.toSorted((a, b) => a.lostSeconds - b.lostSeconds);
  return best !== undefined && best.lostSeconds <= enough ? best : null;
}

/** Whether somebody would have two breaks at once. */
export function breaksOverlap(breaks: readonly Break[]): boolean {
  const own = breaks.flatMap(({ crews, atSeconds, laterSeconds, lengthSeconds }) =>
    crews.map((crew) => ({ crew, from: atSeconds + (laterSeconds[crew] ?? 0), lengthSeconds })),
  );
  return own.some((a, row) =>
    own
      .slice(row + 1)
      .some((b) => a.crew === b.crew && a.from < b.from + b.lengthSeconds && b.from < a.from + a.lengthSeconds),
  );
}

/** By crew: how long a head takes from the first stage that stops to the crew's own first stage that does, whole minutes. */
function wave(units: readonly MeanUnit[], stopping: readonly Stopping[]): Map<string, number> {
  const later = new Map<string, number>();
  const first = stopping[0]!.at;
  for (const { at } of stopping) {
    const seconds = units
      .slice(first, at)
      .reduce((sum, { flow, seconds }) => (flow === "served" ? sum : sum + seconds), 0);
    for (const name of units[at]!.manned.flat()) if (!later.has(name)) later.set(name, 60 * Math.floor(seconds / 60));
  }
  return later;
}

/** Breaks that touch or overlap are one round: the whole round is laid anew from its beginning. */
function relaid(breaks: readonly Break[], later: ReadonlyMap<string, number>): Break[] {
  let begin = -Infinity;
  let end = -Infinity;
  return breaks
    .toSorted((a, b) => a.atSeconds - b.atSeconds)
    .map((pause) => {
      const last = pause.atSeconds + Math.max(0, ...pause.crews.map((crew) => pause.laterSeconds[crew] ?? 0));
      const starts = last + pause.lengthSeconds;
      if (pause.atSeconds > end) begin = pause.atSeconds;
      end = Math.max(end, starts);
      return laidAt(pause, begin, later);
    });
}

function laidAt(pause: Break, begin: number, later: ReadonlyMap<string, number>): Break {
  const own = pause.crews.map((crew) => later.get(crew) ?? 0);
  const least = pause.stages.length > 0 ? 0 : Math.min(...own);
  const rest = pause.crews.map((crew, row) => [crew, own[row]! - least] as const).filter(([, seconds]) => seconds > 0);
  return { ...pause, atSeconds: begin + least, laterSeconds: Object.fromEntries(rest) };
}

/** The stage at which fewest more places bring the loss below `enough`; the others keep theirs. */
function morePlaces(
  plan: Plan,
  units: readonly MeanUnit[],
  stopping: readonly Stopping[],
  lost: Lost,
  enough: number,
): StopFit["places"] {
  const inner = units.slice(stopping[0]!.at + 1, stopping.at(-1)!.at + 1);
  const found = inner.flatMap((unit) => {
    if (unit.placesKey === null || unit.places === Infinity) return [];
    const lostWith = (places: number) => lost(plan, new Map([[unit.name, places]]));
    if (lostWith(Infinity) > enough) return [];
    const places = leastPlaces(unit.places, (count) => lostWith(count) <= enough);
    if (places === null) return [];
    const inWork = unit.flow === "served" ? unit.servers : 0;
    const { name: stage, placesKey: key } = unit;
    return [{ stage, key, now: unit.places - inWork, places: places - inWork, lostSeconds: lostWith(places) }];
  });
  return found.toSorted((a, b) => a.places - a.now - (b.places - b.now))[0] ?? null;
}

const MAX_PLACES = 1 << 16;

/** The least number above `now` for which it holds, which is taken to go on holding; null above any sense. */
function leastPlaces(now: number, holds: (places: number) => boolean): number | null {
  let low = now;
  let high = now + 1;
  while (!holds(high)) {
    low = high;
    high = now + 2 * (high - now);
    if (high > MAX_PLACES) return null;
  }
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
