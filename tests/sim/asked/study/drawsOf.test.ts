import { expect, it } from "vitest";
import { drawsOf, PLAIN_PROCEDURE } from "../../../../sim/asked/study/index.ts";

it("drawsOf gives each day its own random numbers, or mirrors those of the day before", () => {
  const plain = [0, 1, 2].map((day) => drawsOf({ procedure: PLAIN_PROCEDURE }, day));
  expect(plain).toEqual([0, 1, 2].map((replication) => ({ replication, antithetic: false })));
  const pairs = [0, 1, 2, 3].map((day) => drawsOf({ procedure: { ...PLAIN_PROCEDURE, antithetic: true } }, day));
  expect(pairs).toEqual([
    { replication: 0, antithetic: false },
    { replication: 0, antithetic: true },
    { replication: 1, antithetic: false },
    { replication: 1, antithetic: true },
  ]);
});
