import type { Plan } from "../plan/index.ts";
import { crewResponses } from "./crewResponses.ts";
import { dayResponses } from "./dayResponses.ts";
import { headResponses } from "./headResponses.ts";
import { limitResponses } from "./limitResponses.ts";
import type { Response } from "./response.ts";
import { sectionResponses } from "./sectionResponses.ts";
import { stageResponses } from "./stageResponses.ts";
import { supplyResponses } from "./supplyResponses.ts";

/** Every response of a plan. One list for names and values, so that the two cannot disagree. */
export function responseList(plan: Plan): Response[] {
  return [
    ...dayResponses(plan),
    ...headResponses(plan),
    ...limitResponses(plan),
    ...crewResponses(plan),
    ...supplyResponses(plan),
    ...sectionResponses(plan),
    ...stageResponses(plan),
  ];
}
