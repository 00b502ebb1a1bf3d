import { CHAIN, CHAIN_STATION, DWELL, NO_LIMIT } from "../line/index.ts";
import { bookDwell, bookQueue, bookSection, bookState, closeCrew } from "./accounting.ts";
import { bindingRecord } from "./binding/bindingRecord.ts";
import { bookStand } from "./chainRing.ts";
import {
  type ChainRecord,
  type CrewRecord,
  type DayRecord,
  type GateRecord,
  type LimitRecord,
  type LoadRecord,
  type MassRecord,
  type SectionRecord,
  STATES,
  type StageRecord,
  type VesselRecord,
} from "./dayRecord.ts";
import { type DayState, STANDS, STANDS_DOWN, STANDS_PAUSE, STANDS_UNFINISHED, STANDS_UNLOADING } from "./dayState.ts";
import { isHeadStage } from "./flow.ts";
import { bookGate } from "./gates.ts";
import { notHung } from "./leaveLine.ts";
import { visitPresent } from "./present.ts";

/** Closes the books at the day's end and writes what is left of it. */
export function recordOf(day: DayState, status: DayRecord["status"]): DayRecord {
  const { line } = day;
  closeBooks(day);
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
      inLairage: line.supply.kind === "loads" ? day.arrived - day.hung : notHung(day),
      onLine: day.headsOnLine - notHung(day),
    },
    stages: line.stages.names.map((_, stage) => stageRecord(day, stage)),
    crews: line.crews.names.map((_, crew) => crewRecord(day, crew)),
    sections: line.sectionNames.map((_, section) => sectionRecord(day, section)),
    limits: line.limits.names.map((_, limit) => limitRecord(day, limit)),
    timeInSystem: day.timeInSystem.tally(),
    loads: loadRecords(day),
    chains: line.chains.count === 0 ? [] : Array.from(line.chains.stage, (_, chain) => chainRecord(day, chain)),
    gates: line.gates.names.map((_, gate) => gateRecord(day, gate)),
    vessels: line.vessels.names.map((_, vessel) => vesselRecord(day, vessel)),
    masses: massRecord(day),
    lairage: line.supply.kind === "loads" ? queueRecord(day, line.supply.feeding) : null,
    traces: day.recorders?.traces(day.now) ?? null,
    perHead: day.recorders?.headTable() ?? null,
    binding: bindingRecord(day, status),
  };
}

function closeBooks(day: DayState): void {
  const { stages, positions, sectionNames, crews } = day.line;
  for (let position = 0; position < positions.count; position++) {
    const stage = positions.stage[position]!;
    if (stages.kind[stage] === DWELL) bookDwelling(day, stage);
    else bookState(day, position);
  }
  for (let stage = 0; stage < stages.count; stage++) bookQueue(day, stage);
  for (let section = 0; section < sectionNames.length; section++) bookSection(day, section);
  for (let crew = 0; crew < crews.count; crew++) closeCrew(day, crew);
}

/** Heads still dwelling at the end have their time booked up to now. */
function bookDwelling(day: DayState, stage: number): void {
  let item = day.queue.first[stage]!;
  for (let rank = 0; rank < day.queue.length[stage]!; rank++) {
    bookDwell(day, stage, item);
    item = day.pool.next[item]!;
  }
}

function stageRecord(day: DayState, stage: number): StageRecord {
  const { stages, sectionNames } = day.line;
  const isDwell = stages.kind[stage] === DWELL;
  const positions = stages.positionFrom[stage + 1]! - stages.positionFrom[stage]!;
  const kind = kindOf(day, stage);
  const places = isDwell || kind === "chain" ? stages.places[stage]! : stages.bufferPlaces[stage]!;
  return {
    name: stages.names[stage]!,
    section: sectionNames[stages.section[stage]!] ?? "",
    kind,
    places: places === NO_LIMIT ? Infinity : places,
    positions: isDwell ? (places === NO_LIMIT ? Infinity : places) : positions,
    processed: day.processed[stage]!,
    queue: queueRecord(day, stage),
    stateSeconds: isDwell ? dwellSeconds(day, stage) : stationSeconds(day, stage),
    stops: day.stops[stage]!,
    unworked: day.unworked[stage]!,
    unfinished: day.unfinished[stage]!,
    diverted: day.diverted[stage]!,
    heldSeconds: day.heldSeconds[stage]! + (Number.isNaN(day.heldSince[stage]!) ? 0 : day.now - day.heldSince[stage]!),
    heatJoules: day.heatJoules[stage]!,
  };
}

