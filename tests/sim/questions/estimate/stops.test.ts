import { describe, expect, it } from "vitest";
import { joinStops, stopOf } from "../../../../sim/questions/estimate/stops.ts";
import { breakdown } from "../../../support/breakdowns.ts";

const perHead = (stops: readonly { chance: number; seconds: number }[]) =>
  stops.reduce((sum, { chance, seconds }) => sum + chance * seconds, 0);

describe("stopOf", () => {
  it("keeps the seconds of repair per head, also where several stops fall on one head", () => {
    for (const running of [1, 50, 500]) {
      const stop = stopOf(breakdown(100, 10), running);
      expect(stop.chance * stop.seconds).toBeCloseTo((running / 100) * 10, 9);
      expect(stop.chance).toBeLessThanOrEqual(1);
    }
  });
});

describe("joinStops", () => {
  it("joins stops of like length until two kinds are left, and loses no second", () => {
    const stops = [
      { chance: 0.01, seconds: 600 },
      { chance: 0.1, seconds: 10 },
      { chance: 0.05, seconds: 14 },
    ];
    const joined = joinStops(stops);
    expect(joined).toHaveLength(2);
    expect(joined[1]).toEqual(stops[0]);
    expect(perHead(joined)).toBeCloseTo(perHead(stops), 12);
  });

  it("leaves out stops that never come", () => {
    expect(joinStops([{ chance: 0, seconds: 5 }])).toEqual([]);
  });
});
