import { csvParse } from "d3";
import { expect, it } from "vitest";
import { tracesCsv } from "../../../../sim/days/results/tracesCsv.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("writes bins with low, high and mean, steps with a value, states with position-seconds", () => {
  const rows = csvParse([...tracesCsv(handMadeResults())!].join("")).filter((row) => row.variant === "base");
  expect(rows.filter((row) => row.kind === "queue")).toMatchObject([
    { trace: "skinning", time_s: "0", bin_s: "60", low: "0", high: "2", mean: "1", value: "" },
    { trace: "skinning", time_s: "60", bin_s: "60", low: "1", high: "5", mean: "3.5", value: "" },
  ]);
  expect(rows.filter((row) => row.kind === "wip")).toMatchObject([
    { time_s: "0", value: "0", low: "" },
    { time_s: "12.5", value: "1", low: "" },
  ]);
  expect(rows.filter((row) => row.kind === "crew busy").map((row) => row.high)).toEqual(["1", "2"]);
  // On duty all the time: two bins that are all alike make one.
  expect(rows.filter((row) => row.kind === "crew present")).toMatchObject([{ trace: "hanging", bin_s: "120" }]);
  const states = rows.filter((row) => row.kind === "state");
  expect(states).toHaveLength(4);
  expect(states[3]).toMatchObject({ trace: "skinning", state: "blocked", time_s: "60", value: "30" });
});

it("is left out when no day has traces", () => {
  const results = handMadeResults();
  const variants = results.variants.map((variant) => ({ ...variant, day: { ...variant.day, traces: null } }));
  expect(tracesCsv({ ...results, variants })).toBeNull();
});
