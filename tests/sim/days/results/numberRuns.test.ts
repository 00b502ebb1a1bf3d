import { describe, expect, it } from "vitest";
import { readResults, stableJson } from "../../../../sim/days/results/index.ts";
import { fromRuns, inRuns } from "../../../../sim/days/results/numberRuns.ts";
import { resultsParts } from "../../../../sim/days/results/resultsFile.ts";
import { exampleWeek } from "../../../support/exampleWeek.ts";

describe("lists of numbers as runs", () => {
  it("writes a value and how often, where that is shorter, and anything else as it is", () => {
    expect(inRuns([2, 2, 2, 2, 0, 0, 0, null, null])).toEqual({ runs: [2, 4, 0, 3, null, 2] });
    expect(inRuns([1, 2, 3, 4, 5, 6, 7, 8])).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(inRuns([0, 0])).toEqual([0, 0]);
    expect(inRuns({ a: [{ b: "text" }, null] })).toEqual({ a: [{ b: "text" }, null] });
  });

  it("gives back what it was given, whatever that was", () => {
    for (const length of [0, 1, 7, 8, 9, 40, 1000]) {
      const list = Array.from({ length }, (_, row) => Math.floor(row / 3) % 4);
      const data = { kind: "binned", high: list, low: [list, [0.1 + 0.2]], none: null };
      expect(fromRuns(JSON.parse(JSON.stringify(inRuns(data))))).toEqual(data);
    }
  });

  it.each([[[1]], [[1, 0]], [[1, 1.5]], [[1, -2]], [[1, null]], [[0, 1e12]]])("refuses runs %j", (runs) => {
    expect(() => fromRuns({ runs })).toThrow(RangeError);
  });
});

it("the results of weeks lie in a file a good deal shorter than without runs, and are read back whole", async () => {
  const results = await exampleWeek({}, 2);
  const text = [...resultsParts(results)].join("");
  expect(JSON.parse(text).format).toBe(3);
  expect(text.length).toBeLessThan(0.75 * stableJson(results).length);
  const { results: found } = readResults(text);
  expect(found).toEqual(readResults(JSON.stringify(results)).results);
  const broken = text.replace(/"runs": \[[^\]]*\]/, '"runs": [1, 0]');
  expect(readResults(broken).problem).toMatch(/do not fit together/);
});
