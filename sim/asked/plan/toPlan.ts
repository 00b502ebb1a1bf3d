import { does } from "../../text/kinds/index.ts";
import { tidy } from "./parts/tidy.ts";
import { toCrew } from "./parts/toCrew.ts";
import { dayStart, toDay } from "./parts/toDay.ts";
import { toLiveHandling } from "./parts/toLiveHandling.ts";
import { toMoney } from "./parts/toMoney.ts";
import { toPlantUtilities } from "./parts/toPlantUtilities.ts";
import { toPresentation } from "./parts/toPresentation.ts";
import { toStage } from "./parts/toStage.ts";
import { toStunned } from "./parts/toStunned.ts";
import { toSupply } from "./parts/toSupply.ts";
import { toVessel } from "./parts/toVessel.ts";
import type { Plan, Stage } from "./plan.ts";
import { leftBefore } from "./presentation/massAlong.ts";
import type { PlanFile } from "./schema/planFile.ts";

/**
 * The plan that a sound file describes: times counted from the start of the day, defaults in place, repeats written out,
 * stages that are left out gone.
 */
export function toPlan(file: PlanFile): Plan {
  const presentation = file.presentation && toPresentation(file.presentation);
  const { bodyParts } = file;
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
    line: withCarcassShares(
      file.line
        .filter(({ leftOut }) => !leftOut)
        .map((stage) => toStage(stage, dayStart(file.day), { presentation, bodyParts })),
    ),
    limits: file.limits.map(({ min, max, ...limit }) => ({ ...limit, minSeconds: min, maxSeconds: max })),
    gates: file.gates,
    stunned: file.stunned && toStunned(file.stunned),
    vessels: file.vessels.map(toVessel),
    utilities: file.utilities && toPlantUtilities(file.utilities),
    money: file.money && toMoney(file.money),
    dressing: file.dressing,
    presentation,
    bodyParts,
    targetHeadsPerSecond: file.target,
  };
}

/** A chiller that is not told how heavy carcasses are takes what the line leaves of them. */
function withCarcassShares(line: Stage[]): Stage[] {
  return line.map((stage) => {
    if (!does(stage, "hold heads") || stage.dwell.kind !== "chilling") return stage;
    const { chilling } = stage.dwell;
    if (!Number.isNaN(chilling.carcassShare)) return stage;
    const carcassShare = tidy(leftBefore(line, stage.name));
    return { ...stage, dwell: { kind: "chilling", chilling: { ...chilling, carcassShare } } };
  });
}
