import { expect, test } from "vitest";
import type { Calibration } from "../../../sim/questions/calibrate/index.ts";
import { type ObservedColumns, observedChart, observedView } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const hour = (from: number, observed: number[], mean: number, differs: boolean) => ({
  fromSeconds: from * 3600,
  toSeconds: (from + 1) * 3600,
  observed,
  simulated: { mean, low: mean - 40, high: mean + 30 },
  differs,
});

const COLUMNS: ObservedColumns = {
  title: "Heads counted at chiller loading",
  caption: "What to look for",
  subtitle: "Dots: 3 observed days",
  description: "1 of 3 stretches differ.",
  startClockSeconds: 6 * 3600,
  stretches: [
    hour(0, [520, 530, 515], 525, false),
    hour(1, [480, 470, 475], 560, true),
    { ...hour(2, [500], 0, false), simulated: null },
  ],
};

test("bands of the simulated days, dots of the observed ones, differences named", async () => {
  await expect(picture(observedChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/observed.svg");
  const svg = observedChart(COLUMNS, testContext());
  expect(svg.querySelectorAll("circle")).toHaveLength(7);
  expect(textsOf(svg).filter((text) => text === "differs")).toHaveLength(1);
});

test("no counts are said in words", () => {
  expect(textsOf(observedChart({ ...COLUMNS, stretches: [] }, testContext()))[1]).toMatch(/^No heads were counted/);
});

test("the view takes the counts in order of time and leaves other quantities out", () => {
  const side = { days: 20, mean: 500, low: 490, high: 510, min: 450, max: 550, p025: 460, p975: 540 };
  const comparison = {
    observed: side,
    simulated: side,
    difference: 0,
    low: -1,
    high: 1,
    p: 1,
    standardError: 1,
    shown: true,
    noticeable: 9,
  };
  const info = { key: "", label: "", unit: "heads", format: "number" as const, better: null };
  const quantity = (fromSeconds: number, values: (number | null)[]) => ({
    ...{ info, values, comparison },
    stretch: { fromSeconds, toSeconds: fromSeconds + 3600 },
  });
  const calibration: Calibration = {
    ...{
      days: 20,
      observedDays: 2,
      confidence: 0.95,
      countedAt: "trim",
      startClockSeconds: 0,
      gap: true,
      explanations: [],
      noticeable: null,
    },
    quantities: [quantity(3600, [500, null]), quantity(0, [1, 2]), { ...quantity(0, [9]), stretch: null }],
  };
  const view = observedView(calibration);
  expect(view.stretches.map(({ fromSeconds, observed }) => [fromSeconds, observed])).toEqual([
    [0, [1, 2]],
    [3600, [500]],
  ]);
  expect(view.stretches[0]!.simulated).toEqual({ mean: 500, low: 460, high: 540 });
  expect(view.description).toBe("A difference was found in 2 of 2 stretches.");
});
