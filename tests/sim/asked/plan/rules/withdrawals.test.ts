import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { heldLots, withdrawals } from "../../../../../sim/asked/plan/rules/withdrawals.ts";

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

describe("a lot that is held", () => {
  const holds = (held: object, line: object[]) =>
    heldLots({ supply: { loads: [{ name: "lorry", at: "06:00", held }] }, line }).map(formatFault);
  const line = [
    { name: "bleeding", kind: "dwell" },
    { name: "chiller", kind: "dwell" },
    { name: "packing", kind: "station" },
  ];

  it("hangs in a chiller that there is, behind the killing, until after it has come", () => {
    expect(holds({ in: "chiller", until: "30:00" }, line)).toEqual([]);
    expect(holds({ in: "bleeding", until: "05:00" }, line)).toEqual([
      "supply.loads[0].held.in: no carcasses can hang in 'bleeding'; allowed: 'chiller'; name a chiller",
      "supply.loads[0].held.until: it is released before it comes; allowed: after 06:00; check the hours",
    ]);
  });
});
