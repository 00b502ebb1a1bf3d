import { beforeAll, describe, expect, it } from "vitest";
import { type Plan, readPlan } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { inThisThread, runStudy } from "../../../../sim/days/run/index.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { analyse, type Doubt, doubtWords } from "../../../../sim/questions/doubt/index.ts";
import { chancesView, spansView } from "../../../../viz/pictures/index.ts";
import { doubtStudy, readDoubt } from "../../../support/doubtCase.ts";

/** Two stations; both plans' second one is not known exactly, each by a figure of its own. All invented. */
const ROOM = { today: [0.95, 1.05], machine: [0.97, 1.05] } as const;
const CYCLES = { today: 10, machine: 9.8 };
type Which = keyof typeof ROOM;

function station(which: Which, factor: number) {
  const cycle = { gamma: { mean: `${CYCLES[which] * factor} s`, cv: 0.25 } };
  return { name: "skinning", kind: "station", buffer: 50, cycle };
}

function figure(which: Which) {
  const [min, max] = ROOM[which];
  return { name: `${which}'s pace`, paths: ["line.skinning.cycle"], factor: { uniform: { min, max } }, kind: "guess" };
}

function planJson(which: Which, factor = 1, uncertain: object[] = []): Record<string, unknown> {
  return {
    name: "Two stations",
    ...(uncertain.length === 0 ? {} : { uncertain }),
    day: { shifts: [{ name: "day", from: "06:00", to: "14:00" }] },
    supply: { stream: { interarrival: "5 s", heads: 150 } },
    line: [{ name: "hanging", kind: "station", buffer: 150, cycle: "5 s" }, station(which, factor)],
  };
}

const MACHINE = { "line.skinning.cycle": station("machine", 1).cycle, uncertain: [figure("machine")] };

/** End of work of one day of a plan in which everything is known, in seconds. */
function endOf(plan: Plan, seed: string): number {
  return runDay(compileLine(plan), { seed, replication: 0 }).finishSeconds;
}

const uniforms = uniformStream("afresh", 0, "test", "worlds");
const drawnPlan = (which: Which): Plan => {
  const [min, max] = ROOM[which];
  return readPlan(planJson(which, min + (max - min) * uniforms.next())).plan!;
};
const DAYS = 4;
/** Days of new worlds, each drawn by itself: by world. */
const worldsOf = (which: Which, worlds: number, seed: string): number[][] =>
  Array.from({ length: worlds }, (_, world) => {
    const plan = drawnPlan(which);
    return Array.from({ length: DAYS }, (_, day) => endOf(plan, `${seed} ${world} ${day}`));
  });

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const varianceOf = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0) / (values.length - 1);

/** What is told and drawn of simulated days, against days simulated afresh in worlds drawn afresh. */
describe("what the sentence and the pictures say", () => {
  let doubt: Doubt;
  let fresh: Record<Which, number[][]>;
  beforeAll(async () => {
    const study = doubtStudy(planJson("today", 1, [figure("today")]), [{ name: "machine", set: MACHINE }], {
      responses: ["finish"],
    });
    const asked = readDoubt(study, { worlds: 40, days: DAYS }).question!;
    const options = { gambrel: "test", command: "", traces: "none", runner: inThisThread() } as const;
    doubt = analyse(asked, await runStudy(asked.study, options));
    fresh = { today: worldsOf("today", 60, "both"), machine: worldsOf("machine", 60, "both") };
  }, 60_000);

  it("holds 95 of 100 new days in new worlds, and less of them in the part that is luck", () => {
    const { rows } = spansView(doubt, 0);
    for (const [row, which] of (["today", "machine"] as const).entries()) {
      const { low, high, insideLow, insideHigh } = rows[row]!;
      const days = fresh[which].flat();
      const within = (from: number, to: number) => mean(days.map((day) => (day >= from && day <= to ? 1 : 0)));
      // Worlds vary more than days do, so that 60 worlds count as some 100 days: binomial error 0.022, and somewhat more for
      // the quantiles of 40 worlds (false alarm 0.001).
      expect(Math.abs(within(low, high) - 0.95)).toBeLessThan(3.29 * 0.033);
      expect(within(insideLow, insideHigh)).toBeLessThan(0.84);
    }
  });

  it("owes to luck what days of one and the same world vary by (false alarm 0.001)", () => {
    const { spanNotKnown } = doubt.estimates[0]![doubt.decision!.best]!;
    const worlds = fresh.machine;
    const within = mean(worlds.map(varianceOf));
    const between = varianceOf(worlds.map(mean)) - within / DAYS;
    const luck = Math.sqrt(within / (within + between));
    // The root of a share: each of the two has a standard error of some 0.05.
    expect(Math.abs(1 - spanNotKnown!.value - luck)).toBeLessThan(3.29 * 0.07);
    const { words } = doubtWords(doubt);
    expect(words[0]).toMatch(
      /^Work ends between .* with “machine” on 95 of 100 days; .* of that span is luck of the day/,
    );
    expect(words[0]).toMatch(/machine's pace \(a guess\)/);
  });

  it("draws the machine as the best in as many worlds as it is in new ones", () => {
    const [first, second] = chancesView(doubt)!.rows;
    expect([first!.name, second!.name]).toEqual(["machine", "base (today's plan)"]);
    // Exactly, by the paces: the machine wins where 9.8 f < 10 g, f uniform on 0.97 to 1.05 and g on 0.95 to 1.05.
    const middles = (count: number, [min, max]: readonly [number, number]) =>
      Array.from({ length: count }, (_, index) => min + ((max - min) * (index + 0.5)) / count);
    const wins = middles(400, ROOM.machine).flatMap((f) =>
      middles(400, ROOM.today).map((g) => (CYCLES.machine * f < CYCLES.today * g ? 1 : 0)),
    );
    const exact = mean(wins);
    expect(Math.abs(first!.worlds / 100 - exact)).toBeLessThan(3.29 * Math.sqrt((exact * (1 - exact)) / 40));
    const often = mean(fresh.today.map((days, world) => (mean(fresh.machine[world]!) < mean(days) ? 1 : 0)));
    expect(Math.abs(often - exact)).toBeLessThan(3.29 * Math.sqrt(0.25 / 60) + 0.05);
  });
});
