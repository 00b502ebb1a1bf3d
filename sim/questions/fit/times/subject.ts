import type { PathStep } from "../../../asked/plan/index.ts";

/** What times are of: a figure of a stage of the plan, or of one of its breakdowns. */
export interface Subject {
  stage: string;
  figure: "cycle" | "travel" | "dwell" | "uptime" | "repair";
  /** For uptime and repair: of which breakdown. */
  breakdown: string | null;
}

const BREAKDOWN = /^(?:(.+?)\s+)?(uptime|repair)$/u;

/**
 * Reads "skinning" (a cycle), "skinning: travel", "bleeding: dwell", "skinning: jam uptime", "skinning: jam repair"; a
 * breakdown without a name is called "stop". Null where the words after the colon are none of these.
 */
export function readSubject(text: string): Subject | null {
  const colon = text.indexOf(":");
  if (colon === -1) return { stage: text, figure: "cycle", breakdown: null };
  const stage = text.slice(0, colon).trim();
  const what = text.slice(colon + 1).trim();
  if (what === "cycle" || what === "travel" || what === "dwell") return { stage, figure: what, breakdown: null };
  const parts = BREAKDOWN.exec(what);
  if (parts === null) return null;
  return { stage, figure: parts[2] as "uptime" | "repair", breakdown: parts[1] ?? "stop" };
}

/** Where the figure stands in a plan. */
export function subjectPath({ stage, figure, breakdown }: Subject): PathStep[] {
  return breakdown === null ? ["line", stage, figure] : ["line", stage, "breakdowns", breakdown, figure];
}
