import { describe, expect, it } from "vitest";
import { handling, load } from "../../../support/loads.ts";
import {
  chain,
  constant,
  crateStep,
  crew,
  manual,
  onChain,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

const shifts = [
  { name: "early", fromSeconds: 0, toSeconds: 100 },
  { name: "late", fromSeconds: 200, toSeconds: 3600 },
];

describe("checks before the first head", () => {
  it("let the crews begin so much after the first shift's start, and after no other", () => {
    const plan = planOf(saturated(30), [manual("a", 10, "crew")], { crews: [crew("crew", [1, 1])] });
    const day = runChecked(withDay(plan, { shifts, preStartSeconds: 45 }));
    // From 45: six heads, the last one 95-105; then from 200.
    expect(passes(day, "a", "start").slice(0, 8)).toEqual([45, 55, 65, 75, 85, 95, 200, 210]);
  });

  it("count the waiting stage as on break", () => {
    const plan = planOf(stream(constant(5), 2), [manual("a", 10, "crew", { buffer: 9 })], { crews: [crew("crew", 1)] });
    const day = runChecked(withDay(plan, { preStartSeconds: 45 }));
    expect(passes(day, "a", "start")).toEqual([45, 55]);
    expect(secondsIn(day, "a")["on break"]).toBe(40);
  });
});

describe("cleaning after the day", () => {
  it("is a matter of cost and changes nothing in the day itself", () => {
    const plan = planOf(saturated(20), [manual("a", 10, "crew")], { crews: [crew("crew", 1)] });
    const cleaned = withDay(plan, { cleaning: { seconds: 3600, crews: ["crew"] } });
    expect(runChecked(cleaned)).toEqual(runChecked(plan));
  });
});

describe("a fixed end of hanging", () => {
  it("lets what hangs on a chain ride to the end, and hangs nothing more", () => {
    // Heads are taken up at 2, 3, 4, ... (1 s each), hung as shackles come (step 2 s). Hanging ends at 7.5: the head taken up
    // last before that is finished.
    const plan = planOf(
      { kind: "loads", loads: [load("lorry", 0, 1, 20)] },
      [station("hanging", 1), chain("c", 4, 2, [onChain("w", 1, 2, 2)]), station("last", 1)],
      { liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)]) },
    );
    const day = runChecked(withDay(plan, { closing: { rule: "stop hanging", atSeconds: 7.5 } }));
    // Hanging 2-3 (shackle at 3), 3-4 (after the step at 4), 4-5 (blocked to 6), 6-7 (blocked to 8). None after 7.5.
    expect(passes(day, "c", "entry")).toEqual([3, 4, 6, 8]);
    expect(passes(day, "w", "end")).toEqual([6, 8, 10, 12]);
    expect(passes(day, "c", "exit")).toEqual([10, 12, 14, 16]);
    expect(day.heads).toMatchObject({ hung: 4, onLine: 0, inLairage: 16 });
    expect(day.finishSeconds).toBe(17);
    expect(day.status).toBe("finished");
  });

  it("on two chains waits for the last head on the second", () => {
    const plan = planOf(
      { kind: "loads", loads: [load("lorry", 0, 1, 20)] },
      [station("hanging", 5), chain("c", 2, 2, []), station("over", 1), chain("d", 2, 2, []), station("last", 1)],
      { liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)]) },
    );
    const day = runChecked(withDay(plan, { closing: { rule: "stop hanging", atSeconds: 9 } }));
    // Hanging 2-7, 7-12. On c at 7 (moves at 8), off at 10; 12 (moves at 14), off at 16. Over: 10-11, 16-17. On d at 11
    // (moves at 12), off at 14; 17 (moves at 18), off at 20; last 20-21.
    expect(passes(day, "c", "exit")).toEqual([10, 16]);
    expect(passes(day, "d", "exit")).toEqual([14, 20]);
    expect(day.finishSeconds).toBe(21);
  });
});

describe("finishing everything", () => {
  it("keeps the chain moving in overtime until the last head is off", () => {
    const plan = planOf(
      stream(constant(5), 4),
      [manual("hang", 1, "crew"), chain("c", 4, 2, []), manual("last", 1, "crew")],
      { crews: [crew("crew", 1)] },
    );
    const day = runChecked(withDay(plan, { shifts: [{ name: "day", fromSeconds: 0, toSeconds: 12 }] }));
    // Hung at 6, 11, 16, 21, off at 14, 18, 24, 28.
    expect(passes(day, "c", "exit")).toEqual([14, 18, 24, 28]);
    expect(day.finishSeconds).toBe(29);
    expect(day.shiftEndSeconds).toBe(12);
  });
});
