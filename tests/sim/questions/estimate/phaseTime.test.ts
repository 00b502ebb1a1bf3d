import { describe, expect, it } from "vitest";
import { type PhaseTime, phaseTime } from "../../../../sim/questions/estimate/phaseTime.ts";

/** Mean and squared coefficient of variation of phases in a row, from the last phase up. */
function moments({ start, rate, onward }: PhaseTime) {
  let [mean, square] = [0, 0];
  const [first, second]: number[][] = [[], []];
  for (let phase = rate.length - 1; phase >= 0; phase--) {
    const own = 1 / rate[phase]!;
    const goesOn = onward[phase]!;
    square = 2 * own * own + goesOn * (2 * own * mean + square);
    mean = own + goesOn * mean;
    first![phase] = mean;
    second![phase] = square;
  }
  const all = start.reduce((sum, chance, phase) => sum + chance * first![phase]!, 0);
  const squares = start.reduce((sum, chance, phase) => sum + chance * second![phase]!, 0);
  return { mean: all, squaredCv: squares / all ** 2 - 1 };
}

describe("phaseTime", () => {
  it.each([0.0625, 0.09, 0.125, 0.2, 0.34, 0.5, 0.75, 0.999, 1, 1.3, 4])(
    "has the mean and the variation it is given, squared coefficient %s",
    (squaredCv) => {
      const found = moments(phaseTime(5.5, squaredCv, 0.05));
      expect(found.mean).toBeCloseTo(5.5, 9);
      expect(found.squaredCv).toBeCloseTo(squaredCv, 9);
    },
  );

  it("takes what varies less than the least as the least", () => {
    expect(phaseTime(3, 0, 0.125)).toEqual(phaseTime(3, 0.125, 0.125));
    expect(phaseTime(3, 0, 0.125).rate).toHaveLength(8);
  });

  it("is one phase for an exponential in all but name", () => {
    expect(moments(phaseTime(2, 1, 0.1)).squaredCv).toBeCloseTo(1, 12);
    expect(phaseTime(2, 1, 0.1).rate[0]).toBe(1);
  });
});
