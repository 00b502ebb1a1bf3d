import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { formatFault, stopFit } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { stopWarning } from "../../../../sim/days/run/index.ts";
import { constant, crew, dwell, manual, pause, planOf, station, stream } from "../../../support/plans.ts";

/** Heads every 5 s; the trough holds `places`, of which 12 are taken while heads flow. Two breaks of 15 min. */
function trough(places: number, later: Record<string, number>, limits: Plan["limits"] = []): Plan {
  const line = [
    manual("hanging", 5, "live", { buffer: Infinity }),
    station("weighing", 5, { buffer: 2 }),
    manual("sticking", 5, "kill", { buffer: 1 }),
    dwell("bleeding", 60, places),
    manual("evisceration", 20, "dressing", { positions: 4 }),
  ];
  const breaks = [7200, 10_800].map((at, row) =>
    pause(`rest ${row}`, at, 900, { crews: ["live", "kill", "dressing"], laterSeconds: later }),
  );
  const plan = planOf(stream(constant(5), 2880), line, {
    ...{ crews: [crew("live", 1), crew("kill", 1), crew("dressing", 4)], limits },
  });
  return { ...plan, day: { ...plan.day, breaks } };
}

const warningOf = (plan: Plan) => stopWarning(plan, stopFit(plan));

const LEAD = { live: 900, kill: 900 };

describe("stops that do not fit", () => {
  it("are told with what they cost, why, and what would end work sooner, all simulated", () => {
    // 12 of 14 places are taken in flow: 2 free ones are full after 10 s of the 15 min. So each round costs nearly two breaks.
    const plan = trough(14, LEAD);
    const words = formatFault(warningOf(plan)!);
    expect(words).toMatch(
      /^day\.breaks: on 5 simulated days the planned stops put off the end of work by (59 min|1 h 00), though nobody stands longer than 30 min by plan: 'evisceration' pauses 15 min before 'sticking', and 'bleeding' between them has room for 2 heads more than flow through \(14 places\)/u,
    );
    const [, told] = /breaks with first 'live', 'kill', 'dressing' 1 min later would end work (\d+) min sooner/u.exec(
      words,
    )!;
    const end = (each: Plan) => runDay(compileLine(each), { seed: "afresh", replication: 0 }).workFinishSeconds;
    expect(Math.abs((end(plan) - end(trough(14, { dressing: 60 }))) / 60 - Number(told))).toBeLessThan(1);
    expect(words).toMatch(/"places": \d+ at 'bleeding' instead of 14 would end work \d+ min sooner/u);
  });

  it("never recommend what breaks a limit more", () => {
    const ends = {
      from: { stage: "bleeding", moment: "entry" },
      to: { stage: "evisceration", moment: "start" },
    } as const;
    const limit = { name: "hanging in the trough", ...ends, minSeconds: null, maxSeconds: 300, source: "invented" };
    const words = formatFault(warningOf(trough(14, LEAD, [limit]))!);
    expect(words).toContain("breaks with first 'live'");
    expect(words).not.toContain('places": ');
  });

  it.each([
    ["all go at once", 14, {}],
    ["the trough carries the whole break: 12 in flow and 180 more", 192, LEAD],
    ["each goes when the last head has come down", 14, { dressing: 60 }],
  ])("are not told where %s", (_, places, later) => {
    expect(warningOf(trough(places, later))).toBeNull();
  });

  it("are not told where the slowest stage hides them: the estimate by mean times alone is no reason", () => {
    const plan = trough(14, LEAD);
    const slow = dwell("chilling", 14_400, 1000);
    expect(warningOf({ ...plan, line: [...plan.line, slow] })).toBeNull();
  });
});
