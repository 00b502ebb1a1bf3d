import type { DayOptions } from "../../../sim/day/engine/index.ts";
import { interleaved, probe } from "../measure.ts";
import { type Section, shown } from "../section.ts";

const EXTRAS: Record<string, Partial<DayOptions>> = {
  nothing: {},
  "traces in bins": { traces: "binned" },
  "every step": { traces: "exact" },
  "every head": { perHead: true },
  "what the end was owed to": { binding: true },
  "conservation checked at every event": { check: true },
};

/** What traces, the head table and the checks cost on a day with every feature. */
export function extras(): Section {
  const section: Section = {
    title: "What else is recorded or checked on the day with every feature",
    rows: [["recorded", "ms/day", "x plain", "peak MB"]],
    figures: {},
  };
  const found = interleaved(
    2,
    Object.values(EXTRAS).map(
      (options) => () =>
        probe({ kind: "plan", file: "every-part.json", heads: 6000, rounds: options.check ? 3 : 15, options }),
    ),
  );
  Object.keys(EXTRAS).forEach((name, index) => {
    const { milliseconds, peakMegabytes } = found[index]!;
    section.rows.push([name, ...[milliseconds, milliseconds / found[0]!.milliseconds, peakMegabytes].map(shown)]);
    section.figures[`${name}, ms`] = milliseconds;
  });
  return section;
}
