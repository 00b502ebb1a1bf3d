import fc from "fast-check";
import seedrandom from "seedrandom";
import { describe, expect, it } from "vitest";
import { AleaStream } from "../../../../sim/maths/random/aleaStream.ts";

const draws = (count: number, draw: () => number) => Array.from({ length: count }, () => draw());

describe("AleaStream", () => {
  it("gives bit for bit the doubles of seedrandom's alea, whatever the seed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (seed) => {
        const [stream, reference] = [new AleaStream(seed, false), seedrandom.alea(seed)];
        expect(draws(50, () => stream.next())).toEqual(draws(50, reference.double));
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("stays with it over a million draws", () => {
    const [stream, reference] = [new AleaStream("long", false), seedrandom.alea("long")];
    let different = 0;
    for (let draw = 0; draw < 1_000_000; draw++) if (stream.next() !== reference.double()) different++;
    expect(different).toBe(0);
  });

  it("mirrors every draw when asked to", () => {
    const [plain, mirrored] = [new AleaStream("m", false), new AleaStream("m", true)];
    for (let draw = 0; draw < 100; draw++) expect(mirrored.next()).toBe(1 - plain.next());
  });
});
