import { type CompiledLine, NO_LIMIT, OUT, STATION } from "../../line/index.ts";
import type { DayOptions } from "../state/dayState.ts";

/** Options that a day may have whatever way it is simulated; with any other one something watches the single events. */
const UNWATCHED: ReadonlySet<string> = new Set<keyof DayOptions>(["seed", "replication", "antithetic", "mostEvents"]);
/** Beyond so many places (1 MB a stage) it is not worth while to remember who left when. */
const MAX_PLACES = 1 << 16;

/**
 * True when nothing can happen on the day but that heads go from machine to machine: every stage one machine that hands to
 * the next one at once; no people, breakdowns, stops, gates, vessels, chains or limits; nobody turned away; nothing
 * recorded on the way.
 */
export function isSerial(line: CompiledLine, options: DayOptions): boolean {
  const watched = Object.entries(options).some(([name, value]) => isWatching(name, value, line));
  return !watched && isUndisturbed(line) && line.stages.names.every((_, stage) => isPlain(line, stage));
}

function isWatching(name: string, value: unknown, { killLine }: CompiledLine): boolean {
  if (name === "killStops") return value === true && killLine !== null;
  return !UNWATCHED.has(name) && Boolean(value) && value !== "none";
}

function isUndisturbed({
  breakdowns,
  calendar,
  limits,
  gates,
  chains,
  vessels,
  supply,
  stunned,
}: CompiledLine): boolean {
  const counts = [breakdowns, calendar, limits, chains, vessels].map(({ count }) => count);
  return counts.every((count) => count === 0) && gates.count === 0 && stunned === null && suppliesOneByOne(supply);
}

function suppliesOneByOne(supply: CompiledLine["supply"]): boolean {
  return supply.kind === "saturated" || (supply.kind === "stream" && !supply.turnAway);
}

function isPlain(line: CompiledLine, stage: number): boolean {
  const { stages } = line;
  return (
    stages.kind[stage] === STATION &&
    stages.next[stage] === (stage === stages.count - 1 ? OUT : stage + 1) &&
    stages.positionFrom[stage] === stage &&
    stages.positionFrom[stage + 1] === stage + 1 &&
    (stages.places[stage]! <= MAX_PLACES || stages.places[stage] === NO_LIMIT) &&
    stages.people[stage] === 0 &&
    stages.travel[stage] === null &&
    stages.pace[stage] === null &&
    stages.weightPerKg[stage] === 0 &&
    stages.weightElse[stage]! < 0 &&
    stages.branchFrom[stage] === stages.branchFrom[stage + 1] &&
    stages.productFrom[stage] === stages.productFrom[stage + 1] &&
    staysInSections(stages.section, stage)
  );
}

/** A section that heads have left is not entered again. */
function staysInSections(section: Int32Array, stage: number): boolean {
  return stage === 0 || section[stage] === section[stage - 1] || section.indexOf(section[stage]!) === stage;
}
