import { expect, it } from "vitest";
import { shuffled } from "../../../../sim/asked/study/shuffled.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";

it("shuffled holds every number once, the same for the same seed", () => {
  const draw = (seed: string) => shuffled(50, uniformStream(seed, 0, "test", "order"));
  expect(draw("a").toSorted((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, index) => index));
  expect(draw("a")).toEqual(draw("a"));
  expect(draw("a")).not.toEqual(draw("b"));
  expect(shuffled(0, uniformStream("a", 0, "test", "order"))).toEqual([]);
});

it("shuffled makes each of the six orders of three as likely: chi-square under 20.52 (5 df, error probability 0.001)", () => {
  const counts = new Map<string, number>();
  const uniforms = uniformStream("3", 0, "test", "orders");
  for (let draw = 0; draw < 6000; draw++) {
    const order = shuffled(3, uniforms).join();
    counts.set(order, (counts.get(order) ?? 0) + 1);
  }
  expect(counts.size).toBe(6);
  const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
  expect(chiSquare).toBeLessThan(20.52);
});
