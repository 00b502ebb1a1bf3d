import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { withdrawals } from "../../../../../sim/asked/plan/rules/withdrawals.ts";

const plan = (withdrawn: object) => ({
  supply: { loads: [{ name: "lorry", withdrawn }] },
  line: [
    { name: "inspection", kind: "station", removals: [{ as: "condemned" }] },
    { name: "packing", kind: "station" },
  ],
});
const told = (withdrawn: object) => withdrawals(plan(withdrawn)).map(formatFault);

describe("the withdrawal of a load", () => {
  it("is at a stage that there is, as one of its removals", () => {
    expect(told({ at: "inspection", as: "condemned" })).toEqual([]);
    expect(told({ at: "inspecton", as: "condemned" })).toEqual([
      "supply.loads[0].withdrawn.at: 'inspecton' is no stage; allowed: 'inspection', 'packing'; did you mean 'inspection'?",
    ]);
    expect(told({ at: "packing", as: "condemned" })).toEqual([
      "supply.loads[0].withdrawn.as: 'condemned' is no removal of packing; allowed: none; add it to the removals of packing",
    ]);
  });
});
