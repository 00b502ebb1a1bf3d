import { expect, it } from "vitest";
import { spreadAt } from "../../../../../sim/asked/plan/index.ts";

const PLAN = {
  supply: { stream: { heads: 1800 } },
  line: [
    {
      ...{ name: "skinning", cycle: { lognormal: { mean: "5 s", cv: 0.3 } }, pace: "12 s" },
      breakdowns: [
        { name: "jam", uptime: { erlang: { mean: "10 min", k: 4 } }, repair: { empirical: ["1 min", "3 min"] } },
      ],
      removals: [{ as: "condemned", share: "1 %" }],
      weight: { uniform: { min: "2 kg", max: "4 kg" } },
    },
  ],
};

it.each([
  ["line.skinning.cycle", 0.3, 5],
  ["line.skinning.cycle.lognormal.mean", 0.3, 5],
  ["line.skinning.breakdowns.jam.uptime", 0.5, 600],
  // Of 60 and 180 s: mean 120, standard deviation 60.
  ["line.skinning.breakdowns.jam.repair", 0.5, 120],
  ["line.skinning.pace", 0, 12],
  // Standard deviation of a uniform: span / the root of 12.
  ["line.skinning.weight", 2 / Math.sqrt(12) / 3, null],
])("tells how single readings of %s vary and how long one takes", (path, cv, seconds) => {
  const found = spreadAt(PLAN, path)!;
  expect(found.cv).toBeCloseTo(cv, 12);
  if (seconds === null) expect(found.meanSeconds).toBeNull();
  else expect(found.meanSeconds).toBeCloseTo(seconds, 9);
});

it.each(["supply.stream.heads", "line.skinning.removals.condemned.share", "line.skinning.name", "line.nobody", "[["])(
  "says nothing of %s",
  (path) => {
    expect(spreadAt(PLAN, path)).toBeNull();
  },
);
