import { describe, expect, it } from "vitest";
import { killLineKeys, usualResponses } from "../../../../sim/day/observations/index.ts";
import { decisionKeys } from "../../../../sim/days/decision/index.ts";
import { daySource } from "../../../../sim/days/run/index.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

describe("daySource", () => {
  const killLine = killLineKeys(readSmallPlan());
  const decision = decisionKeys(readSmallPlan());

  it("keeps what the study asks for, in its order, whether a day ended by itself, and how stunned heads fared", () => {
    expect(killLine).toContain("beyond.stun to skinning");
    const { keys } = daySource(threeVariants(), "none", false);
    expect(keys).toEqual([...new Set(["headsPerHour", "carcasses", "unfinished", ...decision, ...killLine])]);
    const asked = threeVariants({ responses: ["unfinished", "finish"] });
    expect(daySource(asked, "none", false).keys).toEqual([
      ...new Set(["unfinished", "finish", ...decision, ...killLine]),
    ]);
  });

  it("keeps the usual responses when the study asks for none", () => {
    const { keys } = daySource(threeVariants({ responses: [] }), "none", false);
    expect(keys).toEqual([...new Set([...usualResponses(readSmallPlan()), "unfinished", ...decision, ...killLine])]);
  });

  it("is plain data that goes to another thread as it is", () => {
    const source = daySource(threeVariants(), "exact", true);
    expect(structuredClone(source)).toEqual(source);
    expect(source).toMatchObject({ seed: "seed", traces: "exact", check: true });
  });
});
