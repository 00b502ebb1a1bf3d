import type { Plan } from "../../asked/plan/index.ts";
import { PLAIN_PROCEDURE, type Study } from "../../asked/study/index.ts";

export interface WhyOptions {
  seed: string;
  /** Days of their own of the plan and of each change that is told. */
  replications: number;
  confidence: number;
  /** A working day of the plan's week that is counted. Default: of a plan with a week the day that decides it. */
  on?: string;
}

/** What a change is worth is told in the end of work; in throughput or carcasses where the plan has no end of its own. */
export function whyResponse({ supply, day }: Plan): string {
  if (supply.kind === "saturated") return "headsPerHour";
  if (supply.kind === "stream" && supply.whenFull === "turn away") return "carcasses";
  return day.closing.rule === "stop hanging" ? "carcasses" : "finish";
}

/** What is reported, the worth first. */
export function whyResponses(plan: Plan): string[] {
  return [...new Set([whyResponse(plan), "headsPerHour", "finish", "overtime"])];
}

/** Today's plan alone: where its time to the end of work goes. */
export function whyStudy(plan: Plan, { seed, replications, confidence }: WhyOptions): Study {
  return {
    name: studyName(plan),
    question: "What should be changed first?",
    reader: "process engineer",
    ...{ seed, replications, confidence },
    responses: whyResponses(plan),
    why: true,
    factors: [],
    variants: [{ name: "base", levels: [], set: {}, insert: [], remove: [], plan }],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}

export function studyName({ name }: Plan): string {
  return `Why ${name} ends when it does`;
}
