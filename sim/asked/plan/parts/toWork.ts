import type { Varying } from "../../../maths/varying/index.ts";
import type { ChainStation, Station } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { toBreakdown } from "./toBreakdown.ts";
import { type Hours, toPace, withAllowance } from "./toPace.ts";

type FileStation = PlanFile["line"][number] & { kind: "station" };
type FileWork = Pick<
  FileStation,
  | "positions"
  | "cycle"
  | "rate"
  | "pace"
  | "weightFactor"
  | "changeover"
  | "learning"
  | "allowance"
  | "crew"
  | "peoplePerPosition"
  | "breakdowns"
>;
type Work = Pick<
  Station & ChainStation,
  | "positions"
  | "cycleSeconds"
  | "pace"
  | "weightFactor"
  | "changeoverSeconds"
  | "learning"
  | "crews"
  | "peoplePerPosition"
  | "breakdowns"
>;

/** What stations have in common, on a chain or not. */
export function toWork(file: FileWork, hours: Hours): Work {
  const { weightFactor } = file;
  return {
    positions: file.positions,
    cycleSeconds: file.cycle ?? cycleOfRate(file.rate as number),
    pace: withAllowance(toPace(file.pace, hours.start), file.allowance, hours.shifts),
    weightFactor: weightFactor && { perKg: weightFactor.perKg, atKg: weightFactor.at },
    ...(file.changeover === null ? {} : { changeoverSeconds: file.changeover }),
    ...(file.learning === null ? {} : { learning: file.learning }),
    crews: file.crew,
    peoplePerPosition: file.peoplePerPosition,
    breakdowns: file.breakdowns.map(toBreakdown),
  };
}

function cycleOfRate(headsPerSecond: number): Varying {
  return { family: "constant", value: 1 / headsPerSecond };
}
