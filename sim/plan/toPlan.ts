import { toCrew } from "./parts/toCrew.ts";
import { dayStart, toDay } from "./parts/toDay.ts";
import { toLiveHandling } from "./parts/toLiveHandling.ts";
import { toMoney } from "./parts/toMoney.ts";
import { toStage } from "./parts/toStage.ts";
import { toStunned } from "./parts/toStunned.ts";
import { toSupply } from "./parts/toSupply.ts";
import { toVessel } from "./parts/toVessel.ts";
import type { Plan } from "./plan.ts";
import type { PlanFile } from "./schema/planFile.ts";

/**
 * The plan that a sound file describes: times counted from the start of the day, defaults in place, repeats written out,
 * stages that are left out gone.
 */
export function toPlan(file: PlanFile): Plan {
  return {
    name: file.name,
    notes: file.notes,
    sources: file.sources,
    day: toDay(file.day, file.crews),
    supply: toSupply(file.supply, dayStart(file.day)),
    liveHandling: file.liveHandling && toLiveHandling(file.liveHandling),
    crews: file.crews.map((crew) => toCrew(crew, file.day.shifts)),
    sharedBreakdowns: file.sharedBreakdowns.map(({ uptime, repair, ...rest }) => ({
      ...rest,
      uptimeSeconds: uptime,
      repairSeconds: repair,
    })),
    line: file.line.filter(({ leftOut }) => !leftOut).map((stage) => toStage(stage, dayStart(file.day))),
    limits: file.limits.map(({ min, max, ...limit }) => ({ ...limit, minSeconds: min, maxSeconds: max })),
    gates: file.gates,
    stunned: file.stunned && toStunned(file.stunned),
    vessels: file.vessels.map(toVessel),
    money: file.money && toMoney(file.money),
    dressing: file.dressing,
    targetHeadsPerSecond: file.target,
  };
}
