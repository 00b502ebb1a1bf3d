import { describe, expect, it } from "vitest";
import type { Moment, Plan, ShareBy } from "../../../../sim/asked/plan/plan.ts";
import { shareAt } from "../../../../sim/day/engine/branchShares.ts";
import { constant, exponential, planOf, station, stream } from "../../../support/plans.ts";
import { runChecked } from "../../../support/timeline.ts";

const at = (stage: string, moment: Moment) => ({ stage, moment });
const byTime = (
  from: ShareBy["of"] & { kind: "time" },
  points: [at: number, share: number][],
  steps = true,
): ShareBy => ({
  of: from,
  between: steps ? "steps" : "a line",
  points: points.map(([each, share]) => ({ at: each, share })),
});
const removed = (shareBy: ShareBy) => [
  { as: "damaged", share: Math.max(...shareBy.points.map(({ share }) => share)), shareBy },
];

describe("a share between its points", () => {
  const shares = (steps: boolean) => ({
    span: 0,
    at: Float64Array.of(10, 20, 40),
    share: Float64Array.of(0.1, 0.3, 0.2),
    steps,
  });

  it("runs straight, and stays as it is before the first point and after the last", () => {
    const found = [0, 10, 15, 20, 30, 40, 99, Number.NaN].map((measure) => shareAt(shares(false), measure));
    expect(found).toEqual([0.1, 0.1, 0.2, 0.3, 0.25, 0.2, 0.2, 0.1].map((share) => expect.closeTo(share, 12)));
  });

  it("goes in steps, each from its point on", () => {
    const found = [0, 10, 19.9, 20, 39.9, 40, 99].map((measure) => shareAt(shares(true), measure));
    expect(found).toEqual([0.1, 0.1, 0.1, 0.3, 0.3, 0.2, 0.2]);
  });
});

describe("a share that depends on how long a head waited", () => {
  // Heads at 1, 2, 3, 4 wait 0, 3, 6 and 9 s for a, which takes 4 s.
  const wait = { kind: "time", from: at("a", "entry"), to: at("a", "start") } as const;
  const line = (shareBy: ShareBy): Plan =>
    planOf(stream(constant(1), 4), [
      station("a", 4, { buffer: Infinity }),
      station("b", 1, { buffer: 9, removals: removed(shareBy) }),
    ]);

  it("takes those that waited long enough, and no others", () => {
    const day = runChecked(
      line(
        byTime(wait, [
          [0, 0],
          [6, 1],
        ]),
      ),
    );
    expect(day.heads.out).toEqual({ carcass: 2, damaged: 2 });
    expect([...day.perHead!.destinations]).toEqual([0, 0, 1, 1]);
  });

  it("measures to the end of the stage's own work as well, and from the arrival", () => {
    // In the plant for 5, 8, 11 and 14 s until b has done its work.
    const since = { kind: "time", from: { stage: null, moment: "entry" as const }, to: at("b", "end") } as const;
    const day = runChecked(
      line(
        byTime(since, [
          [0, 1],
          [5.5, 0],
          [13.9, 1],
        ]),
      ),
    );
    expect([...day.perHead!.destinations]).toEqual([1, 0, 0, 1]);
  });

  it("sends heads to another stage by it just the same", () => {
    const shareBy = byTime(wait, [
      [0, 0],
      [9, 1],
    ]);
    const trim = station("trim", 1, { offLine: true, next: "b", buffer: Infinity });
    const sends = [{ to: "trim", share: 1, shareBy }];
    const stages = [station("a", 4, { buffer: Infinity, diversions: sends }), station("b", 1, { buffer: 9 }), trim];
    const day = runChecked(planOf(stream(constant(1), 4), stages));
    expect(day.stages.map(({ name, diverted, processed }) => [name, diverted, processed])).toEqual([
      ["a", 1, 4],
      ["b", 0, 4],
      ["trim", 0, 1],
    ]);
  });

  it("leaves the figures of limits as they are", () => {
    const limit = { name: "wait", from: wait.from, to: wait.to, minSeconds: null, maxSeconds: 5, source: "" };
    const plan = {
      ...line(
        byTime(wait, [
          [0, 0],
          [6, 1],
        ]),
      ),
      limits: [limit],
    };
    expect(runChecked(plan).limits[0]).toMatchObject({ beyond: 2, tally: { count: 4, max: 9 } });
  });
});

describe("a share that depends on the live weight", () => {
  const heavy: ShareBy = {
    of: { kind: "live weight" },
    between: "steps",
    points: [
      { at: 2, share: 0 },
      { at: 2.5, share: 1 },
    ],
  };
  const plan = (removals: Plan["line"][number]["removals"]): Plan =>
    planOf({ ...stream(exponential(3), 200), liveWeightKg: { family: "uniform", min: 2, max: 3 } } as Plan["supply"], [
      station("a", exponential(2), { buffer: Infinity, removals }),
      station("b", exponential(1), { buffer: Infinity }),
    ]);

  it("takes the heavy ones, and no others", () => {
    const { heads, masses } = runChecked(plan(removed(heavy)));
    const [damaged, carcasses] = [heads.out.damaged!, heads.out.carcass!];
    expect(damaged + carcasses).toBe(200);
    expect(masses.outKg.damaged! / damaged).toBeGreaterThan(2.5);
    expect(masses.outKg.carcass! / carcasses).toBeLessThan(2.5);
  });

  it("is that of all heads, bit for bit, where it is the same at every weight", () => {
    const flat: ShareBy = {
      ...heavy,
      points: [
        { at: 2, share: 0.3 },
        { at: 2.5, share: 0.3 },
      ],
    };
    expect(runChecked(plan(removed(flat)))).toEqual(runChecked(plan([{ as: "damaged", share: 0.3 }])));
  });
});
