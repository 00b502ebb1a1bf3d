import type { Plan } from "../../asked/plan/index.ts";
import { crewResponses } from "./crewResponses.ts";
import { dayResponses } from "./dayResponses.ts";
import { headResponses } from "./headResponses.ts";
import { labourResponses } from "./labourResponses.ts";
import { limitResponses } from "./limitResponses.ts";
import { moneyResponses } from "./moneyResponses.ts";
import { plantCostResponses } from "./plantCostResponses.ts";
import { supplyResponses } from "./supplyResponses.ts";
import { utilityResponses } from "./utilityResponses.ts";

/** Of the groups with too many to read unasked, the few that every owner asks for. */
const PICKED = [
  ...["overtimeHours", "costPerHead", "costPerKg", "margin", "fullCostPerKg", "fullMargin"],
  ...["waterPerHead", "energyPerHead"],
];

/**
 * Keys of the responses reported when nobody asks for others, throughput first: the day, where heads went, limits,
 * crews, supply, and a few on money, water and energy. Sections and stages have too many to read unasked; each day's
 * record has them.
 */
export function usualOfDay(plan: Plan): string[] {
  const groups = [dayResponses, headResponses, limitResponses, crewResponses, supplyResponses];
  const picked = [labourResponses, moneyResponses, plantCostResponses, utilityResponses].flatMap((responses) =>
    responses(plan),
  );
  return [
    ...groups.flatMap((responsesOfGroup) => responsesOfGroup(plan).map(({ key }) => key)),
    ...picked.map(({ key }) => key).filter((key) => PICKED.includes(key)),
  ];
}

/**
 * Keys of the day, its limits and its money: what every plan is decided by. Worked out without the hundreds of responses of
 * stations, since every variant of every study asks for them.
 */
export function dayAndMoneyKeys(plan: Plan): string[] {
  const groups = [dayResponses, limitResponses, moneyResponses, plantCostResponses];
  return groups.flatMap((responsesOfGroup) => responsesOfGroup(plan).map(({ key }) => key));
}
