import { CHAIN, DWELL, kindName, NO_LIMIT } from "../line/index.ts";
import { bookDwell, bookQueue, bookState, closeCrew } from "./accounting.ts";
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
  type OwnTime,
  type SectionRecord,
  type SharedBreakdownRecord,
  STATES,
  type StageRecord,
  type StunnedRecord,
  type VesselRecord,
} from "./dayRecord.ts";
import { notHung } from "./leaveLine.ts";
import { leftOver } from "./leftOver.ts";
import { ownTimes } from "./ownTimeRecord.ts";
import { visitList, visitPresent } from "./present.ts";
import { sectionCleanings } from "./sectionCleaning.ts";
import type { ChainState } from "./state/chainState.ts";
import type { CrewState } from "./state/crewState.ts";
import { type DayState, STANDS_DOWN, STANDS_PAUSE, STANDS_UNFINISHED, STANDS_UNLOADING } from "./state/dayState.ts";
import type { Headcount } from "./state/headcount.ts";
import type { StageState } from "./state/stageState.ts";
import type { VesselState } from "./state/vesselState.ts";

/** Closes the books at the day's end and writes what is left of it. */
export function recordOf(day: DayState, status: DayRecord["status"]): DayRecord {
  const { line } = day;
  const killStops = day.killStops?.record() ?? null;
  closeBooks(day);
  const stages = stageRecords(day);
  return {
    replication: day.options.replication,
    status,
    stuckAt: status === "finished" ? [] : line.stages.names.filter((_, stage) => day.stageAt[stage]!.occupancy > 0),
    left: status === "finished" ? [] : leftOver(day),
    startClockSeconds: line.startClockSeconds,
    watchedFromSeconds: day.watchedFrom,
    finishSeconds: day.now,
    workFinishSeconds: day.workFinish,
    shiftEndSeconds: line.shiftEndSeconds,
    events: day.events,
    heads: {
      arrived: day.arrived - day.keptCrated,
      hung: day.hung,
      out: Object.fromEntries(line.destinationNames.map((name, index) => [name, day.out[index]!])),
      turnedAway: day.turnedAway,
      fromBefore: { inLairage: day.keptCrated + day.keptOutside, onLine: day.keptHeads - day.keptOutside },
      inLairage: line.supply.kind === "loads" ? day.arrived - day.hung : notHung(day),
      onLine: day.headsOnLine - notHung(day),
    },
    stages,
    crews: day.crewAt.map((crew) => crewRecord(day, crew)),
    sections: line.sectionNames.map((_, section) => sectionRecord(day, section)),
    limits: line.limits.names.map((_, limit) => limitRecord(day, limit)),
    timeInSystem: day.timeInSystem.tally(),
    loads: loadRecords(day),
    chains: day.chainAt.map((chain) => chainRecord(day, chain)),
    gates: line.gates.names.map((_, gate) => gateRecord(day, gate)),
    vessels: day.vesselAt.map((vessel) => vesselRecord(day, vessel)),
    stunned: stunnedRecord(day),
    sharedBreakdowns: sharedRecords(day),
    masses: massRecord(day),
    lairage: line.supply.kind === "loads" ? headsOver(day, day.stageAt[line.supply.feeding]!.shown) : null,
    traces: day.recorders?.traces(day.now) ?? null,
    perHead: day.recorders?.headTable() ?? null,
    binding: bindingRecord(day, status),
    killStops,
    ...(line.cleaning === null ? {} : { cleaning: sectionCleanings(day, stages) }),
  };
}

function stunnedRecord({ line, stunned }: DayState): StunnedRecord | null {
  if (stunned === null || line.stunned!.late === null) return null;
  return { stunnedAgain: stunned.stunnedAgain, stuckThere: stunned.stuckThere };
}

function stageRecords(day: DayState): StageRecord[] {
  const own = ownTimes(day);
  return day.stageAt.map((stage) => stageRecord(day, stage, own[stage.index]!));
}

