import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { doubtPlan, doubtStudy, readDoubt, reckonedDoubt } from "../../../support/doubtCase.ts";

const normal = (name: string, path: string, sd: number) => ({
  ...{ name, paths: [path], kind: "measured" },
  factor: { normal: { mean: 1, sd } },
});
/** Variances 0.04 and 0.09, and one that does nothing (Song and Nelson 2015, from memory; the case of the check values). */
const FIGURES = [
  normal("a", "line.skinning.cycle", 0.2),
  normal("b", "line.cutting.cycle", 0.3),
  normal("c", "line.hanging.cycle", 0.1),
];

/** Luck with a standard deviation of 1, the same for all variants of a day. */
function luck(seed: string, days: number): number[] {
  const uniforms = uniformStream(seed, 0, "test", "luck");
  return Array.from({ length: days }, () => normalQuantile(uniforms.next()));
}

describe("analyse", () => {
  it("parts luck from what is not known: 3 + 2a - 1.5b with luck of 0.6, 0.3625 of 0.7225 not known", () => {
    const counts = { worlds: 120, days: 13, seed: "split" };
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES)), counts);
    const days = luck("split", 1560);
    const doubt = reckonedDoubt(question!, (_, [a, b], day) => 1000 + 2 * a! - 1.5 * b! + 0.6 * days[day]!);
    const found = doubt.estimates[0]![0]!;
    // Luck: 1,440 degrees of freedom, standard error 2 %; worlds: a Latin hypercube leaves hardly any.
    expect(Math.abs(found.luckSd / 0.6 - 1)).toBeLessThan(0.07);
    expect(Math.abs(found.notKnownSd ** 2 / 0.3625 - 1)).toBeLessThan(0.15);
    expect(found.notKnown!.low).toBeLessThan(0.3625 / 0.7225);
    expect(found.notKnown!.high).toBeGreaterThan(0.3625 / 0.7225);
    // With every figure known the standard deviation is 0.6 in place of 0.85, and the span as much shorter, inside the other.
    const spanOf = ({ low, high }: { low: number; high: number }) => high - low;
    expect(Math.abs(spanOf(found.luck) / spanOf(found.days) - 0.6 / 0.85)).toBeLessThan(0.07);
    expect(spanOf(found.luck) / spanOf(found.days)).toBeCloseTo(1 - found.spanNotKnown!.value, 12);
    expect(found.luck.low).toBeGreaterThan(found.days.low);
    expect(found.luck.high).toBeLessThan(found.days.high);
    const [a, b, c] = found.figures.map(({ share }) => share!.value);
    expect(Math.abs(a! - 0.4413793)).toBeLessThan(0.06);
    expect(Math.abs(b! - 0.5586207)).toBeLessThan(0.06);
    expect(c).toBeLessThan(0.02);
    // Days of a normal: 3.92 standard deviations for 95 of 100; without b the variance is 0.52 in place of 0.7225.
    expect(Math.abs(found.days.high - found.days.low - 3.92 * 0.85)).toBeLessThan(0.3);
    expect(Math.abs(found.figures[1]!.narrower - 3.92 * (0.85 - Math.sqrt(0.52)))).toBeLessThan(0.1);
    // 1.96 x 0.6 / 39.5, and 1.980 x the root of 0.3625.
    expect(Math.abs((found.plain.high - found.plain.low) / 2 - 0.0298)).toBeLessThan(0.003);
    expect(Math.abs((found.full.high - found.full.low) / 2 - 1.192)).toBeLessThan(0.1);
  });

  it("finds nothing unknown where worlds do not differ, and no share where nothing varies", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES)), { worlds: 12, days: 2 });
    const flat = reckonedDoubt(question!, () => 1000).estimates[0]![0]!;
    expect(flat).toMatchObject({
      mean: 1000,
      luckSd: 0,
      notKnownSd: 0,
      notKnown: null,
      spanNotKnown: null,
      days: { low: 1000, high: 1000 },
    });
    const known = reckonedDoubt(question!, (_, __, day) => 1000 + (day % 2)).estimates[0]![0]!;
    expect(known.notKnownSd).toBe(0);
    expect(known.figures.map(({ share, narrower }) => [share, narrower])).toEqual([
      [null, 0],
      [null, 0],
      [null, 0],
    ]);
  });

  it("has no estimate where a world has no value", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES)), { worlds: 12, days: 2 });
    const doubt = reckonedDoubt(question!, (_, __, day) => (day < 2 ? null : day));
    expect(doubt.estimates[0]).toEqual([null]);
    expect(doubt.means[0]![0]).toBeNull();
  });

  const VARIANTS = [{ name: "other", set: { "line.skinning.buffer": 9 } }];

  it("weighs two options whose difference is normal, whatever their days share (Raiffa and Schlaifer 1961)", () => {
    const counts = { worlds: 120, days: 20, seed: "choice" };
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES), VARIANTS), counts);
    const [shared, own] = [luck("shared", 2400), luck("own", 2400)];
    // Less is better: the other one is 50 s earlier on average, with sd 60 by a and 52.91502622 by b; its own luck has sd 40.
    const gainOf = (a: number, b: number) => 50 + 60 * ((a - 1) / 0.2) + 52.91502622 * ((b - 1) / 0.3);
    const doubt = reckonedDoubt(
      question!,
      (variant, [a, b], day) => 10_000 + 500 * shared[day]! - (variant === 0 ? 0 : gainOf(a!, b!) + 40 * own[day]!),
    );
    const { best, variants, worth, figures } = doubt.decision!;
    expect(best).toBe(1);
    // P(Z > -50/80) = 0.7340144; 12.9536 = 1295.36 / 100 of the difference N(50, 80^2); parts 6.798 and 4.891. So few worlds
    // leave a binomial standard error of 0.04, and of 1.9 of a loss whose sd is 21 (false alarm 0.001 each).
    const chance = 1 - variants[0]!.chance!;
    expect(Math.abs(chance - 0.7340144)).toBeLessThan(3.29 * 0.04);
    expect(Math.abs(worth - 12.95360103)).toBeLessThan(3.29 * 1.9);
    // Of these worlds all is known: what the days' luck adds is taken off.
    const [a, b] = question!.figures.map(({ factors }) => factors[0]!) as [number[], number[]];
    const gains = a.map((value, world) => gainOf(value, b[world]!));
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(Math.abs(chance - mean(gains.map((gain) => (gain > 0 ? 1 : 0))))).toBeLessThan(0.03);
    expect(Math.abs(variants[0]!.behind - mean(gains))).toBeLessThan(3.29 * (40 / Math.sqrt(2400)));
    expect(Math.abs(worth - mean(gains.map((gain) => Math.max(0, -gain))))).toBeLessThan(1);
    expect(variants[1]).toMatchObject({ behind: 0, chance: null, regret: worth });
    // Of two one is the best where it beats the other.
    expect(variants[0]!.chanceBest).toBeCloseTo(variants[0]!.chance!, 9);
    expect(variants[1]!.chanceBest).toBeCloseTo(chance, 9);
    expect(variants[1]!.bestWithin.low).toBeLessThan(0.7340144);
    expect(variants[1]!.bestWithin.high).toBeGreaterThan(0.7340144);
    expect(Math.abs(variants[0]!.regret - (worth + variants[0]!.behind))).toBeLessThan(1e-9);
    expect(Math.abs(figures[0]! - 6.79829348)).toBeLessThan(1);
    expect(Math.abs(figures[1]! - 4.89090967)).toBeLessThan(1);
    expect(figures[2]).toBeLessThan(0.1);
  });

  it("weighs more readings against knowing all, for the span and for the choice, by closed forms", () => {
    const counts = { worlds: 120, days: 20, seed: "readings" };
    const figures = [{ ...FIGURES[0]!, readings: 20 }, FIGURES[1]!, { ...FIGURES[2]!, paths: ["line.hanging.cycle"] }];
    const { question } = readDoubt(doubtStudy(doubtPlan(...figures), VARIANTS), counts);
    // Twenty readings are taken; the cutter's cycle is always the same; hanging's has cv 0.3, its mean may be off by 0.1.
    expect(question!.figures.map(({ readings }) => readings)).toEqual([
      { taken: 20, known: 20, secondsEach: 5.5 },
      null,
      { taken: null, known: expect.closeTo(9, 0), secondsEach: expect.closeTo(5, 9) },
    ]);
    const days = luck("readings", 2400);
    const doubt = reckonedDoubt(question!, (variant, [a], day) => {
      const gain = 50 + 60 * ((a! - 1) / 0.2);
      return 10_000 + 300 * ((a! - 1) / 0.2) + 100 * days[day]! - (variant === 0 ? 0 : gain);
    });
    const [skinning, cutter, hanging] = doubt.readings;
    expect(cutter).toBeNull();
    // With the other one: 240 s by the figure, 100 by luck. 80 more of 20 leave a fifth of the figure's variance.
    expect(doubt.told).toBe(1);
    const step = skinning!.steps.find(({ readings }) => readings === 80)!;
    expect(step.left).toBeCloseTo(Math.sqrt(0.2), 12);
    expect(step.seconds).toBe(440);
    expect(Math.abs(step.narrower - 3.92 * (260 - Math.sqrt(0.2 * 240 ** 2 + 100 ** 2)))).toBeLessThan(40);
    // Unit normal loss of N(50, (60 x root of 0.8)^2) is 53.67 phi(0.9317) - 50 Phi(-0.9317) = 5.0837.
    expect(Math.abs(step.worth! - 5.0837)).toBeLessThan(1);
    expect(step.worth!).toBeLessThan(doubt.decision!.figures[0]!);
    const brings = skinning!.steps.map(({ narrower }) => narrower);
    expect(brings).toEqual(brings.toSorted((a, b) => a - b));
    const half = doubt.estimates[0]![1]!.figures[0]!.narrower / 2;
    expect(brings[skinning!.enough!]).toBeGreaterThanOrEqual(half);
    expect(hanging!.enough).toBeNull();
    expect(doubt.joint!.figures[0]!.total.value).toBeGreaterThan(0.9);
  });

  it("says of three options how often each is the best, and which beats which", () => {
    const list = [...VARIANTS, { name: "third", set: { "line.skinning.buffer": 8 } }];
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES), list), { worlds: 60, days: 4, seed: "three" });
    const gains = (a: number) => [0, 50 + 60 * ((a - 1) / 0.2), -900];
    const { variants, beats, best } = reckonedDoubt(question!, (variant, [a]) => 10_000 - gains(a!)[variant]!)
      .decision!;
    expect(best).toBe(1);
    const [a] = question!.figures.map(({ factors }) => factors[0]!) as [number[]];
    const often = a.filter((value) => gains(value)[1]! > 0).length / 60;
    expect(variants.map((each) => each!.chanceBest)).toEqual(
      [1 - often, often, 0].map((part) => expect.closeTo(part, 9)),
    );
    expect(variants.map((each) => each!.drop)).toEqual([false, false, true]);
    expect(beats!.map((row) => row.map((chance) => chance === null))).toEqual(
      [0, 1, 2].map((row) => [0, 1, 2].map((at) => at === row)),
    );
    expect(beats![1]![0]! + beats![0]![1]!).toBeCloseTo(1, 12);
    expect(beats![2]).toEqual([0, expect.closeTo(0, 9), null]);
  });

  it("leaves a variant that does harm out of the choice, and decides nothing where one is left", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES), VARIANTS), { worlds: 12, days: 4 });
    const heads = { carcasses: (variant: number) => 1000 - 50 * variant };
    const doubt = reckonedDoubt(question!, (variant) => 10_000 - 600 * variant, heads);
    expect(doubt.harms).toEqual([null, "it handles 50 fewer heads a day"]);
    expect(doubt.decision).toBeNull();
  });

  it("is sure of nothing where options are alike", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(...FIGURES), VARIANTS), { worlds: 12, days: 4 });
    const days = luck("alike", 48);
    const { variants, worth, figures } = reckonedDoubt(question!, (_, [a], day) => 100 * a! + days[day]!).decision!;
    expect(variants.map((each) => each!.chance)).toEqual([null, 0.5]);
    expect(worth).toBe(0);
    expect(figures).toEqual([0, 0, 0]);
  });
});
