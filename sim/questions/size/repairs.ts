import { meanOf, type Varying } from "../../maths/random/index.ts";

interface Stops {
  uptime: Varying;
  repair: Varying;
  crew: string | null;
}

/** Repair time for every second of work. */
export function repairShare(breakdowns: readonly Stops[] = []): number {
  return breakdowns.reduce((sum, { uptime, repair }) => sum + meanOf(repair) / meanOf(uptime), 0);
}

export const MAINTENANCE = "maintenance";

/** The part of it that takes somebody of the crew that repairs: all that no other crew is named for. */
export function maintenanceShare(breakdowns: readonly Stops[] = []): number {
  return repairShare(breakdowns.filter(({ crew }) => crew === null || crew === MAINTENANCE));
}
