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

/** Responses that tell of one thing. */
interface Group {
  name: string;
  parts: readonly ((plan: Plan) => Response[])[];
  /** What its keys end in are posts of an account, even where a station has the same name. */
  ofPosts?: true;
}

/** In the order of a report. */
const GROUPS: readonly Group[] = [
  { name: "The day", parts: [dayResponses] },
  { name: "Heads", parts: [headResponses] },
  { name: "Time limits and stunned animals", parts: [limitResponses, killStopResponses] },
  { name: "People", parts: [crewResponses, crewWorkResponses, labourResponses] },
  { name: "Supply", parts: [supplyResponses] },
  { name: "Money", parts: [moneyResponses, plantCostResponses], ofPosts: true },
  { name: "Water, energy and other utilities", parts: [utilityResponses, serviceResponses] },
  { name: "Mass and by-products", parts: [massResponses], ofPosts: true },
  { name: "Chains, gates and holds", parts: [chainResponses, gateResponses, stunnedResponses] },
  { name: "Vessels and stops of several stations", parts: [vesselResponses, sharedBreakdownResponses] },
  { name: "Chiller", parts: [chillerResponses] },
  { name: "Heads sent elsewhere, work in process", parts: [divertedResponses, sectionResponses] },
  { name: "Stations", parts: [stageResponses, oeeResponses] },
  { name: "Bottleneck", parts: [bindingResponses] },
];

/** Every response of a plan, by what it tells of; groups without one are left out. */
export function responsesByGroup(plan: Plan): { name: string; ofPosts: boolean; responses: Response[] }[] {
  const all = GROUPS.map(({ name, parts, ofPosts = false }) => ({
    name,
    ofPosts,
    responses: parts.flatMap((part) => part(plan)),
  }));
  return all.filter(({ responses }) => responses.length > 0);
}

/** Every response of a plan. One list for names and values, so that the two cannot disagree. */
export function responseList(plan: Plan): Response[] {
  return responsesByGroup(plan).flatMap(({ responses }) => responses);
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