function kindOf(day: DayState, stage: number): StageRecord["kind"] {
  const { kind, hanging } = day.stages;
  if (stage < hanging) return "crates";
  if (kind[stage] === DWELL) return "dwell";
  if (kind[stage] === CHAIN) return "chain";
  return kind[stage] === CHAIN_STATION ? "chain station" : "station";
}

function chainRecord(day: DayState, chain: number): ChainRecord {
  const { chains, stages } = day.line;
  bookStand(day, chain);
  const stood = (reason: number) => day.standSeconds[chain * STANDS + reason]!;
  return {
    name: stages.names[chains.stage[chain]!]!,
    shackles: day.passed[chain]!,
    gaps: day.gaps[chain]!,
    missingShackles: day.missing[chain]!,
    standSeconds: {
      down: stood(STANDS_DOWN),
      unfinished: stood(STANDS_UNFINISHED),
      unloading: stood(STANDS_UNLOADING),
      pause: stood(STANDS_PAUSE),
    },
  };
}

function gateRecord(day: DayState, gate: number): GateRecord {
  const { names, atMost } = day.gates;
  bookGate(day, gate);
  return {
    name: names[gate]!,
    atMost: atMost[gate] === NO_LIMIT ? Infinity : atMost[gate]!,
    mean: overTime(day, day.gateArea[gate]!),
    max: day.gateMax[gate]!,
  };
}

function vesselRecord(day: DayState, vessel: number): VesselRecord {
  const since = day.vesselFullSince[vessel]!;
  return {
    name: day.vessels.names[vessel]!,
    emptied: day.vesselEmptied[vessel]!,
    maxKg: day.vesselMax[vessel]!,
    spilledKg: day.vesselSpilled[vessel]!,
    fullSeconds: day.vesselFullSeconds[vessel]! + (Number.isNaN(since) ? 0 : day.now - since),
  };
}

/** What is still on the line is weighed head by head, not found by difference: the balance is a check. */
function massRecord(day: DayState): MassRecord {
  const { line } = day;
  let onLineKg = 0;
  visitPresent(day, (item, stage) => {
    if (isHeadStage(day, stage)) onLineKg += day.pool.mass[item]!;
  });
  return {
    liveKg: day.liveKg,
    carcassLiveKg: day.carcassLiveKg,
    byProductsKg: Object.fromEntries(line.productNames.map((name, product) => [name, day.productKg[product]!])),
    outKg: Object.fromEntries(line.destinationNames.map((name, index) => [name, day.outKg[index]!])),
    onLineKg,
  };
}

function stationSeconds(day: DayState, stage: number): number[] {
  const { positionFrom } = day.stages;
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
  const places = day.stages.places[stage]!;
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
  const { names, peopleMax, shiftPeople } = day.crews;
  return {
    name: names[crew]!,
    peopleMax: peopleMax[crew]!,
    people: shiftPeople[crew]!.map((people) => people - day.absent[crew]![people]!),
    busySeconds: day.busySeconds[crew]!,
    presentSeconds: day.presentSeconds[crew]!,
  };
}

function sectionRecord(day: DayState, section: number): SectionRecord {
  const wip = { mean: overTime(day, day.sectionArea[section]!), max: day.sectionMax[section]! };
  return { name: day.line.sectionNames[section]!, wip };
}

function limitRecord(day: DayState, limit: number): LimitRecord {
  const { names, minSeconds, maxSeconds } = day.limits;
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
    unloadedSeconds: known(day.loadUnloaded[index]!),
    emptiedSeconds: known(day.loadEmptied[index]!),
    washedSeconds: known(day.loadWashed[index]!),
    leftSeconds: known(day.loadLeft[index]!),
  }));
}

function known(seconds: number): number | null {
  return Number.isNaN(seconds) ? null : seconds;
}
