import { expect, it } from "vitest";
import { measure } from "../../../sim/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("reads crates in lairage and the longest times of the lorries", () => {
  expect(values).toMatchObject({
    "lairage.mean": 14.5,
    "lairage.max": 40,
    "lorry.unloading.max": 1800,
    "lorry.emptied.max": 7300,
  });
});

it("has no time to empty a lorry when some of its heads stayed in lairage", () => {
  const day = handMadeDay();
  const left = { ...day, loads: [...day.loads, { ...day.loads[0]!, emptiedSeconds: null }] };
  expect(measure(left, HAND_MADE_PLAN)["lorry.emptied.max"]).toBeNull();
});

it("has no time to unload a lorry that was never unloaded", () => {
  const day = handMadeDay();
  const never = { ...day, loads: [{ ...day.loads[0]!, unloadedSeconds: 0 }] };
  expect(measure(never, HAND_MADE_PLAN)["lorry.unloading.max"]).toBeNull();
});
