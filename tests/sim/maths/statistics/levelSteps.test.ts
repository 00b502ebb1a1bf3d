import { expect, test } from "vitest";
import { levelSteps } from "../../../../sim/maths/statistics/index.ts";

// A two-by-three factorial with two observations; levels of the first factor 0, 1, of the second 0, 1, 2.
const LEVELS = [
  [0, 0],
  [0, 1],
  [0, 2],
  [1, 0],
  [1, 1],
  [1, 2],
];
const VALUES = [
  [10, 12],
  [14, 15],
  [15, 17],
  [20, 23],
  [26, 28],
  [26, 27],
];

/** Student-t quantiles for 1 degree of freedom are those of the Cauchy distribution: tan(pi (p - 1/2)). */
const cauchy = (p: number) => Math.tan(Math.PI * (p - 0.5));

test("a step is the paired difference of neighbouring levels, averaged over the settings of the other factor", () => {
  const [first, second] = levelSteps(LEVELS, VALUES, 0.95);
  // First factor, by observation: (20 + 26 + 26) / 3 - (10 + 14 + 15) / 3 = 11 and 78 / 3 - 44 / 3 = 34 / 3.
  expect(first).toHaveLength(1);
  expect(first![0]!.mean).toBeCloseTo((11 + 34 / 3) / 2, 12);
  // Second factor: 0 -> 1: (40 - 30) / 2 = 5, (43 - 35) / 2 = 4; 1 -> 2: (41 - 40) / 2, (44 - 43) / 2.
  expect(second!.map(({ mean }) => mean)).toEqual([4.5, 0.5]);
});

test("intervals hold for the steps of all factors at once (Bonferroni)", () => {
  const [first, second] = levelSteps(LEVELS, VALUES, 0.95);
  const sd = Math.abs(5 - 4) / Math.SQRT2;
  const half = (cauchy(1 - 0.05 / 3 / 2) * sd) / Math.SQRT2;
  expect(second![0]!.high! - second![0]!.mean).toBeCloseTo(half, 6);
  expect(second![0]!.shown).toBe(false);
  expect([first![0]!.comparisons, second![1]!.comparisons]).toEqual([3, 3]);
  // No spread at all: 0.5 in both observations.
  expect(second![1]).toMatchObject({ low: 0.5, high: 0.5, shown: true });
});

test("where one factor is changed at a time, the others stay at the base", () => {
  const levels = [
    [0, 0],
    [1, 0],
    [0, 1],
  ];
  const [first, second] = levelSteps(
    levels,
    [
      [1, 2],
      [4, 5],
      [2, 3],
    ],
    0.95,
  );
  expect(first![0]!.mean).toBe(3);
  expect(second![0]!.mean).toBe(1);
});

test("a factor of which no setting was run with all levels has no steps; nor has one without observations", () => {
  expect(
    levelSteps(
      [
        [0, 0],
        [1, 1],
      ],
      [
        [1, 2],
        [2, 3],
      ],
      0.95,
    ),
  ).toEqual([null, null]);
  expect(
    levelSteps(
      [[0], [1]],
      [
        [null, null],
        [1, 2],
      ],
      0.95,
    ),
  ).toEqual([null]);
});

test("an observation in which any variant of an average has no value is left out; one is no interval", () => {
  const [steps] = levelSteps(
    [[0], [1]],
    [
      [1, null],
      [3, 9],
    ],
    0.95,
  );
  expect(steps![0]).toMatchObject({ n: 1, mean: 2, low: null, high: null, shown: false });
});

test("a variant that lies on no level takes no part, and nothing is changed in what is passed in", () => {
  const levels = Object.freeze([[0], [1], [-1]].map((row) => Object.freeze(row)));
  const values = Object.freeze(
    [
      [1, 2],
      [2, 4],
      [99, 99],
    ].map((row) => Object.freeze(row)),
  );
  expect(levelSteps(levels, values, 0.9)[0]).toHaveLength(1);
});
