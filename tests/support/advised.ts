import type { Plan } from "../../sim/asked/plan/index.ts";
import type { Advice, StudyResults } from "../../sim/days/results/index.ts";
import { runStudy, type Simulate } from "../../sim/days/run/index.ts";
import { answerWhy, type WhyOptions } from "../../sim/questions/why/index.ts";

const MADE = { gambrel: "test", command: "test" };

export const inProcess: Simulate = (study, journal, traces) => runStudy(study, { ...MADE, traces, journal });

/** Advice on a plan, all of it in this process. */
export async function advised(
  plan: Plan,
  options: Partial<WhyOptions> = {},
): Promise<{ results: StudyResults; advice: Advice }> {
  const asked = { seed: "advice", replications: 12, confidence: 0.95, ...options };
  const results = await answerWhy(plan, asked, { simulate: inProcess });
  return { results, advice: results.advice! };
}
