import { expect, it } from "vitest";
import { readStudy, type Study } from "../../../../sim/asked/study/index.ts";
import { screeningEffects } from "../../../../sim/days/run/screeningEffects.ts";
import { sampleFiles, samplePlan } from "../../asked/plan/samplePlan.ts";

const factors = [
  { name: "places", path: "line.bleeding.places", from: 10, to: 40 },
  { name: "dwell", path: "line.bleeding.dwell", from: "2 min", to: "3 min" },
  { name: "buffer", path: "line.skinning.buffer", levels: [0, 2, 4, null] },
];
const read = (design: unknown) => readStudy({ name: "s", plan: samplePlan(), design }, sampleFiles).study as Study;

it("screeningEffects finds the slopes of a straight line over a study's own trajectories", () => {
  const study = read({ screening: { factors, trajectories: 5 } });
  const means = study.variants.map(({ levels }) => 100 + 2 * levels[0]! - levels[1]!);
  const found = screeningEffects(study, means, 0.95)!;
  // Levels 0 to 3 are the whole range, so one level is a third of it.
  expect(found.map((effect) => effect!.mu)).toEqual([6, -3, 0].map((mu) => expect.closeTo(mu, 10)));
  expect(found.map((effect) => effect!.n)).toEqual([5, 5, 5]);
});

it("screeningEffects has nothing to say of another design", () => {
  expect(screeningEffects(read({ list: [{ name: "a", remove: ["limits"] }] }), [1, 2], 0.95)).toBeNull();
});
