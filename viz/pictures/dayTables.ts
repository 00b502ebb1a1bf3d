import { formatClock } from "../../sim/text/units/index.ts";
import type { BindingColumns } from "./binding.ts";
import type { BottleneckColumns } from "./bottleneck.ts";
import type { Cell, ChartTable } from "./chartTable.ts";
import type { KillStopColumns } from "./killStop.ts";
import type { LimitColumns } from "./limit.ts";
import type { LoadColumns } from "./load.ts";
import type { MassColumns } from "./mass.ts";
import type { SlopeColumns } from "./slope.ts";
import { spansOfStages } from "./spansOfStages.ts";
import type { StateColumns } from "./state.ts";

/** The pictures of a day that are no traces, as tables. */

export function stateTable(columns: StateColumns): ChartTable {
  const worked = columns.states.filter((name) => name !== "on break");
  const clock = (seconds: number): Cell => formatClock(seconds + columns.startClockSeconds, true);
  const percent = (share: number | null): Cell => (share === null ? null : share * 100);
  return {
    columns: [
      text("station"),
      { name: "first head", unit: "clock time" },
      { name: "last head", unit: "clock time" },
      ...worked.map((name) => ({ name, unit: "% of own time" })),
      { name: "on break", unit: "% from first to last head" },
      ...columns.states.map((name) => ({ name: `${name}, by the clock`, unit: "% of the day" })),
    ],
    rows: columns.rows.map((row) => [
      row.name,
      row.own === null ? null : clock(row.own.fromSeconds),
      row.own === null ? null : clock(row.own.toSeconds),
      ...worked.map((_, state) => percent(row.ownShares[state] ?? null)),
      percent(row.breakShare),
      ...row.clockShares.map(percent),
    ]),
  };
}

export function loadTable(columns: LoadColumns): ChartTable {
  const clock = (seconds: number | null): Cell =>
    seconds === null ? null : formatClock(seconds + columns.startClockSeconds, true);
  const times = ["due", "in", "unloaded", "last head out of its crates", "crates washed", "lorry out"];
  return {
    columns: [text("lorry"), text("load"), ...times.map((name) => ({ name, unit: "clock time" }))],
    rows: columns.loads.map((load) => [
      load.name,
      load.note,
      clock(load.dueSeconds),
      clock(load.arrivedSeconds),
      clock(load.unloadedSeconds),
      clock(load.emptiedSeconds),
      clock(load.washedSeconds),
      clock(load.leftSeconds),
    ]),
  };
}

export function massTable(columns: MassColumns): ChartTable {
  const share = (kilograms: number) => (100 * kilograms) / columns.liveKilograms;
  return {
    columns: [text("what"), text("kind"), { name: "mass", unit: "kg" }, { name: "share of live weight", unit: "%" }],
    rows: [
      ["live weight", "in", columns.liveKilograms, 100],
      ...columns.flows.map(({ name, kind, kilograms }) => [name, kind, kilograms, share(kilograms)]),
    ],
  };
}

export function limitTable(columns: LimitColumns): ChartTable {
  return {
    columns: [seconds("from"), seconds("to"), { name: "heads", unit: "heads" }, text("outside the limit")],
    rows: columns.bins.map(({ from, to, heads, beyond }) => [from, to, heads, beyond ? "yes" : "no"]),
  };
}

export function bindingTable(columns: BindingColumns): ChartTable {
  return {
    columns: [text("stage"), text("cause"), seconds("time"), seconds("low"), seconds("high")],
    rows: columns.rows.map((row) => [row.stage, row.cause, row.seconds, row.low, row.high]),
  };
}

export function slopeTable(columns: SlopeColumns): ChartTable {
  const slope = (name: string) => ({ name, unit: "s for 0.1 s more" });
  return {
    columns: [text("time"), slope("end of work"), slope("low"), slope("high")],
    rows: columns.rows.map((row) => [row.name, row.secondsPerTenth, row.low, row.high]),
  };
}

/** Time as the bottleneck by stage; the strip itself is in the run's traces. */
export function bottleneckTable(columns: BottleneckColumns): ChartTable {
  const spansOf = spansOfStages(columns);
  const total = (name: string, wanted: "sole" | "shifting") =>
    spansOf(name)
      .filter(({ kind }) => kind === wanted)
      .reduce((sum, { from, to }) => sum + to - from, 0);
  return {
    columns: [text("stage"), seconds("by itself"), seconds("shifting")],
    rows: columns.stages.map(({ name }) => [name, total(name, "sole"), total(name, "shifting")]),
  };
}

export function killStopTable(columns: KillStopColumns): ChartTable {
  const heads = (name: string) => ({ name, unit: "heads" });
  return {
    columns: [
      { name: "began", unit: "clock time" },
      seconds("lasted"),
      ...[text("cause"), text("where"), text("more")],
      ...[
        heads("stunned, not stuck"),
        heads("the same, most"),
        heads("bleeding"),
        heads("the same, most"),
        heads("caught"),
      ],
      ...[seconds("longest wait until stuck"), text("then")],
    ],
    rows: columns.rows.map((row) => [
      formatClock(row.from + columns.startClockSeconds, true),
      row.to - row.from,
      ...[row.cause, row.where, row.what, row.stunned, row.stunnedMost, row.bleeding, row.bleedingMost, row.caught],
      ...[row.longestWait, row.ended],
    ]),
  };
}

function text(name: string) {
  return { name, unit: "" };
}

function seconds(name: string) {
  return { name, unit: "s" };
}
