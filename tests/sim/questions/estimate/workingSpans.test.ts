import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { workDone, workingSpans } from "../../../../sim/questions/estimate/workingSpans.ts";
import { crew, dwell, manual, pause, planOf, saturated, station } from "../../../support/plans.ts";

const line = [manual("stunning", 5, "kill"), dwell("bleeding", 95, 40), station("skinning", 5)];

function withDay(day: Partial<Plan["day"]>): Plan {
  const plan = planOf(saturated(9), line, { crews: [crew("kill", 1), crew("office", 1)] });
  return { ...plan, day: { ...plan.day, shifts: [{ name: "day", fromSeconds: 0, toSeconds: 1000 }], ...day } };
}

describe("workingSpans", () => {
  it("begin after the checks and go on after the last shift", () => {
    expect(workingSpans(withDay({ preStartSeconds: 60 }))).toEqual([{ from: 60, to: Number.POSITIVE_INFINITY }]);
  });

  it("end with hanging, and at the end of every shift but the last", () => {
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 400 },
      { name: "late", fromSeconds: 500, toSeconds: 900 },
    ];
    expect(workingSpans(withDay({ shifts, closing: { rule: "stop hanging", atSeconds: 800 } }))).toEqual([
      { from: 0, to: 400 },
      { from: 500, to: 800 },
    ]);
  });

  it("leave out breaks of those who work on the line, the emptying of the protected stretch included", () => {
    const breaks = [pause("coffee", 300, 100, { crews: ["kill"] }), pause("meeting", 600, 100, { crews: ["office"] })];
    expect(workingSpans(withDay({ breaks }))[0]).toEqual({ from: 0, to: 300 });
    expect(workingSpans(withDay({ breaks }))[1]!.from).toBe(400);
    const safe = withDay({ breaks, safeStop: { from: "stunning", to: "bleeding" } });
    expect(workingSpans(safe)[1]!.from).toBe(500);
  });
});

describe("workDone", () => {
  const spans = [
    { from: 0, to: 100 },
    { from: 150, to: 200 },
  ];

  it("passes over what lies between spans", () => {
    expect(workDone(spans, 0, 100)).toBe(100);
    expect(workDone(spans, 20, 100)).toBe(170);
    expect(workDone(spans, 120, 10)).toBe(160);
  });

  it("is never where the spans are too short", () => {
    expect(workDone(spans, 0, 151)).toBe(Number.POSITIVE_INFINITY);
  });
});
