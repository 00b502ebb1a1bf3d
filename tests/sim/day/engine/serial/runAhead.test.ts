import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../../sim/asked/plan/index.ts";
import {
  advance,
  type DayOptions,
  type DayRecord,
  recordOf,
  runDay,
  startDay,
} from "../../../../../sim/day/engine/index.ts";
import { isSerial } from "../../../../../sim/day/engine/serial/isSerial.ts";
import { runAhead } from "../../../../../sim/day/engine/serial/runAhead.ts";
import { type CompiledLine, compileLine } from "../../../../../sim/day/line/index.ts";
import { singlePositions, specPlan } from "../../../../support/lineSpecs.ts";
import { constant, exponential, planOf, saturated, station, stream } from "../../../../support/plans.ts";

/** The same day by events alone. */
function byEvents(line: CompiledLine, options: DayOptions): DayRecord {
  const day = startDay(line, options);
  const status = advance(day, line.ceilingSeconds);
  return recordOf(day, status === "running" ? "ceiling" : status);
}

/** Spreads the stages over sections of several stages each. */
function inSections(plan: Plan, size: number): Plan {
  return { ...plan, line: plan.line.map((stage, at) => ({ ...stage, section: `part ${Math.floor(at / size)}` })) };
}

const random = fc.record({
  spec: singlePositions,
  heads: fc.integer({ min: 1, max: 200 }),
  size: fc.integer({ min: 1, max: 4 }),
  replication: fc.nat({ max: 5 }),
  antithetic: fc.boolean(),
});

describe("runAhead", () => {
  it("leaves the record that the event loop leaves, to the last bit, on random serial lines", () => {
    let ahead = 0;
    fc.assert(
      fc.property(random, ({ spec, heads, size, replication, antithetic }) => {
        const line = compileLine(inSections(specPlan(spec, heads), size));
        const options = { seed: "ahead", replication, antithetic };
        expect(isSerial(line, options)).toBe(true);
        if (runAhead(line, options) !== null) ahead++;
        expect(runDay(line, options)).toEqual(byEvents(line, options));
      }),
      { seed: 1, numRuns: 1000 },
    );
    expect(ahead).toBeGreaterThan(900);
  });

  it("does so whatever is the last carcass but one, when all that happens at one instant happens at once", () => {
    // Constant times: heads are done, blocked and freed at the same instants all along the line.
    const times = [3, 5, 2, 5, 1];
    const line = (heads: number, buffer: number) =>
      compileLine(
        planOf(
          saturated(heads),
          times.map((time, at) => station(`s${at}`, time, { buffer })),
        ),
      );
    for (const buffer of [0, 1, 4, Infinity]) {
      for (let heads = 1; heads < 40; heads++) {
        const options = { seed: "ties", replication: 0 };
        expect(runDay(line(heads, buffer), options)).toEqual(byEvents(line(heads, buffer), options));
      }
    }
  });

  it("does so over many blocks of heads, with buffers shorter and longer than a block, to the last bit", () => {
    const times = [1, 0.9, 1.1, 0.8, 1];
    for (const buffers of [
      [0, 3, 63, 64, 200],
      [0, 700, 1, Infinity, 62],
      [0, 0, 130, 2, 65],
    ]) {
      const stages = times.map((mean, at) => station(`s${at}`, exponential(mean), { buffer: buffers[at]! }));
      for (const supply of [saturated(1500), stream(exponential(1.05), 1500)]) {
        const line = compileLine(inSections(planOf(supply, stages), 2));
        const options = { seed: "blocks", replication: 1 };
        expect(runAhead(line, options)).not.toBeNull();
        expect(runDay(line, options)).toEqual(byEvents(line, options));
      }
    }
  });

  it("leaves a day to the event loop in which some work takes no time, wherever that comes up first", () => {
    const times = { family: "empirical" as const, values: [0, 1, 2, 3] };
    const line = compileLine(
      planOf(
        saturated(3),
        ["a", "b", "c"].map((name) => station(name, times, { buffer: 1 })),
      ),
    );
    let left = 0;
    for (let replication = 0; replication < 300; replication++) {
      const options = { seed: "instant", replication };
      if (runAhead(line, options) === null) left++;
      expect(runDay(line, options)).toEqual(byEvents(line, options));
    }
    expect(left).toBeGreaterThan(200);
    expect(left).toBeLessThan(300);
  });

  it("takes hardly any event of its own", () => {
    const line = compileLine(planOf(saturated(500), [station("a", exponential(1)), station("b", exponential(1))]));
    const day = runAhead(line, { seed: "few", replication: 0 })!;
    const before = day.events;
    advance(day, Infinity);
    expect(before).toBeGreaterThan(990);
    expect(day.events - before).toBeLessThan(5);
  });

  it("leaves a day to the event loop that ends at the ceiling, has one head or has work that takes no time", () => {
    const plan = planOf(stream(exponential(1), 300), [station("a", 1, { buffer: Infinity })]);
    const options = { seed: "not", replication: 0 };
    const days = [
      { ...plan, day: { ...plan.day, ceilingSeconds: 100 } },
      planOf(saturated(1), [station("a", 1)]),
      planOf(stream(constant(1), 20), [station("a", 0, { buffer: Infinity }), station("b", 1, { buffer: Infinity })]),
    ].map(compileLine);
    for (const line of days) {
      expect(isSerial(line, options)).toBe(true);
      expect(runAhead(line, options)).toBeNull();
      expect(runDay(line, options)).toEqual(byEvents(line, options));
    }
  });
});
