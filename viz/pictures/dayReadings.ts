import type { TraceColumns } from "../marks/index.ts";
import type { BottleneckColumns } from "./bottleneck.ts";
import type { ChillerColumns } from "./chiller.ts";
import type { CrewColumns } from "./crew.ts";
import type { HeadsOutColumns } from "./headsOut.ts";
import type { KillStopColumns } from "./killStop.ts";
import type { LoadColumns } from "./load.ts";
import type { QueueColumns, QueuePanel } from "./queue.ts";
import { spansOfStages } from "./spansOfStages.ts";
import type { StateColumns } from "./state.ts";
import { meansOnly, type TimeReadings, type TimeSeries } from "./timeReadings.ts";
import type { WipColumns } from "./wip.ts";

/** The instants of each picture of a day, from the columns it is drawn from. */

export function queueReadings(columns: QueueColumns): TimeReadings {
  return { ...scene(columns), series: columns.panels.map((panel) => queueSeries(panel, "heads")) };
}

export function wipReadings(columns: WipColumns): TimeReadings {
  const sections = columns.panels.flatMap((panel) => panel.sections);
  return {
    ...scene(columns),
    series: sections.map(({ name, values }) => plain(name, "heads", meansOnly(columns.binSeconds, values))),
  };
}

export function headsOutReadings(columns: HeadsOutColumns): TimeReadings {
  const series = columns.lines.map(({ role, label, shape, seconds, heads }) =>
    plain(
      role === "chiller" ? label.replace(/: [^:]*:\d\d$/, "") : LINE_NAMES[role],
      "heads",
      shape === "step" ? { kind: "exact", times: seconds, values: heads } : straight(seconds, heads),
    ),
  );
  return { ...scene(columns), series };
}

export function stateReadings(columns: StateColumns): TimeReadings {
  const series = columns.rows.flatMap((row) =>
    columns.states.map((state, index): TimeSeries => {
      const shares = row.shares[index]!.map((share) => share * 100);
      return { group: row.name, name: state, unit: "%", trace: meansOnly(columns.binSeconds, shares) };
    }),
  );
  return { ...scene(columns), series };
}

export function crewReadings(columns: CrewColumns): TimeReadings {
  const series = columns.panels.flatMap(({ name, busy, present }): TimeSeries[] => [
    { group: name, name: "with work in hand", unit: "people", trace: meansOnly(columns.binSeconds, busy) },
    { group: name, name: "on duty", unit: "people", trace: meansOnly(columns.binSeconds, present) },
  ]);
  return { ...scene(columns), series };
}

export function chillerReadings(columns: ChillerColumns): TimeReadings {
  return { ...scene(columns), series: columns.panels.map(({ label, unit, trace }) => plain(label, unit, trace)) };
}

export function loadReadings(columns: LoadColumns): TimeReadings {
  const spans = columns.loads.map((load) => {
    const turns = [load.arrivedSeconds, load.unloadedSeconds, load.emptiedSeconds, load.washedSeconds];
    const found = PHASES.flatMap((text, phase) => {
      const from = turns[phase] ?? null;
      const to = turns[phase + 1] ?? (phase < 2 ? columns.endSeconds : null);
      return from === null || to === null || to <= from ? [] : [{ from, to, text }];
    });
    return { name: load.name, spans: found };
  });
  return { ...scene(columns), series: columns.panels.map((panel) => queueSeries(panel, "crates")), spans };
}

export function bottleneckReadings(columns: BottleneckColumns): TimeReadings {
  const spansOf = spansOfStages(columns);
  const spans = columns.stages.map(({ name }) => ({
    name,
    spans: spansOf(name).map(({ from, to, kind }) => ({
      from,
      to,
      text: kind === "sole" ? "the bottleneck by itself" : "shifting",
    })),
  }));
  return { ...scene(columns), series: [], spans };
}

export function killStopReadings(columns: KillStopColumns): TimeReadings {
  let free = 0;
  const spans = columns.rows.flatMap(({ from, to, cause, where }) => {
    const found = [
      ...(from > free ? [{ from: free, to: from, text: NO_STOP }] : []),
      { from, to, text: `${cause}, ${where}` },
    ];
    free = to;
    return found;
  });
  const rest = columns.endSeconds > free ? [{ from: free, to: columns.endSeconds + 1, text: NO_STOP }] : [];
  return { ...scene(columns), series: [], spans: [{ name: "kill line", spans: [...spans, ...rest] }] };
}

/** A picture of a day with many stops shows the longest ones only. */
const NO_STOP = "no stop in this picture";

const PHASES = ["crates on the lorry", "in lairage", "crates to the washer"];
const LINE_NAMES = {
  arrived: "arrived",
  hung: "hung",
  out: "carcasses out",
  target: "target",
} as const;

function scene({ startClockSeconds, endSeconds }: { startClockSeconds: number; endSeconds: number }) {
  return { startClockSeconds, endSeconds, spans: [] };
}

function plain(name: string, unit: string, trace: TraceColumns): TimeSeries {
  return { group: "", name, unit, trace };
}

function queueSeries({ name, trace }: QueuePanel, unit: string): TimeSeries {
  return plain(name, unit, trace);
}

/** A line between points as means over minutes. */
function straight(seconds: readonly number[], heads: readonly number[]): TraceColumns {
  const minutes = Math.max(1, Math.ceil((seconds.at(-1) ?? 0) / 60));
  let next = 1;
  const values = Array.from({ length: minutes }, (_, minute) => {
    const at = Math.min(minute * 60 + 30, seconds.at(-1) ?? 0);
    while (next < seconds.length - 1 && seconds[next]! < at) next++;
    const [from, to] = [seconds[next - 1] ?? 0, seconds[next] ?? 1];
    const share = to > from ? Math.min(1, Math.max(0, (at - from) / (to - from))) : 1;
    return (heads[next - 1] ?? 0) + share * ((heads[next] ?? 0) - (heads[next - 1] ?? 0));
  });
  return meansOnly(60, values);
}
