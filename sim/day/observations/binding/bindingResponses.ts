import type { Plan } from "../../../asked/plan/index.ts";
import type { Response } from "../response.ts";
import { boundResponses } from "./boundResponses.ts";
import { slopeResponses } from "./slopeResponses.ts";

/** Every response that only a day with its binding path has. */
export function bindingResponses(plan: Plan): Response[] {
  return [...boundResponses(plan), ...slopeResponses(plan)];
}

export function bindingKeys(plan: Plan): string[] {
  return bindingResponses(plan).map(({ key }) => key);
}
