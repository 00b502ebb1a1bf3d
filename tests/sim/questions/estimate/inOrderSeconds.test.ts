import { describe, expect, it } from "vitest";
import { Sampler, uniformStream } from "../../../../sim/maths/random/index.ts";
import { inOrderSeconds } from "../../../../sim/questions/estimate/inOrderSeconds.ts";

/** Mean stay of 40,000 heads that leave in order. */
function simulated(mean: number, sd: number, gap: number): number {
  const stays = new Sampler({ family: "normal", mean, sd }, uniformStream("inOrderSeconds", 0, "dwell", "stays"));
  let [last, sum] = [0, 0];
  for (let head = 0; head < 40_000; head++) {
    last = Math.max(last, head * gap + stays.draw());
    sum += last - head * gap;
  }
  return sum / 40_000;
}

describe("inOrderSeconds", () => {
  it("is the mean where stays are all the same, or heads hardly ever meet", () => {
    expect(inOrderSeconds(100, 0, 1)).toBe(100);
    expect(inOrderSeconds(100, 10, 1000)).toBeCloseTo(100, 0);
    expect(inOrderSeconds(100, 10, Number.POSITIVE_INFINITY)).toBe(100);
  });

  it.each([
    [100, 5, 1],
    [100, 20, 2],
    [100, 30, 1],
    [10_000, 700, 6],
    [10_000, 3000, 6],
  ])(
    "agrees with simulated heads to a hundredth: stay %i s, standard deviation %i s, one every %i s",
    (mean, sd, gap) => {
      expect(Math.abs(inOrderSeconds(mean, sd, gap) / simulated(mean, sd, gap) - 1)).toBeLessThan(0.01);
    },
  );
});
