import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN } from "../../../support/wholeDay.ts";

describe("responsesOf", () => {
  it("gives every response a key of its own, a label and a unit", () => {
    const responses = responsesOf(WHOLE_PLAN);
    expect(responses.length).toBeGreaterThan(100);
    expect(new Set(responses.map(({ key }) => key)).size).toBe(responses.length);
    for (const { label, unit } of responses) {
      expect(label).not.toBe("");
      expect(unit).not.toBe("");
    }
  });

  it("wants more throughput, less overtime, less time beyond a limit, and more time above a minimum", () => {
    const better = Object.fromEntries(responsesOf(HAND_MADE_PLAN).map((response) => [response.key, response.better]));
    expect(better).toMatchObject({
      headsPerHour: "more",
      overtime: "less",
      "beyond.stick to evisceration": "less",
      "worst.stick to evisceration": "less",
      "worst.chilling time": "more",
      "working.skinning": null,
    });
  });

  it("leaves out what a plan does not have", () => {
    const bare: Plan = {
      ...HAND_MADE_PLAN,
      supply: { kind: "saturated", heads: 10, liveWeightKg: { family: "constant", value: 2.5 } },
      liveHandling: null,
      crews: [],
      limits: [],
      line: [{ ...HAND_MADE_PLAN.line[1]!, kind: "dwell", places: Number.POSITIVE_INFINITY } as Plan["line"][number]],
    };
    const keys = responsesOf(bare).map(({ key }) => key);
    for (const start of [
      "lairage",
      "crew.",
      "carcassesPerPersonHour",
      "beyond.",
      "removed.",
      "turnedAway",
      "working.",
    ]) {
      expect(keys.filter((key) => key.startsWith(start))).toEqual([]);
    }
    expect(keys).toContain("queue.chilling.mean");
  });

  it("counts heads turned away only where the plan turns heads away", () => {
    const stream: Plan["supply"] & { kind: "stream" } = {
      kind: "stream",
      interarrival: { family: "exponential", mean: 5 },
      heads: 10,
      whenFull: "turn away",
      liveWeightKg: { family: "constant", value: 2.5 },
    };
    const keys = (supply: Plan["supply"]): string[] =>
      responsesOf({ ...HAND_MADE_PLAN, supply, liveHandling: null }).map(({ key }) => key);
    expect(keys(stream)).toContain("turnedAway");
    expect(keys({ ...stream, whenFull: "wait" })).not.toContain("turnedAway");
  });

  it("keeps a name that is also a word of the language apart", () => {
    const odd: Plan = {
      ...HAND_MADE_PLAN,
      crews: [{ ...HAND_MADE_PLAN.crews[0]!, name: "__proto__" }],
    };
    expect(responsesOf(odd).map(({ key }) => key)).toContain("crew.__proto__.occupation");
  });
});
