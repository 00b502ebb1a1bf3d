import { expect, test } from "vitest";
import { type HeadsOutColumns, headsOutChart } from "../../../viz/index.ts";
import { headsOutView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: HeadsOutColumns = {
  title: "Heads in and heads out",
  caption: "What to look for",
  subtitle: "Counted from the day's start",
  description: "All out.",
  startClockSeconds: 6 * 3600,
  endSeconds: 36_000,
  shiftEndSeconds: 27_000,
  pauses: [{ name: "midday", fromSeconds: 14_400, toSeconds: 16_200 }],
  lines: [
    { label: "arrived: 4 000", role: "arrived", shape: "step", seconds: [0, 10_000], heads: [2000, 4000] },
    { label: "target: 4 000", role: "target", shape: "straight", seconds: [0, 24_000], heads: [0, 4000] },
    { label: "hung: 3 990 by 13:10", role: "hung", shape: "straight", seconds: [0, 25_800], heads: [0, 3990] },
    {
      label: "into chilling: 3 980 by 13:40",
      role: "chiller",
      shape: "straight",
      seconds: [0, 1800, 27_600],
      heads: [0, 0, 3980],
    },
    { label: "carcasses out: 3 980", role: "out", shape: "straight", seconds: [0, 6000, 36_000], heads: [0, 0, 3980] },
  ],
};

test("arrivals, target, heads hung, into the chiller and out share one axis, overtime is marked", async () => {
  await expect(picture(headsOutChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/headsOut.svg");
});

test("each line is named, and so is the time after the last shift", () => {
  const joined = textsOf(headsOutChart(COLUMNS, testContext())).join(" ");
  for (const text of ["arrived: 4 000", "target: 4 000", "carcasses out: 3 980", "after the last shift"])
    expect(joined).toContain(text);
});

test("a day within its shifts marks no overtime", () => {
  const texts = textsOf(headsOutChart({ ...COLUMNS, shiftEndSeconds: 40_000 }, testContext()));
  expect(texts).not.toContain("after the last shift");
});

test("a day without heads is said in words", () => {
  expect(textsOf(headsOutChart({ ...COLUMNS, lines: [] }, testContext()))[1]).toMatch(/^No head/);
});

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
  expect(headsOutView(study, study.variants[0]!).lines.map((line) => line.role)).toEqual([
    "arrived",
    "hung",
    "chiller",
    "out",
  ]);
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

test("hung, into the chiller and out are drawn, and the target is held against the heads hung by the time it ends", () => {
  const results = exampleDay("ferncote");
  const [variant] = results.variants;
  const { day } = variant!;
  const view = headsOutView(results, variant!);
  expect(view.lines.map(({ role }) => role)).toEqual(["arrived", "target", "hung", "chiller", "out"]);
  const line = (wanted: string) => view.lines.find(({ role }) => role === wanted)!;
  expect(line("hung").heads.at(-1)).toBe(day.heads.hung);
  expect(line("chiller").heads.at(-1)).toBe(day.stages.find(({ name }) => name === "chilling")!.processed);
  const until = line("target").seconds.at(-1)!;
  const bin = line("hung").seconds.findIndex((seconds) => seconds > until);
  const told = Number(/heads by [\d:]+; ([\d\s]+) were hung by then/u.exec(view.description)![1]!.replace(/\s/gu, ""));
  expect(told).toBeGreaterThanOrEqual(line("hung").heads[bin - 1]!);
  expect(told).toBeLessThanOrEqual(line("hung").heads[bin]!);
});

test("overtime is all of it: 18 min with cleaning on a day whose work ended within its shifts", () => {
  const study = syntheticSingleDay();
  const { day } = study.variants[0]!;
  day.shiftEndSeconds = 28_800;
  day.workFinishSeconds = 28_800 - 12 * 60;
  const ending = () => headsOutView(study, study.variants[0]!).description;
  expect(ending()).toContain("Work on the line ended at 13:48, within the shifts.");
  study.plan.cleaningSeconds = 30 * 60;
  expect(ending()).toContain(
    "Work on the line ended at 13:48 and cleaning at 14:18, 18 min after the end of the last shift.",
  );
});
