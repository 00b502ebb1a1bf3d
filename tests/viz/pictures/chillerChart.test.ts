import { expect, test } from "vitest";
import { type ChillerColumns, chillerChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: ChillerColumns = {
  title: "What the chiller holds",
  caption: "A fill at the dashed line stops the line",
  subtitle: "One day",
  description: "Never full.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
  panels: [
    {
      label: "carcasses in the chiller",
      unit: "heads",
      largest: 900,
      capacity: 1200,
      capacityText: "1 200 places",
      trace: {
        kind: "binned",
        binSeconds: 1800,
        low: [0, 200, 500, 700],
        high: [200, 500, 700, 900],
        mean: [90, 350, 600, 800],
      },
    },
    {
      label: "heat out of carcasses",
      unit: "kW",
      largest: 42,
      capacity: null,
      capacityText: "most 42 kW",
      trace: { kind: "binned", binSeconds: 1800, low: [0, 9, 23, 32], high: [9, 23, 32, 42], mean: [4, 16, 28, 37] },
    },
  ],
  footnote: "",
};

test("fill with its capacity, heat with its unit", async () => {
  const svg = chillerChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/chiller.svg");
  const texts = textsOf(svg);
  expect(texts).toContain("carcasses in the chiller, heads");
  expect(texts).toContain("heat out of carcasses, kW");
});

test("without traces it says why", () => {
  expect(textsOf(chillerChart({ ...COLUMNS, panels: [], footnote: "No traces." }, testContext()))[1]).toBe(
    "No traces.",
  );
});
