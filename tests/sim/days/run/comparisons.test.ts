import { describe, expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Procedure } from "../../../../sim/asked/study/index.ts";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { comparisons } from "../../../../sim/days/run/comparisons.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const INFO: ResponseInfo = { key: "t", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" };
const VALUES = [
  [10, 12, 11, 13],
  [20, 23, 21, 22],
  [10.1, 12.2, 10.8, 13.1],
].map((t) => ({ t }));

function compare(change: Partial<Procedure> = {}, values = VALUES, info = INFO) {
  return comparisons(threeVariants({ procedure: { ...PLAIN_PROCEDURE, ...change } }), values, [info]);
}

describe("comparisons", () => {
  it("gives every variant but the base a difference, and all of them their gap to the best", () => {
    const found = compare();
    expect(found[0]!.differences).toBeNull();
    expect(found[1]!.differences!.t).toMatchObject({ n: 4, comparisons: 2, joint: true, shown: true });
    expect(found.map(({ againstBest }) => againstBest!.t!.mayBeBest)).toEqual([false, true, false]);
  });

  it("shows single intervals where each comparison stands by itself", () => {
    expect(compare({ errorRate: "per comparison" })[1]!.differences!.t!.joint).toBe(false);
  });

  it("takes means of antithetic pairs as observations", () => {
    expect(compare({ antithetic: true })[1]!.differences!.t!.n).toBe(2);
  });

  it("asks for no best one where no direction is wanted, or where there are more than 200 variants", () => {
    expect(compare({}, VALUES, { ...INFO, better: null })[1]!.againstBest).toEqual({});
    const many = Array.from({ length: 201 }, (_, variant) => ({ t: [variant, variant + 1] }));
    expect(compare({}, many)[1]!.againstBest).toBeNull();
    expect(compare({}, many.slice(0, 200))[1]!.againstBest).not.toBeNull();
  });
});
