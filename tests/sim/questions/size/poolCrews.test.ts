import { describe, expect, it } from "vitest";
import { poolCrews } from "../../../../sim/questions/size/poolCrews.ts";
import { sizeCrateSteps } from "../../../../sim/questions/size/sizeCrates.ts";
import { NOTHING_EXTRA, sizeStations } from "../../../../sim/questions/size/sizeStations.ts";
import { demandOf } from "../../../support/demands.ts";

const animals = { deadOnArrival: 0, condemned: 0, toTrim: 0 };

function crewsAt(rate: number, changes: Record<string, unknown> = {}, slower = rate) {
  const demand = demandOf({ animals, ...changes });
  const steps = [
    ...sizeCrateSteps(demand, rate, demand.handling["hand-slid"]),
    ...sizeStations(demand, rate, NOTHING_EXTRA),
  ];
  return poolCrews(demand, steps, { headsPerSecond: slower, designHeadsPerSecond: rate }, new Map());
}

describe("poolCrews", () => {
  it("pools neighbouring steps, each step in one post, no post in two zones", () => {
    const crews = crewsAt(0.02);
    expect(crews.map(({ name, people }) => [name, people])).toEqual([
      ["live side", 1],
      ["kill", 1],
      ["unclean side", 1],
      ["clean side", 1],
      ["inspection", 1],
    ]);
    expect(crews[0]!.steps).toEqual(["unloading", "feeding", "hanging", "washing", "restacking"]);
    expect(crews[1]!.steps).toEqual(["stunning", "sticking"]);
    expect(crews[4]!.steps).toEqual(["inspection"]);
  });

  it("counts work and walking: a second to each step a head, to crates once for a crate", () => {
    const [live, kill] = crewsAt(0.02);
    // 14 s to hang, 22 + 18 + 30 + 12 s a crate of 12 heads, and a second to hanging and to each of four steps on a crate.
    expect(live!.load).toBeCloseTo(0.02 * (14 + 82 / 12 + 1 + 4 / 12), 9);
    expect(kill!.load).toBeCloseTo(0.02 * (4.6 + 4.2 + 2), 9);
    expect(crewsAt(0.02, { line: { walking: "0 s" } })[1]!.load).toBeCloseTo(0.02 * 8.8, 9);
  });

  it("keeps every load within the most, at the rate that people are to keep up with", () => {
    for (const rate of [0.03, 0.06, 0.09, 0.15, 0.3]) {
      for (const { load } of crewsAt(rate)) expect(load).toBeLessThanOrEqual(0.85 + 1e-9);
      const fewer = crewsAt(rate, {}, rate * 0.9);
      for (const { load } of fewer) expect(load).toBeLessThanOrEqual(0.85 / 0.9 + 1e-9);
      const total = (crews: typeof fewer) => crews.reduce((sum, { people }) => sum + people, 0);
      expect(total(fewer)).toBeLessThanOrEqual(total(crewsAt(rate)));
    }
  });

  it("moves a step to the zone that the demand says, and has as many people as a position takes", () => {
    const inspectors = crewsAt(0.02, { steps: { inspection: { zone: "clean side" } } });
    expect(inspectors.map(({ name }) => name)).not.toContain("inspection");
    expect(crewsAt(0.02, { steps: { hanging: { people: 3 } } })[0]!.people).toBe(3);
  });
});
