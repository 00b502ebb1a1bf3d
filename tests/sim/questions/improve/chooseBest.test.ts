import { expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { observe, startSelection, verdict } from "../../../../sim/maths/statistics/index.ts";
import { chooseBest } from "../../../../sim/questions/improve/chooseBest.ts";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import type { CandidateDesign } from "../../../../sim/questions/improve/index.ts";
import type { Trials } from "../../../../sim/questions/improve/trials.ts";
import { caseQuestion } from "../../../support/improving.ts";

const designs = new Designs(caseQuestion());
const three = [
  [5, 5, 5],
  [4, 5, 6],
  [6, 5, 4],
].map((counts) => designs.of(counts)!);
const ASKED = { n0: 10, delta: 0.5, alpha: 0.05, better: "more" as const, atMost: 100 };

/** Values that are the design's mean and some noise of its own. */
function noisy(means: number[]): { trials: Trials; rows: number[][] } {
  const noise = uniformStream("chooseBest", 0, "designs", "noise");
  const rows = Array.from({ length: ASKED.atMost }, () => means.map((mean) => mean + noise.next() - 0.5));
  const of = async (asked: readonly CandidateDesign[], days: number) =>
    asked.map((design) => ({ design, values: rows.slice(0, days).map((row) => row[three.indexOf(design)]!) }));
  return { trials: { of } as unknown as Trials, rows };
}

it("picks what the procedure picks when it sees all days at once", async () => {
  const { trials, rows } = noisy([1, 1.6, 0.4]);
  const found = await chooseBest(three, trials, ASKED);
  expect(found.kind).toBe("selected");
  expect(found.best).toBe(three[1]);
  expect(verdict(observe(startSelection({ ...ASKED, k: 3 }), rows))).toMatchObject({ kind: "selected", variant: 1 });
  expect(found.days[1]).toBeGreaterThanOrEqual(10);
});

it("tells that it stopped at the most days, and that one design needs no choice", async () => {
  const { trials } = noisy([1, 1, 1]);
  expect((await chooseBest(three, trials, { ...ASKED, delta: 0.01, atMost: 20 })).kind).toBe("ceiling");
  expect(await chooseBest([three[0]!], trials, ASKED)).toMatchObject({ kind: "only one", best: three[0] });
});
