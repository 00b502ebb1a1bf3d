import { DWELL, NO_LIMIT } from "../line/index.ts";
import { bookCrew, bookQueue, bookSection, bookState } from "./accounting.ts";
import {
  type CrewRecord,
  type DayRecord,
  type LimitRecord,
  type LoadRecord,
  type SectionRecord,
  STATES,
  type StageRecord,
} from "./dayRecord.ts";
import { BLOCKED, type DayState, WORKING } from "./dayState.ts";

/** Closes the books at the day's end and writes what is left of it. */
export function recordOf(day: DayState, status: DayRecord["status"]): DayRecord {
  const { line } = day;
  closeBooks(day);
  const onLine = day.headsOnLine;
  return {
    replication: day.options.replication,
    status,
    stuckAt: status === "finished" ? [] : line.stages.names.filter((_, stage) => day.occupancy[stage]! > 0),
    startClockSeconds: line.startClockSeconds,
    watchedFromSeconds: day.watchedFrom,
    finishSeconds: day.now,
    workFinishSeconds: day.workFinish,
    shiftEndSeconds: line.shiftEndSeconds,
    events: day.events,
    heads: {
      arrived: day.arrived,
      hung: day.hung,
      out: Object.fromEntries(line.destinationNames.map((name, index) => [name, day.out[index]!])),
      turnedAway: day.turnedAway,
      inLairage: line.supply.kind === "loads" ? day.arrived - day.hung : 0,
      onLine,
    },
    stages: line.stages.names.map((_, stage) => stageRecord(day, stage)),
    crews: line.crews.names.map((_, crew) => crewRecord(day, crew)),
    sections: line.sectionNames.map((_, section) => sectionRecord(day, section)),
    limits: line.limits.names.map((_, limit) => limitRecord(day, limit)),
    timeInSystem: day.timeInSystem.tally(),
    loads: loadRecords(day),
    lairage: line.supply.kind === "loads" ? queueRecord(day, line.supply.feeding) : null,
    traces: day.recorders?.traces(day.now) ?? null,
    perHead: day.recorders?.heads?.table() ?? null,
  };
}

function closeBooks(day: DayState): void {
  const { stages, positions, sectionNames, crews } = day.line;
  for (let position = 0; position < positions.count; position++) {
    const stage = positions.stage[position]!;
    if (stages.kind[stage] === DWELL) bookDwelling(day, stage, position);
    else bookState(day, position);
  }
  for (let stage = 0; stage < stages.count; stage++) bookQueue(day, stage);
  for (let section = 0; section < sectionNames.length; section++) bookSection(day, section);
  for (let crew = 0; crew < crews.count; crew++) bookCrew(day, crew);
}

/** Heads still dwelling at the end have their time booked up to now. */
function bookDwelling(day: DayState, stage: number, position: number): void {
  const row = position * STATES.length;
  let item = day.queue.first[stage]!;
  for (let rank = 0; rank < day.queue.length[stage]!; rank++) {
    const from = Math.max(day.pool.entered[item]!, day.watchedFrom);
    const turn = Math.min(day.now, Math.max(from, day.pool.ready[item]!));
    day.stateSeconds[row + WORKING]! += turn - from;
    day.stateSeconds[row + BLOCKED]! += day.now - turn;
    day.recorders?.states[stage]?.add(WORKING, from, turn);
    day.recorders?.states[stage]?.add(BLOCKED, turn, day.now);
    item = day.pool.next[item]!;
  }
}

function stageRecord(day: DayState, stage: number): StageRecord {
  const { stages, sectionNames } = day.line;
  const isDwell = stages.kind[stage] === DWELL;
  const isCrates = stage < stages.hanging;
  const positions = stages.positionFrom[stage + 1]! - stages.positionFrom[stage]!;
  const places = isDwell ? stages.places[stage]! : stages.bufferPlaces[stage]!;
  return {
    name: stages.names[stage]!,
    section: sectionNames[stages.section[stage]!] ?? "",
    kind: isCrates ? "crates" : isDwell ? "dwell" : "station",
    places: places === NO_LIMIT ? Infinity : places,
    positions: isDwell ? (places === NO_LIMIT ? Infinity : places) : positions,
    processed: day.processed[stage]!,
    queue: queueRecord(day, stage),
    stateSeconds: isDwell ? dwellSeconds(day, stage) : stationSeconds(day, stage),
    stops: day.stops[stage]!,
  };
}

function stationSeconds(day: DayState, stage: number): number[] {
  const { positionFrom } = day.line.stages;
  return STATES.map((_, state) => {
    let sum = 0;
    for (let position = positionFrom[stage]!; position < positionFrom[stage + 1]!; position++) {
      sum += day.stateSeconds[position * STATES.length + state]!;
    }
    return sum;
  });
}

/** Empty places of a dwell stage starve; a stage without limit has no empty places to speak of. */
function dwellSeconds(day: DayState, stage: number): number[] {
  const seconds = stationSeconds(day, stage);
  const places = day.line.stages.places[stage]!;
  if (places !== NO_LIMIT)
    seconds[STATES.indexOf("starved")] = places * (day.now - day.watchedFrom) - day.queueArea[stage]!;
  return seconds;
}

function queueRecord(day: DayState, stage: number): { mean: number; max: number } {
  return { mean: overTime(day, day.queueArea[stage]!), max: day.queueMax[stage]! };
}

function overTime(day: DayState, area: number): number {
  const seconds = day.now - day.watchedFrom;
  return seconds > 0 ? area / seconds : 0;
}

function crewRecord(day: DayState, crew: number): CrewRecord {
  const { names, peopleMax } = day.line.crews;
  return {
    name: names[crew]!,
    peopleMax: peopleMax[crew]!,
    busySeconds: day.busySeconds[crew]!,
    presentSeconds: day.presentSeconds[crew]!,
  };
}

function sectionRecord(day: DayState, section: number): SectionRecord {
  const wip = { mean: overTime(day, day.sectionArea[section]!), max: day.sectionMax[section]! };
  return { name: day.line.sectionNames[section]!, wip };
}

function limitRecord(day: DayState, limit: number): LimitRecord {
  const { names, minSeconds, maxSeconds } = day.line.limits;
  return {
    name: names[limit]!,
    minSeconds: minSeconds[limit]! === -Infinity ? null : minSeconds[limit]!,
    maxSeconds: maxSeconds[limit]! === Infinity ? null : maxSeconds[limit]!,
    tally: day.limitTallies[limit]!.tally(),
    beyond: day.beyond[limit]!,
  };
}

function loadRecords(day: DayState): LoadRecord[] {
  const { supply } = day.line;
  if (supply.kind !== "loads") return [];
  return supply.loads.map((load, index) => ({
    name: load.name,
    heads: load.crates * load.headsPerCrate,
    crates: load.crates,
    dueSeconds: load.seconds,
    arrivedSeconds: day.loadArrived[index]!,
    unloadedSeconds: day.loadUnloaded[index]!,
    emptiedSeconds: Number.isNaN(day.loadEmptied[index]!) ? null : day.loadEmptied[index]!,
  }));
}
