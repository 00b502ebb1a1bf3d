import { describe, expect, it } from "vitest";
import type { Stunned, TimeLimit } from "../../../../sim/asked/plan/plan.ts";
import { compileLine, SLOT_HELP, SLOT_HOLD, SLOT_LATE } from "../../../../sim/day/line/index.ts";
import { chain, crew, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const limit = (name: string, from: TimeLimit["from"], to: TimeLimit["to"]): TimeLimit => {
  return { name, from, to, minSeconds: null, maxSeconds: 9, source: "" };
};
const line = [station("stun", 1), chain("c", 4, 1, [onChain("stick", 1, 1, 1)]), station("last", 1)];
const stunned: Stunned = {
  from: "stun",
  to: "stick",
  hold: true,
  late: { afterSeconds: 8, help: "stick there", takesSeconds: 5, crew: "b" },
};

describe("compileStunned", () => {
  it("knows the two stations, who helps how, and the limits that a second stun begins anew", () => {
    const limits = [
      limit("whole", { stage: null, moment: "entry" }, { stage: "stick", moment: "start" }),
      limit("short", { stage: "stun", moment: "end" }, { stage: "stick", moment: "start" }),
      limit("long", { stage: "stun", moment: "start" }, { stage: "stick", moment: "end" }),
      limit("further", { stage: "stun", moment: "end" }, { stage: "last", moment: "start" }),
    ];
    const plan = planOf(saturated(1), line, { limits, stunned, crews: [crew("a", 1), crew("b", 1)] });
    const found = compileLine(plan).stunned!;
    expect({ ...found, limits: Array.from(found.limits) }).toEqual({
      from: 0,
      to: 2,
      hold: true,
      limits: [1, 2],
      late: { afterSeconds: 8, takesSeconds: 5, sticks: true, crew: 1 },
    });
  });

  it("gives its events the last ranks of an instant, and none to a plan without", () => {
    const { slots } = compileLine(planOf(saturated(1), line, { stunned: { ...stunned, late: null } }));
    expect(Array.from(slots.kind).slice(-3)).toEqual([SLOT_HOLD, SLOT_LATE, SLOT_HELP]);
    const without = compileLine(planOf(saturated(1), line));
    expect(without.stunned).toBeNull();
    expect([without.slots.hold, without.slots.late, without.slots.help]).toEqual([-1, -1, -1]);
    expect(without.slots.count).toBe(slots.count - 3);
  });
});
