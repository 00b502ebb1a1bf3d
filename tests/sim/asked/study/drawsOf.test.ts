import { expect, it } from "vitest";
import { drawsOf, PLAIN_PROCEDURE } from "../../../../sim/asked/study/index.ts";

it("drawsOf gives each day its own random numbers, or mirrors those of the day before", () => {
  const plain = [0, 1, 2].map((day) => drawsOf({ procedure: PLAIN_PROCEDURE }, 3, day));
  expect(plain).toEqual([0, 1, 2].map((replication) => ({ replication, antithetic: false })));
  const pairs = [0, 1, 2, 3].map((day) => drawsOf({ procedure: { ...PLAIN_PROCEDURE, antithetic: true } }, 3, day));
  expect(pairs).toEqual([
    { replication: 0, antithetic: false },
    { replication: 0, antithetic: true },
    { replication: 1, antithetic: false },
    { replication: 1, antithetic: true },
  ]);
});

it("drawsOf gives the variants of a block the same random numbers, and the next block those that follow", () => {
  const procedure = { ...PLAIN_PROCEDURE, blocks: { variants: 2, days: 3 } };
  const rows = [0, 1, 2, 3, 4].map((variant) =>
    [0, 1, 2].map((day) => drawsOf({ procedure }, variant, day).replication),
  );
  expect(rows).toEqual([
    [0, 1, 2],
    [0, 1, 2],
    [3, 4, 5],
    [3, 4, 5],
    [6, 7, 8],
  ]);
  const pairs = { ...procedure, antithetic: true, blocks: { variants: 1, days: 2 } };
  expect(drawsOf({ procedure: pairs }, 3, 1)).toEqual({ replication: 3, antithetic: true });
});
