import { type Best, interleaved, probe } from "../measure.ts";
import { compileLoop, runLoop } from "../reference/cLoop.ts";
import { type Section, shown } from "../section.ts";
import type { Measured } from "../tasks.ts";

const LINES = [
  { stations: 3, heads: 200_000 },
  { stations: 10, heads: 60_000 },
  { stations: 30, heads: 20_000 },
];
const TIMES = 4;
const ROUNDS = 4;

/** The engine against a loop in C and a loop on a priority queue, on saturated serial lines. */
export function serialLines(): Section {
  const withC = compileLoop();
  const section: Section = {
    title: "Saturated exponential lines, 5 places between: CPU time per event (one event a station visit)",
    rows: [["stations", "program", "ns/event", "million events/s", "x C loop", "heads/s (model)", "peak MB"]],
    figures: {},
  };
  for (const { stations, heads } of LINES) {
    const programs: Record<string, () => Measured> = {
      ...(withC ? { "C loop": () => runLoop(stations, heads) } : {}),
      "priority queue": () => probe({ kind: "priority queue", stations, heads, rounds: ROUNDS }),
      "engine, by events": () => probe({ kind: "serial line", by: "events", stations, heads, rounds: ROUNDS }),
      engine: () => probe({ kind: "serial line", by: "engine", stations, heads, rounds: ROUNDS }),
    };
    const names = Object.keys(programs);
    const found = interleaved(TIMES, Object.values(programs));
    const mark = withC ? found[0]!.nanosecondsPerEvent : Number.NaN;
    for (const [index, name] of names.entries()) add(section, stations, name, found[index]!, mark);
  }
  return section;
}

function add({ rows, figures }: Section, stations: number, name: string, found: Best, mark: number): void {
  const { nanosecondsPerEvent, headsPerSecond, peakMegabytes } = found;
  rows.push([
    String(stations),
    name,
    shown(nanosecondsPerEvent),
    shown(1e3 / nanosecondsPerEvent),
    shown(nanosecondsPerEvent / mark),
    headsPerSecond.toFixed(4),
    shown(peakMegabytes),
  ]);
  figures[`${stations} stations, ${name}, ns`] = nanosecondsPerEvent;
  figures[`${stations} stations, ${name}, MB`] = peakMegabytes;
}
