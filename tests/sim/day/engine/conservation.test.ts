import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkConservation } from "../../../../sim/day/engine/conservation.ts";
import { advance, ConservationError, type DayRecord, runDay, startDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { dwell, exponential, planOf, station, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { relativeError } from "../../../support/relativeError.ts";

const RUNS = { seed: 2026, numRuns: 400 };

function outOf(day: DayRecord): number {
  return Object.values(day.heads.out).reduce((sum, heads) => sum + heads, 0);
}

describe("over random lines", () => {
  it("no head, crate or place is lost or doubled at any event", () => {
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        const day = runDay(compileLine(plan), { seed: "conservation", replication, check: true });
        const { heads } = day;
        const before = (heads.fromBefore?.inLairage ?? 0) + (heads.fromBefore?.onLine ?? 0);
        expect(heads.arrived + before).toBe(heads.inLairage + heads.turnedAway + heads.onLine + outOf(day));
      }),
      RUNS,
    );
  });

  it("the states of every position fill the whole day, in the books and in the traces", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const day = runDay(compileLine(plan), { seed: "states", replication: 0, traces: "binned" });
        for (const [index, stage] of day.stages.entries()) {
          if (stage.positions === Infinity) continue;
          const traced = day.traces!.states[index]!.seconds;
          stage.stateSeconds.forEach((seconds, state) => {
            const inTrace = traced.reduce((total, cell, row) => total + (row % 6 === state ? cell : 0), 0);
            expect(Math.abs(inTrace - seconds), `${stage.name}, state ${state}`).toBeLessThanOrEqual(1e-6);
          });
          const sum = stage.stateSeconds.reduce((total, seconds) => total + seconds, 0);
          expect(relativeError(sum, stage.positions * day.finishSeconds), stage.name).toBeLessThan(1e-9);
        }
      }),
      RUNS,
    );
  });

  it("nobody works who is not there, and no more people than the crew has", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const day = runDay(compileLine(plan), { seed: "people", replication: 0 });
        for (const crew of day.crews) {
          expect(crew.busySeconds).toBeLessThanOrEqual(crew.presentSeconds * (1 + 1e-12));
          expect(crew.presentSeconds).toBeLessThanOrEqual(crew.peopleMax * day.finishSeconds * (1 + 1e-12));
        }
      }),
      RUNS,
    );
  });

  it("time in system adds up to the heads present over time (Little 1961: sum of stays = integral of the number present)", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        // Who was there before has stayed longer than the day watches.
        fc.pre(
          plan.atStart === undefined &&
            plan.supply.kind === "stream" &&
            plan.line.every((stage) => stage.removals.length === 0),
        );
        const day = runDay(compileLine(plan), { seed: "little", replication: 0 });
        fc.pre(day.status === "finished" && day.heads.onLine + day.heads.inLairage === 0);
        const present = day.sections.reduce((sum, section) => sum + section.wip.mean, 0) * day.finishSeconds;
        const stays = day.timeInSystem.mean * day.timeInSystem.count;
        expect(Math.abs(present - stays)).toBeLessThanOrEqual(1e-9 * Math.max(present, 1));
      }),
      RUNS,
    );
  });

  it("the traces have the day's means and maxima, exact and binned alike", () => {
    fc.assert(
      fc.property(randomPlan, (plan) => {
        const line = compileLine(plan);
        const exact = runDay(line, { seed: "traces", replication: 0, traces: "exact" });
        const binned = runDay(line, { seed: "traces", replication: 0, traces: "binned" });
        const end = exact.finishSeconds;
        fc.pre(end > 0);
        exact.stages.forEach((stage, index) => {
          const steps = exact.traces!.queues[index]!;
          const bins = binned.traces!.queues[index]!;
          if (steps.kind !== "exact" || bins.kind !== "binned") throw new Error("traces of the wrong kind");
          const stepArea = steps.values.reduce(
            (sum, value, row) => sum + value * ((steps.times[row + 1] ?? end) - steps.times[row]!),
            0,
          );
          const binArea = bins.mean.reduce(
            (sum, mean, bin) => sum + mean * (Math.min(end, (bin + 1) * bins.binSeconds) - bin * bins.binSeconds),
            0,
          );
          const area = stage.queue.mean * end;
          expect(Math.abs(stepArea - area)).toBeLessThanOrEqual(1e-9 * Math.max(1, area));
          expect(Math.abs(binArea - area)).toBeLessThanOrEqual(1e-9 * Math.max(1, area));
          expect(Math.max(0, ...bins.high)).toBe(Math.max(0, ...steps.values));
        });
      }),
      { ...RUNS, numRuns: 100 },
    );
  });
});

describe("checkConservation", () => {
  it("notices a head that vanished", () => {
    const day = startDay(compileLine(planOf(stream(exponential(1), 5), [station("a", 1)])), {
      seed: "x",
      replication: 0,
    });
    day.headsOnLine++;
    expect(() => checkConservation(day)).toThrow(ConservationError);
  });

  describe("with more in a chiller than it walks at every count", () => {
    // A hundred heads, hung one a second; the chiller holds them for a day.
    const full = () => {
      const line = [station("a", 1), dwell("chiller", 86_400, Number.POSITIVE_INFINITY), station("b", 1)];
      const day = startDay(compileLine(planOf(stream(exponential(1), 100), line)), { seed: "x", replication: 0 });
      advance(day, 10_000);
      checkConservation(day);
      return { day, chiller: day.stageAt[1]! };
    };

    it("notices one that is gone from the list, one that is in it twice, and one that stands elsewhere too", () => {
      const gone = full();
      gone.chiller.queue.shift();
      expect(() => checkConservation(gone.day)).toThrow("places taken at chiller: 100 against 99");
      const twice = full();
      const { first, last } = twice.chiller.queue;
      last!.next = first;
      twice.chiller.queue.length++;
      expect(() => checkConservation(twice.day)).toThrow("stands in two places");
      const elsewhere = full();
      elsewhere.day.positionAt[0]!.item = elsewhere.chiller.queue.first;
      expect(() => checkConservation(elsewhere.day)).toThrow("stands in two places");
    });

    it("notices within 256 counts what no list shows: a head that lost weight", () => {
      const { day, chiller } = full();
      chiller.queue.first!.next!.mass -= 1;
      const counts = () => {
        for (let count = 0; count < 256; count++) checkConservation(day);
      };
      expect(counts).toThrow(/mass: .* kg/);
    });
  });
});
