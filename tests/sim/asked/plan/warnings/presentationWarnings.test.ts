import { describe, expect, it } from "vitest";
import { readExample } from "../../../../support/readExample.ts";
import { stageOf } from "../wholeMessages.ts";

/** Ferncote as it was before: shares that leave a carcass with head, sold without. */
const OLD_SHARES: Record<string, string> = {
  sticking: "3.5 %",
  "hind-leg cutting": "1.6 %",
  skinning: "12.5 %",
  "four-leg cutting": "7.5 %",
  evisceration: "17.5 %",
};

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
function oldShares(plan: any): void {
  delete plan.bodyParts;
  for (const [name, share] of Object.entries(OLD_SHARES)) {
    const [product] = stageOf(plan, name).takesOff;
    delete product.parts;
    product.share = share;
  }
  const hand = stageOf(plan, "hand skinning").takesOff[0];
  delete hand.parts;
  hand.share = "12.5 %";
}

describe("shares that do not fit what is sold", () => {
  it("are none in the example", () => {
    expect(readExample("ferncote")).toMatchObject({ faults: [], warnings: [] });
  });

  // Published: 50.8 and 51.5 % without head (Kuzelov and Atanasova 2011); 57.4 % is a yield with it.
  it("leave more than was ever published of a carcass without head", () => {
    expect(readExample("ferncote", oldShares).warnings).toEqual([
      "presentation: the line leaves 56 % as cold carcass with liver and kidneys, without head, paws and heart and lungs; published yields of that are about 47.9 % to 53.6 %; check whether the shares belong to another presentation, for example with the head",
    ]);
  });

  it("are within print when the plan sells the head as well", () => {
    const withHead = readExample("ferncote", (plan) => {
      oldShares(plan);
      plan.presentation.head = "on";
    });
    expect(withHead.warnings).toEqual([]);
  });

  it("leave another carcass than the stated yield", () => {
    const told = readExample("ferncote", (plan) => {
      plan.presentation.yield = { share: "54 %", head: "off", paws: "off", weighed: "cold", liveWeight: "slaughter" };
    });
    expect(told.warnings).toEqual([
      "presentation.yield.share: 54 %, but the shares along the line leave 52.3 %; correct the shares or the yield",
    ]);
    const near = readExample("ferncote", (plan) => {
      plan.presentation.yield = { share: "52.5 %", head: "off", paws: "off", weighed: "cold", liveWeight: "slaughter" };
    });
    expect(near.warnings).toEqual([]);
  });

  it("feed the chiller with other carcasses than it is computed for", () => {
    const warm = readExample("ferncote", (plan) => (stageOf(plan, "chilling").chilling.carcassShare = "57 %"));
    expect(warm.warnings).toEqual([
      "line[13].chilling.carcassShare: the chiller is computed for carcasses of 57 % of live weight, but the stages before it leave 53.4 %; delete it: the share then follows from the line",
    ]);
  });

  it("cannot be held against words, which is said", () => {
    const words = readExample("ferncote", (plan) => {
      oldShares(plan);
      delete plan.presentation;
      stageOf(plan, "chilling").takesOff = [{ name: "drip", share: "1.5 %", of: "what is left" }];
      plan.sources = [{ path: "", kind: "invented" }];
      plan.dressing = "Carcass without head";
    });
    expect(words.warnings).toEqual([
      'dressing: what stays on the carcass is given in words, which cannot be checked against the 56.3 % of live weight that the line leaves; write "presentation" instead, and "bodyParts" for the shares',
    ]);
  });
});
