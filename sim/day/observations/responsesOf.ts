import type { Plan } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "./responseInfo.ts";
import { responseList } from "./responseList.ts";

/**
 * What can be measured on a day of this plan: key, label in plain words, unit, format and wanted direction, in the
 * order of a report: the day, heads, limits, crews and their hours, supply, money, utilities, mass, chains, gates, vessels,
 * chillers, sections, stages, OEE. `measure` gives a value for each key.
 */
export function responsesOf(plan: Plan): ResponseInfo[] {
  return responseList(plan).map(({ of: _, ...info }) => info);
}
