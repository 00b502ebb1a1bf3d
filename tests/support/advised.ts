import type { Plan } from "../../sim/asked/plan/index.ts";
import type { Advice, StudyResults } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { type AdviceOptions, advise, type Simulate } from "../../sim/questions/why/index.ts";

const MADE = { gambrel: "test", command: "test" };

export const inProcess: Simulate = (study, traces, journal) => runStudy(study, { ...MADE, traces, journal });

/** Advice on a plan, all of it in this process. */
export async function advised(
  plan: Plan,
  options: Partial<AdviceOptions> = {},
): Promise<{ results: StudyResults; advice: Advice }> {
  const asked = { seed: "advice", replications: 12, confidence: 0.95, ...options };
  const results = await advise(plan, asked, { simulate: inProcess });
  return { results, advice: results.advice! };
}
