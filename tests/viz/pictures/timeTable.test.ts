import { expect, test } from "vitest";
import { timeTable } from "../../../viz/pictures/index.ts";

const DAY = { startClockSeconds: 6 * 3600, spans: [] };
const steps = { kind: "exact", times: [0, 450], values: [0, 8] } as const;

test("a row a round step of time, mean and most of each trace with its unit", () => {
  const series = [{ group: "", name: "skinning", unit: "heads", trace: steps }];
  const { columns, rows } = timeTable({ ...DAY, endSeconds: 900, series });
  expect(columns.map(({ name, unit }) => `${name} (${unit})`)).toEqual([
    "from (clock time, steps of 5 min)",
    "skinning: mean (heads)",
    "skinning: most (heads)",
  ]);
  expect(rows).toEqual([
    ["06:00", 0, 0],
    ["06:05", 4, 8],
    ["06:10", 8, 8],
  ]);
});

test("where only means are known there is no column of the most", () => {
  const values = [1, 2];
  const trace = { kind: "binned", binSeconds: 300, low: values, high: values, mean: values } as const;
  const { columns } = timeTable({
    ...DAY,
    endSeconds: 600,
    series: [{ group: "crew", name: "on duty", unit: "people", trace }],
  });
  expect(columns.map(({ name }) => name)).toEqual(["from", "crew, on duty: mean"]);
});

test.each([900, 9 * 3600, 30 * 3600, 1000 * 3600])("a run of %i s takes at most some 48 rows", (endSeconds) => {
  const { rows } = timeTable({ ...DAY, endSeconds, series: [] });
  expect(rows.length).toBeLessThanOrEqual(49);
});
