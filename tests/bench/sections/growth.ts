import { interleaved, probe } from "../measure.ts";
import { type Section, shown } from "../section.ts";
import type { Task } from "../tasks.ts";

const WAYS = ["events", "engine"] as const;

/** Longer days on a line of three stations: time per event and memory should stay where they are. */
export function growthWithHeads(): Section {
  const section = table("A longer day, 3 stations", "heads");
  for (const heads of [1e4, 1e5, 1e6, 1e7])
    measure(section, heads, { stations: 3, heads, rounds: heads > 1e6 ? 1 : 3 });
  return section;
}

/** Longer lines, about as many events each. */
export function growthWithStations(): Section {
  const section = table("A longer line, 1.5 million events", "stations");
  for (const stations of [10, 30, 100, 300]) {
    measure(section, stations, { stations, heads: 1.5e6 / stations, rounds: 3 });
  }
  return section;
}

function table(title: string, size: string): Section {
  const head = [size, ...WAYS.flatMap((way) => [`${nameOf(way)}, ns/event`, "peak MB"])];
  return { title, rows: [head], figures: {} };
}

function nameOf(way: (typeof WAYS)[number]): string {
  return way === "events" ? "by events" : "engine";
}

function measure(section: Section, size: number, task: { stations: number; heads: number; rounds: number }): void {
  const tasks = WAYS.map((by): Task => ({ kind: "serial line", by, ...task }));
  const found = interleaved(
    task.rounds > 1 ? 2 : 1,
    tasks.map((each) => () => probe(each)),
  );
  section.rows.push([
    String(size),
    ...found.flatMap(({ nanosecondsPerEvent, peakMegabytes }) => [shown(nanosecondsPerEvent), shown(peakMegabytes)]),
  ]);
  WAYS.forEach((way, index) => {
    const { nanosecondsPerEvent, peakMegabytes } = found[index]!;
    section.figures[`${size}, ${nameOf(way)}, ns`] = nanosecondsPerEvent;
    section.figures[`${size}, ${nameOf(way)}, MB`] = peakMegabytes;
  });
}
