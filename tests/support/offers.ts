import { SMALL_PLAN } from "./smallPlan.ts";

/** An options file on the small plan, with money. Invented. */
export const PRICED_PLAN = {
  ...SMALL_PLAN,
  crews: [{ name: "dressing", people: { early: 3 }, pay: "18 EUR/h" }],
  money: { currency: "EUR", overtimeFactor: 1.5, livePrice: "2 EUR/kg", prices: { carcass: "4.2 EUR/kg" } },
};

export function offersFile(changes: Record<string, unknown> = {}): Record<string, unknown> {
  return {
    name: "Offers",
    plan: PRICED_PLAN,
    seed: "7",
    replications: 6,
    interest: "5 %",
    daysPerYear: 240,
    options: [
      { name: "nothing new", set: { "line.skinning.buffer": 6 }, price: "1000 EUR", life: 5 },
      { name: "fewer people", crew: { dressing: -1 }, set: { "line.skinning.positions": 2 }, price: "0 EUR", life: 5 },
      {
        name: "a fourth",
        crew: { dressing: 1 },
        set: { "line.skinning.positions": 4 },
        price: "500 EUR",
        life: 10,
        servicePerYear: "100 EUR",
      },
    ],
    ...changes,
  };
}
