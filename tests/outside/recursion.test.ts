import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MOMENTS, type Moment } from "../../sim/asked/plan/index.ts";
import { type DayRecord, runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { Sampler, uniformStream, type Varying } from "../../sim/maths/random/index.ts";
import {
  departures,
  type RecursionStation,
  type StationTimes,
  singlePositionDepartures,
} from "../oracle/departureRecursion.ts";
import { type LineSpec, parallelLines, type StageSpec, singlePositions, specPlan } from "../support/lineSpecs.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { RECURSION } from "./register/recursion.ts";

const checks = new OutsideChecks(RECURSION);
const HEADS = 120;
const SEED = "recursion";
const LINES = 200;

/** The draws that the engine's streams of this name give, in order. */
function draws(varying: Varying, owner: string, purpose: string, count: number): number[] {
  const sampler = new Sampler(varying, uniformStream(SEED, 0, owner, purpose));
  return Array.from({ length: count }, () => sampler.draw());
}

function recursionStations(spec: LineSpec, heads: number): RecursionStation[] {
  return spec.stages.map(({ kind, time, places, positions, travel }: StageSpec, i) => ({
    positions,
    // A recursion station's places do not count its positions; a dwell stage's do.
    places: kind === "dwell" ? places - positions : places,
    work: draws(time, `s${i}`, "work", heads),
    travel: travel === null ? null : draws(travel, `s${i}`, "travel", heads),
    isDwell: kind === "dwell",
  }));
}

function arrivalsOf({ interarrival }: LineSpec): number[] | null {
  if (interarrival === null) return null;
  let time = 0;
  return draws(interarrival, "", "arrival", HEADS).map((gap) => {
    time += gap;
    return time;
  });
}

function simulate(spec: LineSpec): DayRecord {
  const day = runDay(compileLine(specPlan(spec, HEADS)), { seed: SEED, replication: 0, perHead: true });
  expect(day.status).toBe("finished");
  return day;
}

function passed(day: DayRecord, head: number, stage: number, moment: Moment): number {
  return day.perHead!.times[(head * day.stages.length + stage) * MOMENTS.length + MOMENTS.indexOf(moment)]!;
}

const relative = (found: number, expected: number) => Math.abs(found - expected) / Math.max(1, expected);

/** Largest relative difference over all moments that the engine's heads passed; heads named by hanging order. */
function worstOf(day: DayRecord, times: StationTimes[]): number {
  let identities = [...day.perHead!.destinations.keys()];
  let worst = 0;
  let compared = 0;
  times.forEach((stage, i) => {
    identities.forEach((head, k) => {
      for (const moment of MOMENTS) {
        const found = passed(day, head, i, moment);
        if (Number.isNaN(found)) continue;
        compared++;
        worst = Math.max(worst, relative(found, stage[moment][k]!));
      }
    });
    identities = stage.order.map((k) => identities[k]!);
  });
  expect(compared).toBeGreaterThanOrEqual(HEADS * times.length * MOMENTS.length);
  return worst;
}

describe("the engine against the departure-time recursion, head by head, on the same draws", () => {
  it(checks.title("R.1"), () => {
    fc.assert(
      fc.property(singlePositions, (spec) => {
        const day = simulate(spec);
        const arrivals = arrivalsOf(spec) ?? new Array<number>(HEADS).fill(0);
        const expected = singlePositionDepartures(recursionStations(spec, HEADS), arrivals);
        const worst = expected.map((row, i) =>
          Math.max(...row.map((time, head) => relative(passed(day, head, i, "exit"), time))),
        );
        checks.exact("R.1", JSON.stringify(spec), Math.max(...worst), 0, 1e-9);
      }),
      { seed: 1, numRuns: LINES, endOnFailure: true },
    );
  });

  it(checks.title("R.2"), () => {
    fc.assert(
      fc.property(parallelLines, (spec) => {
        const day = simulate(spec);
        // Every head hung before the day was over takes part: later ones may have overtaken earlier ones.
        const { hung } = day.heads;
        const times = departures(recursionStations(spec, hung), arrivalsOf(spec), hung);
        checks.exact("R.2", JSON.stringify(spec), worstOf(day, times), 0, 1e-9);
      }),
      { seed: 2, numRuns: LINES, endOnFailure: true },
    );
  });

  it(checks.title("R.3"), () => {
    fc.assert(
      fc.property(singlePositions, (spec) => {
        const stations = recursionStations(spec, HEADS);
        const arrivals = arrivalsOf(spec) ?? new Array<number>(HEADS).fill(0);
        const direct = singlePositionDepartures(stations, arrivals);
        const general = departures(stations, arrivals, HEADS);
        const worst = direct.map((row, i) => Math.max(...row.map((time, j) => relative(general[i]!.exit[j]!, time))));
        checks.exact("R.3", JSON.stringify(spec), Math.max(...worst), 0, 1e-9);
      }),
      { seed: 3, numRuns: 50, endOnFailure: true },
    );
  });
});

checks.close();
