import { writtenMeanOf } from "../../../maths/varying/index.ts";
import { byKind } from "../../../text/kinds/index.ts";
import type { Breakdown, Chain, CrateStep, Dwell, Plan, Stage, Station } from "../plan.ts";

/** One stage of the line as its mean times make it; crate steps reckoned in heads. */
export interface MeanUnit {
  name: string;
  /** How heads pass: a server works on each; each is held for a time; each rides along at a spacing. */
  flow: "served" | "held" | "carried";
  /** Cycle (its mean share of repairs included), dwell, or ride. */
  seconds: number;
  /** Heads it works on at a time. */
  servers: number;
  /** Heads that have a place there, in work or waiting; Infinity for no limit. */
  places: number;
  /** Least time between two heads that enter a chain; 0 elsewhere. */
  spacing: number;
  /** By station that has to go on for the unit to go on: crews, one of which is enough. Empty: needs nobody. */
  manned: string[][];
  /** Names under which the unit can pause. */
  stops: string[];
  /** All names of the plan that it stands for: a chain's stations are its own. */
  names: string[];
  /** Key of `places` in the plan's terms. */
  placesKey: "places" | "buffer" | null;
}

/** The way of a head down the line, off-line stages left out. */
export function meanUnits(plan: Plan): MeanUnit[] {
  const crates = plan.liveHandling?.toHanging ?? [];
  const headsPerCrate = meanHeadsPerCrate(plan);
  const units = [
    ...crates.map((step) => crateUnit(step, headsPerCrate)),
    ...plan.line.filter(({ offLine }) => !offLine).flatMap(unitOf),
  ].map((unit) => withShared(unit, plan));
  return units.map((unit) => limitedByPeople(unit, plan, units));
}

function meanHeadsPerCrate({ supply }: Plan): number {
  if (supply.kind !== "loads") return 1;
  const crates = supply.loads.reduce((sum, load) => sum + load.crates * load.comesShare, 0);
  return supply.loads.reduce((sum, load) => sum + load.crates * load.headsPerCrate * load.comesShare, 0) / crates;
}

interface Unit extends MeanUnit {
  /** Station of its own: who has to be there for one position. */
  people: number;
  crews: string[];
}

const NOBODY = { people: 0, crews: [] };

function crateUnit(step: CrateStep, headsPerCrate: number): Unit {
  const { name, positions, cratesPerCycle, places, crews } = step;
  const heads = cratesPerCycle * headsPerCrate;
  return {
    name,
    flow: "served",
    seconds: (writtenMeanOf(step.secondsPerCycle) / heads) * repairFactor(step.breakdowns),
    servers: positions,
    places: Math.max(1, Math.floor(places * headsPerCrate + positions * heads)),
    spacing: 0,
    manned: crews.length === 0 ? [] : [crews],
    stops: [name],
    names: [name],
    placesKey: null,
    people: step.peoplePerPosition,
    crews,
  };
}

function unitOf(stage: Stage): Unit[] {
  return byKind<Stage, Unit[]>(stage, {
    station: (own) => [stationUnit(own)],
    dwell: dwellUnit,
    chain: (own) => [chainUnit(own)],
  });
}

/** Computed chilling comes after all work and has no mean to write down: left out. */
function dwellUnit({ name, places, dwell }: Dwell): Unit[] {
  if (dwell.kind === "chilling") return [];
  const seconds = writtenMeanOf(dwell.seconds);
  return [
    {
      name,
      flow: "held",
      seconds,
      servers: 1,
      places,
      spacing: 0,
      manned: [],
      stops: [name],
      names: [name],
      placesKey: "places",
      ...NOBODY,
    },
  ];
}

function chainUnit({ name, places, secondsPerShackle, stations }: Chain): Unit {
  const held = stations.filter(({ ifUnfinished }) => ifUnfinished === "stop");
  const slowest = held.map((of) => (writtenMeanOf(of.cycleSeconds) / of.positions) * repairFactor(of.breakdowns));
  return {
    name,
    flow: "carried",
    seconds: places * secondsPerShackle,
    servers: 1,
    places,
    spacing: Math.max(secondsPerShackle, ...slowest),
    manned: held.filter(({ crews }) => crews.length > 0).map(({ crews }) => crews),
    stops: [name, ...held.map((of) => of.name)],
    names: [name, ...stations.map((of) => of.name)],
    placesKey: null,
    ...NOBODY,
  };
}

function stationUnit({ name, cycleSeconds, breakdowns, positions, buffer, crews, peoplePerPosition }: Station): Unit {
  return {
    name,
    flow: "served",
    seconds: writtenMeanOf(cycleSeconds) * repairFactor(breakdowns),
    servers: positions,
    places: buffer + positions,
    spacing: 0,
    manned: crews.length === 0 ? [] : [crews],
    stops: [name],
    names: [name],
    placesKey: "buffer",
    people: peoplePerPosition,
    crews,
  };
}

/** Time per head grows by the mean repair for each mean uptime of work. */
function repairFactor(breakdowns: readonly Pick<Breakdown, "uptimeSeconds" | "repairSeconds">[]): number {
  return breakdowns.reduce(
    (sum, { uptimeSeconds, repairSeconds }) => sum + writtenMeanOf(repairSeconds) / writtenMeanOf(uptimeSeconds),
    1,
  );
}

/** Every station that a shared breakdown stops loses its time; a chain the longest that anything on it loses. */
function withShared(unit: Unit, { sharedBreakdowns }: Plan): Unit {
  const here = sharedBreakdowns.filter(({ stops }) => stops.some((name) => unit.names.includes(name)));
  if (here.length === 0) return unit;
  const factor = repairFactor(here);
  return unit.flow === "carried"
    ? { ...unit, spacing: unit.spacing * factor }
    : { ...unit, seconds: unit.seconds * factor };
}

/** No more positions than there are people for, and no quicker than a crew that has several stations gets round. */
function limitedByPeople(unit: Unit, plan: Plan, all: readonly Unit[]): MeanUnit {
  const { people, crews, servers, seconds } = unit;
  if (people === 0 || crews.length === 0) return unit;
  const present = crews.reduce((sum, crew) => sum + mostPeople(plan, crew), 0);
  const manned = Math.max(1, Math.min(servers, Math.floor(present / people)));
  const shared = crews.length === 1 ? roundSeconds(crews[0]!, mostPeople(plan, crews[0]!), all) : 0;
  return { ...unit, servers: manned, seconds: Math.max(seconds, manned * shared) };
}

/** Person-seconds that a head takes of the crew at all its stations, by its people; 0 where all can be manned at once. */
function roundSeconds(crew: string, people: number, all: readonly Unit[]): number {
  const own = all.filter((unit) => unit.crews.length === 1 && unit.crews[0] === crew);
  const wanted = own.reduce((sum, unit) => sum + unit.people * unit.servers, 0);
  if (wanted <= people) return 0;
  return own.reduce((sum, unit) => sum + unit.people * unit.seconds, 0) / Math.max(1, people);
}

function mostPeople({ crews }: Plan, name: string): number {
  return Math.max(0, ...(crews.find((crew) => crew.name === name)?.people ?? []));
}
