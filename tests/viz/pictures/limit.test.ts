import { expect, test } from "vitest";
import type { LimitRecord } from "../../../sim/day/engine/index.ts";
import { type LimitColumns, limitChart } from "../../../viz/index.ts";
import { limitTable, limitView } from "../../../viz/pictures/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";
import { exampleDay } from "../../support/exampleDay.ts";
import { syntheticTally } from "../../support/syntheticDay.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const COLUMNS: LimitColumns = {
  title: "Stun to stick",
  caption: "What to look for",
  subtitle: "One day",
  description: "2 % outside.",
  label: "stun to stick",
  fromSeconds: 0,
  toSeconds: 15,
  bins: [
    { from: 0, to: 5, heads: 700, beyond: false },
    { from: 5, to: 10, heads: 280, beyond: false },
    { from: 10, to: 15, heads: 20, beyond: true },
  ],
  limits: [{ seconds: 10, text: "at most 10 s" }],
  beyondText: "2.4 % outside the limit (1.9 to 3.1 % at 95 %, 40 simulated days)",
  dayText: "this day: 2.0 % (20 of 1 000 heads)",
  overflowText: "",
};

test("the part outside the limit has a texture, the limit is a line with its words, the share is said", async () => {
  await expect(picture(limitChart(COLUMNS, testContext()))).toMatchFileSnapshot("../../pictures/limit.svg");
  const fills = [...limitChart(COLUMNS, testContext()).querySelectorAll("rect")].map((bar) => bar.getAttribute("fill"));
  expect(fills.filter((fill) => fill === "url(#test-beyond)")).toHaveLength(1);
});

test("one head is still a bar that can be seen", () => {
  const bins = [
    { from: 0, to: 5, heads: 100_000, beyond: false },
    { from: 10, to: 15, heads: 1, beyond: true },
  ];
  const bars = [...limitChart({ ...COLUMNS, bins }, testContext()).querySelectorAll("rect[fill='url(#test-beyond)']")];
  expect(Number(bars[0]!.getAttribute("height"))).toBeGreaterThanOrEqual(1);
});

test("a limit that no head passed is said in words", () => {
  expect(textsOf(limitChart({ ...COLUMNS, bins: [] }, testContext()))[1]).toMatch(/^No head passed both points/);
});

function viewOf(values: number[], limit: Partial<LimitRecord> = {}) {
  const study = syntheticStudy();
  const record = {
    name: "Stun to stick",
    minSeconds: null,
    maxSeconds: 10,
    tally: syntheticTally(values),
    beyond: 0,
    ...limit,
  };
  return limitView(study, study.variants[0]!, record);
}

test("the limit is an edge of a bar, so no bar is half within and half outside", () => {
  const view = viewOf(Array.from({ length: 400 }, (_, i) => 2 + i * 0.03));
  expect(view.bins.some((bin) => Math.abs(bin.from - 10) < 1e-9)).toBe(true);
  for (const bin of view.bins) expect(bin.beyond).toBe(bin.from >= 10 - 1e-9);
});

test("no head is lost between the fine bins and the bars", () => {
  const values = Array.from({ length: 500 }, (_, i) => 3 + (i % 97) * 0.1);
  expect(viewOf(values).overflowText).toBe("");
  const drawn = viewOf(values).bins.reduce((sum, bin) => sum + bin.heads, 0);
  expect(drawn).toBeCloseTo(500, 6);
});

test("a long tail is counted in words instead of squeezing the picture", () => {
  const view = viewOf([...Array.from({ length: 999 }, () => 5), 4000], { beyond: 1 });
  expect(view.toSeconds).toBeLessThan(20);
  expect(view.overflowText).toBe("1 head beyond this axis, the longest 1 h 07");
  expect(view.dayText).toBe("this day: 0.1 % (1 of 1\u202F000 heads)");
});

test("the limit is always on the axis, even where no head came near it", () => {
  const view = viewOf([1, 1.2, 1.4], { maxSeconds: 60 });
  expect(view.toSeconds).toBeGreaterThanOrEqual(60);
  expect(view.dayText).toBe("this day: none of 3 heads");
});

test("a minimum and a maximum are both drawn", () => {
  const view = viewOf([80, 95, 130], { minSeconds: 90, maxSeconds: 120, beyond: 2 });
  expect(view.limits.map((limit) => limit.text)).toEqual(["at least 1 min 30 s", "at most 2 min"]);
});

test("the source of the limit is named, or said to be missing", () => {
  expect(viewOf([5]).subtitle).toContain("Tierschutz-Schlachtverordnung");
  expect(viewOf([5], { name: "other" }).subtitle).toContain("no source named in the plan");
});

test("a limit that no head passed has no bars", () => {
  const study = syntheticStudy();
  const tally = { ...syntheticTally([1]), count: 0, bins: [] };
  const record = { name: "x", minSeconds: null, maxSeconds: 10, tally, beyond: 0 };
  expect(limitView(study, study.variants[0]!, record).bins).toEqual([]);
});

test("the share over all simulated days stands first; the day that is drawn is said to be an example", () => {
  const study = syntheticStudy();
  const info = {
    key: "beyond.Stun to stick",
    label: "l",
    unit: "share of heads",
    format: "share",
    better: "less",
  } as const;
  const record = { name: "Stun to stick", minSeconds: null, maxSeconds: 10, tally: syntheticTally([5, 12]), beyond: 1 };
  const estimate = { n: 40, mean: 0.087, sd: 0.02, halfWidth: 0.0065, low: 0.081, high: 0.094, min: 0.05, max: 0.13 };
  study.responses.push(info);
  const [base] = study.variants;
  base!.estimates[info.key] = { ...base!.estimates.throughput!, ...estimate };
  const view = limitView(study, base!, record);
  expect(view.beyondText).toBe("8.7 % outside the limit (8.1 to 9.4 % at 95 %, 40 simulated days)");
  expect(view.description).toMatch(/^8\.7 % outside .*days\)\. On the day in the picture: 50 % \(1 of 2 heads\)\./);
  expect(view.subtitle).toContain("as an example");
  Object.assign(base!.estimates[info.key]!, { mean: 0, halfWidth: 0.044, low: 0, high: 0.088, min: 0, max: 0 });
  expect(limitView(study, base!, record).beyondText).toBe(
    "None outside the limit in 40 simulated days (at most 9 % at 95 %)",
  );
});

test("where the study did not ask for the share, it says so", () => {
  expect(viewOf([1, 2]).beyondText).toBe("Not among the results that this study asks for");
});

const ferncote = exampleDay("ferncote");

test("the bars of a limit hold the heads that the axis shows", () => {
  const limit = ferncote.variants[0]!.day.limits[0]!;
  const view = limitView(ferncote, ferncote.variants[0]!, limit);
  const { rows } = limitTable(view);
  expect(rows).toHaveLength(view.bins.length);
  expect(rows.reduce((sum, row) => sum + Number(row[2]), 0)).toBeLessThanOrEqual(limit.tally.count + 1e-6);
});
