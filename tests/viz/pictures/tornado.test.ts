import { beforeAll, describe, expect, it } from "vitest";
import type { Doubt } from "../../../sim/questions/doubt/index.ts";
import { tornadoChart, tornadoTable, tornadoView } from "../../../viz/pictures/index.ts";
import { seenDoubt } from "../../support/doubtCase.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

let doubt: Doubt;
beforeAll(() => {
  doubt = seenDoubt();
});

describe("tornado", () => {
  it("has the figure that owes most of the span on top, a guess told from what was measured by name, fill and key", async () => {
    const view = tornadoView(doubt)!;
    const svg = tornadoChart(view, testContext());
    await expect(picture(svg)).toMatchFileSnapshot("../../pictures/tornado.svg");
    expect(view.rows.map(({ name, isGuess }) => [name, isGuess])).toEqual([
      ["skinning's jams (a guess)", true],
      ["cutter's cycle time", false],
      ["hanging's cycle time (a guess)", true],
    ]);
    const fills = [...svg.querySelectorAll("[data-value] rect")].map((rect) => rect.getAttribute("fill"));
    expect(fills[0]).toBe(fills[2]);
    expect(fills[0]).not.toBe(fills[1]);
    for (const text of ["a guess", "measured"]) expect(textsOf(svg)).toContain(text);
  });

  it("says by how much the span narrows once a figure is known, within its interval, as variances known beforehand have it", () => {
    const { rows, quantity } = tornadoView(doubt)!;
    // Variances 64 of luck, 144 of the jams, 25 of the cutter: sd 15.26 min, 9.43 min without the jams, 14.42 without the cutter.
    const { days } = doubt.estimates[0]![0]!;
    const span = days.high - days.low;
    expect(Math.abs(rows[0]!.narrower / (span * (1 - 9.43 / 15.26)) - 1)).toBeLessThan(0.15);
    expect(Math.abs(rows[1]!.narrower / (span * (1 - 14.42 / 15.26)) - 1)).toBeLessThan(0.6);
    for (const { narrower, low, high } of rows) {
      expect(low).toBeLessThanOrEqual(narrower);
      expect(high).toBeGreaterThanOrEqual(narrower);
    }
    expect(rows[0]!.text).toMatch(/^\d\d min narrower \(\d\d to \d\d min\)\n[78]\d % of what is not known$/);
    expect(quantity).toEqual({ kind: "duration", label: "narrower if it were known" });
  });

  it("is nothing where every figure is known well enough, and tells the figures that have no room in the table", () => {
    const estimates = doubt.estimates.map((all) => all.map((each) => each && { ...each, notKnown: null }));
    expect(tornadoView({ ...doubt, estimates })).toBeNull();
    const view = tornadoView(doubt)!;
    const many = { ...view, rows: Array.from({ length: 15 }, () => view.rows[0]!) };
    expect(textsOf(tornadoChart(many, testContext())).join(" ")).toMatch(
      /3 more figures, each of which narrows it less/,
    );
    expect(tornadoTable(many).rows).toHaveLength(15);
    expect(tornadoTable(view).rows[0]!.slice(0, 2)).toEqual(["skinning's jams (a guess)", "a guess"]);
  });
});
