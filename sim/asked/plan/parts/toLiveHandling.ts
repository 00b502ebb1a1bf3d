import type { Varying } from "../../../maths/varying/index.ts";
import type { Breakdown, CrateStep, LiveHandling } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { CRATE_STEP_NAMES, FILTER_CHANGE } from "./crateStepNames.ts";
import { toBreakdown } from "./toBreakdown.ts";
import { toUtilities } from "./toUtilities.ts";

type FileHandling = NonNullable<PlanFile["liveHandling"]>;
type FileStep = FileHandling["unloading"];
type FileWashing = NonNullable<FileHandling["washing"]>;

export function toLiveHandling(file: FileHandling): LiveHandling {
  const { way, washing, restacking, palletsOut, fleet } = file;
  const names = CRATE_STEP_NAMES[way];
  const lairage = file.lairageCrates ?? Number.POSITIVE_INFINITY;
  return {
    way,
    toHanging: [
      toStep(file.unloading, names.unloading, Number.POSITIVE_INFINITY),
      toStep(file.feeding, names.feeding, lairage),
    ],
    back: [
      ...(washing === undefined ? [] : [toWashing(washing, names.washing)]),
      ...(restacking === undefined ? [] : [toBackStep(restacking, names.restacking)]),
      ...(palletsOut === undefined ? [] : [toBackStep(palletsOut, names.palletsOut)]),
    ],
    cratesAtHanging: file.cratesAtHanging,
    fleet: fleet && { crates: fleet.crates, awaySeconds: fleet.away },
  };
}

function toStep(step: FileStep, name: string, places: number): CrateStep {
  return {
    name,
    places,
    cratesPerCycle: step.cratesPerCycle,
    positions: step.positions,
    secondsPerCycle: (step.perCrate ?? step.perCycle) as Varying,
    utilities: toUtilities({
      water: { perHead: step.waterPerCrate, perHour: step.waterPerHour },
      energyPerHead: 0,
      power: step.power,
    }),
    waterReusedShare: 0,
    crews: step.crew,
    peoplePerPosition: step.peoplePerPosition,
    breakdowns: step.breakdowns.map(toBreakdown),
  };
}

function toBackStep(step: FileStep & { places: number | null }, name: string): CrateStep {
  return toStep(step, name, step.places ?? Number.POSITIVE_INFINITY);
}

function toWashing(washing: FileWashing, name: string): CrateStep {
  const step = toBackStep(washing, name);
  const breakdowns = [...step.breakdowns, ...filterChange(washing.filterChange)];
  return { ...step, breakdowns, waterReusedShare: washing.waterReused };
}

/** The washer stands after so much running, every time, for as long as the change takes. */
function filterChange(change: FileWashing["filterChange"]): Breakdown[] {
  if (change === null) return [];
  return [
    {
      name: FILTER_CHANGE,
      clock: "running",
      scope: "station",
      uptimeSeconds: { family: "constant", value: change.afterRunning },
      repairSeconds: { family: "constant", value: change.takes },
      crew: change.crew,
      headInHand: "resume",
    },
  ];
}
