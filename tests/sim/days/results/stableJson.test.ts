import { expect, it } from "vitest";
import { stableJson, stableJsonParts } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("writes the same text whatever the order in which keys were set", () => {
  expect(stableJson({ b: 1, a: { d: [1, 2], c: "x" } })).toBe(stableJson({ a: { c: "x", d: [1, 2] }, b: 1 }));
});

it("writes lists and objects of plain values on one line, and what holds others line by line", () => {
  expect(stableJson({ list: [1, null, "a"], rows: [{ y: 2, x: 1 }, { x: [] }], none: [], empty: {} })).toBe(
    '{\n  "empty": {},\n  "list": [1, null, "a"],\n  "none": [],\n  "rows": [\n    {"x": 1, "y": 2},\n    {\n      "x": []\n    }\n  ]\n}\n',
  );
});

it("writes a column of data without blanks, which would be a quarter of it", () => {
  expect(stableJson(new Array(65).fill(0))).toBe(`[${new Array(65).fill(0).join(",")}]\n`);
});

it("reads back to the bits that were written", () => {
  const numbers = [0.1 + 0.2, 1e-300, Number.MAX_VALUE, 1 / 3, 5];
  expect(JSON.parse(stableJson(numbers))).toEqual(numbers);
});

it("writes no limit as null and leaves an undefined property out", () => {
  expect(JSON.parse(stableJson({ places: Number.POSITIVE_INFINITY, gone: undefined }))).toEqual({ places: null });
});

it("refuses NaN and says where it is", () => {
  expect(() => stableJson({ day: { stages: [{ mean: Number.NaN }] } })).toThrow(/day\.stages\[0\]\.mean/);
});

it("writes whole results as JSON that reads back, but for places without limit", () => {
  const results = handMadeResults();
  const back = JSON.parse(stableJson(results));
  expect(back).toEqual(JSON.parse(JSON.stringify(results)));
  expect(back.variants[0].day.stages[0].places).toBeNull();
});

it("comes in parts that make up the whole, none of them longer than a variant", () => {
  const results = handMadeResults();
  const parts = [...stableJsonParts(results)];
  expect(parts.join("")).toBe(stableJson(results));
  const longest = Math.max(...parts.map((part) => part.length));
  expect(longest).toBe(Math.max(...results.variants.map((variant) => asPart(variant).length + ",\n    ".length)));
});

/** A variant as it stands in the list of them, four blanks further in than by itself. */
function asPart(variant: unknown): string {
  return stableJson(variant).trimEnd().replaceAll("\n", "\n    ");
}
