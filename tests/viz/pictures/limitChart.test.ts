import { expect, test } from "vitest";
import { type LimitColumns, limitChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

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
