import { expect, it } from "vitest";
import { stableJson } from "../../../../sim/results/index.ts";
import { type OpenRunner, runStudy } from "../../../../sim/run/index.ts";
import { inThreads } from "../../../../sim/run/threads/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

async function textOf(runner?: OpenRunner): Promise<string> {
  const options = { gambrel: "1.2.3", command: "c", ...(runner === undefined ? {} : { runner }) };
  return stableJson(await runStudy(threeVariants({ replications: 7 }), options));
}

it("gives the same bytes in this thread and in 1, 2 and 3 others", async () => {
  const here = await textOf();
  for (const threads of [1, 2, 3]) expect(await textOf(inThreads(threads))).toBe(here);
});
