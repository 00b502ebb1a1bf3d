import { CHAIN, type CompiledLine, DWELL, NO_LIMIT, STAGE_PAUSE } from "../../line/index.ts";

/**
 * What seconds of the binding path are owed to.
 *
 * - `work`: the cycle of a station, for which its own next head or the next stage waited
 * - `place`: a cycle, dwell or ride here, during which a stage upstream waited for a place
 * - `people`: a cycle or repair here, during which its people had work at more than one place
 * - `absent`: the same, where those absent today would have sufficed
 * - `few people`: a cycle here, during which a head waited at an idle position that the crews at full strength cannot man
 * - `hold`: a cycle here, during which a gate, a full vessel, a standing chain or the hold before stunning held heads back;
 *   at the stunner, the time that it was to wait so that no stunned head waits
 * - `walking`: people on their way to the station
 * - `repair`: a repair (`detail`: the breakdown); `repairer`: waiting for somebody who repairs
 * - `shared breakdown`: the repair of one that stops several stages (`detail`: its name); `shared repairer`: waiting for
 *   somebody who repairs it
 * - `dwell`, `travel`, `chain`: time that a head needs to dwell, to travel on, to ride along
 * - `planned stop`: waiting for a break, a pause or a shift that has not begun
 * - `help`: a stunned head that waited until somebody was called, and what was done for it
 * - `emptying`: a vessel being emptied (`detail`: the vessel)
 * - `load`: the day up to a load's arrival (`detail`: the load); `arrivals`: heads of a stream that come one by one
 * - `lorry away`: crates of a finite fleet that are under way
 * - `left over`: the cycle, dwell or ride of heads and crates that were there when the day began, whatever waited meanwhile; without a
 *   stage: a load that was due the day before
 */
export const CAUSES = [
  "work",
  "place",
  "people",
  "absent",
  "few people",
  "hold",
  "walking",
  "repair",
  "repairer",
  "shared breakdown",
  "shared repairer",
  "dwell",
  "travel",
  "chain",
  "planned stop",
  "help",
  "emptying",
  "load",
  "arrivals",
  "lorry away",
  "left over",
] as const;
export type Cause = (typeof CAUSES)[number];

export interface PathCell {
  cause: Cause;
  /** Stage name; "" where no stage is meant. */
  stage: string;
  /** Breakdown, vessel or load; "" elsewhere. */
  detail: string;
}

/** Which cell of a path's row holds what; columns by stage, unit, vessel or load; -1 where there is none. */
export interface PathCells {
  cells: PathCell[];
  /** Cycle of a station, dwell of a dwell stage, ride on a chain. */
  own: Int32Array;
  place: Int32Array;
  people: Int32Array;
  absent: Int32Array;
  fewPeople: Int32Array;
  hold: Int32Array;
  walking: Int32Array;
  /** By breakdown unit: waiting for somebody who repairs; -1 where help is always at hand. */
  repairer: Int32Array;
  travel: Int32Array;
  plannedStop: Int32Array;
  /** A cell for what the calendar brings where no stage is known to have waited. */
  calendar: number;
  /** By breakdown unit; the units of one breakdown in the plan share a cell. */
  repair: Int32Array;
  /** For stunned heads that wait too long; -1 without it. */
  help: number;
  emptying: Int32Array;
  load: Int32Array;
  arrivals: number;
  lorryAway: number;
  /** By stage, for what was there when the day began; and for a load that was due before. -1 where nothing was. */
  leftOver: Int32Array;
  leftOverLoad: number;
}

