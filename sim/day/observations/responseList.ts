import type { Plan } from "../../asked/plan/index.ts";
import { sectionsOf } from "../line/index.ts";
import { bindingResponses } from "./binding/bindingResponses.ts";
import { chainResponses } from "./chainResponses.ts";
import { chillerResponses } from "./chillerResponses.ts";
import { crewResponses, crewWorkResponses } from "./crewResponses.ts";
import { dayResponses } from "./dayResponses.ts";
import { divertedResponses } from "./divertedResponses.ts";
import { gateResponses } from "./gateResponses.ts";
import { headResponses } from "./headResponses.ts";
import { killStopResponses } from "./killStopResponses.ts";
import { labourResponses } from "./labourResponses.ts";
import { limitResponses } from "./limitResponses.ts";
import { massResponses } from "./massResponses.ts";
import { moneyResponses } from "./moneyResponses.ts";
import { oeeResponses } from "./oeeResponses.ts";
import { plantCostResponses } from "./plantCostResponses.ts";
import type { Response } from "./response.ts";
import { serviceResponses } from "./serviceResponses.ts";
import { sharedBreakdownResponses } from "./sharedBreakdownResponses.ts";
import { stageResponses } from "./stageResponses.ts";
import { stunnedResponses } from "./stunnedResponses.ts";
import { supplyResponses } from "./supplyResponses.ts";
import { utilityResponses } from "./utilityResponses.ts";
import { vesselResponses } from "./vesselResponses.ts";

/** Every response of a plan. One list for names and values, so that the two cannot disagree. */
export function responseList(plan: Plan): Response[] {
  return [
    ...dayResponses(plan),
    ...headResponses(plan),
    ...limitResponses(plan),
    ...killStopResponses(plan),
    ...crewResponses(plan),
    ...crewWorkResponses(plan),
    ...labourResponses(plan),
    ...supplyResponses(plan),
    ...moneyResponses(plan),
    ...plantCostResponses(plan),
    ...utilityResponses(plan),
    ...serviceResponses(plan),
    ...massResponses(plan),
    ...chainResponses(plan),
    ...gateResponses(plan),
    ...stunnedResponses(plan),
    ...vesselResponses(plan),
    ...sharedBreakdownResponses(plan),
    ...chillerResponses(plan),
    ...divertedResponses(plan),
    ...sectionResponses(plan),
    ...stageResponses(plan),
    ...oeeResponses(plan),
    ...bindingResponses(plan),
  ];
}

/** Work in process by section of the line. */
function sectionResponses(plan: Plan): Response[] {
  return sectionsOf(plan).flatMap((section) => [row(section, "mean", "average"), row(section, "max", "most at once")]);
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
