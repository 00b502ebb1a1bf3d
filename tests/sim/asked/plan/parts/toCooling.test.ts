import { describe, expect, it } from "vitest";
import type { Cooling } from "../../../../../sim/asked/plan/index.ts";
import { readExample } from "../../../../support/readExample.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests change what a plan holds
function coolingOf(change: (stage: any) => void = () => {}): Cooling {
  const [, chiller] = readExample("parts/chiller", (plan) => change(plan.line[1])).plan.line;
  if (chiller?.kind !== "dwell" || chiller.cooling === undefined) throw new Error("no cold room");
  return chiller.cooling;
}

describe("a cold room in kilowatts", () => {
  it("has fans of 10 m3/s against 150 Pa at 50 %: 3 kW", () => {
    expect(coolingOf().fanKilowatts).toBe(3);
  });

  // 30 passes of 12 s an hour, flow factor 0.8, into 2 degC: 2.723 kW of the 34.037 kW of the open door (ASHRAE Refrigeration, from memory).
  it("has a door that is open a tenth of the time: 2.723 kW, 7 % of it behind plastic strips", () => {
    const at2 = (more: object) =>
      coolingOf((stage) => {
        stage.chilling.air = "2 degC";
        Object.assign(stage.cooling.doors[0], more);
      }).doorKilowatts;
    expect(Math.abs(at2({}) / 2.723 - 1)).toBeLessThan(0.005);
    expect(at2({ curtain: "93 %" }) / at2({})).toBeCloseTo(0.07, 6);
  });

  it("has a person of 272 W at 0 degC and walls as given", () => {
    expect(coolingOf()).toMatchObject({ peopleKilowatts: 0.272, wallKilowatts: 2, lightKilowatts: 0 });
  });

  it("has 65 % of the ideal cycle, or the figure that is given", () => {
    expect(Math.abs(coolingOf().cop / (0.65 * 5.1707) - 1)).toBeLessThan(0.004);
    const given = coolingOf((stage) => (stage.cooling = { cop: 2.8, fans: { power: "2 kW" } }));
    expect(given).toMatchObject({ cop: 2.8, fanKilowatts: 2, doorKilowatts: 0 });
  });
});
