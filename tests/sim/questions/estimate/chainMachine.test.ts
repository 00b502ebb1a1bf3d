import { describe, expect, it } from "vitest";
import { chainMachine } from "../../../../sim/questions/estimate/chainMachine.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { chain, onChain } from "../../../support/plans.ts";

describe("chainMachine", () => {
  it("takes a head every step and stands for the breakdowns of its stations", () => {
    const stations = [onChain("cutting", 2, 2, 3, { breakdowns: [breakdown(300, 20)] })];
    const [machine] = chainMachine(chain("rail", 10, 4, stations), 1, 2.5);
    expect(machine).toMatchObject({ name: "rail", positions: 1, places: 0, work: { seconds: 4, squaredCv: 0 } });
    const [stop] = machine!.work.stops;
    expect(stop!.chance * stop!.seconds).toBeCloseTo((3 / 300) * 20, 12);
  });

  it("is followed by the stations that can stop it, with the rest of their window as places", () => {
    const stations = [
      onChain("slow", 1, 6, 7, { positions: 2 }),
      onChain("passing", 8, 4, 7, { ifUnfinished: "pass" }),
      onChain("watch", 13, 20, 90, { positions: 20 }),
    ];
    const found = chainMachine(chain("rail", 40, 4, stations), 1, 2.5);
    expect(found.map(({ name, positions, places }) => [name, positions, places])).toEqual([
      ["rail", 1, 0],
      ["slow", 2, 4],
    ]);
    expect(found[1]!.work.seconds).toBe(3.5);
  });
});
