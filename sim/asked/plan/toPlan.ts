import { does } from "../../text/kinds/index.ts";
import { peopleByShift, withCover } from "./parts/cover.ts";
import { withRotations } from "./parts/rotation.ts";
import { tidy } from "./parts/tidy.ts";
import { dayStart, toDay } from "./parts/toDay.ts";
import { toLiveHandling } from "./parts/toLiveHandling.ts";
import { toMoney } from "./parts/toMoney.ts";
import { toPlantUtilities } from "./parts/toPlantUtilities.ts";
import { toStage } from "./parts/toStage.ts";
import type { AtStart, Crew, Load, Plan, Presentation, Stage, Stunned, Supply, Vessel } from "./plan.ts";
import { leftBefore } from "./presentation/massAlong.ts";
import { expandedLoadNames } from "./rules/expandedLoadNames.ts";
import type { PlanFile } from "./schema/planFile.ts";
import type { Site } from "./site.ts";

type FileSupply = PlanFile["supply"];
type FileLoad = NonNullable<FileSupply["loads"]>[number];

/**
 * The plan that a sound file describes: times counted from the start of the day, defaults in place, repeats written out,
 * stages that are left out gone.
 */
export function toPlan(file: PlanFile): Plan {
  const presentation = file.presentation && toPresentation(file.presentation);
  const { bodyParts } = file;
  const start = dayStart(file.day);
  const hours = { start, shifts: file.day.shifts.map(({ from }) => from - start) };
  const line = withCarcassShares(
    file.line.filter(({ leftOut }) => !leftOut).map((stage) => toStage(stage, hours, { presentation, bodyParts })),
  );
  const plan: Plan = {
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
    line,
    limits: file.limits.map(({ min, max, ...limit }) => ({ ...limit, minSeconds: min, maxSeconds: max })),
    gates: file.gates,
    stunned: file.stunned && toStunned(file.stunned),
    vessels: file.vessels.map(toVessel),
    utilities: file.utilities && toPlantUtilities(file.utilities, file.day.cleaning),
    ...(file.site === null ? {} : { site: toSite(file.site) }),
    money: file.money && toMoney(file.money),
    dressing: file.dressing,
    presentation,
    bodyParts,
    targetHeadsPerSecond: file.target,
    ...(file.atStart === null ? {} : { atStart: toAtStart(file.atStart, line) }),
    ...(file.uncertain.length === 0 ? {} : { uncertain: file.uncertain }),
  };
  return withRotations(withCover(plan, file), file);
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

/** Who is there longest comes first. */
function toAtStart({ crates, carcasses }: NonNullable<PlanFile["atStart"]>, line: readonly Stage[]): AtStart {
  const longestFirst = (a: { forSeconds: number }, b: { forSeconds: number }) => b.forSeconds - a.forSeconds;
  return {
    crates: crates
      .map(({ for: forSeconds, liveWeight: liveWeightKg, ...rest }) => ({ ...rest, forSeconds, liveWeightKg }))
      .sort(longestFirst),
    carcasses: carcasses
      .map(({ for: forSeconds, liveWeight: liveWeightKg, ...rest }) => {
        const leftShare = tidy(leftBefore(line, rest.in));
        return { ...rest, forSeconds, liveWeightKg, leftShare };
      })
      .sort(longestFirst),
  };
}

/** Where heads come from, repeated loads written out. */
function toSupply({ loads, stream, saturated }: FileSupply, start: number): Supply {
  if (loads !== undefined) return { kind: "loads", loads: loads.flatMap((load) => toLoads(load, start)) };
  if (stream !== undefined) {
    const { liveWeight, ...rest } = stream;
    return { kind: "stream", ...rest, liveWeightKg: liveWeight };
  }
  const { heads, liveWeight } = saturated as NonNullable<typeof saturated>;
  return { kind: "saturated", heads, liveWeightKg: liveWeight };
}

function toLoads(load: FileLoad, start: number): Load[] {
  return expandedLoadNames(load).map((name, index) => ({
    name,
    ...(load.lot === null ? {} : { lot: load.lot }),
    ...(load.withdrawn === null ? {} : { withdrawn: load.withdrawn }),
    ...(load.held === null ? {} : { held: { in: load.held.in, untilSeconds: load.held.until - start } }),
    atSeconds: load.at - start + index * (load.repeat?.every ?? 0),
    delay: load.delay,
    comesShare: load.comes,
    crates: load.crates,
    headsPerCrate: load.headsPerCrate,
    deadOnArrivalShare: load.deadOnArrival,
    liveWeightKg: load.liveWeight,
  }));
}

/** A pool of people, counted by shift. */
function toCrew(file: PlanFile["crews"][number], shifts: PlanFile["day"]["shifts"]): Crew {
  return {
    name: file.name,
    people: peopleByShift(file, shifts).map((there) => Math.max(0, there - file.ill)),
    rule: file.rule,
    walkSeconds: file.walking,
    absentShare: file.absent,
    ...(file.leaves === "when its own work is done" ? { leavesOnItsOwn: true as const } : {}),
    payPerSecond: file.pay?.amountPerSecond ?? null,
  };
}

function toStunned({ from, to, hold, late }: NonNullable<PlanFile["stunned"]>): Stunned {
  return {
    from,
    to,
    hold,
    late: late && { afterSeconds: late.after, help: late.help, takesSeconds: late.takes, crew: late.crew },
  };
}

function toVessel(file: PlanFile["vessels"][number]): Vessel {
  return {
    name: file.name,
    capacityKg: file.capacity,
    emptyAtKg: file.emptyAt ?? file.capacity,
    emptyingSeconds: file.emptying,
    crew: file.crew,
    whenFull: file.whenFull,
  };
}

function toSite({ roomOf, categoryOf, ...groups }: NonNullable<PlanFile["site"]>): Site {
  const given = Object.entries(groups as Record<string, Record<string, number | undefined>>).flatMap(
    ([group, figures]) =>
      Object.entries(figures).flatMap(([key, value]) => (value === undefined ? [] : [[`${group}.${key}`, value]])),
  );
  return {
    given: Object.fromEntries(given),
    rooms: roomOf as Site["rooms"],
    categories: categoryOf as Site["categories"],
  };
}

function toPresentation(file: NonNullable<PlanFile["presentation"]>): Presentation {
  const { chillLoss, journeyLoss, ...rest } = file;
  return { ...rest, chillLossShare: chillLoss, journeyLossShare: journeyLoss };
}
