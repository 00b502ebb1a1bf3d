import { describe, expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { massBalance } from "../../../../sim/day/observations/massBalance.ts";
import { readExample } from "../../../support/readExample.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const { plan } = readExample("parts/presentation");
const day = runDay(compileLine(plan), { seed: "mass", replication: 0 });

/**
 * Worked by hand: 600 heads of 2.5 kg are 1,500 kg at slaughter, 1,500 / 0.98 at the farm. Off: blood 3 %, skin 15 %, head and
 * paws 8.4 %, gut with heart and lungs 20 %, liver 3 %. Left: 50.6 %, 759 kg hot; 2 % drip of that; 743.82 kg cold.
 */
const HAND = [
  ["at the farm", "live weight at the farm", 1500 / 0.98],
  ["hung", "live weight hung", 1500],
  ["carcass", "carcass", 743.82],
  ["by-product", "blood", 45],
  ["by-product", "skins", 225],
  ["by-product", "paws and head", 126],
  ["by-product", "viscera", 300],
  ["by-product", "livers", 45],
  ["chill loss", "drip", 15.18],
  ["left on the line", "left on the line", 0],
  ["unaccounted", "not accounted for", 0],
] as const;

describe("the mass balance of a day", () => {
  it("is that worked by hand, to the kilogram and far beyond", () => {
    const { lines, presentation, publishedAs } = massBalance(day, plan)!;
    expect(lines.map(({ kind, name }) => [kind, name])).toEqual(HAND.map(([kind, name]) => [kind, name]));
    lines.forEach(({ kilograms, share }, index) => {
      expect(kilograms).toBeCloseTo(HAND[index]![2], 8);
      expect(share).toBeCloseTo(HAND[index]![2] / 1500, 11);
    });
    expect(presentation).toBe("hot carcass with kidneys, without head, paws, liver and heart and lungs");
    expect(publishedAs).toBeNull();
  });

  it("sells the hot weight, pays the weight at the farm, and divides one by the other", () => {
    const values = measure(day, plan);
    expect(values.dressingPercentage).toBeCloseTo((759 / 1500) * 0.98, 10);
    expect(values["revenue.carcass"]).toBeCloseTo(759 * 5.6, 7);
    expect(values["cost.animals"]).toBeCloseTo((1500 / 0.98) * 2.05, 7);
    expect(values.carcassKg).toBeCloseTo(743.82, 8);
  });

  it("sells the cold weight by the weight at slaughter where the plan says so", () => {
    const cold = readExample("parts/presentation", (file) => {
      file.presentation.weighed = "cold";
      file.presentation.liveWeight = "slaughter";
    }).plan;
    const values = measure(day, cold);
    expect(values.dressingPercentage).toBeCloseTo(743.82 / 1500, 10);
    expect(values["revenue.carcass"]).toBeCloseTo(743.82 * 5.6, 7);
    expect(values["cost.animals"]).toBeCloseTo(1500 * 2.05, 7);
  });

  it("gives the chiller the carcass that the line leaves", () => {
    const chiller = plan.line[3]!;
    if (chiller.kind !== "dwell" || chiller.dwell.kind !== "chilling") throw new Error("no chiller");
    expect(chiller.dwell.chilling.carcassShare).toBe(0.506);
  });

  it("keeps a head that is sold on the carcass: 4.8 % of live weight more, not a kilogram lost", () => {
    const withHead = readExample("parts/presentation", (file) => (file.presentation.head = "on")).plan;
    const { lines } = massBalance(runDay(compileLine(withHead), { seed: "mass", replication: 0 }), withHead)!;
    const kg = (name: string) => lines.find((line) => line.name === name)!.kilograms;
    expect(kg("carcass")).toBeCloseTo(1500 * 0.554 * 0.98, 8);
    expect(kg("paws and head")).toBeCloseTo(54, 8);
    expect(Math.abs(kg("not accounted for"))).toBeLessThan(1e-8);
  });

  it("has the dead and the condemned as ways out, and none where nothing is taken off", () => {
    const { lines } = massBalance(wholeDay(), { ...WHOLE_PLAN, dressing: "without head" })!;
    expect(lines.filter(({ kind }) => kind === "way out").map(({ name, kilograms }) => [name, kilograms])).toEqual([
      ["dead on arrival", 25],
      ["condemned", 72],
    ]);
    const nothing = { ...wholeDay(), masses: { ...wholeDay().masses, byProductsKg: {} } };
    expect(massBalance(nothing, WHOLE_PLAN)).toBeNull();
  });
});
