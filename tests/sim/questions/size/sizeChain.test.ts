import { expect, it } from "vitest";
import { sizeChain } from "../../../../sim/questions/size/sizeChain.ts";
import { demandOf } from "../../../support/demands.ts";

it("sizeChain brings a shackle for every head and some empty ones, and keeps each head its time", () => {
  const chain = { pitch: "0.3 m", filled: "80 %", back: "60 s" };
  const demand = demandOf({
    animals: { deadOnArrival: 0 },
    chain,
    steps: { bleeding: { dwell: "100 s" }, sticking: { travel: null } },
  });
  const { metresPerSecond, metres, shackles } = sizeChain(demand, 0.2)!;
  expect(metresPerSecond).toBeCloseTo(0.25 * 0.3, 12);
  expect(metres / metresPerSecond).toBeGreaterThanOrEqual(100 - 1e-9);
  expect(metres).toBeCloseTo(25 * 0.3, 9);
  expect(shackles).toBe(25 + 15 + 1);
  expect(sizeChain(demandOf({ steps: { bleeding: { leftOut: true } } }), 0.2)).toBeNull();
});
