import type { Fault } from "../fault.ts";
import { FILTER_CHANGE } from "../parts/crateStepNames.ts";
import { crateStepsOf, type LocatedStep } from "./crateSteps.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { workplacesOf } from "./stages.ts";

/** What the parts of the live handling say of each other. */
export function crateHandling(json: unknown): Fault[] {
  const handling = located(json, "liveHandling");
  if (handling === null) return [];
  const steps = crateStepsOf(json);
  return [
    ...steps.flatMap(stepTime),
    ...backSteps(handling),
    ...fleetSize(json, handling),
    ...filterName(json),
    ...stepNames(json, steps),
  ];
}

function stepTime({ at, value }: LocatedStep): Fault[] {
  const hasCrate = value.perCrate !== undefined;
  const hasCycle = value.perCycle !== undefined;
  if (hasCrate === hasCycle) {
    const found = hasCrate ? 'both "perCrate" and "perCycle"' : 'neither "perCrate" nor "perCycle"';
    const remedy = hasCrate ? "keep one" : 'write for example "perCrate": "20 s"';
    return [faultAt(at, found, "exactly one of the two", remedy)];
  }
  const perCycle = value.cratesPerCycle;
  if (!hasCrate || typeof perCycle !== "number" || perCycle <= 1) return [];
  const found = `"perCrate" is the time for one crate, but a cycle takes ${perCycle}`;
  return [faultAt([...at, "perCrate"], found, '"perCycle"', 'write the time for the whole cycle in "perCycle"')];
}

/** Empty crates are followed all the way back or not at all; only pallets go out as pallets. */
function backSteps({ at, value }: Located): Fault[] {
  const has = (key: string): boolean => value[key] !== undefined;
  const faults: Fault[] = [];
  if (has("washing") !== has("restacking")) {
    const [there, absent] = has("washing") ? ["washing", "restacking"] : ["restacking", "washing"];
    const found = `"${there}" without "${absent}"`;
    faults.push(faultAt(at, found, "both of them or neither", `add "${absent}" or delete "${there}"`));
  }
  if (!has("palletsOut")) return faults;
  const place = [...at, "palletsOut"];
  const way = value.way ?? "hand-slid";
  if (way === "hand-slid" || way === "lift") {
    const found = `pallets, but the way is "${way}"`;
    faults.push(faultAt(place, found, 'only with "way": "automatic"', "delete it"));
  }
  if (!has("washing") && !has("restacking")) {
    const remedy = "add the two or delete it";
    faults.push(faultAt(place, 'pallets out without "washing" and "restacking"', "after the two", remedy));
  }
  return faults;
}

function fleetSize(json: unknown, { at, value }: Located): Fault[] {
  const fleet = located(json, ...at, "fleet");
  if (fleet === null) return [];
  if (value.washing === undefined && value.restacking === undefined) {
    const found = "a limited number of crates, but the plan does not follow empty crates back";
    return [faultAt(fleet.at, found, 'with "washing" and "restacking"', "add the two or delete the fleet")];
  }
  const { crates } = fleet.value;
  const largest = locatedList(json, "supply", "loads").reduce(
    (most, load) => (typeof load.value.crates === "number" ? Math.max(most, load.value.crates) : most),
    0,
  );
  if (typeof crates !== "number" || crates >= largest) return [];
  const found = `${crates} crates in all, but the largest load has ${largest}`;
  return [faultAt([...fleet.at, "crates"], found, `${largest} or more`, "raise it or send smaller loads")];
}

/** Results name the change of the filter so. */
function filterName(json: unknown): Fault[] {
  if (located(json, "liveHandling", "washing", "filterChange") === null) return [];
  return locatedList(json, "liveHandling", "washing", "breakdowns").flatMap(({ at, value }) =>
    value.name === FILTER_CHANGE
      ? [faultAt([...at, "name"], `'${FILTER_CHANGE}' is what "filterChange" is called`, "another name", "rename it")]
      : [],
  );
}

/** Results name the crate steps so. */
function stepNames(json: unknown, steps: readonly LocatedStep[]): Fault[] {
  const names = steps.map(({ name }) => name);
  return workplacesOf(json).flatMap(({ at, value }) =>
    names.includes(value.name as string)
      ? [faultAt([...at, "name"], `'${value.name}' is the name of a crate step`, "another name", "rename the stage")]
      : [],
  );
}
