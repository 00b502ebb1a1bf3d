import { describe, expect, it } from "vitest";
import { designOf } from "../../../../support/demands.ts";

const shifts = [{ name: "day", from: "06:00", to: "14:00" }];
const breaks = [{ name: "lunch", at: "10:00", length: "30 min" }];

describe("dayOf", () => {
  it("lets crews behind the kill go later, the further down the later, and no stunned head wait", () => {
    const { day } = designOf({ day: { shifts, breaks } }).plan;
    expect(day.safeStop).toEqual({ from: "stunning", to: "bleeding" });
    const { laterSeconds } = day.breaks[0]!;
    expect(laterSeconds.stunning).toBeUndefined();
    expect(laterSeconds["hind-leg cutting"]).toBe(180);
    expect(laterSeconds["chiller loading"]!).toBeGreaterThan(laterSeconds["hind-leg cutting"]!);
  });

  it("starts with the first lorry, but not before midnight", () => {
    expect(designOf({ day: { shifts } }).plan.day.startClockSeconds).toBe(5 * 3600 + 20 * 60);
    const night = [{ name: "night", from: "00:10", to: "08:00" }];
    expect(designOf({ day: { shifts: night } }).plan.day.startClockSeconds).toBe(0);
  });

  it("has no cleaning where none is wanted", () => {
    expect(designOf({ day: { shifts, cleaning: "0 min" } }).plan.day.cleaning).toBeNull();
  });
});
