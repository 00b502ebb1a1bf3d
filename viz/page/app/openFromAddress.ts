import ferncote from "../../../experiments/plans/ferncote.json?raw";
import { LESSONS } from "../lessons/lessons.ts";
import { readLink } from "../plan/link.ts";
import type { PlanText } from "../worker/messages.ts";
import { openLesson, openPlan } from "./openPlan.ts";
import * as state from "./state.ts";

/** Opens what the address names (a plan in a link), else the plan the command line put in, else the example. */
export async function openFromAddress(): Promise<void> {
  const [key, value = ""] = location.hash.slice(1).split(/=(.*)/su);
  if (key === "plan") {
    const { linked, problem } = await readLink(value);
    if (linked !== null) {
      openPlan({ name: linked.name, text: linked.text, files: linked.files }, linked);
      return;
    }
    state.notice.value = problem;
  }
  const lesson = LESSONS.find(({ id }) => key === "lesson" && id === value);
  if (lesson !== undefined) {
    openLesson(lesson);
    return;
  }
  openPlan(openedPlan() ?? { name: "ferncote.json", text: ferncote, files: {} });
}

/** The plan that `gambrel page PLAN` put into the page; null when it named none. */
function openedPlan(): PlanText | null {
  const block = document.getElementById("opened-plan");
  return block === null ? null : (JSON.parse(block.textContent ?? "null") as PlanText | null);
}
