import {
  type ChainStation,
  type Dwell,
  LINE_ROOMS,
  type LineRoom,
  type Plan,
  type Stage,
  type Station,
  siteFigure,
} from "../../asked/plan/index.ts";
import { killLineOf } from "../../day/line/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind, does } from "../../text/kinds/index.ts";
import type { RailUse } from "./layout.ts";

/** A piece of rail, in the order in which heads pass. A position stands on one straight stretch; places and ways go round bends. */
export interface RailPiece {
  stage: string;
  room: LineRoom;
  use: Exclude<RailUse, "joins">;
  metres: number;
  machine: boolean;
  /** So many metres from here on must be straight; absent where a bend does no harm. */
  straightMetres?: number;
}

/** Positions that stand beside the rail: a trim table, cutting and packing. */
export interface Tables {
  stage: string;
  room: LineRoom;
  positions: number;
  machine: boolean;
}

/** What a stage takes on the rail. */
export interface RailNeed {
  stage: string;
  room: LineRoom;
  places: number;
  placeMetres: number;
  positions: number;
  positionMetres: number;
}

export interface PlannedWay {
  from: string;
  to: string;
  seconds: number;
  metres: number;
}

/** A plan's line as lengths of rail. */
export interface RailLine {
  pieces: RailPiece[];
  needs: RailNeed[];
  ways: PlannedWay[];
  tables: Tables[];
  chillers: Dwell[];
  metresPerSecond: number;
  /** Where the speed comes from. */
  speedWords: string;
  findings: string[];
}

/** What the names of stages and sections say of the room; the first row that fits counts. */
const WORDS: readonly [LineRoom, RegExp][] = [
  ["cutting and packing", /\bcut-?\s?up|pack|\bbon(e|ing)|portion|label|\bgrad(e|ing)|dispatch|tray/iu],
  ["evisceration", /eviscer|abdom|viscer|\bgut|inspect|trim|rins|organ|gibl|dressing/iu],
  ["skinning", /skin|\bleg|paw|\bhead\b|loosen|pelt|\bhide/iu],
  ["kill", /\bkill|\bstun|\bstick|bleed/iu],
  ["live animals", /\blive\b|hang|shackl|lairage|crate/iu],
];
const COLD = /chill|cool|cold/iu;

/** The room of every stage and of every station on a chain. Along the line rooms go from dirty to clean and never back, whatever the names say. */
export function roomsOfLine(plan: Plan): Map<string, LineRoom> {
  const rooms = new Map<string, LineRoom>();
  let reached = 0;
  let chilled = false;
  const place = (name: string, section: string, isCold: boolean, offLine: boolean): void => {
    const said = plan.site?.rooms[name] ?? plan.site?.rooms[section] ?? roomByWords(name) ?? roomByWords(section);
    const last = chilled ? "cutting and packing" : LINE_ROOMS[reached]!;
    const room = isCold ? "chilling" : said === undefined || said === "chilling" ? last : said;
    const index = isCold || offLine ? LINE_ROOMS.indexOf(room) : Math.max(LINE_ROOMS.indexOf(room), reached);
    rooms.set(name, LINE_ROOMS[index]!);
    if (isCold) chilled = true;
    else if (!offLine) reached = index;
  };
  for (const stage of plan.line) {
    place(stage.name, stage.section, isChiller(stage), stage.offLine);
    if (does(stage, "carry stations"))
      for (const { name } of stage.stations) place(name, stage.section, false, stage.offLine);
  }
  return rooms;
}

function roomByWords(words: string): LineRoom | undefined {
  return WORDS.find(([, pattern]) => pattern.test(words))?.[0];
}

/** A stage that holds carcasses in the cold: its time is computed from the cold, or its name says so. */
export function isChiller(stage: Stage): stage is Dwell {
  if (!does(stage, "hold heads")) return false;
  return stage.dwell.kind === "chilling" || COLD.test(stage.name) || COLD.test(stage.section);
}

/** Heads a second that the plan wants: its target, else what comes over the shifts. */
export function wantedRate({ targetHeadsPerSecond, supply, day, line }: Plan): number {
  if (targetHeadsPerSecond !== null) return targetHeadsPerSecond;
  const seconds = day.shifts.reduce((sum, { fromSeconds, toSeconds }) => sum + toSeconds - fromSeconds, 0);
  if (supply.kind === "loads")
    return supply.loads.reduce((sum, load) => sum + load.crates * load.headsPerCrate * load.comesShare, 0) / seconds;
  if (supply.kind === "stream") return Math.min(1 / meanOf(supply.interarrival), supply.heads / seconds);
  const rates = line.flatMap((stage) =>
    does(stage, "buffer heads") && !stage.offLine ? [stage.positions / meanOf(stage.cycleSeconds)] : [],
  );
  return rates.length === 0 ? supply.heads / seconds : Math.min(...rates);
}

/** Speed of the rail: of the plan's first chain, else so that its shackles carry what the plan wants. */
export function railSpeed(plan: Plan): { metresPerSecond: number; words: string } {
  const chain = plan.line.find((stage) => does(stage, "carry stations"));
  const pitch = siteFigure(plan, "line.pitch");
  if (chain !== undefined && does(chain, "carry stations")) {
    const metresPerSecond = (chain.pitchMetres ?? pitch) / chain.secondsPerShackle;
    return { metresPerSecond, words: `speed of the chain '${chain.name}'` };
  }
  const filled = siteFigure(plan, "line.filled");
  return {
    metresPerSecond: (wantedRate(plan) / filled) * pitch,
    words: "pitch x heads a second that the plan wants / share of the shackles that carry a head",
  };
}

