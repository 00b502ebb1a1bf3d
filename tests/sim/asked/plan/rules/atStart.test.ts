import { describe, expect, it } from "vitest";
import { formatFault } from "../../../../../sim/asked/plan/index.ts";
import { atStart } from "../../../../../sim/asked/plan/rules/atStart.ts";

const line = [
  { name: "bleeding", kind: "dwell", places: 30 },
  { name: "chiller", kind: "dwell", places: 400 },
];
const told = (crates: object[], carcasses: object[], liveHandling?: object) =>
  atStart({ line, atStart: { crates, carcasses }, liveHandling }).map(formatFault);

describe("what is there when the day begins", () => {
  it("has its place in the lairage, in the fleet, and in a chiller behind the killing", () => {
    const handling = { lairageCrates: 40, fleet: { crates: 30 } };
    expect(told([{ crates: 20 }, { crates: 10 }], [{ in: "chiller", heads: 400 }], handling)).toEqual([]);
    expect(told([{ crates: 30 }, { crates: 11 }], [{ in: "bleeding", heads: 1 }], handling)).toEqual([
      "atStart.crates: 41 crates, and the lairage holds 40; allowed: 40 at most; lower them",
      "atStart.crates: 41 crates, and the fleet has 30; allowed: 30 at most; lower them",
      "atStart.carcasses[0].in: no carcasses can hang in 'bleeding'; allowed: 'chiller'; name a chiller",
    ]);
    expect(
      told(
        [{ crates: 1 }],
        [
          { in: "chiller", heads: 300 },
          { in: "chiller", heads: 101 },
        ],
      ),
    ).toEqual([
      'atStart.crates: crates, but the plan has no live handling; allowed: a plan with "supply.loads" and "liveHandling"; delete them',
      "atStart.carcasses: 401 carcasses in 'chiller', which holds 400; allowed: 400 at most; lower them",
    ]);
  });
});
