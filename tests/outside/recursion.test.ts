import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DayRecord, runDay } from "../../sim/engine/index.ts";
import { compileLine } from "../../sim/line/index.ts";
import { MOMENTS, type Plan, type Stage, type Station } from "../../sim/plan/index.ts";
import { Sampler, uniformStream, type Varying } from "../../sim/random/index.ts";
import {
  departures,
  type RecursionStation,
  type StationTimes,
  singlePositionDepartures,
} from "../oracle/departureRecursion.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { constant, dwell, exponential, planOf, saturated, station, stream } from "../support/plans.ts";
import { RECURSION } from "./register/recursion.ts";

const checks = new OutsideChecks(RECURSION);
const HEADS = 120;
const SEED = "recursion";
const LINES = 200;

const law: fc.Arbitrary<Varying> = fc.oneof(
  fc.integer({ min: 1, max: 9 }).map(exponential),
  fc.integer({ min: 1, max: 9 }).map((mean): Varying => ({ family: "lognormal", mean, cv: 0.6 })),
  fc.integer({ min: 1, max: 9 }).map((mean): Varying => ({ family: "gamma", mean, cv: 1.5 })),
  fc.integer({ min: 1, max: 9 }).map((min): Varying => ({ family: "uniform", min, max: min + 3 })),
);
const places = fc.constantFrom(0, 0, 1, 2, 5, Infinity);
const supply = fc.oneof(fc.constant(null), law);

const singles: fc.Arbitrary<Plan> = fc
  .tuple(
    supply,
    fc.array(fc.tuple(fc.oneof(law, fc.integer({ min: 1, max: 9 }).map(constant)), places), {
      minLength: 1,
      maxLength: 7,
    }),
  )
  .map(([interarrival, line]) =>
    named(
      interarrival,
      line.map(([time, buffer]) => station("", time, { buffer })),
    ),
  );

// Several positions: continuous laws only, so that no two heads are done at the same instant and change names.
const anyStage: fc.Arbitrary<Stage> = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(law, places, fc.integer({ min: 1, max: 4 }), fc.option(law)).map(workplace) },
  {
    weight: 1,
    arbitrary: fc.tuple(law, fc.constantFrom(1, 3, 8, Infinity)).map(([time, held]) => dwell("", time, held)),
  },
);
const parallels: fc.Arbitrary<Plan> = fc
  .tuple(supply, fc.tuple(law, fc.integer({ min: 1, max: 4 })), fc.array(anyStage, { minLength: 1, maxLength: 4 }))
  .map(([interarrival, [time, positions], line]) => named(interarrival, [station("", time, { positions }), ...line]));

function workplace([time, buffer, positions, travelSeconds]: [Varying, number, number, Varying | null]): Station {
  return station("", time, { buffer, positions, travelSeconds });
}

/** A stream waits outside without limit, whatever the first station's buffer. */
function named(interarrival: Varying | null, line: Stage[]): Plan {
  const stages = line.map((stage, i) => ({ ...stage, name: `s${i}` }));
  return planOf(interarrival === null ? saturated(HEADS) : stream(interarrival, HEADS), stages);
}

function draws(varying: Varying, owner: string, purpose: string, count: number): number[] {
  const sampler = new Sampler(varying, uniformStream(SEED, 0, owner, purpose));
  return Array.from({ length: count }, () => sampler.draw());
}

function recursionStation(stage: Stage, heads: number): RecursionStation {
  const isDwell = stage.kind === "dwell";
  return {
    positions: isDwell ? 1 : stage.positions,
    places: isDwell ? stage.places - 1 : stage.buffer,
    work: draws(isDwell ? stage.dwellSeconds : stage.cycleSeconds, stage.name, "work", heads),
    travel: stage.travelSeconds === null ? null : draws(stage.travelSeconds, stage.name, "travel", heads),
    isDwell,
  };
}

function arrivalsOf(plan: Plan): number[] | null {
  if (plan.supply.kind !== "stream") return null;
  let time = 0;
  return draws(plan.supply.interarrival, "", "arrival", HEADS).map((gap) => {
    time += gap;
    return time;
  });
}

function simulate(plan: Plan): DayRecord {
  const day = runDay(compileLine(plan), { seed: SEED, replication: 0, perHead: true });
  expect(day.status).toBe("finished");
  return day;
}

/** Largest relative difference of a moment over the heads that passed it in the engine; heads named by hanging order. */
function worstOf(day: DayRecord, times: StationTimes[]): number {
  const { times: table } = day.perHead!;
  let identities = [...day.perHead!.destinations.keys()];
  let worst = 0;
  let compared = 0;
  times.forEach((stage, i) => {
    identities.forEach((head, k) => {
      MOMENTS.forEach((moment, column) => {
        const found = table[(head * day.stages.length + i) * MOMENTS.length + column]!;
        if (Number.isNaN(found)) return;
        compared++;
        worst = Math.max(worst, Math.abs(found - stage[moment][k]!) / Math.max(1, found));
      });
    });
    identities = stage.order.map((k) => identities[k]!);
  });
  expect(compared).toBeGreaterThanOrEqual(HEADS * times.length * MOMENTS.length);
  return worst;
}

describe("the engine against the departure-time recursion, head by head, on the same draws", () => {
  it(checks.title("R.1"), () => {
    fc.assert(
      fc.property(singles, (plan) => {
        const day = simulate(plan);
        const stations = plan.line.map((stage) => recursionStation(stage, HEADS));
        const arrivals = arrivalsOf(plan);
        const expected = singlePositionDepartures(stations, arrivals ?? new Array<number>(HEADS).fill(0));
        const { times } = day.perHead!;
        let worst = 0;
        expected.forEach((row, i) => {
          row.forEach((time, head) => {
            const found = times[(head * stations.length + i) * MOMENTS.length + MOMENTS.indexOf("exit")]!;
            if (i === stations.length - 1) expect(found).not.toBeNaN();
            if (!Number.isNaN(found)) worst = Math.max(worst, Math.abs(found - time) / Math.max(1, time));
          });
        });
        checks.exact("R.1", JSON.stringify(plan.line), worst, 0, 1e-9);
      }),
      { seed: 1, numRuns: LINES, endOnFailure: true },
    );
  });

  it(checks.title("R.2"), () => {
    fc.assert(
      fc.property(parallels, (plan) => {
        const day = simulate(plan);
        // Every head hung before the day was over takes part: later ones may have overtaken earlier ones.
        const { hung } = day.heads;
        const times = departures(
          plan.line.map((stage) => recursionStation(stage, hung)),
          arrivalsOf(plan),
          hung,
        );
        checks.exact("R.2", JSON.stringify(plan), worstOf(day, times), 0, 1e-9);
      }),
      { seed: 2, numRuns: LINES, endOnFailure: true },
    );
  });

  it(checks.title("R.3"), () => {
    fc.assert(
      fc.property(singles, (plan) => {
        const stations = plan.line.map((stage) => recursionStation(stage, HEADS));
        const arrivals = arrivalsOf(plan) ?? new Array<number>(HEADS).fill(0);
        const direct = singlePositionDepartures(stations, arrivals);
        const general = departures(stations, arrivals, HEADS);
        const worst = Math.max(
          ...direct.flatMap((row, i) => row.map((time, j) => Math.abs(time - general[i]!.exit[j]!))),
        );
        checks.exact("R.3", JSON.stringify(plan.line), worst, 0, 1e-9);
      }),
      { seed: 3, numRuns: 50, endOnFailure: true },
    );
  });
});

checks.close();
