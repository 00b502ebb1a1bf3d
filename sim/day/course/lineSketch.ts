import { does, type StepKind } from "../../text/kinds/index.ts";
import { CHAIN, CHAIN_STATION, type CompiledLine, kindName, NO_LIMIT } from "../line/index.ts";

/** What a picture of the line has to know about it: plain data, indices as in the compiled line. */
export interface LineSketch {
  stages: StageSketch[];
  crews: { name: string; peopleMax: number }[];
  chains: ChainSketch[];
  vessels: { name: string; capacityKg: number; feeders: number[] }[];
  loads: { name: string; crates: number; headsPerCrate: number }[];
  supply: "loads" | "stream" | "saturated";
  /** Index of the stage that takes heads out of the supply; the crate steps stand before it. */
  hanging: number;
  /** Crate steps: where crates leave their lorry, whose queue is the lairage, the first one of the way back; -1 without. */
  unloading: number;
  lairage: number;
  firstBack: number;
  destinations: string[];
  /** Position p belongs to stage `stageOfPosition[p]`. */
  stageOfPosition: Int32Array;
}

export interface StageSketch {
  name: string;
  section: string;
  kind: StepKind;
  /** Places before the positions; of a dwell stage its places, of a chain its shackles. Infinity: no limit. */
  places: number;
  /** Rows of the position tables; a dwell stage and a chain have one, their way out. */
  positionFrom: number;
  positions: number;
  /** Crews that may work here, none for a machine that runs by itself. */
  crews: number[];
  /** Stage that heads go to from here, -1 for none (out, the hanging point, a lorry). */
  next: number;
  /** Not on the way from the hanging point on: heads come only when `sentFrom` sends them. */
  offLine: boolean;
  sentFrom: number;
  headsPerHook: number;
  /** Chain index of a chain and of a station on one, else -1. */
  chain: number;
}

export interface ChainSketch {
  stage: number;
  shackles: number;
  secondsPerShackle: number;
  /** Stations on it: shackles from the loading point to the window's first one, and to the one after its last. */
  windows: { stage: number; from: number; to: number }[];
}

export function sketchOf(line: CompiledLine): LineSketch {
  const { stages, crews, vessels, supply, positions, destinationNames } = line;
  const onTheWay = mainWay(line);
  return {
    stages: stages.names.map((_, stage) => stageSketch(line, stage, onTheWay)),
    crews: crews.names.map((name, crew) => ({ name, peopleMax: crews.peopleMax[crew]! })),
    chains: chainSketches(line),
    vessels: vessels.names.map((name, vessel) => ({
      name,
      capacityKg: vessels.capacityKg[vessel]!,
      feeders: [...vessels.feeder.subarray(vessels.feederFrom[vessel], vessels.feederFrom[vessel + 1])],
    })),
    loads:
      supply.kind === "loads"
        ? supply.loads.map(({ name, crates, headsPerCrate }) => ({ name, crates, headsPerCrate }))
        : [],
    supply: supply.kind,
    hanging: stages.hanging,
    unloading: supply.kind === "loads" ? supply.unloading : -1,
    lairage: supply.kind === "loads" ? supply.feeding : -1,
    firstBack: supply.kind === "loads" ? supply.firstBack : -1,
    destinations: [...destinationNames],
    stageOfPosition: positions.stage.slice(),
  };
}

/** Stages that a head passes which nothing sends elsewhere, and the stations of their chains. */
function mainWay({ stages }: CompiledLine): Set<number> {
  const met = new Set<number>();
  for (let stage = stages.hanging; stage >= 0 && !met.has(stage); stage = stages.next[stage]!) met.add(stage);
  for (let stage = 0; stage < stages.count; stage++) {
    if (stages.kind[stage] !== CHAIN_STATION) continue;
    const onIt = [...met].some((other) => stages.kind[other] === CHAIN && stages.chain[other] === stages.chain[stage]);
    if (onIt) met.add(stage);
  }
  return met;
}

function stageSketch(line: CompiledLine, stage: number, onTheWay: ReadonlySet<number>): StageSketch {
  const { stages, sectionNames } = line;
  const kind = stage < stages.hanging ? "crates" : kindName(stages.kind[stage]!);
  const places = !does({ kind }, "work") ? stages.places[stage]! : stages.bufferPlaces[stage]!;
  const positionFrom = stages.positionFrom[stage]!;
  return {
    name: stages.names[stage]!,
    section: sectionNames[stages.section[stage]!] ?? "",
    kind,
    places: places === NO_LIMIT ? Infinity : places,
    positionFrom,
    positions: stages.positionFrom[stage + 1]! - positionFrom,
    crews: [...stages.crew.subarray(stages.crewFrom[stage], stages.crewFrom[stage + 1])],
    next: Math.max(-1, stages.next[stage]!),
    offLine: !does({ kind }, "handle crates") && !onTheWay.has(stage),
    sentFrom: senderOf(line, stage),
    headsPerHook: stages.headsPerHook[stage]!,
    chain: stages.chain[stage]!,
  };
}

/** The first stage that sends heads to this one by itself: diverted, outside a machine's weights, or unfinished. */
function senderOf({ stages, chains, breakdowns }: CompiledLine, to: number): number {
  for (let stage = 0; stage < stages.count; stage++) {
    if (stages.weightElse[stage] === to) return stage;
    for (let row = stages.branchFrom[stage]!; row < stages.branchFrom[stage + 1]!; row++) {
      if (stages.branchTo[row] === -1 - to) return stage;
    }
  }
  const chain = chains.unfinishedTo.indexOf(to);
  if (chain >= 0) return chains.stage[chain]!;
  const unit = breakdowns.headTo.indexOf(to);
  return unit >= 0 ? breakdowns.stage[unit]! : -1;
}

function chainSketches({ chains }: CompiledLine): ChainSketch[] {
  return Array.from(chains.stage, (stage, chain) => ({
    stage,
    shackles: chains.places[chain]!,
    secondsPerShackle: chains.secondsPerShackle[chain]!,
    windows: Array.from({ length: chains.stationCount[chain]! }, (_, index) => {
      const station = stage + 1 + index;
      return { stage: station, from: chains.windowFrom[station]!, to: chains.windowTo[station]! };
    }),
  }));
}
