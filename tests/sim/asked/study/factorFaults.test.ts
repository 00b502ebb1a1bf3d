import { expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import { factorFaults } from "../../../../sim/asked/study/factorFaults.ts";
import type { FactorFile } from "../../../../sim/asked/study/schema/factorFile.ts";

const ANY = { ranges: true, levels: null };
const told = (factors: FactorFile[], use = ANY as Parameters<typeof factorFaults>[2]) =>
  factorFaults(factors, ["f"], use).map(formatFault);
const A = { name: "a", path: "line.a.buffer" };

it.each([
  [
    { name: "a" },
    'f[0]: it sets nothing; allowed: exactly one of path, sets, options; write for example "path": "line.skinning.buffer"',
  ],
  [
    { ...A, levels: [1, 2], options: [{ name: "x" }, { name: "y", remove: ["z"] }] },
    'f[0]: it has path and options; allowed: exactly one of path, sets, options; write for example "path": "line.skinning.buffer"',
  ],
  [A, 'f[0]: no levels; allowed: levels, or from and to; write for example "levels": [4, 8]'],
  [
    { ...A, levels: [1, 2], from: 1, to: 2 },
    "f[0]: both levels and a range; allowed: levels, or from and to; keep one of the two",
  ],
  [{ ...A, from: 1 }, 'f[0]: one end of a range; allowed: levels, or from and to; write both "from" and "to"'],
  [
    { ...A, from: "1 s", to: "2 min" },
    "f[0]: the ends have the units 's' and 'min'; allowed: two different numbers, quantities in the same unit, percentages or times of day, such as \"5 s\" and \"8 s\"; anything else goes into levels",
  ],
  [{ ...A, from: 1, to: 4, labels: ["x"] }, "f[0].labels: labels of a range; allowed: labels of levels; delete them"],
  [
    {
      name: "a",
      sets: [
        { path: "p", levels: [1, 2] },
        { path: "q", levels: [1, 2, 3] },
      ],
    },
    "f[0].sets[1]: 3 levels; allowed: 2 levels, as the first of the sets has",
  ],
  [
    {
      name: "a",
      sets: [
        { path: "p", from: 1, to: 2 },
        { path: "q", levels: [1, 2] },
      ],
    },
    "f[0].sets[1]: 2 levels; allowed: a range, as the first of the sets has",
  ],
  [
    {
      name: "a",
      levels: [1, 2],
      sets: [
        { path: "p", levels: [1, 2] },
        { path: "q", levels: [3, 4] },
      ],
    },
    'f[0].levels: not allowed together with "sets"; allowed: levels or ends inside each of the sets; move it',
  ],
  [
    { name: "a", options: [{ name: "x" }, { name: "x", remove: ["z"] }] },
    "f[0].options[1].name: 'x' appears twice among the options; allowed: each name once; rename or delete one of them",
  ],
  [
    { name: "a", options: [{ name: "x" }, { name: "y" }] },
    "f[0].options[1]: it is the same as an earlier option; allowed: options that differ; change or delete one of them",
  ],
  [
    { name: "a", labels: ["q"], options: [{ name: "x" }, { name: "y", remove: ["z"] }] },
    'f[0].labels: not allowed together with "options"; allowed: options alone; delete it',
  ],
] as [FactorFile, string][])("factorFaults tells of %j", (factor, message) => {
  expect(told([factor])).toEqual([message]);
});

it("factorFaults lets no range into a design of levels, and wants as many levels as the design has", () => {
  expect(told([{ ...A, from: 1, to: 9 }], { ranges: false, levels: null })).toEqual([
    "f[0]: a range; allowed: levels; write the values out as levels",
  ]);
  const use = { ranges: true, levels: 4 };
  expect(told([{ ...A, from: 1, to: 9 }], use)).toEqual([]);
  expect(told([{ ...A, levels: [1, 2, 3, 4] }], use)).toEqual([]);
  expect(told([{ ...A, from: 1, to: 3 }], use)).toEqual([
    "f[0]: 3 whole values; allowed: 4 or more, one for each level; widen the range or lower the levels",
  ]);
  expect(told([{ ...A, levels: [1, 2] }], use)).toEqual([
    "f[0].levels: 2 levels; allowed: 4, as many as the design has",
  ]);
  const options = [{ name: "x" }, { name: "y", remove: ["z"] }];
  expect(told([{ name: "a", options }], use)).toEqual([
    "f[0].options: 2 levels; allowed: 4, as many as the design has",
  ]);
});

it("factorFaults finds factors that undo each other, inside sets and options too", () => {
  const one: FactorFile = {
    name: "one",
    sets: [
      { path: "line.a.buffer", from: 1, to: 2 },
      { path: "line.b.buffer", from: 1, to: 2 },
    ],
  };
  const two: FactorFile = {
    name: "two",
    options: [
      { name: "x", set: { "line.b": {} } },
      { name: "y", set: { "line.c": 1 } },
    ],
  };
  expect(told([one, two])).toEqual([
    "f[1].options[0].set[\"line.b\"]: it sets what the factor 'one' sets too; allowed: a path of its own; join the two factors",
  ]);
});

it("factorFaults tells an end that is no number at the end itself, and a range that no number spans", () => {
  const use = { ranges: true, levels: 4 };
  for (const end of ["1e999 %", "NaN %", "- 5 s", "", null, true, [], { from: 1 }]) {
    expect(told([{ ...A, from: end, to: "12 %" }], use)).toEqual([
      expect.stringMatching(/^f\[0\]\.from: .* is no end of a range/),
    ]);
    expect(told([{ ...A, from: "0 %", to: end }], use)).toEqual([
      expect.stringMatching(/^f\[0\]\.to: .* is no end of a range/),
    ]);
  }
  for (const [from, to] of [
    [-1e308, 1e308],
    ["-1e308 s", "1e308 s"],
  ]) {
    expect(told([{ ...A, from, to }], use)).toEqual([expect.stringMatching(/^f\[0\]: .* is too wide; /)]);
  }
});