/** Only what the line can owe seconds to gets a cell. `goesOn`: something may be there when the day begins. */
export function pathCells(line: CompiledLine, goesOn: boolean): PathCells {
  const { stages, breakdowns, vessels, supply, crews, gates, chains, calendar, stunned } = line;
  const cells: PathCell[] = [];
  const add = (cause: Cause, stage = "", detail = "") => {
    const found = cells.findIndex((cell) => cell.cause === cause && cell.stage === stage && cell.detail === detail);
    return found >= 0 ? found : cells.push({ cause, stage, detail }) - 1;
  };
  const byStage = (has: (stage: number) => boolean, cause: (stage: number) => Cause) =>
    Int32Array.from(stages.names, (name, stage) => (has(stage) ? add(cause(stage), name) : -1));
  const always = () => true;
  const paused = new Set([...calendar.target].filter((_, row) => calendar.action[row] === STAGE_PAUSE));
  const repairs = new Set([...breakdowns.stage].filter((_, unit) => breakdowns.crew[unit]! >= 0));
  const mayLack = new Set([
    ...[...crews.absentShare].flatMap((share, crew) => (share > 0 ? [crew] : [])),
    ...crews.cover.flatMap((cover, crew) => (cover === null ? [] : [crew, ...cover.by])),
  ]);
  const crewsOf = (stage: number) => [
    ...stages.crew.subarray(stages.crewFrom[stage]!, stages.crewFrom[stage + 1]!),
    ...[...breakdowns.crew].filter((_, unit) => breakdowns.stage[unit] === stage),
  ];
  const held = gates.safeStop < 0 ? -1 : gates.from[gates.safeStop]!;
  const mayStop = (stage: number) =>
    stages.people[stage]! > 0 ||
    stage === stages.hanging ||
    stage === held ||
    stage === stunned?.from ||
    paused.has(stage);
  const plannedStop = byStage(
    (stage) => calendar.count > 0 && mayStop(stage),
    () => "planned stop",
  );
  return {
    cells,
    own: byStage(always, (stage) => ownCause(stages.kind[stage]!)),
    place: byStage(always, () => "place"),
    people: byStage(
      (stage) => stages.people[stage]! > 0 || repairs.has(stage),
      () => "people",
    ),
    absent: byStage(
      (stage) => crewsOf(stage).some((crew) => mayLack.has(crew)),
      () => "absent",
    ),
    fewPeople: byStage(
      (stage) => stages.people[stage]! > 0 && stages.positionFrom[stage + 1]! - stages.positionFrom[stage]! > 1,
      () => "few people",
    ),
    hold: byStage(
      () => gates.count + vessels.count + chains.count > 0 || stunned !== null,
      () => "hold",
    ),
    walking: byStage(
      (stage) => stages.people[stage]! > 0 && crews.walkSeconds.some((seconds) => seconds > 0),
      () => "walking",
    ),
    repairer: repairerCells(
      line,
      byStage(
        (stage) => repairs.has(stage),
        () => "repairer",
      ),
      add,
    ),
    travel: byStage(
      (stage) => stages.travel[stage] !== null,
      () => "travel",
    ),
    plannedStop,
    calendar: plannedStop.find((cell) => cell >= 0) ?? 0,
    repair: Int32Array.from(breakdowns.names, (name, unit) =>
      unit < breakdowns.sharedFrom
        ? add("repair", stages.names[breakdowns.stage[unit]!]!, name)
        : add("shared breakdown", "", name),
    ),
    help: stunned === null || stunned.late === null ? -1 : add("help", stages.names[stunned.to]!),
    emptying: Int32Array.from(vessels.names, (name) => add("emptying", "", name)),
    load: Int32Array.from(supply.kind === "loads" ? supply.loads : [], ({ name }) => add("load", "", name)),
    arrivals: supply.kind === "stream" ? add("arrivals") : -1,
    lorryAway: supply.kind === "loads" && supply.fleet !== NO_LIMIT ? add("lorry away") : -1,
    leftOver: byStage(
      () => goesOn,
      () => "left over",
    ),
    leftOverLoad: goesOn && supply.kind === "loads" ? add("left over") : -1,
  };
}

/** By breakdown unit, from those by stage. */
function repairerCells(
  { breakdowns }: CompiledLine,
  ofStage: Int32Array,
  add: (cause: Cause, stage: string, detail: string) => number,
) {
  return Int32Array.from(breakdowns.names, (name, unit) => {
    if (breakdowns.crew[unit]! < 0) return -1;
    return unit < breakdowns.sharedFrom ? ofStage[breakdowns.stage[unit]!]! : add("shared repairer", "", name);
  });
}

function ownCause(kind: number): Cause {
  if (kind === DWELL) return "dwell";
  return kind === CHAIN ? "chain" : "work";
}
