import { expect, it } from "vitest";
import { requiredRate } from "../../../../sim/questions/size/requiredRate.ts";
import { sizeByProducts } from "../../../../sim/questions/size/sizeByProducts.ts";
import { sizeCrates } from "../../../../sim/questions/size/sizeCrates.ts";
import { NOTHING_EXTRA, sizeStations } from "../../../../sim/questions/size/sizeStations.ts";
import { sizeUtilities } from "../../../../sim/questions/size/sizeUtilities.ts";
import { demandOf } from "../../../support/demands.ts";

it("sizeByProducts adds up what the steps take off, vessels enough to take what comes while one is emptied", () => {
  const animals = { deadOnArrival: 0, condemned: 0, liveWeight: "2 kg", yield: "50 %" };
  const byProducts = { vessel: "50 kg", emptying: "10 min" };
  const demand = demandOf({
    animals,
    byProducts,
    steps: { sticking: { takesOff: [{ name: "blood", share: "5 %" }] } },
  });
  const rate = requiredRate(demand);
  const blood = sizeByProducts(demand, rate).find(({ name }) => name === "blood")!;
  expect(blood.kgPerDay).toBeCloseTo(rate.headsPerDay * 0.1, 9);
  expect(blood.emptyingsPerDay).toBe(Math.ceil((rate.headsPerDay * 0.1) / 50));
  expect(blood.vessels).toBe(Math.ceil((rate.designHeadsPerSecond * 0.1 * 600) / 50));
});

it("sizeUtilities adds water by head and by the hour, fresh water of crate washing, and the power of every machine", () => {
  const steps = {
    evisceration: { waterPerHead: "2 L", waterPerHour: "100 L/h" },
    skinning: { positions: 2, power: "3 kW", waterPerHead: "0 L" },
    "four-leg cutting": { power: "1 kW" },
    "final trim": { waterPerHead: "0 L" },
    chilling: { power: "5 kW" },
  };
  const demand = demandOf({
    animals: { deadOnArrival: 0 },
    steps,
    crates: { handling: { "hand-slid": { washing: { waterPerCrate: "10 L", waterReused: "40 %" } } } },
  });
  const rate = requiredRate(demand);
  const handling = demand.handling["hand-slid"];
  const crates = sizeCrates(demand, rate, handling);
  const stations = sizeStations(demand, rate.designHeadsPerSecond, NOTHING_EXTRA);
  const found = sizeUtilities(demand, rate, crates, { stations, handling, chiller: null });
  expect(found.litresPerDay).toBeCloseTo(rate.headsPerDay * 2 + 800 + crates.perDay * 6, 6);
  expect(found.kilowatts).toBeCloseTo(6 + 1 + 5, 9);
  expect(found.kilowattHoursPerDay).toBeCloseTo(12 * 8, 9);
});
