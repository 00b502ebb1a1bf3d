import { describe, expect, it } from "vitest";
import { capacityOf } from "../../../../sim/days/run/capacityOf.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";

/** Ten a minute, give or take one, after a start in which the line fills. */
function series(minutes: number, filling: number): number[] {
  const uniforms = uniformStream("41", 0, "test", "capacity");
  return Array.from({ length: minutes }, (_, minute) => (minute < filling ? 0 : 9 + 2 * uniforms.next()));
}

describe("capacityOf", () => {
  it("leaves the filling of the line out and gives the rest an interval, seed 41", () => {
    const found = capacityOf(series(430, 25), 0.95, []);
    expect(found).toMatchObject({ minutes: 430, batches: 20, batchMinutes: 20, runTooShort: false });
    // The 25 minutes of filling go; of the steady minutes behind them a five or so may go too.
    expect(found.warmUpMinutes).toBeGreaterThanOrEqual(25);
    expect(found.warmUpMinutes).toBeLessThanOrEqual(40);
    expect(found.headsPerHour!.low).toBeLessThan(600);
    expect(found.headsPerHour!.high).toBeGreaterThan(600);
    expect(found.words).toMatch(/^Without want of heads the line gives [\d.]+ carcasses\/h \(95 % interval/);
    expect(found.words).not.toMatch(/too short|Breaks/);
  });

  it("says that breaks are in the figures", () => {
    expect(capacityOf(series(430, 25), 0.95, [{ name: "noon" }]).words).toMatch(/Breaks are in these figures/);
  });

  it("says that a run is too short where its batches hang together, or its beginning does not end", () => {
    const swinging = Array.from({ length: 430 }, (_, minute) => 10 + 5 * Math.sin(minute / 60));
    expect(capacityOf(swinging, 0.95, [])).toMatchObject({ runTooShort: true });
    const rising = Array.from({ length: 430 }, (_, minute) => minute);
    expect(capacityOf(rising, 0.95, []).words).toMatch(/where its warm-up ends cannot be told/);
  });

  it("gives no figure for a run of minutes", () => {
    for (const minutes of [0, 10, 45]) {
      const found = capacityOf(series(minutes, 20), 0.95, []);
      expect(found).toMatchObject({ headsPerHour: null, runTooShort: true });
      expect(found.words).toMatch(/too short to say what the line can do/);
    }
  });
});
