import { expect, test } from "vitest";
import { quantityLabel, quantityTicks } from "../../../viz/frame/index.ts";

test("ticks of a number are round and carry no unit, which the label does", () => {
  const quantity = { kind: "number", label: "Throughput", unit: "heads/h" } as const;
  expect(quantityTicks(quantity, 580, 630, 5).map((tick) => tick.text)).toEqual([
    "580",
    "590",
    "600",
    "610",
    "620",
    "630",
  ]);
  expect(quantityLabel(quantity, 630)).toBe("Throughput, heads/h");
});

test("shares are shown in per cent", () => {
  const quantity = { kind: "share", label: "Working" } as const;
  expect(quantityTicks(quantity, 0, 0.02, 4).map((tick) => tick.text)).toEqual(["0.0", "0.5", "1.0", "1.5", "2.0"]);
  expect(quantityLabel(quantity, 0.02)).toBe("Working, %");
});

test("durations take seconds, minutes or hours by their size, on ticks and label alike", () => {
  const quantity = { kind: "duration", label: "Wait" } as const;
  expect(quantityTicks(quantity, 0, 3600, 4).map((tick) => [tick.value, tick.text])).toEqual([
    [0, "0"],
    [1200, "20"],
    [2400, "40"],
    [3600, "60"],
  ]);
  expect([60, 3600, 36_000].map((largest) => quantityLabel(quantity, largest))).toEqual([
    "Wait, s",
    "Wait, min",
    "Wait, h",
  ]);
});

test("clock ticks fall on round times of the day, whatever the day's start", () => {
  const quantity = { kind: "clock", label: "End", startClockSeconds: 6 * 3600 + 7 * 60 } as const;
  const ticks = quantityTicks(quantity, 0, 3600, 4);
  expect(ticks.map((tick) => tick.text)).toEqual(["06:15", "06:30", "06:45", "07:00"]);
  expect(ticks[0]!.value).toBe(8 * 60);
});
