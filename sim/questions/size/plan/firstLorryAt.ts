import { writeClock } from "../../../text/units/index.ts";
import type { Demand } from "../demand.ts";

/** When the first lorry is due and the simulated clock starts: before the first shift, but not before midnight. */
export function firstLorryAt({ day, crates }: Demand): string {
  return writeClock(Math.max(0, day.shifts[0]!.from - crates.lead));
}
