import { expect, test } from "vitest";
import { headsOutView } from "../../../viz/views/index.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("the target runs over shift time less breaks: 8 h less 70 min at 600 heads/h is 4 100 heads", () => {
  const study = syntheticStudy();
  const target = headsOutView(study, study.variants[0]!).lines.find((line) => line.role === "target")!;
  expect(target.heads.at(-1)).toBeCloseTo(600 * (8 - 70 / 60), 9);
  expect(target.seconds).toEqual([0, 9000, 10_800, 19_800, 22_200, 28_800]);
});

test("the target stops at the heads there are", () => {
  const study = syntheticStudy();
  study.plan.targetHeadsPerHour = 1200;
  const target = headsOutView(study, study.variants[0]!).lines.find((line) => line.role === "target")!;
  expect(target.heads.at(-1)).toBe(study.variants[0]!.day.heads.arrived);
});

test("without a target or without shifts no target line is drawn", () => {
  const study = syntheticStudy();
  study.plan.targetHeadsPerHour = null;
  expect(headsOutView(study, study.variants[0]!).lines.map((line) => line.role)).toEqual(["arrived", "out"]);
});

test("the out line ends at the carcasses counted and at the day's end", () => {
  const study = syntheticStudy();
  const { day } = study.variants[0]!;
  const out = headsOutView(study, study.variants[0]!).lines.find((line) => line.role === "out")!;
  expect(out.seconds.at(-1)).toBe(day.finishSeconds);
  expect(out.seconds).toHaveLength(out.heads.length);
});

test("a day that did not end by itself says so", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.status = "stuck";
  expect(headsOutView(study, study.variants[0]!).description).toContain("did not end by itself");
});

test("a target reached only after the day's end still ends on the axis", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.finishSeconds = 20_000;
  const view = headsOutView(study, study.variants[0]!);
  expect(view.endSeconds).toBe(28_800);
});

test("heads that come one by one are joined like carcasses out, so that no more are out than have come; loads are steps", () => {
  const results = exampleDay("parts/gate");
  const [variant] = results.variants;
  const [arrived, out] = ["arrived", "out"].map(
    (role) => headsOutView(results, variant!).lines.find((line) => line.role === role)!,
  );
  expect([arrived!.shape, out!.shape]).toEqual(["straight", "straight"]);
  expect(out!.seconds).toEqual(arrived!.seconds);
  out!.heads.forEach((heads, point) => {
    expect(heads).toBeLessThanOrEqual(arrived!.heads[point]!);
  });
  const loads = syntheticStudy();
  expect(headsOutView(loads, loads.variants[0]!).lines[0]).toMatchObject({ role: "arrived", shape: "step" });
});
