import { formatPath, isRecord } from "../../../sim/asked/plan/index.ts";
import { formatDecimals, readClock, readQuantity, time, writeClock } from "../../../sim/text/units/index.ts";
import type { Control } from "./control.ts";
import { timeControls } from "./timeControls.ts";

const LOADS = "Lorries and crates";
const STREAM = "Arrivals";

type Json = Record<string, unknown>;

/** Lorry times and crates, or the time between heads that come one by one. */
export function supplyControls(plan: Json): Control[] {
  const supply = isRecord(plan.supply) ? plan.supply : {};
  if (isRecord(supply.stream)) {
    const path = formatPath(["supply", "stream", "interarrival"]);
    return timeControls(STREAM, "Time between heads", path, supply.stream.interarrival);
  }
  if (!Array.isArray(supply.loads)) return [];
  return [shiftControl(plan, supply.loads), ...spacingControl(supply.loads), ...crateControls(plan)];
}

/** All lorries but the first so many minutes earlier or later; no lorry comes before the day's clock starts. */
function shiftControl(plan: Json, loads: readonly unknown[]): Control {
  const start = startClock(plan);
  return {
    id: "supply.loads shift",
    group: LOADS,
    label: loads.length > 1 ? "All lorries after the first: earlier or later" : "Lorries: earlier or later",
    path: "supply.loads",
    base: 0,
    min: -120,
    max: 180,
    step: 5,
    words: (minutes) =>
      minutes === 0 ? "as planned" : `${formatDecimals(Math.abs(minutes), 0)} min ${minutes < 0 ? "earlier" : "later"}`,
    change: (json, minutes) =>
      eachLoad(json, (load, index, count) => {
        const at = readClock(load.at).value;
        if (at === null || (index === 0 && count > 1)) return load;
        return { ...load, at: writeClock(Math.max(start, at + minutes * 60)) };
      }),
  };
}

/** Time between the lorries of a load that comes again and again. */
function spacingControl(loads: readonly unknown[]): Control[] {
  const first = loads.find((load) => isRecord(load) && isRecord(load.repeat));
  if (!isRecord(first) || !isRecord(first.repeat)) return [];
  const base = readQuantity(time, first.repeat.every).value;
  if (base === null) return [];
  return [
    {
      ...{ id: "supply.loads spacing", group: LOADS, label: "Time between lorries", path: "supply.loads" },
      ...{ base: base / 60, min: Math.max(5, Math.round(base / 120)), max: Math.round(base / 30), step: 5 },
      words: (minutes) => `${formatDecimals(minutes, 0)} min`,
      change: (json, minutes) =>
        eachLoad(json, (load) =>
          isRecord(load.repeat) ? { ...load, repeat: { ...load.repeat, every: `${minutes} min` } } : load,
        ),
    },
  ];
}

function crateControls(plan: Json): Control[] {
  const handling = isRecord(plan.liveHandling) ? plan.liveHandling : {};
  const count = (key: string, label: string, base: unknown, most: number): Control[] =>
    typeof base !== "number"
      ? []
      : [
          {
            ...{ id: `liveHandling.${key}`, group: LOADS, label, path: `liveHandling.${key}`, base },
            ...{ min: 1, max: Math.max(most, base * 2), step: base > 60 ? 10 : 1 },
            words: (value) => formatDecimals(value, 0),
            change: (_, value) => value,
          },
        ];
  return [
    ...count("lairageCrates", "Crates the lairage can hold", handling.lairageCrates, 60),
    ...count("cratesAtHanging", "Crates at the hanging point", handling.cratesAtHanging ?? 2, 10),
  ];
}

function startClock(plan: Json): number {
  const day = isRecord(plan.day) ? plan.day : {};
  const shifts = Array.isArray(day.shifts) && isRecord(day.shifts[0]) ? day.shifts[0] : {};
  return readClock(day.start).value ?? readClock(shifts.from).value ?? 0;
}

function eachLoad(json: unknown, change: (load: Json, index: number, count: number) => Json): unknown {
  if (!Array.isArray(json)) return json;
  return json.map((load, index) => (isRecord(load) ? change(load, index, json.length) : load));
}
