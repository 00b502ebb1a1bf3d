import { formatPath, isRecord } from "../../../sim/asked/plan/index.ts";
import { byKind, stageKind } from "../../../sim/text/kinds/index.ts";
import { formatDecimals, formatDuration, readQuantity, time } from "../../../sim/text/units/index.ts";
import type { Control } from "./control.ts";
import { supplyControls } from "./supplyControls.ts";
import { meanControl, timeControls } from "./timeControls.ts";

const MAX_MINUTES = 60;

type Json = Record<string, unknown>;

type Step = string | number;

/** Everything that can be moved in a plan, group by group in line order. `plan` is the JSON of a sound plan. */
export function controlsOf(plan: unknown): Control[] {
  if (!isRecord(plan)) return [];
  const breaks = list(plan.day, "breaks").flatMap(breakControl);
  const stages = list(plan, "line").flatMap((stage) => stageControls(plan, stage));
  return [...supplyControls(plan), ...stages, ...list(plan, "sharedBreakdowns").flatMap(sharedControls), ...breaks];
}

/** How often a breakdown that stops several stages strikes, and how long its repair takes. */
function sharedControls({ name, uptime, repair }: Json): Control[] {
  const group = String(name);
  const path = (key: string) => formatPath(["sharedBreakdowns", group, key]);
  return [
    ...meanControl(group, "Running time between breakdowns", path("uptime"), uptime),
    ...meanControl(group, "Repair time", path("repair"), repair),
  ];
}

function stageControls(plan: Json, stage: Json): Control[] {
  const name = String(stage.name);
  const at = ["line", name];
  if (stage.leftOut === true) return [];
  return byKind(
    { kind: stageKind(stage.kind) ?? "station" },
    {
      station: () => [
        ...workplaceControls(plan, stage, at),
        ...countControl(name, "Places before it", [...at, "buffer"], stage.buffer === undefined ? 0 : stage.buffer, {
          min: 0,
          most: 60,
        }),
        ...stopControls(stage, at),
      ],
      dwell: () => [
        ...countControl(name, "Places", [...at, "places"], stage.places, {
          min: 1,
          most: 5000,
          multiple: stage.headsPerHook,
        }),
        ...timeControls(name, "Time inside", formatPath([...at, "dwell"]), stage.dwell),
      ],
      chain: () => [
        ...chainSpeed(name, at, stage),
        ...list(stage, "stations").flatMap((station) =>
          workplaceControls(plan, station, [...at, "stations", String(station.name)]),
        ),
      ],
    },
  );
}

/** What a station has, on a chain or not: positions, people, cycle time and its variation. */
function workplaceControls(plan: Json, station: Json, at: Step[]): Control[] {
  const name = String(station.name);
  return [
    ...countControl(name, "Positions", [...at, "positions"], station.positions ?? 1, { min: 1, most: 16 }),
    ...crewsOf(station).flatMap((crew) => peopleControl(plan, name, crew)),
    ...timeControls(name, "Cycle time", formatPath([...at, "cycle"]), station.cycle),
    ...rateControl(name, [...at, "rate"], station.rate),
  ];
}

/** One control for each crew that may work there; the same crew has the same control wherever it works. */
function peopleControl(plan: Json, group: string, crew: string): Control[] {
  const people = list(plan, "crews").find(({ name }) => name === crew)?.people;
  const base =
    typeof people === "number" ? people : isRecord(people) ? Math.max(0, ...numbers(Object.values(people))) : 0;
  if (base === 0) return [];
  const path = formatPath(["crews", crew, "people"]);
  const least = Math.min(base, leastPeople(plan, crew));
  return [
    {
      id: path,
      group,
      label: `People in crew “${crew}”`,
      path,
      base,
      min: least,
      max: Math.max(12, base * 2),
      step: 1,
      words: (value) => formatDecimals(value, 0),
      change: (json, value) => (isRecord(json) ? eachShift(json, value - base) : value),
    },
  ];
}

/** What one position takes at most where no other crew can stand in: with fewer a plan is not sound. */
function leastPeople(plan: Json, crew: string): number {
  const stations = list(plan, "line").flatMap((stage) => [stage, ...list(stage, "stations")]);
  const needs = stations
    .filter((station) => String(crewsOf(station)) === crew)
    .map(({ peoplePerPosition }) => (typeof peoplePerPosition === "number" ? peoplePerPosition : 1));
  return Math.max(0, ...needs);
}

/** Present in a shift: so many more or fewer; a shift without anybody stays without. */
function eachShift(people: Json, more: number): Json {
  const entries = Object.entries(people).map(([shift, count]) => {
    return [shift, typeof count === "number" && count > 0 ? Math.max(0, count + more) : count];
  });
  return Object.fromEntries(entries);
}

