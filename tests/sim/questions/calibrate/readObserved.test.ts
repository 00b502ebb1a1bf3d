import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { readObserved } from "../../../../sim/questions/calibrate/index.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";

/** Its day starts at 05:30. */
const PLAN = readSmallPlan();
const ZERO = 5.5 * 3600;
const read = (text: string) => readObserved(text, PLAN);
const faultsOf = (text: string) => read(text).faults.map(formatFault);

describe("readObserved", () => {
  it("reads counts of stretches and responses by key or label, each in its own writing", () => {
    const { observed, faults } = read(
      "date,06:00-07:00,07:00,finish,carcasses,End of work on the line,unfinished,timeInSystem.mean\nMonday,210,240,08:31,470,08:31,0 %,25 min\nTuesday,,238,25:00,465.5,08:30:30,0.5,\n",
    );
    expect(faults).toEqual([]);
    expect(observed!.passedOver).toEqual(["date"]);
    expect(observed!.lines).toEqual([2, 3]);
    expect(observed!.quantities.map(({ heading, values }) => [heading, values])).toEqual([
      ["06:00-07:00", [210, null]],
      ["07:00", [240, 238]],
      ["finish", [8 * 3600 + 31 * 60 - ZERO, 25 * 3600 - ZERO]],
      ["carcasses", [470, 465.5]],
      ["End of work on the line", [8 * 3600 + 31 * 60 - ZERO, 8 * 3600 + 30.5 * 60 - ZERO]],
      ["unfinished", [0, 0.5]],
      ["timeInSystem.mean", [1500, null]],
    ]);
    expect(observed!.quantities[0]!.quantity).toMatchObject({
      fromSeconds: 6 * 3600 - ZERO,
      toSeconds: 7 * 3600 - ZERO,
    });
    expect(observed!.quantities[1]!.quantity).toMatchObject({
      fromSeconds: 7 * 3600 - ZERO,
      toSeconds: 8 * 3600 - ZERO,
    });
  });

  it("tells every fault at once, with line, column and remedy", () => {
    const text =
      "05:00-06:00,07:00-06:00,06:00-07:00,finish,shift hours,finsih\n1,1,21.5,8.31,7,08:00\n1,1,x,25:61,7,\n";
    expect(faultsOf(text)).toEqual([
      expect.stringMatching(/^column "05:00-06:00": it begins before the plan's day does; .*25:00/),
      expect.stringMatching(/^column "07:00-06:00": it ends before it begins/),
      expect.stringMatching(/^line 2, column "06:00-07:00": "21.5"; allowed: a whole number of heads/),
      expect.stringMatching(/^line 3, column "06:00-07:00": "x"/),
      expect.stringMatching(/^line 2, column "finish": "8.31" is not a clock time/),
      expect.stringMatching(/^line 3, column "finish": "25:61" is not a clock time/),
      expect.stringMatching(/^column "shift hours": it holds numbers under a heading that is nothing to compare/),
    ]);
  });

  it("passes over a column of clock times under a heading it does not know, and says so", () => {
    expect(read("06:00,came\n9,05:50\n").observed!.passedOver).toEqual(["came"]);
  });

  it.each([
    ["", /it is empty/],
    ["06:00\n", /no rows/],
    ["06:00,06:00\n1,2\n", /two columns have this heading/],
    ["06:00\n1,5\n", /line 2: 2 cells under 1 headings/],
    ["06:00,07:00\n1,\n", /column "07:00": no value/],
    ["who\nx\n", /no column to compare/],
    [`06:00\n${"1\n".repeat(401)}`, /401 days; allowed: 400 at most/],
    ["carcasses\n1e999\n", /line 2, column "carcasses"/],
    ["06:75\n4\n", /column "06:75"/],
  ])("refuses %j", (text, words) => {
    expect(faultsOf(text).join("\n")).toMatch(words);
    expect(read(text).observed).toBeNull();
  });
});
