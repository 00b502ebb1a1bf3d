import { expect, it } from "vitest";
import { csvParts, csvText } from "../../../../sim/days/results/csvText.ts";

const LEADERS = ["=", "+", "-", "@", "＝", "＋", "－", "＠", "﹦", "﹢", "﹣", "﹫"];

it.each(
  [...LEADERS, ...LEADERS.map((sign) => ` \u00a0${sign}`), "\t", "\r", "\n", "\n=", "\r\n＝"].map((lead) => `${lead}x`),
)("puts an apostrophe before %j, which a spreadsheet would run", (text) => {
  expect(csvText(["name"], [[text]])).toContain(`'${text}`);
});

it.each(["people", "a=b", "5 - 3", "\u22125", " x", "'=1"])("leaves %j as it is", (text) => {
  expect(csvText(["name"], [[text]])).toBe(`name\n${text}\n`);
});

it("leaves numbers alone, a minus sign included", () => {
  expect(csvText(["x"], [[-1.5], [0]])).toBe("x\n-1.5\n0\n");
});

it("writes no value as an empty cell, never as 0", () => {
  expect(csvText(["a", "b"], [[null, Number.POSITIVE_INFINITY]])).toBe("a,b\n,\n");
});

it("quotes commas, quotes and line breaks after RFC 4180", () => {
  expect(csvText(["a"], [['one, "two"\nthree']])).toBe('a\n"one, ""two""\nthree"\n');
});

it("comes in parts of many rows that make up the whole", () => {
  const rows = Array.from({ length: 4500 }, (_, i) => [i, "x"]);
  const parts = [...csvParts(["n", "t"], rows)];
  expect(parts.length).toBeGreaterThan(1);
  expect(parts.join("")).toBe(csvText(["n", "t"], rows));
  expect(parts.join("")).toBe(`n,t\n${rows.map((row) => `${row.join(",")}\n`).join("")}`);
});

it("is its header alone where there are no rows", () => {
  expect(csvText(["a", "b"], [])).toBe("a,b\n");
});
