import fc from "fast-check";
import type { Plan } from "../../sim/asked/plan/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { constant, dwell, exponential, planOf, saturated, station, stream } from "./plans.ts";

/** A serial line in the words that a recursion needs; `plan` makes the engine's plan of it. Stages are s0, s1, ... */
export interface LineSpec {
  /** Null: the first stage never starves. */
  interarrival: Varying | null;
  stages: StageSpec[];
}

export interface StageSpec {
  kind: "station" | "dwell";
  time: Varying;
  /** Station: places before the positions. Dwell: heads it holds. */
  places: number;
  positions: number;
  travel: Varying | null;
}

export function specPlan({ interarrival, stages }: LineSpec, heads: number): Plan {
  const supply = interarrival === null ? saturated(heads) : stream(interarrival, heads);
  return planOf(supply, stages.map(stageOf));
}

function stageOf({ kind, time, places, positions, travel }: StageSpec, i: number) {
  if (kind === "dwell") return dwell(`s${i}`, time, places, { travelSeconds: travel });
  return station(`s${i}`, time, { buffer: places, positions, travelSeconds: travel });
}

const law: fc.Arbitrary<Varying> = fc.oneof(
  fc.integer({ min: 1, max: 9 }).map(exponential),
  fc.integer({ min: 1, max: 9 }).map((mean): Varying => ({ family: "lognormal", mean, cv: 0.6 })),
  fc.integer({ min: 1, max: 9 }).map((mean): Varying => ({ family: "gamma", mean, cv: 1.5 })),
  fc.integer({ min: 1, max: 9 }).map((min): Varying => ({ family: "uniform", min, max: min + 3 })),
);
const anyLaw = fc.oneof(law, fc.integer({ min: 1, max: 9 }).map(constant));
const places = fc.constantFrom(0, 0, 1, 2, 5, Infinity);
const interarrival = fc.option(law);

/** 1 to 7 stations of one position each, random or constant times. */
export const singlePositions: fc.Arbitrary<LineSpec> = fc.record({
  interarrival,
  stages: fc.array(
    fc.record({
      kind: fc.constant("station" as const),
      time: anyLaw,
      places,
      positions: fc.constant(1),
      travel: fc.constant(null),
    }),
    { minLength: 1, maxLength: 7 },
  ),
});

const parallelStation: fc.Arbitrary<StageSpec> = fc.record({
  kind: fc.constant("station" as const),
  time: law,
  places,
  positions: fc.integer({ min: 1, max: 4 }),
  travel: fc.option(law),
});

const dwellStage: fc.Arbitrary<StageSpec> = fc.record({
  kind: fc.constant("dwell" as const),
  time: law,
  places: fc.constantFrom(1, 3, 8, Infinity),
  positions: fc.constant(1),
  travel: fc.option(law),
});

/**
 * A station and 1 to 4 further stages, with several positions, dwell and travel. Continuous laws only: no two heads are
 * done at the same instant, so there is one order.
 */
export const parallelLines: fc.Arbitrary<LineSpec> = fc
  .record({
    interarrival,
    first: parallelStation,
    others: fc.array(fc.oneof({ weight: 4, arbitrary: parallelStation }, dwellStage), { minLength: 1, maxLength: 4 }),
  })
  .map(({ interarrival: gaps, first, others }) => ({ interarrival: gaps, stages: [first, ...others] }));