/** `multiple`: the plan takes only multiples of it (heads on one hook). */
function countControl(
  group: string,
  label: string,
  at: Step[],
  base: unknown,
  { min, most, multiple: written }: { min: number; most: number; multiple?: unknown },
): Control[] {
  if (typeof base !== "number") return [];
  const path = formatPath(at);
  const multiple = typeof written === "number" ? written : 1;
  const step = base > 200 ? multiple * 5 : multiple;
  return [
    {
      ...{ id: path, group, label, path, base, step },
      ...{ min: Math.max(min, min === 0 ? 0 : multiple), max: Math.max(most, base * 2) },
      words: (value) => formatDecimals(value, 0),
      change: (_, value) => value,
    },
  ];
}

function rateControl(group: string, at: Step[], written: unknown): Control[] {
  const found = typeof written === "string" ? /^([\d.]+)\s*(\/\w+)$/u.exec(written) : null;
  if (found === null) return [];
  const [base, unit] = [Number(found[1]), found[2]!];
  return [scaledControl(group, `Rate of one position, heads${unit}`, formatPath(at), base, unit)];
}

function chainSpeed(group: string, at: Step[], stage: Json): Control[] {
  const found = typeof stage.speed === "string" ? /^([\d.]+)\s*(m\/min|m\/s)$/u.exec(stage.speed) : null;
  if (found === null) return [];
  return [scaledControl(group, "Chain speed", formatPath([...at, "speed"]), Number(found[1]), found[2]!)];
}

function scaledControl(group: string, label: string, path: string, base: number, unit: string): Control {
  const step = 10 ** Math.floor(Math.log10(base / 20));
  const digits = Math.max(0, -Math.round(Math.log10(step)));
  return {
    id: path,
    group,
    label,
    path,
    base,
    min: Math.max(step, Math.round((base * 0.4) / step) * step),
    max: Math.round((base * 2.5) / step) * step,
    step,
    words: (value) => `${formatDecimals(value, digits)} ${unit}`,
    change: (_, value) => `${Number(value.toFixed(6))} ${unit}`,
  };
}

/** Stops: how often and how long those of the plan are; or so many short ones in an hour where it has none. */
function stopControls(stage: Json, at: Step[]): Control[] {
  const group = String(stage.name);
  const stops = list(stage, "breakdowns");
  if (stops.length === 0) return [addedStops(group, formatPath([...at, "breakdowns"]))];
  return stops.flatMap((stop) => {
    const path = (key: string) => formatPath([...at, "breakdowns", String(stop.name), key]);
    return [
      ...meanControl(group, `“${stop.name}”: running time between breakdowns`, path("uptime"), stop.uptime),
      ...meanControl(group, `“${stop.name}”: repair time`, path("repair"), stop.repair),
    ];
  });
}

function addedStops(group: string, path: string): Control {
  return {
    id: path,
    group,
    label: "Extra short breakdowns, about 1 min each",
    path,
    base: 0,
    min: 0,
    max: 12,
    step: 1,
    words: (value) => (value === 0 ? "none" : `${formatDecimals(value, 0)} per running hour`),
    change: (json, value) => {
      if (value === 0) return json;
      const uptime = { exponential: { mean: `${Number((3600 / value).toPrecision(6))} s` } };
      return [{ name: "short stop", uptime, repair: { lognormal: { mean: "1 min", cv: 0.5 } } }];
    },
  };
}

function crewsOf({ crew }: Json): string[] {
  if (typeof crew === "string") return [crew];
  return Array.isArray(crew) ? crew.filter((name) => typeof name === "string") : [];
}

function list(holder: unknown, key: string): Json[] {
  const value = isRecord(holder) ? holder[key] : undefined;
  return Array.isArray(value) ? value.filter(isRecord) : [];
}

function numbers(values: unknown[]): number[] {
  return values.filter((value) => typeof value === "number");
}

/** How long a planned break or pause lasts, in minutes. */
function breakControl(pause: Record<string, unknown>): Control[] {
  const seconds = readQuantity(time, pause.length).value;
  if (seconds === null) return [];
  const path = formatPath(["day", "breaks", String(pause.name), "length"]);
  const base = seconds / 60;
  return [
    {
      id: path,
      group: "Breaks and planned stops",
      label: `Length of “${pause.name}”`,
      path,
      base,
      min: Math.min(1, base),
      max: Math.max(MAX_MINUTES, base * 2),
      step: 1,
      words: (minutes) => formatDuration(minutes * 60),
      change: (_, minutes) => `${minutes} min`,
    },
  ];
}
