import { describe, it } from "vitest";
import type { Load, Plan } from "../../sim/asked/plan/index.ts";
import { type DaysRecord, runDays } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { breakdown } from "../support/breakdowns.ts";
import { handling, load } from "../support/loads.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, crateStep, planOf, saturated, station } from "../support/plans.ts";
import { replicate, stateShare } from "../support/replicate.ts";
import { passes } from "../support/timeline.ts";
import { SEVERAL_DAYS } from "./register/severalDays.ts";

const checks = new OutsideChecks(SEVERAL_DAYS);

const MINUTE = 60;

/** Nobody waits for crates to be brought; all stand at the hanging point. */
const liveHandling = handling([crateStep("unloading", 0), crateStep("feeding", 0)], [], { cratesAtHanging: 1e6 });

/** One head a crate; the work takes as many minutes as it weighs kilograms. No head is begun after `closes`. */
function dayOf(loads: Load[], closes: number): Plan {
  const work = station("work", MINUTE, { weightFactor: { perKg: 1, atKg: 1 } });
  const plan = planOf({ kind: "loads", loads }, [work], { liveHandling });
  return { ...plan, day: { ...plan.day, closing: { rule: "stop hanging", atSeconds: closes } } };
}

function days(plans: readonly Plan[], apart: number, replication = 0, seed = "several days"): DaysRecord {
  const all = plans.map((plan, number) => ({ line: compileLine(plan), startSeconds: number * apart, number }));
  return runDays(all, { seed, replication, calendarDays: plans.length, perHead: true });
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);

describe("one server over three days", () => {
  it(checks.title("15.1"), () => {
    // Arrival and work in minutes; open 60 min, then 120 min shut.
    const work = [
      [
        [5, 12],
        [10, 15],
        [30, 10],
        [50, 9],
        [55, 8],
      ],
      [
        [0, 20],
        [20, 14],
        [25, 5],
        [40, 7],
      ],
      [
        [10, 6],
        [58, 10],
      ],
    ];
    const plans = work.map((heads, day) =>
      dayOf(
        heads.map(([at, minutes], row) =>
          load(`${day} ${row}`, at! * MINUTE, 1, 1, { liveWeightKg: constant(minutes!) }),
        ),
        // Who comes before the hour is finished in overtime, as long as the server is free by then: the head of 55 is begun at 59.
        60 * MINUTE,
      ),
    );
    const record = days(plans, 180 * MINUTE);
    const ends = record.days.flatMap((day, row) => passes(day, "work", "end").map((end) => end / MINUTE + 180 * row));
    const expected = [17, 32, 42, 59, 67, 200, 214, 219, 227, 376, 428];
    for (const [row, end] of expected.entries())
      checks.exact("15.1", `end of head ${row + 1}`, ends[row] ?? Number.NaN, end);
    const stays = record.days.map(({ timeInSystem }) => (timeInSystem.mean * timeInSystem.count) / MINUTE);
    checks.exact("15.1", "sum of times in system", sum(stays), 138);
    const kept = record.days.map(({ heads }) => heads.inLairage);
    for (const [row, heads] of [0, 0, 0].entries()) checks.exact("15.1", `kept after day ${row}`, kept[row]!, heads);
  });
});

describe("a backlog", () => {
  it(checks.title("15.2"), () => {
    // A minute of work a head, heads there at the start: 1000 are begun until hanging ends.
    const plans = [1000, 1200, 900, 1150, 700, 0].map((heads, day) =>
      dayOf(heads === 0 ? [] : [load(`day ${day}`, 0, heads, 1, { liveWeightKg: constant(1) })], (1000 - 0.5) * MINUTE),
    );
    const kept = days(plans, 70_000).days.map(({ heads }) => heads.inLairage);
    for (const [day, heads] of [0, 200, 100, 250, 0, 0].entries())
      checks.exact("15.2", `after day ${day}`, kept[day]!, heads);
  });

  it(checks.title("15.3"), () => {
    const plan = dayOf([load("two lots", 0, 2, 1, { comesShare: 0.4, liveWeightKg: constant(1) })], 30);
    const nights = 600;
    const found = Array.from({ length: 20 }, (_, replication) => {
      const kept = days(new Array<Plan>(nights).fill(plan), 1000, replication, "15.3").days.map(
        ({ heads }) => heads.inLairage,
      );
      // From an empty plant: the first nights are left out.
      const late = kept.slice(100);
      return { mean: sum(late) / late.length, none: late.filter((heads) => heads === 0).length / late.length };
    });
    checks.simulated(
      "15.3",
      "mean",
      found.map(({ mean }) => mean),
      2,
      { relative: 0.2 },
    );
    checks.simulated(
      "15.3",
      "none",
      found.map(({ none }) => none),
      1 / 3,
      { relative: 0.1 },
    );
  });
});

describe("what wears", () => {
  it(checks.title("15.4"), async () => {
    // Weibull of shape 3 by mean and cv: mean = scale x Gamma(4/3), cv = 0.3634447.
    const uptimeSeconds = { family: "weibull" as const, mean: 1000 * MINUTE * 0.8929795115692493, cv: 0.3634471 };
    const wearing = breakdown(0, 0, { uptimeSeconds, repairSeconds: constant(120 * MINUTE) });
    const plan = (replaced: object) =>
      planOf(saturated(400_000), [station("machine", MINUTE, { breakdowns: [{ ...wearing, ...replaced }] })]);
    const replaced = { replaced: { afterSeconds: 480 * MINUTE, takesSeconds: 20 * MINUTE } };
    const works = async (line: Plan, seed: string) =>
      (await replicate(line, seed)).map((day) => 1 - stateShare(day, 0, "down"));
    checks.simulated("15.4", "replaced", await works(plan(replaced), "9.4 replaced"), 0.9387677715);
    checks.simulated("15.4", "run to failure", await works(plan({}), "9.4 failure"), 0.8815375843);
  });
});

checks.close();
