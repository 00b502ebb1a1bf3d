import { expect, it } from "vitest";
import { headFlow } from "../../../../sim/questions/estimate/index.ts";
import { stepShares } from "../../../../sim/questions/size/stepShares.ts";
import { demandOf, designOf } from "../../../support/demands.ts";

it("stepShares agree with what the written plan does with its heads", () => {
  const changes = { animals: { condemned: "3 %", deadOnArrival: "1 %", toTrim: "5 %" } };
  const { visits } = headFlow(designOf(changes).plan);
  const shares = stepShares(demandOf(changes));
  // Those who come back from trim are condemned like the others, which the shares round.
  for (const [name, share] of shares) expect(Math.abs(visits.get(name)! / share - 1), name).toBeLessThan(0.003);
});
