import { expect, it, test } from "vitest";
import { type DifferenceColumns, differenceChart } from "../../../viz/index.ts";
import { differenceTable, differenceView, worthView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { inventedOptionsResult } from "../../support/invented.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: DifferenceColumns = {
  title: "Throughput: difference",
  caption: "What to look for",
  subtitle: "95 % interval",
  description: "One more helps.",
  quantity: { kind: "number", label: "difference to today's plan", unit: "heads/h" },
  rows: [
    { name: "One more", mean: 36, low: 35, high: 37, text: "+36 heads/h, shown\n+35 to +37", shown: true },
    { name: "More places", mean: 1, low: -0.3, high: 2.3, text: "+1.0 heads/h, not shown\n−0.3 to +2.3", shown: false },
  ],
  sides: ["less: worse", "more: better"],
};

test("differences stand about a zero line; filled and open dots tell shown from not shown", async () => {
  await expect(picture(differenceChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/difference.svg");
  const [shown, open] = [...differenceChart(COLUMNS, testContext()).querySelectorAll("circle")];
  expect(shown!.getAttribute("fill")).toBe(shown!.getAttribute("stroke"));
  expect(open!.getAttribute("fill")).not.toBe(open!.getAttribute("stroke"));
});

test("what the dots tell is also said in words, and which side is better", () => {
  const texts = textsOf(differenceChart(COLUMNS, testContext()));
  for (const text of ["+36 heads/h, shown", "+1.0 heads/h, not shown", "← less: worse", "more: better →"])
    expect(texts).toContain(text);
});

test("a name of three lines and long figures get the room they need, and the axis its whole name", () => {
  const name = "places before skinning 20, places before evisceration 10";
  const text = "\u22120.13 carcasses/h, not shown\n\u22120.44 to +0.17";
  const quantity = { kind: "number", label: "lorry's arrival to its leaving with empty crates", unit: "min" } as const;
  const rows = COLUMNS.rows.map((row) => ({ ...row, name, text }));
  const texts = textsOf(differenceChart({ ...COLUMNS, quantity, rows }, testContext({ width: 700 })));
  expect(texts.filter((each) => each === "before evisceration 10")).toHaveLength(2);
  expect(texts).toContain("\u22120.13 carcasses/h, not shown");
  expect(texts).toContain("lorry's arrival to its leaving with empty crates, min");
});

test("zero is on the axis even where all differences lie to one side", () => {
  const svg = differenceChart({ ...COLUMNS, rows: [COLUMNS.rows[0]!] }, testContext());
  expect(textsOf(svg)).toContain("0");
});

test("nothing to compare is said in words", () => {
  expect(textsOf(differenceChart({ ...COLUMNS, rows: [] }, testContext()))[1]).toMatch(/^There is nothing to compare/);
});

it("shows each option's yearly amount with the interval that holds for all, filled where it is decided", () => {
  const { rows, quantity } = worthView(inventedOptionsResult());
  expect(rows.map(({ name, low, high, shown }) => [name, low, high, shown])).toEqual([
    ["a machine", 4000, 6000, true],
    ["more places", -700, 1100, false],
  ]);
  expect(rows[1]!.text).toBe("200 EUR, not decided\n\u2212700 to 1\u202f100");
  expect(quantity).toEqual({ kind: "number", label: "a year", unit: "EUR" });
});

test("differences say whether they are shown", () => {
  const { rows } = differenceTable(differenceView(syntheticStudy(), syntheticStudy().responses[0]!));
  expect(rows.map((row) => row.at(-1))).toEqual(["yes", "no", "yes"]);
});
