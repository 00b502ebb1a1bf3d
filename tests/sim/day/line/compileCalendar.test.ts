import { describe, expect, it } from "vitest";
import type { DayPlan } from "../../../../sim/asked/plan/plan.ts";
import { CREW_BREAK, CREW_PEOPLE, compileLine, HANGING_ENDS, STAGE_PAUSE } from "../../../../sim/day/line/index.ts";
import { crew, pause, planOf, saturated, station } from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

function rows(day: Partial<DayPlan>) {
  const crews = [crew("c0", [2, 3]), crew("c1", [1, 1])];
  const { calendar } = compileLine(withDay(planOf(saturated(1), [station("a", 1)], { crews }), day));
  return Array.from({ length: calendar.count }, (_, row) => [
    calendar.seconds[row],
    calendar.action[row],
    calendar.target[row],
    calendar.amount[row],
    calendar.lengthSeconds[row],
  ]);
}

const shift = (fromSeconds: number, toSeconds: number) => ({ name: `from ${fromSeconds}`, fromSeconds, toSeconds });

describe("compileCalendar", () => {
  it("changes the people at each shift, with nobody in a gap and nobody sent home after the last one", () => {
    expect(rows({ shifts: [shift(0, 100), shift(200, 300)] })).toEqual([
      [0, CREW_PEOPLE, 0, 2, 0],
      [0, CREW_PEOPLE, 1, 1, 0],
      [100, CREW_PEOPLE, 0, 0, 0],
      [100, CREW_PEOPLE, 1, 0, 0],
      [200, CREW_PEOPLE, 0, 3, 0],
      [200, CREW_PEOPLE, 1, 1, 0],
    ]);
  });

  it("has no gap between shifts that meet, and the checks only before the first", () => {
    const seconds = rows({ shifts: [shift(0, 100), shift(100, 300)], preStartSeconds: 30 }).map(([at]) => at);
    expect(seconds).toEqual([30, 30, 100, 100]);
  });

  it("has a row for each crew and each machine of a break, at the crew's own time, and the end of hanging", () => {
    const breaks = [pause("tea", 50, 15, { crews: ["c0", "c1"], laterSeconds: { c1: 20 }, stages: ["a"] })];
    const day = {
      shifts: [shift(0, 100), shift(100, 300)],
      breaks,
      closing: { rule: "stop hanging", atSeconds: 60 } as const,
    };
    expect(rows(day).filter(([, action]) => action !== CREW_PEOPLE)).toEqual([
      [50, CREW_BREAK, 0, 0, 15],
      [50, STAGE_PAUSE, 0, 0, 15],
      [60, HANGING_ENDS, 0, 0, 0],
      [70, CREW_BREAK, 1, 0, 15],
    ]);
  });
});
