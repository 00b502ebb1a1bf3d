import { expect, test } from "vitest";
import { type QueueColumns, queueChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: QueueColumns = {
  title: "What waits",
  caption: "What to look for",
  subtitle: "Heads waiting",
  description: "Skinning ran full.",
  startClockSeconds: 6 * 3600,
  endSeconds: 7200,
  pauses: [{ name: "breakfast", fromSeconds: 3000, toSeconds: 3600 }],
  panels: [
    {
      name: "Skinning",
      note: "heads: most 6, mean 2.0",
      capacity: 6,
      capacityText: "6 places",
      largest: 6,
      trace: { kind: "binned", binSeconds: 1800, low: [0, 1, 2, 0], high: [3, 6, 6, 1], mean: [1.5, 4, 5, 0.5] },
    },
    {
      name: "Post-mortem inspection",
      note: "heads: most 3, mean 1.0",
      capacity: null,
      capacityText: "no limit of places",
      largest: 3,
      trace: { kind: "exact", times: [0, 1000, 5000], values: [0, 3, 1] },
    },
  ],
  footnote: "Nothing ever waited before: Sticking.",
};

test("binned traces are bands with a mean line, exact ones step lines, capacity is a dashed line with its words", async () => {
  await expect(picture(queueChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/queues.svg");
});

test("capacity, break, unit and clock time are all written beside what they belong to", () => {
  const texts = textsOf(queueChart(COLUMNS, testContext()));
  for (const text of ["6 places", "breakfast", "heads: most 6, mean 2.0", "07:00", "clock time (h:min)"])
    expect(texts).toContain(text);
});

test("with nothing to draw the reason is said", () => {
  const svg = queueChart({ ...COLUMNS, panels: [], footnote: "Run without traces." }, testContext());
  expect(textsOf(svg)).toEqual(["What waits", "Run without traces."]);
});
