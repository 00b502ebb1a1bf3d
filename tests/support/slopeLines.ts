import fc from "fast-check";
import type { Plan, Stage } from "../../sim/asked/plan/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { breakdown } from "./breakdowns.ts";
import { crew, dwell, exponential, manual, planOf, saturated, station, stream } from "./plans.ts";

/** Lines whose slopes one run can tell: every crew has one station of its own; what fails, fails by its own work. */
export const slopeLines: fc.Arbitrary<Plan> = fc
  .record({
    heads: fc.integer({ min: 150, max: 300 }),
    gap: fc.option(fc.integer({ min: 2, max: 6 })),
    stages: fc.array(
      fc.record({
        kind: fc.constantFrom("machine", "machine", "manual", "dwell"),
        mean: fc.integer({ min: 2, max: 9 }),
        law: fc.constantFrom("exponential", "lognormal", "gamma"),
        places: fc.constantFrom(0, 1, 3, 10),
        positions: fc.integer({ min: 1, max: 3 }),
        short: fc.boolean(),
        fails: fc.boolean(),
        travel: fc.option(fc.integer({ min: 1, max: 20 })),
      }),
      { minLength: 2, maxLength: 5 },
    ),
  })
  .map(({ heads, gap, stages }) => {
    const line = stages.map((stage, i) => stageOf(i === 0 ? { ...stage, kind: "machine" } : stage, i));
    const crews = line.flatMap((stage, i) => {
      if (stage.kind !== "station" || stage.crews.length === 0) return [];
      return [crew(`c${i}`, Math.max(1, stage.positions - (stages[i]!.short ? 1 : 0)))];
    });
    return planOf(gap === null ? saturated(heads) : stream(exponential(gap), heads), line, { crews });
  });

interface Drawn {
  kind: string;
  mean: number;
  law: string;
  places: number;
  positions: number;
  fails: boolean;
  travel: number | null;
}

function stageOf({ kind, mean, law, places, positions, fails, travel }: Drawn, i: number): Stage {
  const travelSeconds = travel === null ? null : exponential(travel);
  const time = varying(law, mean * positions);
  if (kind === "dwell") return dwell(`s${i}`, varying(law, mean * 3), places + 4, { travelSeconds });
  const breakdowns = fails
    ? [breakdown(0, 0, { uptimeSeconds: exponential(200), repairSeconds: exponential(40) })]
    : [];
  const parts = { buffer: places, positions, travelSeconds, breakdowns };
  return kind === "manual" ? manual(`s${i}`, time, `c${i}`, parts) : station(`s${i}`, time, parts);
}

function varying(law: string, mean: number): Varying {
  return law === "exponential" ? exponential(mean) : { family: law as "lognormal" | "gamma", mean, cv: 0.5 };
}
