import { type Breakdown, type Plan, stationsIn } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { headFlow } from "./headFlow.ts";
import { liveWeight } from "./liveWeight.ts";
import { meanCycleSeconds } from "./workOf.ts";

/** A place where work is done, with what one head hung brings there. */
export interface WorkItem {
  name: string;
  kind: "positions" | "crates";
  /** Position-seconds per head hung, repairs left out. */
  secondsPerHead: number;
  positions: number;
  crews: readonly string[];
  people: number;
  breakdowns: readonly Breakdown[];
}

/** Every station, station on a chain and crate step of a plan. */
export function workList(plan: Plan): WorkItem[] {
  return [...crateWork(plan), ...lineWork(plan)];
}

function crateWork({ liveHandling, supply }: Plan): WorkItem[] {
  if (liveHandling === null || supply.kind !== "loads") return [];
  const crates = supply.loads.reduce((sum, load) => sum + load.crates * load.comesShare, 0);
  const heads = supply.loads.reduce((sum, load) => sum + load.crates * load.headsPerCrate * load.comesShare, 0);
  return [...liveHandling.toHanging, ...liveHandling.back].map((step) => ({
    name: step.name,
    kind: "crates",
    secondsPerHead: (meanOf(step.secondsPerCycle) / step.cratesPerCycle) * (crates / heads),
    positions: step.positions,
    crews: step.crews,
    people: step.peoplePerPosition,
    breakdowns: step.breakdowns,
  }));
}

function lineWork(plan: Plan): WorkItem[] {
  const { visits } = headFlow(plan);
  const weightKg = liveWeight(plan).meanKg;
  return plan.line.flatMap((stage) => {
    return stationsIn(stage).map((station): WorkItem => {
      const { name, positions, crews, peoplePerPosition: people, breakdowns } = station;
      const secondsPerHead = meanCycleSeconds(station, weightKg) * (visits.get(stage.name) ?? 0);
      return { name, kind: "positions", secondsPerHead, positions, crews, people, breakdowns };
    });
  });
}
