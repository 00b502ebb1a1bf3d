import type { Varying } from "../random/index.ts";
import type { Break, Closing, Crew, LiveHandling, Load, Plan, Stage, Station, Supply } from "./plan.ts";
import { expandedLoadNames } from "./rules/expandedLoadNames.ts";
import type { PlanFile } from "./schema/planFile.ts";

type FileDay = PlanFile["day"];
type FileStage = PlanFile["line"][number];
type FileHandling = NonNullable<PlanFile["liveHandling"]>;
type FileLoad = NonNullable<PlanFile["supply"]["loads"]>[number];

/** The plan that a sound file describes: times counted from the start of the day, defaults in place, repeats written out. */
export function toPlan(file: PlanFile): Plan {
  const start = file.day.start ?? (file.day.shifts[0] as { from: number }).from;
  return {
    name: file.name,
    notes: file.notes,
    sources: file.sources,
    day: {
      startClockSeconds: start,
      shifts: file.day.shifts.map(({ name, from, to }) => ({ name, fromSeconds: from - start, toSeconds: to - start })),
      breaks: file.day.breaks.map((pause) => toBreak(pause, file.crews, start)),
      closing: toClosing(file.day.closing, start),
      ceilingSeconds: file.day.ceiling,
    },
    supply: toSupply(file.supply, start),
    liveHandling: file.liveHandling === null ? null : toLiveHandling(file.liveHandling),
    crews: file.crews.map((crew) => toCrew(crew, file.day.shifts)),
    line: file.line.map(toStage),
    limits: file.limits.map(({ min, max, ...limit }) => ({ ...limit, minSeconds: min, maxSeconds: max })),
    targetHeadsPerSecond: file.target,
  };
}

function toBreak(pause: FileDay["breaks"][number], crews: PlanFile["crews"], start: number): Break {
  return {
    name: pause.name,
    atSeconds: pause.at - start,
    lengthSeconds: pause.length,
    crews: pause.crews ?? crews.map(({ name }) => name),
    laterSeconds: pause.later,
    stages: pause.stages ?? [],
  };
}

function toClosing(closing: FileDay["closing"], start: number): Closing {
  if (closing.stopHangingAt === undefined) return { rule: "finish" };
  return { rule: "stop hanging", atSeconds: closing.stopHangingAt - start };
}

function toSupply({ loads, stream, saturated }: PlanFile["supply"], start: number): Supply {
  if (loads !== undefined) return { kind: "loads", loads: loads.flatMap((load) => toLoads(load, start)) };
  if (stream !== undefined) return { kind: "stream", ...stream };
  return { kind: "saturated", heads: (saturated as { heads: number }).heads };
}

function toLoads(load: FileLoad, start: number): Load[] {
  return expandedLoadNames(load).map((name, index) => ({
    name,
    atSeconds: load.at - start + index * (load.repeat?.every ?? 0),
    delay: load.delay,
    crates: load.crates,
    headsPerCrate: load.headsPerCrate,
    deadOnArrivalShare: load.deadOnArrival,
    liveWeightKg: load.liveWeight,
  }));
}

function toLiveHandling(handling: FileHandling): LiveHandling {
  return {
    unloading: toCrateStep(handling.unloading),
    lairageCrates: handling.lairageCrates ?? Number.POSITIVE_INFINITY,
    feeding: toCrateStep(handling.feeding),
    cratesAtHanging: handling.cratesAtHanging,
  };
}

function toCrateStep({ perCrate, breakdowns, ...step }: FileHandling["unloading"]): LiveHandling["unloading"] {
  return { ...step, secondsPerCrate: perCrate, breakdowns: breakdowns.map(toBreakdown) };
}

function toBreakdown({ uptime, repair, ...breakdown }: FileHandling["unloading"]["breakdowns"][number]) {
  return { ...breakdown, uptimeSeconds: uptime, repairSeconds: repair };
}

function toCrew({ name, people, rule }: PlanFile["crews"][number], shifts: FileDay["shifts"]): Crew {
  const byShift = shifts.map((shift) => (typeof people === "number" ? people : (people[shift.name] ?? 0)));
  return { name, people: byShift, rule };
}

function toStage(stage: FileStage): Stage {
  const common = { name: stage.name, section: stage.section, travelSeconds: stage.travel, removals: stage.removals };
  if (stage.kind === "station") return { ...common, ...toStation(stage) };
  return { ...common, kind: "dwell", places: stage.places ?? Number.POSITIVE_INFINITY, dwellSeconds: stage.dwell };
}

function toStation(
  stage: FileStage & { kind: "station" },
): Omit<Station, "name" | "section" | "travelSeconds" | "removals"> {
  return {
    kind: "station",
    work: stage.work ?? (stage.crew === null ? "machine" : "manual"),
    buffer: stage.buffer ?? Number.POSITIVE_INFINITY,
    positions: stage.positions,
    cycleSeconds: stage.cycle ?? cycleOfRate(stage.rate as number),
    crew: stage.crew,
    peoplePerPosition: stage.peoplePerPosition,
    breakdowns: stage.breakdowns.map(toBreakdown),
  };
}

function cycleOfRate(headsPerSecond: number): Varying {
  return { family: "constant", value: 1 / headsPerSecond };
}
