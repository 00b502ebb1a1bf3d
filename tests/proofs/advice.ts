import { parseArgs } from "node:util";
import { judge, type PlanVerdict, proofPlans } from "../support/adviceProof.ts";

/**
 * Advice printed against advice simulated afresh, over random plans. `npx tsx tests/proofs/advice.ts --plans 100`; see README.md in
 * this folder.
 */

const { values } = parseArgs({
  options: {
    plans: { type: "string", default: "100" },
    from: { type: "string", default: "0" },
    seed: { type: "string", default: "16" },
    days: { type: "string", default: "20" },
    fresh: { type: "string", default: "100" },
  },
});

const verdicts: PlanVerdict[] = [];
const plans = proofPlans(Number(values.plans), Number(values.from), Number(values.seed));
for (const plan of plans) {
  const found = await judge(plan, plan.name, { days: Number(values.days), freshDays: Number(values.fresh) });
  if (found === null) continue;
  verdicts.push(found);
  if (found.outside > 0 || found.topIsBest === false || found.harmful.length > 0 || found.notSame > 0)
    console.log(JSON.stringify(found));
}

const sum = (of: (verdict: PlanVerdict) => number) => verdicts.reduce((total, verdict) => total + of(verdict), 0);
const withTop = verdicts.filter(({ top }) => top !== null);
console.log(`${verdicts.length} plans whose days end by themselves, of ${plans.length}`);
console.log(
  `${sum(({ told }) => told)} changes told; fresh value outside the interval: ${sum(({ outside }) => outside)}`,
);
console.log(`plans with at least one outside: ${verdicts.filter(({ outside }) => outside > 0).length}`);
console.log(
  `plans with something to start with: ${withTop.length}; among the truly best: ${withTop.filter(({ topIsBest }) => topIsBest).length}`,
);
console.log(
  `plans without; nothing better was missed: ${verdicts.filter(({ top, topIsBest }) => top === null && topIsBest !== false).length} of ${verdicts.length - withTop.length}`,
);
console.log(`changes told that break a limit more: ${sum(({ harmful }) => harmful.length)}`);
console.log(
  `"no difference larger than": ${sum(({ same }) => same)} changes; larger afresh: ${sum(({ notSame }) => notSame)}`,
);
