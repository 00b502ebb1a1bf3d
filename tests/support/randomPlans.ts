import fc from "fast-check";
import type { Breakdown, Plan, Removal, Stage, Supply } from "../../sim/plan/plan.ts";
import type { Varying } from "../../sim/random/index.ts";
import { constant, crew, dwell, exponential, pause, planOf, station } from "./plans.ts";

/** Random small plans with every feature in use, for property tests. Stage names are s0, s1, ...; crews c0, c1. */

const time: fc.Arbitrary<Varying> = fc.oneof(
  fc.integer({ min: 1, max: 8 }).map(constant),
  fc.integer({ min: 1, max: 6 }).map(exponential),
  fc.constant<Varying>({ family: "lognormal", mean: 4, cv: 0.5 }),
  fc.constant<Varying>({ family: "triangular", min: 1, mode: 2, max: 6 }),
);

const breakdown: fc.Arbitrary<Breakdown> = fc.record({
  name: fc.constantFrom("jam", "blade", "power"),
  clock: fc.constantFrom("running" as const, "calendar" as const),
  scope: fc.constantFrom("position" as const, "station" as const),
  uptimeSeconds: fc.integer({ min: 20, max: 200 }).map(exponential),
  repairSeconds: fc.integer({ min: 1, max: 30 }).map(exponential),
});

const optionalTravel = fc.option(time, { freq: 2, nil: null });
const removals: fc.Arbitrary<Removal[]> = fc.boolean().map((some) => (some ? [{ as: "condemned", share: 0.1 }] : []));

const workStation = fc
  .record({
    cycle: time,
    buffer: fc.constantFrom(0, 0, 1, 3, Infinity),
    positions: fc.integer({ min: 1, max: 3 }),
    crewName: fc.constantFrom(null, "c0", "c1"),
    peoplePerPosition: fc.integer({ min: 1, max: 2 }),
    breakdowns: fc.uniqueArray(breakdown, { maxLength: 2, selector: (each) => each.name }),
    travelSeconds: optionalTravel,
    removals,
    section: fc.constantFrom("kill", "dressing"),
  })
  .map(({ cycle, crewName, peoplePerPosition, ...rest }) =>
    station("", cycle, {
      ...rest,
      crew: crewName,
      work: crewName === null ? "machine" : "manual",
      peoplePerPosition: crewName === null ? 0 : peoplePerPosition,
    }),
  );

const dwellStage = fc
  .record({ time, places: fc.constantFrom(1, 2, 5, Infinity), travelSeconds: optionalTravel, removals })
  .map(({ time: dwellTime, places, ...rest }) => dwell("", dwellTime, places, rest));

const line: fc.Arbitrary<Stage[]> = fc
  .tuple(workStation, fc.array(fc.oneof({ weight: 3, arbitrary: workStation }, dwellStage), { maxLength: 5 }))
  .map(([first, others]) => [first, ...others].map((stage, index) => ({ ...stage, name: `s${index}` })));

const supply: fc.Arbitrary<Supply> = fc.oneof(
  fc.constant<Supply>({ kind: "saturated", heads: 60 }),
  fc.record({
    kind: fc.constant("stream" as const),
    interarrival: time,
    heads: fc.integer({ min: 1, max: 80 }),
    whenFull: fc.constantFrom("wait" as const, "turn away" as const),
  }),
  fc
    .array(
      fc.record({
        atSeconds: fc.integer({ min: 0, max: 300 }),
        delay: fc.option(time, { nil: null }),
        crates: fc.integer({ min: 1, max: 6 }),
        headsPerCrate: fc.integer({ min: 1, max: 5 }),
        deadOnArrivalShare: fc.constantFrom(0, 0.2),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map(
      (loads): Supply => ({
        kind: "loads",
        loads: loads.map((load, index) => ({ ...load, name: `load ${index}`, liveWeightKg: constant(2.5) })),
      }),
    ),
);

const breaks = fc.array(
  fc.record({ at: fc.integer({ min: 5, max: 300 }), length: fc.integer({ min: 1, max: 60 }), stage: fc.boolean() }),
  { maxLength: 3 },
);

/** Two crews of two to four people, so that every station can be served. */
export const randomPlan: fc.Arbitrary<Plan> = fc
  .record({
    supply,
    line,
    breaks,
    people: fc.integer({ min: 2, max: 4 }),
    rule: fc.constantFrom("furthest downstream" as const, "longest queue" as const, "fixed order" as const),
    closing: fc.option(fc.integer({ min: 0, max: 500 }), { freq: 3, nil: null }),
    lairageCrates: fc.integer({ min: 1, max: 5 }),
    cratesAtHanging: fc.integer({ min: 1, max: 2 }),
  })
  .map((parts) => {
    const step = { positions: 1, secondsPerCrate: exponential(4), crew: "c0", peoplePerPosition: 1, breakdowns: [] };
    const plan = planOf(parts.supply, parts.line, {
      crews: [crew("c0", parts.people, { rule: parts.rule }), crew("c1", 2, { rule: parts.rule })],
    });
    const hasLoads = parts.supply.kind === "loads";
    return {
      ...plan,
      liveHandling: hasLoads
        ? { unloading: step, feeding: step, lairageCrates: parts.lairageCrates, cratesAtHanging: parts.cratesAtHanging }
        : null,
      day: {
        ...plan.day,
        ceilingSeconds: 8_000,
        closing: parts.closing === null ? { rule: "finish" } : { rule: "stop hanging", atSeconds: parts.closing },
        breaks: parts.breaks.map(({ at, length, stage }, index) =>
          pause(`break ${index}`, at, length, stage ? { stages: ["s0"] } : { crews: ["c0", "c1"] }),
        ),
      },
    };
  });
