import { describe, expect, it } from "vitest";
import { type Plan, staggerWords, stopFit } from "../../../../sim/asked/plan/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { changesToTry } from "../../../../sim/questions/why/index.ts";
import { BREAKS, JAMMING, TWO_ALIKE } from "../../../support/advicePlants.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { chain, crew, manual, onChain, planOf, saturated, station } from "../../../support/plans.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";

const labels = (plan: Plan) => changesToTry(plan).singles.map(({ label }) => label);

describe("what is tried", () => {
  it("is every machine with breakdowns in four ways, however little it has to do", () => {
    const idle = station("idle", 0.1, { breakdowns: [breakdown(1000, 10)] });
    const found = labels({ ...JAMMING, line: [...JAMMING.line, idle] });
    for (const words of ["no breakdowns", "breakdowns half as often", "repairs twice as fast", "a second machine"])
      expect(found).toContain(`${words} at idle`);
  });

  it("is every breakdown that stops several places, in three ways, and its path", () => {
    const plan = { ...JAMMING, sharedBreakdowns: [shared(["skinning", "evisceration"], 1000, 10)] };
    const tried = changesToTry(plan).singles.filter(({ of }) => of === "board");
    expect(tried.map(({ label }) => label)).toEqual([
      "no stops at all (board)",
      "stops half as often (board)",
      "repairs twice as fast (board)",
    ]);
    const [none, rarer, quicker] = tried.map((change) => change.on(plan));
    expect(none!.plan.sharedBreakdowns).toEqual([]);
    expect(rarer!.plan.sharedBreakdowns[0]!.uptimeSeconds).toEqual({ family: "constant", value: 2000 });
    expect(quicker!.plan.sharedBreakdowns[0]!.repairSeconds).toEqual({ family: "constant", value: 5 });
    expect(Object.keys(quicker!.set)).toEqual(["sharedBreakdowns.board"]);
  });

  it("is one more position only where the load is near the highest", () => {
    const found = labels({ ...JAMMING, line: [...JAMMING.line, station("quick", 1)] });
    expect(found).toContain("one more position at evisceration with its person");
    expect(found).not.toContain("a second machine at quick");
  });

  it("brings the people that a position needs, where the crew has none to spare", () => {
    const plan = (people: number) =>
      planOf(saturated(10), [manual("cutting", 3, "cutters", { positions: 2, peoplePerPosition: 2 })], {
        crews: [crew("cutters", people)],
      });
    expect(labels(plan(4))).toContain("one more position at cutting with its 2 people");
    expect(labels(plan(6))).toContain("one more position at cutting");
    const { plan: changed, set } = changesToTry(plan(4)).singles[0]!.on(plan(4));
    expect(changed.crews[0]!.people).toEqual([6]);
    expect(set).toEqual({ "line.cutting.positions": 3, "crews.cutters.people": [6] });
  });

  it("is one more person only in a crew that has work for one", () => {
    expect(labels(TWO_ALIKE)).toContain("one more person in cutters");
    expect(labels(TWO_ALIKE)).not.toContain("one more person in eviscerators");
    expect(changesToTry(TWO_ALIKE).fullCrews).toEqual(["eviscerators"]);
  });

  it("is more and fewer places before stations, in dwells, and other staggers with a longer trough", () => {
    const found = labels(BREAKS);
    expect(found).toEqual(
      expect.arrayContaining([
        "4 instead of 2 places before skinning",
        "1 instead of 2 places before skinning",
        "18 instead of 12 places in bleeding",
        "24 instead of 12 places in bleeding",
        "9 instead of 12 places in bleeding",
        "breaks for all at the same time",
        "one crew after another on break, as heads flow and 24 instead of 12 places in bleeding",
      ]),
    );
  });

  it("holds the stagger that check and a day's report name", () => {
    const { breaks } = stopFit(BREAKS)!.stagger!;
    const change = changesToTry(BREAKS).singles.find(({ label }) => label === staggerWords(breaks))!;
    expect(change.on(BREAKS).plan.day.breaks).toEqual(breaks);
  });

  it("puts no more positions into a window of a chain than it has places", () => {
    const line = [station("hanging", 1), chain("rail", 4, 2, [onChain("cut", 0, 1, 3, { positions: 1 })])];
    expect(labels(planOf(saturated(10), line))).not.toContain("a second machine at cut");
  });
});

describe("a change", () => {
  it("keeps every break's length and people, every dwell's time, every limit and gate", () => {
    for (const plan of [BREAKS, JAMMING, readSmallPlan()]) {
      const { singles, pairs } = changesToTry(plan);
      for (const change of [...singles, ...pairs]) {
        const { plan: after } = change.on(plan);
        const kept = ({ day, limits, gates, line }: Plan) => ({
          ...{ limits, gates },
          breaks: day.breaks.map(({ name, atSeconds, lengthSeconds, crews, stages }) => [
            name,
            atSeconds,
            lengthSeconds,
            crews,
            stages,
          ]),
          safeStop: day.safeStop,
          dwells: line.flatMap((stage) => (stage.kind === "dwell" ? [stage.dwell] : [])),
        });
        expect(kept(after), change.label).toEqual(kept(plan));
        expect(after, change.label).not.toEqual(plan);
        expect(() => compileLine(after)).not.toThrow();
      }
    }
  });

  it("has a name of its own", () => {
    const { singles, pairs } = changesToTry(readSmallPlan());
    const names = [...singles, ...pairs].map(({ label }) => label);
    expect(new Set(names).size).toBe(names.length);
  });
});