function closeBooks(day: DayState): void {
  for (const stage of day.stageAt) {
    if (stage.kind === DWELL) bookDwelling(day, stage);
    else for (const position of stage.positions) bookState(day, position);
    bookQueue(day, stage);
  }
  for (const inside of day.inSection) inside.book(day.now);
  for (const crew of day.crewAt) closeCrew(day, crew);
}

/** Heads still dwelling at the end have their time booked up to now. */
function bookDwelling(day: DayState, stage: StageState): void {
  visitList(stage.queue, (item) => bookDwell(day, stage, item));
}

function stageRecord(day: DayState, stage: StageState, ownTime: OwnTime | null): StageRecord {
  const { stages, sectionNames } = day.line;
  const isDwell = stage.kind === DWELL;
  const kind = stage.takesHeads ? kindName(stage.kind) : "crates";
  const places = isDwell || stage.kind === CHAIN ? stage.places : stages.bufferPlaces[stage.index]!;
  return {
    name: stages.names[stage.index]!,
    section: sectionNames[stage.section] ?? "",
    kind,
    places: places === NO_LIMIT ? Infinity : places,
    positions: isDwell ? (places === NO_LIMIT ? Infinity : places) : stage.positions.length,
    processed: stage.processed,
    queue: headsOver(day, stage.shown),
    stateSeconds: isDwell ? dwellSeconds(day, stage) : stationSeconds(stage),
    ownTime,
    stops: stage.breakdownCount,
    ...plannedWork(day, stage),
    unworked: stage.unworked,
    unfinished: stage.unfinished,
    diverted: stage.diverted,
    heldSeconds: stage.heldSeconds + (Number.isNaN(stage.heldSince) ? 0 : day.now - stage.heldSince),
    heatJoules: stage.heatJoules,
  };
}

/** What is done there by plan beside the heads; nothing where the plan has none of it. */
function plannedWork({ breakdownAt }: DayState, stage: StageState): Pick<StageRecord, "replacements" | "changeovers"> {
  const replaced = breakdownAt.filter(
    ({ stages, isShared, replacedAfter }) => !isShared && stages[0] === stage && replacedAfter < Infinity,
  );
  return {
    ...(replaced.length === 0
      ? {}
      : { replacements: replaced.reduce((sum, { replacements }) => sum + replacements, 0) }),
    ...(stage.changeoverSeconds === 0 ? {} : { changeovers: stage.changeovers }),
  };
}

function chainRecord(day: DayState, chain: ChainState): ChainRecord {
  bookStand(chain, day.now);
  const { standSeconds } = chain;
  return {
    name: day.stages.names[chain.stage.index]!,
    shackles: chain.passed,
    gaps: chain.gaps,
    missingShackles: chain.missing,
    standSeconds: {
      down: standSeconds[STANDS_DOWN]!,
      unfinished: standSeconds[STANDS_UNFINISHED]!,
      unloading: standSeconds[STANDS_UNLOADING]!,
      pause: standSeconds[STANDS_PAUSE]!,
    },
  };
}

function gateRecord(day: DayState, gate: number): GateRecord {
  const { names, atMost } = day.gates;
  const between = day.headsInGate[gate]!;
  between.book(day.now);
  return {
    name: names[gate]!,
    atMost: atMost[gate] === NO_LIMIT ? Infinity : atMost[gate]!,
    ...headsOver(day, between),
  };
}

function vesselRecord({ now }: DayState, vessel: VesselState): VesselRecord {
  const { name, emptied, mostKg, spilledKg, fullSeconds, fullSince, isFull } = vessel;
  return { name, emptied, maxKg: mostKg, spilledKg, fullSeconds: fullSeconds + (isFull ? now - fullSince : 0) };
}

