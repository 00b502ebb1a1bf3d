import type { Plan } from "../../asked/plan/index.ts";
import { sectionsOf } from "../line/index.ts";
import type { Response } from "./response.ts";

/** Work in process by section of the line. */
export function sectionResponses(plan: Plan): Response[] {
  return sectionsOf(plan).flatMap((section) => [
    row(section, "mean", "time average"),
    row(section, "max", "most at once"),
  ]);
}

function row(section: string, key: "mean" | "max", words: string): Response {
  return {
    key: `wip.${section}.${key}`,
    label: `Work in process in ${section}, ${words}`,
    unit: "heads",
    format: "number",
    better: null,
    of: (day) => day.sections.find(({ name }) => name === section)?.wip[key] ?? null,
  };
}
