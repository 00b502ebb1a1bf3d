import { describe, expect, it } from "vitest";
import { serialThroughput } from "../../../../sim/questions/estimate/serialThroughput.ts";
import { serial } from "../../../support/serialStations.ts";

const off = (found: number, exact: number) => Math.abs(found / exact - 1);

describe("serialThroughput", () => {
  it("takes times that hardly vary for what they are, to 3 %: constants of 1 s with 3 places between", () => {
    const line = [serial(1, 0, { squaredCv: 0 }), serial(1, 3, { squaredCv: 0 }), serial(1, 3, { squaredCv: 0 })];
    expect(off(serialThroughput(line), 1)).toBeLessThan(0.03);
  });

  it("is no other than the decomposition where everything varies enough", () => {
    expect(off(serialThroughput([serial(1, 0), serial(1, 1)]), 0.75)).toBeLessThan(1e-4);
  });

  it("knows two lognormal stations without places (1 / E[max], coefficient of variation 0.3) to 1 %", () => {
    const station = serial(1, 0, { squaredCv: 0.09 });
    expect(off(serialThroughput([station, station]), 0.85878)).toBeLessThan(0.01);
  });

  it("gives a lone station its own rate", () => {
    expect(serialThroughput([serial(4, 0, { squaredCv: 0 })])).toBe(0.25);
  });
});
