import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

const CARE = { from: "stunning", to: "sticking", late: { after: "8 s", help: "stun again", takes: "3 s" } };

function faults(changes: object, spoil: (plan: Loose) => void = () => {}): string[] {
  return wholeFaults((plan) => {
    plan.stunned = { ...CARE, ...changes };
    spoil(plan);
  });
}

describe("what a plan says of its stunned heads", () => {
  it("is sound between two stations, on a chain or not", () => {
    expect(faults({})).toEqual([]);
    expect(faults({ from: "hanging", to: "evisceration" })).toEqual([]);
    expect(faults({ from: "sticking", to: "pre-loosening" })).toEqual([]);
  });

  it("has to do something", () => {
    expect(faults({ hold: false, late: null })).toEqual([
      `stunned: it neither holds heads back nor helps one that waits; allowed: at least one of the two; write "hold": true, add "late", or delete "stunned"`,
    ]);
    expect(faults({ hold: true, late: null })).toEqual([]);
    expect(faults({ hold: false })).toEqual([]);
  });

  it("runs down the line", () => {
    expect(faults({ from: "sticking", to: "stunning" })).toEqual([
      "stunned.to: 'stunning' does not follow 'sticking' on the line; allowed: a station that heads come to after from when nothing sends them elsewhere; name a later station",
    ]);
    expect(faults({ to: "stunning" })).toHaveLength(1);
    expect(faults({ to: "trim" })).toEqual([expect.stringMatching(/^stunned.to: 'trim' does not follow/)]);
  });

  it("names stations and crews that are there", () => {
    expect(faults({ to: "bleeding" })).toEqual([
      "stunned.to: 'bleeding' is a dwell; allowed: a station, on a chain or not; name the station where the work is done",
    ]);
    expect(faults({ to: "kill chain" })[0]).toMatch(/^stunned.to: 'kill chain' is a chain/);
    expect(faults({ to: "stiking" })).toEqual([
      expect.stringMatching(/'stiking' is not a stage;.*did you mean 'sticking'\?$/),
    ]);
    const late = { ...CARE.late, crew: "nobody" };
    expect(faults({ late })).toEqual([expect.stringMatching(/^stunned.late.crew: 'nobody' is not a crew/)]);
  });

  it("calls a crew that has somebody", () => {
    const late = { ...CARE.late, crew: "stand-by" };
    expect(faults({ late }, (plan) => plan.crews.push({ name: "stand-by", people: 0 }))).toEqual([
      expect.stringMatching(/'stand-by' never has more than 0, but help for a stunned head takes 1/),
    ]);
  });

  it("does not speak of a stage that is left out", () => {
    expect(stageOf(JSON.parse('{"line":[{"name":"a"}]}'), "a").name).toBe("a");
    const left = faults({}, (plan) => (stageOf(plan, "stunning").leftOut = true));
    expect(left).toContainEqual(expect.stringMatching(/^stunned.from: 'stunning' is left out/));
  });
});
