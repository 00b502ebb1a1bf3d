import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { constant, crew, manual, planOf, stream } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

// Heads at 10, 20, ..., 60. Killed in 12 s by the hot crew: ends at 22, 34, 46, 58, 70, 82; packed in 20 s by the cold crew: 42, 62, ..., 142.
const shifts = [
  { name: "early", fromSeconds: 0, toSeconds: 50 },
  { name: "late", fromSeconds: 50, toSeconds: 130 },
];

function plan(leavesOnItsOwn: boolean): Plan {
  const hot = crew("hot", [1, 0], leavesOnItsOwn ? { leavesOnItsOwn: true } : {});
  const line = [manual("kill", 12, "hot", { buffer: 9 }), manual("packing", 20, "cold", { buffer: 9 })];
  const base = planOf(stream(constant(10), 6), line, { crews: [hot, crew("cold", [1, 1])] });
  return { ...base, day: { ...base.day, shifts } };
}

describe("a crew that leaves when its own work is done", () => {
  it("stays beyond its last shift until nothing comes any more, whatever shifts of others follow", () => {
    const day = runChecked(plan(true));
    expect(day.status).toBe("finished");
    expect(passes(day, "kill", "end")).toEqual([22, 34, 46, 58, 70, 82]);
    expect(passes(day, "packing", "end").at(-1)).toBe(142);
    const [hot, cold] = day.crews;
    expect(hot).toMatchObject({ lastWorkSeconds: 82, presentSeconds: 82 });
    expect(cold).toMatchObject({ lastWorkSeconds: 142, presentSeconds: 142 });
  });

  it("is paid for its own overtime, and the others for theirs", () => {
    // Hot: 50 s of its shift and 32 s more; cold: 130 s and 12 s more.
    const { paidHours, overtimeHours } = measure(runChecked(plan(true)), plan(true));
    expect(paidHours! * 3600).toBeCloseTo(82 + 142, 9);
    expect(overtimeHours! * 3600).toBeCloseTo(32 + 12, 9);
  });

  it("is gone at the end of its last shift otherwise, and what reaches its stations then stays", () => {
    const day = runChecked(plan(false));
    expect(day.status).toBe("stuck");
    // The head in hand at 50 is finished.
    expect(passes(day, "kill", "end").filter((end) => !Number.isNaN(end))).toEqual([22, 34, 46, 58]);
  });
});
