import { expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

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

it("gives the lorries' time to their leaving with empty crates: 3600 s and 1800 s", () => {
  const whole = measure(wholeDay(), WHOLE_PLAN);
  expect(whole).toMatchObject({ "lorry.turnaround.mean": 2700, "lorry.turnaround.max": 3600 });
  expect(values).not.toHaveProperty("lorry.turnaround.max");
});

it("has no turnaround while a lorry waits for its crates", () => {
  const day = wholeDay();
  const waits = { ...day, loads: day.loads.map((load) => ({ ...load, leftSeconds: null })) };
  expect(measure(waits, WHOLE_PLAN)["lorry.turnaround.mean"]).toBeNull();
});
