import { describe, expect, it } from "vitest";
import { NOTHING_EXTRA, sizeStations } from "../../../../sim/questions/size/sizeStations.ts";
import { demandOf } from "../../../support/demands.ts";

const EVEN = { condemned: 0, deadOnArrival: 0, toTrim: 0 };

function stationOf(name: string, step: Record<string, unknown>, line: Record<string, unknown> = {}, rate = 0.2) {
  const demand = demandOf({ animals: EVEN, line, steps: { [name]: step } });
  return sizeStations(demand, rate, NOTHING_EXTRA).find((station) => station.name === name)!;
}

describe("sizeStations", () => {
  it("gives a step so many positions that the load on them stays below the most", () => {
    expect(stationOf("evisceration", { cycle: "17 s" })).toMatchObject({
      positions: 4,
      peoplePerPosition: 1,
      crew: "evisceration",
    });
    expect(stationOf("evisceration", { cycle: "17 s" }).load).toBeCloseTo(0.85, 12);
    expect(stationOf("evisceration", { cycle: "17.1 s" }).positions).toBe(5);
    expect(stationOf("evisceration", { cycle: "17.1 s" }, { handLoad: "90 %" }).positions).toBe(4);
  });

  it("counts repairs against a machine, which needs nobody", () => {
    const breakdowns = [{ name: "jam", uptime: "90 s", repair: "10 s" }];
    const machine = stationOf("skinning", { cycle: "4.5 s", breakdowns });
    expect(machine).toMatchObject({ positions: 2, crew: null, peoplePerPosition: 0 });
    expect(machine.load).toBeCloseTo((0.9 * (10 / 9)) / 2, 12);
  });

  it("takes positions, places and people as they are given", () => {
    const step = { cycle: "17 s", positions: 3, places: 7, people: 2 };
    expect(stationOf("evisceration", step)).toMatchObject({ positions: 3, places: 7, peoplePerPosition: 2 });
  });

  it("leaves places for the pause to be covered, or the machine's usual stop, and for who travels; none between stunning and sticking", () => {
    expect(stationOf("pre-loosening", {}, { cover: "30 s" }).places).toBe(Math.ceil(0.2 * (30 + 4)));
    expect(stationOf("skinning", {}).places).toBe(Math.ceil(0.2 * (65 + 4)));
    expect(stationOf("sticking", {}).places).toBe(0);
    expect(stationOf("hanging", {}).places).toBe(0);
  });

  it("lets as many stick as stun", () => {
    const demand = demandOf({ steps: { stunning: { cycle: "9 s" }, sticking: { cycle: "3 s" } } });
    const stations = sizeStations(demand, 0.2, NOTHING_EXTRA);
    const [stunning, sticking] = ["stunning", "sticking"].map(
      (name) => stations.find((station) => station.name === name)!,
    );
    expect(sticking!.positions).toBe(stunning!.positions);
    expect(sticking!.load).toBeCloseTo((0.2 * 0.9985 * 3) / sticking!.positions, 9);
  });

  it("lets those who trim the others trim what inspection sends, where there is such a step", () => {
    const crew = (changes: Record<string, unknown>) =>
      sizeStations(demandOf(changes), 0.2, NOTHING_EXTRA).find(({ name }) => name === "trim")!.crew;
    expect(crew({})).toBe("final trim");
    expect(crew({ steps: { "final trim": { leftOut: true } } })).toBe("trim");
  });
});
