import { clockAt } from "../frame/index.ts";
import type { Cell, ChartTable } from "./chartTable.ts";
import { resampled } from "./resampled.ts";
import type { TimeReadings } from "./timeReadings.ts";

const STEPS = [300, 600, 900, 1800, 3600, 7200, 14_400];
const MOST_ROWS = 48;

/** Traces as a table of at most some 48 rows: mean and most of each round step of time; means alone where no more is known. */
export function timeTable({ startClockSeconds, endSeconds, series }: TimeReadings): ChartTable {
  const step =
    STEPS.find((seconds) => endSeconds / seconds <= MOST_ROWS) ?? Math.ceil(endSeconds / MOST_ROWS / 3600) * 3600;
  const columns = series.flatMap(({ group, name, unit, trace }) => {
    const { mean, high } = resampled(trace, endSeconds, step);
    const title = group === "" ? name : `${group}, ${name}`;
    const most = { name: `${title}: most`, unit, values: high };
    const means = { name: `${title}: mean`, unit, values: mean };
    return trace.kind === "binned" && trace.high === trace.mean ? [means] : [means, most];
  });
  const rows = Array.from({ length: Math.max(1, Math.ceil(endSeconds / step - 1e-9)) }, (_, row): Cell[] => {
    return [clockAt(row * step, startClockSeconds), ...columns.map(({ values }) => values[row]!)];
  });
  return {
    columns: [
      { name: "from", unit: `clock time, steps of ${step / 60} min` },
      ...columns.map(({ name, unit }) => ({ name, unit })),
    ],
    rows,
  };
}
