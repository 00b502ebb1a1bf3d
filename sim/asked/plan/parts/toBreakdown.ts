import type { Breakdown } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileBreakdown = NonNullable<PlanFile["liveHandling"]>["unloading"]["breakdowns"][number];

/** A breakdown of a station, or of a crate step, which has no head in hand to take away. */
export function toBreakdown({
  uptime,
  repair,
  headInHand = "resume",
  replaced,
  ...breakdown
}: FileBreakdown & { headInHand?: Breakdown["headInHand"] }): Breakdown {
  return {
    ...{ ...breakdown, uptimeSeconds: uptime, repairSeconds: repair, headInHand },
    ...(replaced === null ? {} : { replaced: { afterSeconds: replaced.after, takesSeconds: replaced.takes } }),
  };
}
