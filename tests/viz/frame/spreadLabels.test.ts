import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadLabels } from "../../../viz/frame/index.ts";

test("labels that do not touch stay where they are", () => {
  expect(spreadLabels([10, 50, 30], 15, 0, 100)).toEqual([10, 50, 30]);
});

test("labels at one place are moved apart in the order given", () => {
  expect(spreadLabels([50, 50], 10, 0, 100)).toEqual([50, 60]);
});

test("whatever the wishes, labels keep their gap, their order and, where they fit, the bounds", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -50, max: 150, noNaN: true }), { minLength: 1, maxLength: 10 }), (wishes) => {
      const places = spreadLabels(Object.freeze(wishes), 10, 0, 100);
      const order = wishes.map((_, i) => i).sort((a, b) => wishes[a]! - wishes[b]! || a - b);
      order.slice(1).forEach((index, rank) => {
        expect(places[index]! - places[order[rank]!]!).toBeGreaterThanOrEqual(10 - 1e-9);
      });
      expect(Math.max(...places)).toBeLessThanOrEqual(100);
      expect(Math.min(...places)).toBeGreaterThanOrEqual(-1e-9);
    }),
    { seed: 20250101 },
  );
});
