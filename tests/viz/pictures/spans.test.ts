import { beforeAll, describe, expect, it } from "vitest";
import type { Doubt } from "../../../sim/questions/doubt/index.ts";
import { type SpansColumns, spansChart, spansTable, spansView } from "../../../viz/pictures/index.ts";
import { luckOf, seenDoubt } from "../../support/doubtCase.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

let doubt: Doubt;
let view: SpansColumns;
beforeAll(() => {
  doubt = seenDoubt({ choice: true });
  view = spansView(doubt, 0);
});

/** Rectangles of the bars, pairwise outside and inside, from left to right edges in pixels. */
function bars(svg: SVGSVGElement): { from: number; to: number }[] {
  return [...svg.querySelectorAll("[data-value] rect")].map((rect) => {
    const from = Number(rect.getAttribute("x"));
    return { from, to: from + Number(rect.getAttribute("width")) };
  });
}

describe("spans", () => {
  it("are drawn with luck inside and what is not known outside, one bar a plan", async () => {
    const svg = spansChart(view, testContext());
    await expect(picture(svg)).toMatchFileSnapshot("../../pictures/spans.svg");
    const all = bars(svg);
    expect(all).toHaveLength(8);
    for (let row = 0; row < all.length; row += 2) {
      const [outside, inside] = all.slice(row, row + 2) as [{ from: number; to: number }, { from: number; to: number }];
      expect(inside.from).toBeGreaterThan(outside.from);
      expect(inside.to).toBeLessThan(outside.to);
      // Lengths are as the shares of the span are told.
      const { spanNotKnown } = doubt.estimates[0]![row / 2]!;
      const part = (inside.to - inside.from) / (outside.to - outside.from);
      expect(Math.abs(part - (1 - spanNotKnown!.value))).toBeLessThan(0.01);
    }
  });

  it("say what stays if every figure is known: days reckoned afresh with known figures span as much (false alarm 0.001)", () => {
    const [today] = view.rows;
    // Nothing but luck with an sd of 8 min: 95 of 100 of 4,000 new days.
    const days = luckOf("afresh", 4000)
      .map((z) => 480 * z)
      .sort((a, b) => a - b);
    const known = days[3899]! - days[99]!;
    // Spans of 360 days have a standard error of about 5 %, the split of the variance one of about 8 % of the root.
    expect(Math.abs((today!.insideHigh - today!.insideLow) / known - 1)).toBeLessThan(3.29 * 0.1);
  });

  it("tell each plan in words, today's being called that, and the same in the table", () => {
    const texts = textsOf(spansChart(view, testContext()));
    expect(texts).toContain("base (today's plan)");
    expect(texts).toContain("luck of the day");
    expect(texts).toContain("what we do not know");
    expect(view.rows[0]!.text).toMatch(/^1[23]:\d\d to 1[34]:\d\d\nluck alone: 13:\d\d to 13:\d\d$/);
    const { columns, rows } = spansTable(view);
    expect(columns.map(({ name }) => name)).toEqual([
      "plan",
      "mean",
      "low",
      "high",
      "luck alone, low",
      "luck alone, high",
    ]);
    expect(rows.map(([name]) => name)).toEqual(view.rows.map(({ name }) => name));
    expect(rows[0]![1]).toMatch(/^13:\d\d:\d\d$/);
  });

  it("have the unit of a result that is no time, and say so where no world has a value", () => {
    expect(spansView(doubt, 1).quantity).toMatchObject({ kind: "number", unit: "carcasses/h" });
    const nothing = { ...doubt, estimates: doubt.estimates.map((all) => all.map(() => null)) };
    expect(textsOf(spansChart(spansView(nothing, 0), testContext()))[1]).toBe("No world gave a value for this result.");
  });

  it("of more plans than there is room for show today's and those most surely the best, and say how many there are", () => {
    const names = Array.from({ length: 14 }, (_, index) => `plan ${index + 1}`);
    const many = spansView(seenDoubt({ choice: true, names }), 0);
    expect(many.rows).toHaveLength(8);
    expect(many.rows.slice(0, 2).map(({ name }) => name)).toEqual(["base (today's plan)", "plan 1"]);
    expect(many.footnote).toBe("8 of 15 plans; all of them are in doubt.json.");
  });
});
