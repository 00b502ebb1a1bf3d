import { describe, expect, it } from "vitest";
import { type Loose, wholeFaults, wholeWarnings } from "../wholeMessages.ts";

const board = (stops: string[], changes: object = {}) => ({
  ...{ name: "board", stops, uptime: { exponential: { mean: "2 h" } }, repair: "5 min" },
  ...changes,
});
const withBoard =
  (...args: Parameters<typeof board>) =>
  (plan: Loose) => {
    plan.sharedBreakdowns = [board(...args)];
  };

describe("shared breakdowns", () => {
  it("may stop stations, on chains or not, chains and crate steps, each named once", () => {
    const names = (plan: Loose) =>
      plan.line.filter(({ kind, leftOut }: Loose) => kind !== "dwell" && !leftOut).map(({ name }: Loose) => name);
    expect(wholeFaults((plan) => withBoard([...names(plan), "crate washer"])(plan))).toEqual([]);
    expect(wholeFaults(withBoard(["skinning machine", "skinning machine"]))).toEqual([
      "sharedBreakdowns[0].stops[1]: 'skinning machine' stands twice among what it stops; allowed: each name once; delete one of them",
    ]);
  });

  it("name what is there and can stop", () => {
    expect(wholeFaults(withBoard(["skining machine", "crate washer"]))[0]).toMatch(
      /^sharedBreakdowns\[0\]\.stops\[0\]: 'skining machine' is no stage or crate step; .*did you mean 'skinning machine'\?$/,
    );
    expect(wholeFaults(withBoard(["chilling", "skinning machine"]))[0]).toMatch(
      /'chilling' is a dwell, in which nothing runs/,
    );
  });

  it("are repaired by a crew that there is, and have names of their own", () => {
    expect(wholeFaults(withBoard(["skinning machine", "crate washer"], { crew: "fiters" }))[0]).toMatch(
      /^sharedBreakdowns\[0\]\.crew: 'fiters' is no crew/,
    );
    const twice = wholeFaults((plan) => {
      plan.sharedBreakdowns = [
        board(["skinning machine", "crate washer"]),
        board(["skinning machine", "crate washer"]),
      ];
    });
    expect(twice).toEqual([
      "sharedBreakdowns[1].name: 'board' stands twice among the shared breakdowns; allowed: each name once; rename one of them",
    ]);
  });

  it("are warned of where they stop one station alone", () => {
    expect(wholeWarnings(withBoard(["skinning machine"]))).toContain(
      `sharedBreakdowns[0].stops: it stops 'skinning machine' alone; name what else it stops, or write it among the "breakdowns" of 'skinning machine'`,
    );
    expect(wholeWarnings(withBoard(["skinning machine", "crate washer"]))).not.toContainEqual(
      expect.stringContaining("sharedBreakdowns"),
    );
  });
});