/** Lengths of the line: pitch x places, metres for each position, and seconds of the ways x speed. */
export function railLine(plan: Plan): RailLine {
  const rooms = roomsOfLine(plan);
  const { metresPerSecond, words } = railSpeed(plan);
  const line: RailLine = {
    ...{ pieces: [], needs: [], ways: [], tables: [], chillers: [], findings: [] },
    ...{ metresPerSecond, speedWords: words },
  };
  const onRail = plan.line.filter(({ offLine }) => !offLine);
  const firstChiller = onRail.findIndex(isChiller);
  const last = firstChiller === -1 ? onRail.length : firstChiller;
  for (const [index, stage] of onRail.slice(0, last).entries()) {
    addStage(line, stage, { plan, rooms, isFirst: index === 0 });
    const next = onRail[index + 1];
    if (next === undefined) continue;
    const seconds = stage.travelSeconds === null ? 0 : meanOf(stage.travelSeconds);
    const way = { from: lastOf(stage), to: firstOf(next), seconds, metres: seconds * metresPerSecond };
    line.ways.push(way);
    line.pieces.push({
      ...{ stage: way.from, room: rooms.get(lastOf(stage))!, use: "way", metres: way.metres, machine: false },
    });
  }
  keepKillStraight(line, plan);
  line.chillers.push(...onRail.filter(isChiller));
  for (const stage of [...onRail.slice(last), ...plan.line.filter(({ offLine }) => offLine)])
    for (const station of stationsOf(stage)) line.tables.push(tablesOf(station, rooms.get(station.name)!));
  return line;
}

/** From the first stunning to the last sticking position no head goes round a bend. */
function keepKillStraight({ pieces }: RailLine, plan: Plan): void {
  const kill = killLineOf(plan);
  if (kill === null) return;
  const first = pieces.findIndex(({ stage, use }) => use === "positions" && kill.stunning.includes(stage));
  const last = pieces.findLastIndex(({ stage, use }) => use === "positions" && kill.sticking.includes(stage));
  if (first === -1 || last < first) return;
  const straightMetres = pieces.slice(first, last + 1).reduce((sum, { metres }) => sum + metres, 0);
  pieces[first] = { ...pieces[first]!, straightMetres };
}

interface Adding {
  plan: Plan;
  rooms: Map<string, LineRoom>;
  isFirst: boolean;
}

function addStage(line: RailLine, stage: Stage, { plan, rooms, isFirst }: Adding): void {
  const pitch = siteFigure(plan, "line.pitch");
  const room = rooms.get(stage.name)!;
  byKind(stage, {
    station: (station) => {
      const places = isFirst || !Number.isFinite(station.buffer) ? 0 : station.buffer;
      if (!isFirst && !Number.isFinite(station.buffer))
        line.findings.push(`${station.name}: no limit to the places before it, so none are drawn.`);
      const positionMetres = siteFigure(plan, isMachine(station) ? "line.machine" : "line.position");
      const need = { stage: station.name, room, places, placeMetres: pitch };
      add(line, { ...need, positions: station.positions, positionMetres }, isMachine(station));
    },
    dwell: (dwell) => {
      const seconds = dwell.dwell.kind === "drawn" ? meanOf(dwell.dwell.seconds) : 0;
      const places = Number.isFinite(dwell.places) ? dwell.places : Math.ceil(wantedRate(plan) * seconds);
      add(line, { stage: dwell.name, room, places, placeMetres: pitch, positions: 0, positionMetres: 0 }, false);
    },
    chain: (chain) => {
      const own = chain.pitchMetres ?? pitch;
      const least = siteFigure(plan, "line.position");
      let at = 0;
      for (const station of chain.stations) {
        const where = { stage: station.name, room: rooms.get(station.name)!, placeMetres: own };
        const positionMetres = (station.window * own) / station.positions;
        add(
          line,
          { ...where, places: station.at - at, positions: station.positions, positionMetres },
          isMachine(station),
        );
        at = station.at + station.window;
        if (positionMetres < least && !isMachine(station))
          line.findings.push(
            `${station.name}: ${station.positions} positions share a window of ${metres(station.window * own)}, ${metres(positionMetres)} each; a person takes about ${metres(least)}.`,
          );
      }
      const rest = { stage: chain.name, room: line.needs.at(-1)?.room ?? room, places: chain.places - at };
      if (chain.stations.length === 0) rest.room = room;
      add(line, { ...rest, placeMetres: own, positions: 0, positionMetres: 0 }, false);
    },
  });
}

function metres(value: number): string {
  return `${Number(value.toFixed(2))} m`;
}

function add(line: RailLine, need: RailNeed, machine: boolean): void {
  const { stage, room, places, placeMetres, positions, positionMetres } = need;
  line.needs.push(need);
  if (places > 0) line.pieces.push({ stage, room, use: "places", metres: places * placeMetres, machine: false });
  for (let position = 0; position < positions; position++)
    line.pieces.push({ stage, room, use: "positions", metres: positionMetres, machine });
}

/** Where heads leave a stage: of a chain with stations, its own end. */
function lastOf(stage: Stage): string {
  return stage.name;
}

/** Where heads come to: of a chain, its first station. */
function firstOf(stage: Stage): string {
  return does(stage, "carry stations") ? (stage.stations[0]?.name ?? stage.name) : stage.name;
}

/** A machine has nobody at it for the whole cycle. */
export function isMachine(station: Pick<Station | ChainStation, "crews">): boolean {
  return station.crews.length === 0;
}

function stationsOf(stage: Stage): (Station | ChainStation)[] {
  if (does(stage, "carry stations")) return stage.stations;
  return does(stage, "work") ? [stage] : [];
}

function tablesOf(station: Station | ChainStation, room: LineRoom): Tables {
  return { stage: station.name, room, positions: station.positions, machine: isMachine(station) };
}
