import { expect, it } from "vitest";
import {
  meanOf,
  Sampler,
  squaredCvOf,
  timesAsLong,
  uniformStream,
  type Varying,
} from "../../../../sim/maths/random/index.ts";

it("a family that no check has seen is drawn from nowhere: each reader of it throws, and says its name", () => {
  const unknown = { family: "cauchy", mean: 3, cv: 0.2 } as unknown as Varying;
  const uses = [
    () => new Sampler(unknown, uniformStream("seed", 0, "station", "cycle")),
    () => meanOf(unknown),
    () => squaredCvOf(unknown),
    () => timesAsLong(unknown, 2),
  ];
  for (const use of uses) expect(use).toThrow(/no distribution is called "cauchy"/u);
});
