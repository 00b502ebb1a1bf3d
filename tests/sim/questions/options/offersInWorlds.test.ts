import { describe, expect, it } from "vitest";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { appraise, type OptionsQuestion, offersInWorlds } from "../../../../sim/questions/options/index.ts";

const WORLDS = 400;
const COST = { price: 60_000, lifeYears: 10, residual: 0, servicePerYear: 0 };
const question = {
  ...{ offerCosts: [COST, { ...COST, price: 1 }], interest: 0.05, daysPerYear: 200, currency: "EUR" },
  study: { confidence: 0.95, variants: [{ name: "base" }, { name: "machine" }, { name: "hook" }] },
} as unknown as OptionsQuestion;

/** Benefit of a day of the machine: normal over the worlds, mean 60 and standard deviation 20; days of luck besides. */
const gains = Array.from({ length: WORLDS }, (_, world) => 60 + 20 * normalQuantile((world + 0.5) / WORLDS));

function found(luck: number, gainOf = (world: number) => gains[world]!, harms: (string | null)[] = [null, null]) {
  const days = (world: number, gain: number) => [1, -1].map((sign) => 1000 + world + gain + sign * luck);
  const values = (margin: number[]) => ({ values: { margin, "cost.total": margin.map(() => 0) } });
  const variants = gains.flatMap((_, world) => [
    values([1000 + world, 1000 + world]),
    values(days(world, gainOf(world))),
    values([1000 + world, 1000 + world]),
  ]);
  const simulated = { counts: { worlds: WORLDS, days: 2 }, figures: [{ name: "skinning" }] };
  return offersInWorlds(question, simulated, { variants } as never, harms);
}

describe("offersInWorlds", () => {
  it("gives payback, present value and chance of loss by the closed forms of a normal benefit", () => {
    const { options, words, uncertain } = found(0);
    const [machine, hook] = options;
    // Paybacks 60,000 / (200 x (60 +- 1.96 x 20)): 3.02 and 14.4 years; 400 slices leave the last quantile 1 % off.
    expect(Math.abs(machine!.paybackYears.low / (300 / (60 + 1.959964 * 20)) - 1)).toBeLessThan(0.01);
    expect(Math.abs(machine!.paybackYears.high / (300 / (60 - 1.959964 * 20)) - 1)).toBeLessThan(0.03);
    const of = (perDay: number) => appraise(COST, 200 * perDay, 0.05).presentValue;
    expect(machine!.presentValue.mean).toBeCloseTo(of(60), 3);
    expect(Math.abs(machine!.presentValue.low / of(60 - 1.959964 * 20) - 1)).toBeLessThan(0.03);
    // It pays from 60,000 / 7.72173 / 200 = 38.851 EUR a day: P(Z < -1.0574) = 0.1452.
    expect(Math.abs(machine!.chanceOfLoss - 0.1452)).toBeLessThan(0.003);
    // Who buys gives away what the loss is on average: unit normal loss at 1.0574 of 20 EUR x 200 days.
    const loss = 4000 * (0.2281 - 1.0574 * 0.1452);
    expect(Math.abs(machine!.regretPerYear! / loss - 1)).toBeLessThan(0.02);
    expect(hook).toMatchObject({ chanceOfLoss: 1, paybackYears: { low: Number.POSITIVE_INFINITY } });
    expect(uncertain).toEqual(["skinning"]);
    expect(words[0]).toBe(
      '"machine" pays back in 3 to 14 years in 95 of 100 worlds; in 15 of 100 it does not earn its price with interest in its 10 years.',
    );
    expect(words[1]).toMatch(
      /^"hook" never pays back in 95 of 100 worlds; it earns its price with interest in its 10 years in hardly any world\.$/,
    );
    expect(words[2]).toMatch(/^To know every uncertain figure before choosing is worth \d+ EUR a year on average\.$/);
  });

  it("neither advises nor counts as a choice what does harm, whatever it earns", () => {
    const { options, words, worthOfKnowingPerYear } = found(0, undefined, ["it handles 10 fewer heads a day", null]);
    expect(options.map(({ regretPerYear }) => regretPerYear === null)).toEqual([true, false]);
    expect(words.join(" ")).not.toContain("machine");
    expect(worthOfKnowingPerYear).toBe(0);
    expect(words.at(-1)).toMatch(/^The same choice is best in every world that was drawn/);
  });

  it("does not take the luck of few days for worlds in which an offer fails", () => {
    // Two days with luck of 100 each way: by them alone the benefit would vary by 100 within a world and nothing between.
    const { options } = found(100, () => 60);
    const { low, high } = options[0]!.paybackYears;
    expect([low, high]).toEqual([expect.closeTo(5, 9), expect.closeTo(5, 9)]);
  });
});
