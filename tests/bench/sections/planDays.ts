import { interleaved, probe } from "../measure.ts";
import { type Section, shown } from "../section.ts";

const DAYS = [
  { name: "every feature, 6,000 heads", file: "every-part.json", heads: 6000 },
  { name: "Ferncote", file: "ferncote.json", heads: 0 },
  { name: "Tavelmoss", file: "tavelmoss-chains.json", heads: 0 },
  { name: "Sallowfield", file: "sallowfield-compact.json", heads: 0 },
];

/** Whole days of the example plans, the first of a process (cold) and the best of many. */
export function planDays(): Section {
  const section: Section = {
    title: "One day of a whole plan: CPU time",
    rows: [["plan", "heads", "events", "ms/day", "first day, ms", "ns/event", "peak MB"]],
    figures: {},
  };
  const found = interleaved(
    3,
    DAYS.map(
      ({ file, heads }) =>
        () =>
          probe({ kind: "plan", file, heads, rounds: 25 }),
    ),
  );
  DAYS.forEach(({ name }, index) => {
    const day = found[index]!;
    const { heads, events, milliseconds, coldMilliseconds, nanosecondsPerEvent, peakMegabytes } = day;
    const times = [milliseconds, coldMilliseconds, nanosecondsPerEvent, peakMegabytes];
    section.rows.push([name, String(heads), String(events), ...times.map(shown)]);
    section.figures[`${name}, ms`] = milliseconds;
  });
  return section;
}
