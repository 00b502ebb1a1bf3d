import type { Breakdown, Plan } from "../../../asked/plan/index.ts";
import { meanOf, type Varying } from "../../../maths/random/index.ts";
import { does } from "../../../text/kinds/index.ts";
import type { PathCell } from "../../engine/index.ts";
import { ownTime, type Step, stageOf, steps, workplace } from "../../line/index.ts";
import { whyLoadIsWithheld, whyNoneHolds, whyWorkIsWithheld } from "./whyWithheld.ts";

export const PARAMETERS = ["cycle time", "repair time", "uptime", "dwell", "travel time", "arrival"] as const;
export type SlopeParameter = (typeof PARAMETERS)[number];

/** How the end of work moves with the mean of one time, the shape of its distribution kept. */
export interface Slope {
  parameter: SlopeParameter;
  /** "" for arrivals. */
  stage: string;
  /** The failure; the load, "" for the interarrival time of a stream; else "". */
  detail: string;
  /** Seconds; 0 for a load, whose arrival moves as a whole. */
  meanSeconds: number;
  /** Why no figure is given: that of one run need not be that of the mean. Null where it is given, and then it is right. */
  withheld: string | null;
  /** Which seconds of the path grow with the mean: +1 or -1 for each second; 0 for the others. */
  weight(cell: PathCell): number;
}

/** One for every time of the plan that has a mean and can bind, in line order; those that are withheld as well. */
export function slopesOf(plan: Plan): Slope[] {
  const none = whyNoneHolds(plan);
  return [...steps(plan).flatMap((step) => ofStep(step, none)), ...ofShared(plan, none), ...arrivals(plan, none)];
}

/** Never given: a plan that has any gives no slope. */
function ofShared({ sharedBreakdowns }: Plan, withheld: string | null): Slope[] {
  return sharedBreakdowns.flatMap(({ name, uptimeSeconds, repairSeconds }) => {
    const sign = (by: 1 | -1) => (cell: PathCell) =>
      cell.cause === "shared breakdown" && cell.detail === name ? by : 0;
    const slope = { stage: "", detail: name, withheld };
    return [
      { ...slope, parameter: "repair time" as const, meanSeconds: meanOf(repairSeconds), weight: sign(1) },
      { ...slope, parameter: "uptime" as const, meanSeconds: meanOf(uptimeSeconds), weight: sign(-1) },
    ].filter(({ meanSeconds }) => meanSeconds > 0);
  });
}

/** Those whose figure is right, sign included. */
export function slopesThatHold(plan: Plan): Slope[] {
  return slopesOf(plan).filter(({ withheld }) => withheld === null);
}

function ofStep(step: Step, none: string | null): Slope[] {
  const { name } = step;
  const ofWork = whyWorkIsWithheld(step);
  const slope = (parameter: SlopeParameter, meanSeconds: number, weight: Slope["weight"], detail = ""): Slope[] => {
    const withheld = none ?? (parameter === "cycle time" || parameter === "uptime" ? ofWork : null);
    return meanSeconds > 0 ? [{ parameter, stage: name, detail, meanSeconds, withheld, weight }] : [];
  };
  const own = here(step);
  const { breakdowns } = workplace(step);
  return [
    ...slope(does(step, "hold heads") ? "dwell" : "cycle time", meanOr0(ownTime(step)), own),
    ...breakdowns.flatMap((each) => ofBreakdown(each, name, slope)),
    ...slope("travel time", meanOr0(stageOf(step)?.travelSeconds ?? null), ({ cause, stage }) =>
      cause === "travel" && stage === name ? 1 : 0,
    ),
  ];
}

/**
 * A longer cycle is a longer running time, and so more failures: on average each second of work brings repair / uptime
 * seconds of repair with it. So the repairs on the path go with the work: near the truth, but 0.3 to 3 % too steep where
 * places are few, so that slope is a hint for a search and not given to readers.
 */
function here({ name }: Step): Slope["weight"] {
  const grows = ["work", "place", "people", "absent", "few people", "hold", "dwell", "repair", "repairer"];
  return ({ cause, stage }) => (stage === name && grows.includes(cause) ? 1 : 0);
}

function ofBreakdown(
  { name, uptimeSeconds, repairSeconds }: Breakdown,
  of: string,
  slope: (parameter: SlopeParameter, mean: number, weight: Slope["weight"], detail: string) => Slope[],
): Slope[] {
  const isIt = ({ cause, stage, detail }: PathCell) => cause === "repair" && stage === of && detail === name;
  return [
    ...slope("repair time", meanOf(repairSeconds), (cell) => (isIt(cell) ? 1 : 0), name),
    ...slope("uptime", meanOf(uptimeSeconds), (cell) => (isIt(cell) ? -1 : 0), name),
  ];
}

/** 0 where no time is drawn: a chain's pace, for one, is a speed and not a mean. */
function meanOr0(time: Varying | null): number {
  return time === null ? 0 : meanOf(time);
}

function arrivals(plan: Plan, none: string | null): Slope[] {
  const { supply } = plan;
  const withheld = none ?? whyLoadIsWithheld(plan);
  const slope = (detail: string, meanSeconds: number, weight: Slope["weight"]): Slope => {
    return { parameter: "arrival", stage: "", detail, meanSeconds, withheld, weight };
  };
  if (supply.kind === "loads") {
    return supply.loads.map(({ name }) => {
      return slope(name, 0, ({ cause, detail }) => (cause === "load" && detail === name ? 1 : 0));
    });
  }
  if (supply.kind !== "stream") return [];
  return [slope("", meanOf(supply.interarrival), ({ cause }) => (cause === "arrivals" ? 1 : 0))];
}
