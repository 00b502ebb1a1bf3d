import { beforeAll, describe, expect, it } from "vitest";
import type { Doubt } from "../../../sim/questions/doubt/index.ts";
import { chancesChart, chancesTable, chancesView } from "../../../viz/pictures/index.ts";
import { seenDoubt } from "../../support/doubtCase.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

let doubt: Doubt;
beforeAll(() => {
  doubt = seenDoubt({ choice: true });
});

describe("chances", () => {
  it("show in how many worlds each plan is the best, the surest first; what does harm has no bar and is named below", async () => {
    const view = chancesView(doubt)!;
    const svg = chancesChart(view, testContext());
    await expect(picture(svg)).toMatchFileSnapshot("../../pictures/chances.svg");
    expect(view.rows.map(({ name }) => name)).toEqual([
      "a machine that jams less",
      "base (today's plan)",
      "more places",
    ]);
    expect(textsOf(svg).join(" ")).toMatch(/Left out of the choice: “a shortcut”: it handles 100 fewer heads a day\./);
    expect(view.rows.reduce((sum, { worlds }) => sum + worlds, 0)).toBeCloseTo(100, 9);
  });

  it("are what worlds counted afresh are: the machine wins where 4 min and what the jams add are above 0", () => {
    const [machine, today, places] = chancesView(doubt)!.rows;
    // P(240 + 300 sqrt(3) u > 0) for u uniform on -1 to 1.
    const exact = 100 * (0.5 + 240 / (2 * 300 * Math.sqrt(3)));
    // Worlds in slices leave one of 60 open; the luck is common to all plans.
    expect(Math.abs(machine!.worlds - exact)).toBeLessThan(2);
    expect(machine!.low).toBeLessThan(exact);
    expect(machine!.high).toBeGreaterThan(exact);
    expect(Math.abs(today!.worlds - (100 - exact))).toBeLessThan(2);
    expect(places!.text).toMatch(/^fewer than 1 of 100 worlds\ngives away 1\d\.\d min a day$/);
  });

  it("give away a rate as a rate, which adds up over no day, and call a result by the short of its name", () => {
    const [, rate] = doubt.responses;
    const { rows, title } = chancesView({ ...doubt, responses: [rate!] })!;
    expect(rows[1]!.text).toMatch(/\ngives away [\d.\u202f]+ carcasses\/h$/);
    expect(title).toMatch(/: Throughput$/);
  });

  it("are in the table as drawn, and nothing where there is nothing to choose among", () => {
    const view = chancesView(doubt)!;
    expect(chancesTable(view).rows.map(([name, worlds]) => [name, worlds])).toEqual(
      view.rows.map(({ name, worlds }) => [name, worlds]),
    );
    expect(chancesView({ ...doubt, decision: null })).toBeNull();
    expect(textsOf(chancesChart({ ...view, rows: [] }, testContext()))[1]).toBe("There is nothing to choose among.");
  });
});
