import { describe, expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { utilitySheet } from "../../../../sim/day/observations/utilitySheet.ts";
import { planOf, saturated, station } from "../../../support/plans.ts";
import { readExample } from "../../../support/readExample.ts";

const day = (plan: Parameters<typeof compileLine>[0]) => runDay(compileLine(plan), { seed: "sheet", replication: 0 });

describe("the sheet of water, heat, air and electricity", () => {
  const { plan } = readExample("ferncote");
  const record = day(plan);
  const sheet = utilitySheet(record, plan)!;

  it("adds up to the plant's figures", () => {
    const sum = (
      list: readonly { litres: number; electricKilowattHours: number }[],
      key: "litres" | "electricKilowattHours",
    ) => list.reduce((total, each) => total + each[key], 0);
    const values = measure(record, plan);
    for (const key of ["litres", "electricKilowattHours"] as const) {
      const whole = key === "litres" ? values.water! : values.energy!;
      expect(sum(sheet.stages, key) + sum(sheet.consumers, key)).toBeCloseTo(whole, 6);
    }
    expect(sheet.coldRooms.map(({ name }) => name)).toEqual(["chilling"]);
    expect(sheet.litresPerTonne! / 1000).toBeCloseTo(values.waterPerTonne!, 9);
  });

  // No published value for rabbits. Chickens, by analogy: 1.45 to 6.30 m3 and 170 to 490 kWh for a tonne (2023/2749, partly from memory).
  it.each(["ferncote", "tavelmoss-chains", "sallowfield-compact"])(
    "of %s lies inside or near what chickens take",
    (name) => {
      const example = readExample(name).plan;
      const { litresPerTonne, kilowattHoursPerTonne } = utilitySheet(day(example), example)!;
      expect(litresPerTonne).toBeGreaterThan(1450);
      expect(litresPerTonne).toBeLessThan(6300);
      expect(kilowattHoursPerTonne).toBeGreaterThan(160);
      expect(kilowattHoursPerTonne).toBeLessThan(490);
    },
  );

  it("is none of a plan that uses nothing", () => {
    const nothing = planOf(saturated(5), [station("skinning", 4)]);
    expect(utilitySheet(day(nothing), nothing)).toBeNull();
  });
});
