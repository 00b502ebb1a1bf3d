import { describe, expect, it } from "vitest";
import { decompose } from "../../../../sim/questions/estimate/decompose.ts";
import { failing, serial } from "../../../support/serialStations.ts";

const LEAST = 0.1225;

describe("decompose", () => {
  it("gives a single station its own rate, repairs included", () => {
    expect(decompose([serial(2, 0)], LEAST).throughput).toBe(0.5);
    expect(decompose([failing(1, 0, 1, 0.01, 10)], LEAST).throughput).toBeCloseTo(1 / 1.1, 9);
  });

  it("lets every station spend its time on work, repairs and waiting, to a thousandth", () => {
    const line = [
      failing(1, 0, 0.5, 0.01, 10),
      serial(1.1, 2),
      failing(0.9, 1, 0.3, 0.02, 5),
      serial(2, 3, { positions: 2 }),
    ];
    const { throughput, blocked, starved } = decompose(line, LEAST);
    line.forEach(({ work }, index) => {
      const busy = work.seconds + work.stops.reduce((sum, { chance, seconds }) => sum + chance * seconds, 0);
      expect(Math.abs((busy + blocked[index]! + starved[index]!) * throughput - 1)).toBeLessThan(1e-3);
    });
    expect(starved[0]).toBe(0);
    expect(blocked.at(-1)).toBe(0);
  });

  it("finds the same for a line and for the line read backwards (Yamazaki and Sakasegawa 1975), to 1 %", () => {
    const line = [serial(1, 0), serial(1.2, 2), serial(0.9, 1), serial(1.1, 3)];
    const places = line.map((station) => station.places);
    const backwards = line
      .toReversed()
      .map((station, index) => ({ ...station, places: index === 0 ? 0 : places[line.length - index]! }));
    const [one, other] = [line, backwards].map((each) => decompose(each, LEAST).throughput);
    expect(Math.abs(one! / other! - 1)).toBeLessThan(0.01);
  });

  it("gains with every place and loses with every stop", () => {
    const at = (places: number, failure: number) =>
      decompose([failing(1, 0, 0.2, failure, 10), failing(1, places, 0.2, failure, 10)], LEAST).throughput;
    expect(at(1, 0.01)).toBeGreaterThan(at(0, 0.01));
    expect(at(8, 0.01)).toBeGreaterThan(at(1, 0.01));
    expect(at(8, 0.02)).toBeLessThan(at(8, 0.01));
  });
});
