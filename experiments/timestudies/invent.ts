import { readFileSync, writeFileSync } from "node:fs";
import { readPlan } from "../../sim/asked/plan/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { Sampler, uniformStream, type Varying } from "../../sim/maths/random/index.ts";
import { parametersOf, type Quantity, simulatedValues } from "../../sim/questions/calibrate/index.ts";

/*
 * Makes the tables of this folder out of random numbers: npx tsx experiments/timestudies/invent.ts
 * Nobody was ever timed. Most columns are drawn from the figures of the invented plant Ferncote, so that what comes out
 * of "gambrel fit" can be held against what went in.
 */

const SEED = "stopwatch";

function drawn(name: string, law: Varying, count: number, decimals: number): number[] {
  const sampler = new Sampler(law, uniformStream(SEED, 0, name, "time study"));
  return Array.from({ length: count }, () => Number(sampler.draw().toFixed(decimals)));
}

const lognormal = (mean: number, cv: number): Varying => ({ family: "lognormal", mean, cv });

/** Cycle times in seconds, as many as a morning gives. */
export function cycles(): string {
  const laws: Record<string, Varying> = {
    hanging: lognormal(14.5, 0.3),
    stunning: lognormal(4.6, 0.12),
    sticking: lognormal(4.2, 0.15),
    "hind-leg cutting": lognormal(4.8, 0.2),
    "pre-loosening": lognormal(10.2, 0.25),
    skinning: { family: "triangular", min: 4.2, mode: 4.6, max: 5.4 },
    "abdomen opening": lognormal(4.7, 0.2),
    evisceration: lognormal(16.8, 0.28),
    inspection: lognormal(4.6, 0.3),
    "final trim": lognormal(9.5, 0.35),
    "chiller loading": lognormal(4.4, 0.2),
  };
  const columns = Object.entries(laws).map(([name, law]) => ({
    heading: `${name} (s)`,
    cells: drawn(name, law, 60, name === "skinning" ? 2 : 1).map(String),
  }));
  return table(columns);
}

/** Jams of the skinning machine over some days: minutes of running up to each, seconds to clear it. */
export function stops(): string {
  const uptimes = drawn("jam uptime", { family: "exponential", mean: 16 }, 48, 1).map(String);
  // Each day's watching ends while the machine runs.
  for (const evening of [11, 23, 35, 47]) uptimes[evening] += "+";
  return table([
    { heading: "skinning: jam uptime (min)", cells: uptimes },
    { heading: "skinning: jam repair (s)", cells: drawn("jam repair", lognormal(65, 0.6), 44, 0).map(String) },
  ]);
}

/** What a careless study looks like; one fault in each column. */
export function careless(): string {
  const steady = drawn("steady", lognormal(9.5, 0.2), 60, 1);
  const quick = drawn("quick", lognormal(5.2, 0.12), 60, 1);
  const slow = drawn("slow", lognormal(9.4, 0.12), 60, 1);
  const seconds = drawn("rounded", lognormal(4.6, 0.12), 60, 0);
  return table([
    { heading: "final trim (s)", cells: steady.map((value, i) => (value * (1 + 0.008 * i)).toFixed(1)) },
    { heading: "hand skinning (s)", cells: quick.map((value, i) => String(i % 5 < 2 ? slow[i] : value)) },
    { heading: "stunning (s)", cells: seconds.map(String) },
    { heading: "inspection (s)", cells: steady.map((value, i) => String(i === 20 ? 0 : i === 41 ? 95 : value)) },
    { heading: "sticking (s)", cells: quick.slice(0, 6).map(String) },
  ]);
}

const DAYS = 6;
const HOURS = [6, 7, 8, 9, 10, 11, 12, 13];

/** Days of a Ferncote whose evisceration takes a tenth longer than its plan says: what "gambrel calibrate" should find. */
export async function observed(): Promise<string> {
  const file = new URL("../plans/ferncote.json", import.meta.url);
  const { plan } = readPlan(JSON.parse(readFileSync(file, "utf8")), { readText: () => "" });
  const slower = parametersOf(plan!).find(({ path }) => path === "line.evisceration.cycle")!;
  const zero = plan!.day.startClockSeconds;
  const counts = HOURS.map(
    (hour): Quantity => ({
      kind: "count",
      label: `${clock(hour * 3600)}-${clock((hour + 1) * 3600)}`,
      fromSeconds: hour * 3600 - zero,
      toSeconds: (hour + 1) * 3600 - zero,
    }),
  );
  const finish = responsesOf(plan!).find(({ key }) => key === "finish")!;
  const quantities: Quantity[] = [...counts, { kind: "response", label: finish.label, info: finish }];
  const values = await simulatedValues(slower.moved(plan!, 1.1), DAYS, {
    ...{ seed: SEED, quantities, countedAt: "chiller loading", mostEvents: 1e7, beforeDay: async () => {} },
  });
  const days = Array.from({ length: DAYS }, (_, day) => `day ${day + 1}`);
  return table([
    { heading: "day", cells: days },
    ...counts.map(({ label }, i) => ({ heading: label, cells: values[i]!.map(String) })),
    { heading: "finish", cells: values.at(-1)!.map((seconds) => clock(seconds! + zero)) },
  ]);
}

function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

function table(columns: { heading: string; cells: string[] }[]): string {
  const rows = Math.max(...columns.map(({ cells }) => cells.length));
  const lines = Array.from({ length: rows }, (_, row) => columns.map(({ cells }) => cells[row] ?? "").join(","));
  return `${[columns.map(({ heading }) => heading).join(","), ...lines].join("\n")}\n`;
}

export const TABLES: Record<string, () => string> = {
  "ferncote-cycles.csv": cycles,
  "ferncote-stops.csv": stops,
  "careless.csv": careless,
};

if (import.meta.filename === process.argv[1]) {
  for (const [name, make] of Object.entries(TABLES)) writeFileSync(new URL(name, import.meta.url), make());
  writeFileSync(new URL("ferncote-observed.csv", import.meta.url), await observed());
}
