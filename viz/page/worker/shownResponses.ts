import type { Plan } from "../../../sim/asked/plan/index.ts";
import { responsesOf, usualResponses } from "../../../sim/day/observations/index.ts";

/** As many as a study may name. */
const MOST = 100;

/** First on the page, in this order, where the plan has them. */
const FIRST = ["headsPerHour", "finish", "carcasses", "overtime", "costPerHead", "timeInSystem.mean"];

/** Keys of the responses that the page shows: the day, the limits, then how every station spent its time and what waited. */
export function shownResponses(plan: Plan): string[] {
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const usual = usualResponses(plan);
  const limits = plan.limits.map(({ name }) => `beyond.${name}`);
  const stations = plan.line.flatMap((stage) => {
    if (stage.kind === "station") return stationKeys(stage.name);
    return stage.kind === "chain" ? stage.stations.flatMap(({ name }) => [`working.${name}`, `blocked.${name}`]) : [];
  });
  const wanted = [...FIRST, ...limits, ...usual, ...stations];
  return [...new Set(wanted)].filter((key) => known.has(key)).slice(0, MOST);
}

function stationKeys(name: string): string[] {
  return [`queue.${name}.mean`, `working.${name}`, `blocked.${name}`, `starved.${name}`];
}
