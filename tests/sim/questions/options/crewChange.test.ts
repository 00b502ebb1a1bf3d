import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { crewChange } from "../../../../sim/questions/options/crewChange.ts";

const base = {
  crews: [
    { name: "kill", people: 2 },
    { name: "hind legs", people: { early: 3, late: 0 } },
  ],
};
const change = (crew: Record<string, number>, set: Record<string, unknown> = {}) =>
  crewChange(crew, base, ["options", 1], set);

describe("crewChange", () => {
  it("adds people to one number, and in the shifts that have any", () => {
    expect(change({ kill: 1, "hind legs": -1 }).set).toEqual({
      'crews["kill"].people': 3,
      'crews["hind legs"].people': { early: 2, late: 0 },
    });
  });

  it.each<[Record<string, number>, Record<string, unknown>, string]>([
    [
      { kil: 1 },
      {},
      "options[1].crew.kil: 'kil' is no crew of the plan; allowed: 'kill', 'hind legs'; did you mean 'kill'?",
    ],
    [
      { kill: -3 },
      {},
      "options[1].crew.kill: -3 leaves fewer than nobody; allowed: no fewer than the crew has; take away fewer",
    ],
    [
      { "hind legs": -4 },
      {},
      'options[1].crew["hind legs"]: -4 leaves fewer than nobody; allowed: no fewer than the crew has; take away fewer',
    ],
    [{ kill: 1 }, { "crews.kill.people": 5 }, "options[1].crew.kill: its people are set as well; keep one of the two"],
  ])("refuses %j beside %j", (crew, set, words) => {
    const { faults, set: changed } = change(crew, set);
    expect(faults.map(formatFault)).toEqual([words]);
    expect(changed).toEqual({});
  });

  it("has nothing to say of a plan that is none", () => {
    expect(crewChange({ kill: 1 }, null, [], {}).faults).toHaveLength(1);
  });
});
