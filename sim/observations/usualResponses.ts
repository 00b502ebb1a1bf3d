import type { Plan } from "../plan/index.ts";
import { crewResponses } from "./crewResponses.ts";
import { dayResponses } from "./dayResponses.ts";
import { headResponses } from "./headResponses.ts";
import { limitResponses } from "./limitResponses.ts";
import { supplyResponses } from "./supplyResponses.ts";

/**
 * Keys of the responses reported when nobody asks for others, throughput first: the day, where heads went, limits,
 * crews and supply. Sections and stages have too many to read unasked; each day's record has them.
 */
export function usualResponses(plan: Plan): string[] {
  const groups = [dayResponses, headResponses, limitResponses, crewResponses, supplyResponses];
  return groups.flatMap((responsesOfGroup) => responsesOfGroup(plan).map(({ key }) => key));
}
