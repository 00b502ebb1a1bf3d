import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, crew, manual, pause, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

describe("a relief crew, second in a station's list", () => {
  const crews = [crew("own", 1), crew("relief", 1)];

  it("works while the first crew is away, and gives the place back", () => {
    // A head every 5 s from 5 on, 4 s of work. Own crew: 5-9, away 10-30 (at equal times breaks go before arrivals), then
    // 30-34 and 35-39. Relief: heads at 10, 15, 20, 25.
    const line = [manual("a", 4, "own", { crews: ["own", "relief"] })];
    const plan = withDay(planOf(stream(constant(5), 7), line, { crews }), {
      breaks: [pause("tea", 10, 20, { crews: ["own"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "end")).toEqual([9, 14, 19, 24, 29, 34, 39]);
    expect(day.crews.map((each) => [each.name, each.busySeconds])).toEqual([
      ["own", 12],
      ["relief", 16],
    ]);
    // Own crew: 0-10 and 30-39; the relief crew is there all day.
    expect(day.crews.map((each) => each.presentSeconds)).toEqual([19, 39]);
  });

  it("takes a second position when the first crew has nobody left for it", () => {
    const line = [manual("a", 4, "own", { crews: ["own", "relief"], positions: 2, buffer: Infinity })];
    const day = runChecked(planOf(stream(constant(1), 4), line, { crews }));
    // Heads at 1 ... 4: own 1-5, relief 2-6, own 5-9, relief 6-10.
    expect(passes(day, "a", "start")).toEqual([1, 2, 5, 6]);
    expect(day.crews.map((each) => each.busySeconds)).toEqual([8, 8]);
  });

  it("is asked when the first crew has too few people for the position, and no crew mixes with another", () => {
    // Two people lift together: one of one crew and one of the other do not make a pair.
    const line = [manual("lift", 4, "pair", { crews: ["single", "pair"], peoplePerPosition: 2, positions: 2 })];
    const day = runChecked(planOf(saturated(2), line, { crews: [crew("single", 1), crew("pair", 3)] }));
    expect(passes(day, "lift", "start").slice(0, 2)).toEqual([0, 4]);
    expect(day.crews.map((each) => each.busySeconds)).toEqual([0, 16]);
  });
});

describe("walking to another station", () => {
  const line = [manual("a", 3, "crew"), manual("b", 3, "crew")];

  it("is added to the work there, as work of the person and of the position", () => {
    // Heads at 20 and 40, 2 s of way. First work of the day needs no walk: a 20-23; b 23-28; a 40-45; b 45-50.
    const day = runChecked(planOf(stream(constant(20), 2), line, { crews: [crew("crew", 1, { walkSeconds: 2 })] }));
    expect(passes(day, "a", "end")).toEqual([23, 45]);
    expect(passes(day, "b", "end")).toEqual([28, 50]);
    expect(day.crews[0]!.busySeconds).toBe(3 + 5 + 5 + 5);
    expect(secondsIn(day, "b").working).toBe(10);
  });

  it("is nobody's when each has a station of their own", () => {
    const day = runChecked(planOf(stream(constant(20), 2), line, { crews: [crew("crew", 2, { walkSeconds: 2 })] }));
    expect(passes(day, "a", "end")).toEqual([23, 43]);
    expect(passes(day, "b", "end")).toEqual([26, 46]);
  });

  it("is not needed for the next head at the same station", () => {
    const day = runChecked(planOf(saturated(3), line.slice(0, 1), { crews: [crew("crew", 1, { walkSeconds: 2 })] }));
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([3, 6, 9]);
  });
});

describe("people absent for the day", () => {
  it("are missing: with everybody absent nothing is done, and the stage is named", () => {
    const plan = planOf(stream(constant(1), 3), [manual("a", 1, "crew", { buffer: Infinity })], {
      crews: [crew("crew", 4, { absentShare: 1 })],
    });
    const day = runChecked(plan);
    expect(day.status).toBe("stuck");
    expect(day.stuckAt).toEqual(["a"]);
    expect(day.crews[0]).toMatchObject({ people: [0], busySeconds: 0, presentSeconds: 0 });
  });

  it("are absent in every shift", () => {
    const day = withDay(
      planOf(stream(constant(1), 3), [manual("a", 1, "crew", { buffer: Infinity })], {
        crews: [crew("crew", [40, 40], { absentShare: 0.5 })],
      }),
      {
        shifts: [
          { name: "early", fromSeconds: 0, toSeconds: 100 },
          { name: "late", fromSeconds: 100, toSeconds: 200 },
        ],
      },
    );
    const [early, late] = runChecked(day).crews[0]!.people;
    expect(early).toBe(late);
    // Binomial, 40 people: outside 4 ... 36 with probability below 1e-6.
    expect(early).toBeGreaterThan(3);
    expect(early).toBeLessThan(37);
  });

  it("are missing in the mean as often as the plan says", () => {
    // 400 days of 10 people, 20 % absent: 800 of 4000, standard deviation 25.3; 5 of them (false alarm 6e-7).
    const plan = planOf(stream(constant(1), 1), [station("a", 1)], { crews: [crew("crew", 10, { absentShare: 0.2 })] });
    let missing = 0;
    for (let replication = 0; replication < 400; replication++) {
      missing += 10 - runChecked(plan, { replication, check: false }).crews[0]!.people[0]!;
    }
    expect(Math.abs(missing - 800)).toBeLessThan(5 * Math.sqrt(4000 * 0.16));
  });
});

describe("a crew that repairs", () => {
  it("goes from one machine that is down to the next, first come first served", () => {
    // a: heads 0-5, 5-10, the third begun at 10 when a breaks. b breaks at 12. One repairer, 20 s each: a 10-30, b 30-50.
    // a goes on 30-35, 35-40; the fifth head is begun at 40, when a breaks again. b: 5-6, 10-11, then 50-51, 51-52.
    const down = (uptime: number) => breakdown(uptime, 20, { clock: "calendar", crew: "maintenance" });
    const line = [
      station("a", 5, { breakdowns: [down(10)] }),
      station("b", 1, { buffer: Infinity, breakdowns: [down(12)] }),
    ];
    const day = runChecked(planOf(saturated(4), line, { crews: [crew("maintenance", 1)] }));
    expect(passes(day, "a", "end").slice(0, 4)).toEqual([5, 10, 35, 40]);
    expect(passes(day, "b", "end").slice(0, 4)).toEqual([6, 11, 51, 52]);
    expect(secondsIn(day, "b").down).toBe(38);
    // 10-30, 30-50 and 50-52 for a again.
    expect(day.crews[0]!.busySeconds).toBe(42);
    expect(day.stages.map((stage) => stage.stops)).toEqual([2, 1]);
  });

  it("with two repairers mends both at once", () => {
    const down = (uptime: number) => breakdown(uptime, 20, { clock: "calendar", crew: "maintenance" });
    const line = [
      station("a", 5, { breakdowns: [down(10)] }),
      station("b", 1, { buffer: Infinity, breakdowns: [down(12)] }),
    ];
    const day = runChecked(planOf(saturated(3), line, { crews: [crew("maintenance", 2)] }));
    expect(passes(day, "b", "end").slice(0, 3)).toEqual([6, 11, 36]);
    expect(secondsIn(day, "b").down).toBe(20);
  });

  it("does so before its other work, but finishes what is in hand", () => {
    // One person for a (5 s) and for mending b, which breaks at 12: a 10-15 is finished, mending 15-35, a from 35 on.
    const down = breakdown(12, 20, { clock: "calendar", crew: "crew" });
    const line = [manual("a", 5, "crew"), station("b", 1, { buffer: Infinity, breakdowns: [down] })];
    const day = runChecked(planOf(saturated(4), line, { crews: [crew("crew", 1)] }));
    expect(passes(day, "a", "start").slice(0, 4)).toEqual([0, 5, 10, 35]);
    expect(passes(day, "b", "end").slice(0, 4)).toEqual([6, 11, 36, 41]);
  });

  it("on break leaves the machine down until it is back", () => {
    // Breaks at 6; the repairer is away 5-25: mended 25-35; two seconds of the head are left.
    const line = [station("a", 4, { breakdowns: [breakdown(6, 10, { crew: "maintenance" })] })];
    const plan = withDay(planOf(saturated(2), line, { crews: [crew("maintenance", 1)] }), {
      breaks: [pause("tea", 5, 20, { crews: ["maintenance"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "end").slice(0, 2)).toEqual([4, 37]);
    expect(secondsIn(day, "a").down).toBe(29);
  });

  it("finishes a repair before it goes on break", () => {
    // Down at 6, mended until 16; the break due at 10 lets that be finished: away 16-36.
    const line = [station("a", 4, { breakdowns: [breakdown(6, 10, { crew: "maintenance" })] })];
    const plan = withDay(planOf(saturated(2), line, { crews: [crew("maintenance", 1)] }), {
      breaks: [pause("tea", 10, 20, { crews: ["maintenance"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "end").slice(0, 2)).toEqual([4, 18]);
    // There 0-10 and, in overtime of the break, 10-16; the day ends at 18.
    expect(day.crews[0]!.presentSeconds).toBe(16);
  });
});

describe("a crew that may work at a station with a crew of its own", () => {
  it("stays where it is needed while that crew is enough", () => {
    // Heads leave a at 2, 3, 4. b (4 s) has the float only: 2-6, 6-10, 10-14. c (2 s) follows with its own person, at 6,
    // 10 and 14.
    const line = [
      station("a", 1, { buffer: Infinity }),
      manual("b", 4, "float", { buffer: 2 }),
      manual("c", 2, "own", { crews: ["own", "float"], buffer: Infinity }),
    ];
    const crews = [crew("own", 1), crew("float", 1, { rule: "longest queue" })];
    const day = runChecked(planOf(stream(constant(1), 3), line, { crews }));
    expect(passes(day, "b", "start")).toEqual([2, 6, 10]);
    expect(passes(day, "c", "start")).toEqual([6, 10, 14]);
    expect(day.crews.map((each) => each.busySeconds)).toEqual([6, 12]);
  });

  it("goes there when that station's queue is the longest", () => {
    // c's own crew has nobody today: the float serves both.
    const line = [
      station("a", 1, { buffer: Infinity }),
      manual("b", 4, "float", { buffer: Infinity }),
      manual("c", 2, "own", { crews: ["own", "float"], buffer: Infinity }),
    ];
    const crews = [crew("own", 0), crew("float", 1, { rule: "longest queue" })];
    const day = runChecked(planOf(stream(constant(1), 3), line, { crews }));
    // Heads reach b at 2, 3, 4. b 2-6: two wait at b, one at c: b 6-10; one each: the tie goes downstream, c 10-12; one at
    // c (head 2), one at b: c 12-14; then b 14-18, c 18-20.
    expect(passes(day, "b", "start")).toEqual([2, 6, 14]);
    expect(passes(day, "c", "start")).toEqual([10, 12, 18]);
  });
});
