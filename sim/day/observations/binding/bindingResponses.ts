import type { Plan } from "../../../asked/plan/index.ts";
import type { Response } from "../response.ts";
import { reasonResponses } from "./reasonResponses.ts";
import { slopeResponses } from "./slopeResponses.ts";

/** Every response that only a day with its binding path has. */
export function bindingResponses(plan: Plan): Response[] {
  return [...reasonResponses(plan), ...slopeResponses(plan)];
}

export function bindingKeys(plan: Plan): string[] {
  return bindingResponses(plan).map(({ key }) => key);
}
