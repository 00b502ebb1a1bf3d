import type { Plan } from "../../asked/plan/index.ts";
import type { ResponseInfo } from "./responseInfo.ts";
import { responseList } from "./responseList.ts";
import { weekResponses } from "./week/weekResponses.ts";

/**
 * What can be measured on a day of this plan: key, label in plain words, unit, format and wanted direction, in the
 * order of a report: the day, heads, limits, crews and their hours, supply, money, utilities, mass, chains, gates, vessels,
 * chillers, sections, stages, OEE. `measure` gives a value for each key. Of a plan with a week: what can be measured of that.
 */
export function responsesOf(plan: Plan): ResponseInfo[] {
  if (plan.week !== undefined) return weekResponses(plan).map(({ of: _, needs: __, ...info }) => info);
  return responseList(plan).map(({ of: _, ...info }) => info);
}
