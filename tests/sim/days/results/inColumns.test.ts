import fc from "fast-check";
import { expect, it } from "vitest";
import { asRows, inColumns } from "../../../../sim/days/results/inColumns.ts";

const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

it("writes the keys of rows that are alike once, and what all rows have in common once", () => {
  const rows = [
    { name: "a", n: 5, finish: { mean: 1, low: null }, days: [1, 2] },
    { name: "b", n: 5, finish: { mean: 2, low: 0.5 }, days: [1, 2] },
  ];
  expect(inColumns(rows)).toEqual({
    "": { rows: 2 },
    name: ["a", "b"],
    n: 5,
    finish: { mean: [1, 2], low: [null, 0.5] },
    days: [
      [1, 2],
      [1, 2],
    ],
  });
});

it("tells a key that a row has not from null, and both from a value", () => {
  const rows = [{ a: 1 }, { a: null, b: null }, { a: 3, b: { c: 1 } }, { b: { c: 2 } }, { a: 4, b: {} }];
  expect(asRows(asJson(inColumns(rows)))).toStrictEqual(rows);
});

it("gives back any JSON value as it was, names and all", () => {
  const key = fc.oneof(fc.constantFrom("", "a", "b", "__proto__", "toString", "rows", "has"), fc.string());
  const { value } = fc.letrec((tie) => ({
    value: fc.oneof(
      { maxDepth: 4 },
      fc.constantFrom(0, 1, null, "x", true),
      fc.array(tie("value"), { maxLength: 4 }),
      fc.dictionary(key, tie("value"), { maxKeys: 3, noNullPrototype: true }),
      fc.array(fc.record({ a: tie("value"), b: tie("value") }, { requiredKeys: [], noNullPrototype: true }), {
        maxLength: 5,
      }),
    ),
  }));
  fc.assert(
    fc.property(value, (json) => {
      const before = asJson(json);
      expect(asRows(asJson(inColumns(before)))).toStrictEqual(before);
    }),
    { seed: 1, numRuns: 800 },
  );
});

it("refuses columns that do not fit together, and more rows than any run has", () => {
  expect(() => asRows({ "": { rows: 3 }, a: [1, 2] })).toThrow(RangeError);
  expect(() => asRows({ "": { rows: "3" }, a: 1 })).toThrow(RangeError);
  expect(() => asRows({ "": { rows: 1e9 }, a: 1 })).toThrow(/more cells/);
  expect(() => asRows({ "": { rows: 2 }, a: [0, { "": { rows: 1e9 }, b: 1 }] })).toThrow(/more cells/);
});
