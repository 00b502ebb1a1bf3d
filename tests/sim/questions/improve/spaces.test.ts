import { describe, expect, it } from "vitest";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import { baseCounts } from "../../../../sim/questions/improve/space.ts";
import { improveFileOf } from "../../../support/improveCases.ts";
import { caseQuestion, improveQuestion } from "../../../support/improving.ts";

describe("a space", () => {
  it("of places sets the buffers of stations", () => {
    const question = caseQuestion();
    const design = new Designs(question).of([7, 5, 3])!;
    expect(design.change.set).toEqual({
      "line.stunning.buffer": 7,
      "line.sticking.buffer": 5,
      "line.skinning.buffer": 3,
    });
    expect(design.name).toBe("stunning 7, sticking 5, skinning 3");
    expect(design.plan.line.map((stage) => (stage.kind === "station" ? stage.buffer : null))).toEqual([1, 7, 5, 3]);
    expect(baseCounts(question.space)).toBeNull();
  });

  it("of people sets them in every shift that the crew works, and positions with them", () => {
    const json = improveFileOf({}, 5) as { plan: { day: object; crews: object[] } };
    const plan = {
      ...json.plan,
      day: {
        shifts: [
          { name: "early", from: "06:00", to: "06:20" },
          { name: "late", from: "06:30", to: "06:50" },
        ],
      },
      crews: [{ name: "hanging", people: { early: 3, late: 0 } }, ...json.plan.crews.slice(1)],
    };
    const among = [{ crew: "hanging", to: 9, positions: ["hanging"] }];
    const question = improveQuestion({ ...json, plan, allocate: { people: { total: 9, among } } });
    const { change, plan: changed } = new Designs(question).of([6])!;
    expect(change.set).toEqual({ "crews.hanging.people": { early: 6, late: 0 }, "line.hanging.positions": 6 });
    expect(changed.crews[0]!.people).toEqual([6, 0]);
    // Three people at five positions are none of these designs.
    expect(question.space.base).toEqual([null]);
  });

  it("of people lets a crew go to 0 where another does its work, and leaves out what has nobody", () => {
    const plan = {
      ...{
        name: "invented",
        notes: "Invented for tests.",
        day: { shifts: [{ name: "day", from: "06:00", to: "06:20" }] },
      },
      supply: { stream: { interarrival: "6 s", heads: 150 } },
      crews: ["hanging", "relief"].map((name) => ({ name, people: 1 })),
      line: [{ name: "hanging", kind: "station", positions: 2, cycle: "5 s", crew: ["hanging", "relief"] }],
    };
    const among = ["hanging", "relief"].map((crew) => ({ crew, from: 0, to: 2 }));
    const asked = { name: "people", plan, goal: "overtime", allocate: { people: { total: 2, among } } };
    const designs = new Designs(improveQuestion(asked));
    expect(designs.of([1, 0])!.plan.crews.map(({ people }) => people)).toEqual([[1], [0]]);
    expect(designs.of([0, 1])).not.toBeNull();
    expect(designs.of([0, 0])).toBeNull();
  });

  it("of people knows the plan as it is, which keeps its name", () => {
    const question = caseQuestion({}, 6);
    const designs = new Designs(question);
    expect(designs.of([3, 3, 3, 3])).toBe(designs.base);
    expect(designs.base.spent).toBe(12);
  });

  it("of a budget adds up what options do to a crew, and keeps apart what sets the same place", () => {
    const json = improveFileOf({}, 5);
    const option = (name: string, more: object) => ({ name, price: "1 EUR", life: 5, ...more });
    const options = [
      option("a", { crew: { skinning: 1 } }),
      option("b", { crew: { skinning: 1 }, set: { "line.skinning.buffer": 8 } }),
      option("c", { set: { 'line["skinning"].buffer': 9 } }),
      option("d", { set: { "line.skinning": { kind: "station", name: "skinning", cycle: "9 s", crew: "skinning" } } }),
    ];
    const question = improveQuestion({ ...json, allocate: { budget: { total: "9 EUR", options } } });
    expect(question.space.apart).toEqual([
      [1, 2],
      [1, 3],
      [2, 3],
    ]);
    const both = new Designs(question).of([1, 1, 0, 0])!;
    expect(both.plan.crews[1]!.people).toEqual([5]);
    expect(both.name).toBe("a + b");
    expect(new Designs(question).of([0, 0, 0, 0])!.key).toBe("base");
  });

  it("of a budget charges each day of a purchase: 20,000 EUR over 5 years at 5 % are 18.48 EUR a day of 250", () => {
    const question = caseQuestion({}, 9);
    const counts = question.space.elements.map((_, index) => (index === 0 ? 1 : 0));
    // P/A(5 %, 5) = 4.3295 (Blank and Tarquin, Engineering Economy, table of 5 %; from memory).
    expect(new Designs(question).of(counts)!.chargePerDay).toBeCloseTo(20_000 / 4.3295 / 250, 3);
  });
});