/** What is still on the line is weighed head by head, not found by difference: the balance is a check. */
function massRecord(day: DayState): MassRecord {
  const { line } = day;
  let onLineKg = 0;
  visitPresent(day, (item, stage) => {
    if (stage.takesHeads) onLineKg += item.mass;
  });
  return {
    liveKg: day.liveKg,
    ...(day.keptKg > 0 ? { fromBeforeKg: day.keptKg } : {}),
    carcassLiveKg: day.carcassLiveKg,
    byProductsKg: Object.fromEntries(line.productNames.map((name, product) => [name, day.productKg[product]!])),
    outKg: Object.fromEntries(line.destinationNames.map((name, index) => [name, day.outKg[index]!])),
    onLineKg,
  };
}

function stationSeconds({ positions }: StageState): number[] {
  return STATES.map((_, state) => positions.reduce((sum, position) => sum + position.stateSeconds[state]!, 0));
}

/** Empty places of a dwell stage starve; a stage without limit has no empty places to speak of. */
function dwellSeconds(day: DayState, stage: StageState): number[] {
  const seconds = stationSeconds(stage);
  const { places, shown } = stage;
  if (places !== NO_LIMIT) seconds[STATES.indexOf("starved")] = places * (day.now - day.watchedFrom) - shown.area;
  return seconds;
}

/** Mean and most over the time watched; the count is booked up to now. */
function headsOver(day: DayState, { area, most }: Headcount): { mean: number; max: number } {
  const seconds = day.now - day.watchedFrom;
  return { mean: seconds > 0 ? area / seconds : 0, max: most };
}

function crewRecord(day: DayState, crew: CrewState): CrewRecord {
  const { names, shiftPeople } = day.line.crews;
  return {
    name: names[crew.index]!,
    lastWorkSeconds: crew.lastWork,
    peopleMax: crew.peopleMax,
    people: [...crew.present],
    absent: shiftPeople[crew.index]!.map((people) => crew.absent[people]!),
    ...(crew.helpers.length === 0
      ? {}
      : { helpers: crew.helpers.map((each) => ({ crew: names[each.crew.index]!, people: [...each.people] })) }),
    busySeconds: crew.busySeconds,
    work: crew.stations.map(({ index }, row) => ({
      stage: day.stages.names[index]!,
      seconds: personSeconds(day, crew.at[index]!),
      repairSeconds: crew.repairSeconds[row]!,
    })),
    jobSeconds: personSeconds(day, crew.atJobs),
    presentSeconds: crew.presentSeconds,
  };
}

function personSeconds({ now }: DayState, people: Headcount): number {
  people.book(now);
  return people.area;
}

function sharedRecords(day: DayState): SharedBreakdownRecord[] {
  const shared = day.breakdownAt.filter(({ isShared }) => isShared);
  return shared.map(({ name, stages, count, isDown, downSince, downSeconds }) => {
    const open = isDown ? day.now - Math.max(downSince, day.watchedFrom) : 0;
    const names = stages.map(({ index }) => day.stages.names[index]!);
    return { name, stages: names, stops: count, downSeconds: downSeconds + open };
  });
}

function sectionRecord(day: DayState, section: number): SectionRecord {
  return { name: day.line.sectionNames[section]!, wip: headsOver(day, day.inSection[section]!) };
}

function limitRecord(day: DayState, limit: number): LimitRecord {
  const { names, minSeconds, maxSeconds } = day.limits;
  return {
    name: names[limit]!,
    minSeconds: minSeconds[limit]! === -Infinity ? null : minSeconds[limit]!,
    maxSeconds: maxSeconds[limit]! === Infinity ? null : maxSeconds[limit]!,
    tally: day.limitTallies[limit]!.tally(),
    beyond: day.headsOverLimit[limit]!,
  };
}

function loadRecords(day: DayState): LoadRecord[] {
  return day.loadAt.map((load) => ({
    name: load.name,
    heads: load.crates * load.headsPerCrate,
    crates: load.crates,
    dueSeconds: load.dueSeconds,
    arrivedSeconds: load.comes ? load.arrived : null,
    unloadedSeconds: known(load.unloaded),
    emptiedSeconds: known(load.emptied),
    washedSeconds: known(load.washed),
    leftSeconds: known(load.left),
  }));
}

function known(seconds: number): number | null {
  return Number.isNaN(seconds) ? null : seconds;
}
