import { describe, expect, it } from "vitest";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import { keepLimits } from "../../../../sim/questions/improve/keepLimits.ts";
import type { Trial, Trials } from "../../../../sim/questions/improve/trials.ts";
import { caseQuestion } from "../../../support/improving.ts";

const question = caseQuestion({}, 4);
const { base } = new Designs(question);
const KEY = "beyond.stun to skinning";

/** Days of one design whose shares are these, in turn. */
function days(shares: (number | null)[]): { trials: Trials; asked: number[] } {
  const asked: number[] = [];
  const of = async (designs: readonly (typeof base)[], count: number): Promise<Trial[]> => {
    asked.push(count);
    const list = Array.from({ length: count }, (_, day) => shares[day % shares.length]!);
    return designs.map((design) => ({ design, values: list.map(() => 1), responses: { [KEY]: list }, why: null }));
  };
  return { trials: { of } as unknown as Trials, asked };
}

describe("keepLimits", () => {
  it.each<[string, (number | null)[], string, number[]]>([
    ["far below the limit", [0.01, 0.02, 0], "kept", [6]],
    ["far above it", [0.4, 0.5], "broken", [6]],
    ["that no head passed", [null], "kept", [6]],
    ["near it, at the most days", [0.1, 0.2], "not shown", [6, 12, 20]],
    ["that more days tell apart", [0.02, 0.16], "kept", [6, 12, 20]],
  ])("of a share %s", async (_, shares, verdict, looks) => {
    const { trials, asked } = days(shares);
    const found = await keepLimits([base], question, trials, 0.05);
    expect(found.get(base)).toBe(verdict);
    expect(asked).toEqual(looks);
  });

  it("asks for no days where there is no limit", async () => {
    const { trials, asked } = days([1]);
    expect((await keepLimits([base], caseQuestion(), trials, 0.05)).get(base)).toBe("kept");
    expect(asked).toEqual([]);
  });
});
