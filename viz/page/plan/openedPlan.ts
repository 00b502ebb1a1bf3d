import type { PlanText } from "../worker/messages.ts";

/** The plan that `gambrel page PLAN` put into the page; null when it named none. */
export function openedPlan(document: Document = globalThis.document): PlanText | null {
  const block = document.getElementById("opened-plan");
  return block === null ? null : (JSON.parse(block.textContent ?? "null") as PlanText | null);
}
