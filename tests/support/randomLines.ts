import fc from "fast-check";
import type { Breakdown, Plan, Stage } from "../../sim/asked/plan/index.ts";
import type { Varying } from "../../sim/maths/random/index.ts";
import { dwell, exponential, planOf, saturated, station } from "./plans.ts";

/**
 * Random lines such as a plant has: 3 to 10 stations of like rates (4.5 to 7 s a head), 1 to 4 positions, few places, some
 * with short stops, one bleeding dwell. Never short of heads.
 */
export const plantLikeLine: fc.Arbitrary<Plan> = fc
  .record({
    stations: fc.array(
      fc.record({
        seconds: fc.double({ min: 4.5, max: 7, noNaN: true }),
        cv: fc.constantFrom(0.1, 0.2, 0.3, 0.5),
        positions: fc.constantFrom(1, 1, 1, 2, 3, 4),
        buffer: fc.constantFrom(0, 1, 2, 4, 8),
        stop: fc.option(
          fc.record({
            uptime: fc.constantFrom(600, 1200, 3600),
            repair: fc.constantFrom(30, 60, 180),
          }),
          { freq: 3, nil: null },
        ),
        travel: fc.constantFrom(null, null, 3),
      }),
      { minLength: 3, maxLength: 10 },
    ),
    dwellAfter: fc.integer({ min: 0, max: 1 }),
  })
  .map(({ stations, dwellAfter }) => {
    const line = stations.map(({ seconds, cv, positions, buffer, stop, travel }, index): Stage => {
      const cycle: Varying = { family: "lognormal", mean: seconds * positions, cv };
      const breakdowns = stop === null ? [] : [stopOf(stop)];
      const travelSeconds: Varying | null = travel === null ? null : { family: "constant", value: travel };
      return station(`s${index}`, cycle, { positions, buffer: index === 0 ? 0 : buffer, breakdowns, travelSeconds });
    });
    line.splice(1 + dwellAfter, 0, dwell("bleeding", 120, 36));
    return planOf(saturated(20_000), line);
  });

function stopOf({ uptime, repair }: { uptime: number; repair: number }): Breakdown {
  return {
    name: "jam",
    clock: "running",
    scope: "position",
    uptimeSeconds: exponential(uptime),
    repairSeconds: { family: "lognormal", mean: repair, cv: 0.6 },
    crew: null,
    headInHand: "resume",
  };
}
