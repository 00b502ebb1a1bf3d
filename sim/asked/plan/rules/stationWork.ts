import { mass, readQuantity, readShare, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { stagesOf, stationsOf } from "./stages.ts";

/** What a station's keys say of each other. */
export function stationWork(json: unknown): Fault[] {
  const stages = stagesOf(json);
  const stations = stationsOf(json);
  return [
    ...stations.flatMap(cycleOrRate),
    ...stations.flatMap(manualCrew),
    ...stations.flatMap((station) => allowances(json, station)),
    ...stages.flatMap((stage) => weightRange(located(json, ...stage.at, "weights"))),
    ...stages.flatMap((stage) => leaving(json, stage)),
  ];
}

function cycleOrRate({ at, value }: Located): Fault[] {
  const hasCycle = value.cycle !== undefined;
  const hasRate = value.rate !== undefined;
  if (hasCycle !== hasRate) return [];
  const found = hasCycle ? "both a cycle and a rate" : "neither a cycle nor a rate";
  const remedy = hasCycle ? "keep one" : 'write for example "cycle": "5.5 s"';
  return [faultAt(at, found, 'exactly one of "cycle" and "rate"', remedy)];
}

function hasNoCrew({ value: { crew } }: Located): boolean {
  return crew === undefined || crew === null || (Array.isArray(crew) && crew.length === 0);
}

function manualCrew(station: Located): Fault[] {
  const { at, value } = station;
  if (value.work !== "manual" || !hasNoCrew(station)) return [];
  return [faultAt(at, "manual work without a crew", 'the name of a crew, or "work": "machine"', 'add the key "crew"')];
}

/** Only people rest; the shares stand in the order of the hours, and leave some of the shift for work. */
function allowances(json: unknown, station: Located): Fault[] {
  const allowance = located(json, ...station.at, "allowance");
  if (allowance === null) return [];
  const steps = locatedList(json, ...allowance.at, "steps");
  const after = ({ value }: Located) => readQuantity(time, value.after).value;
  return [
    ...(hasNoCrew(station)
      ? [faultAt(allowance.at, "rest where nobody works", "a station with a crew", "delete it, or name the crew")]
      : []),
    ...steps.flatMap((step, row) => {
      const [before, now] = [row === 0 ? null : after(steps[row - 1]!), after(step)];
      if (before === null || now === null || before < now) return [];
      const found = `${step.value.after} is not more than ${steps[row - 1]!.value.after}`;
      return [faultAt([...step.at, "after"], found, "times in their order, each once", "put the entries in order")];
    }),
    ...steps.flatMap((step) =>
      readShare(step.value.share).value === 1 && allowance.value.of === "shift"
        ? [faultAt([...step.at, "share"], "all of the shift is rest", "less than 100 %", "lower it")]
        : [],
    ),
  ];
}

function weightRange(weights: Located | null): Fault[] {
  if (weights === null) return [];
  const from = readQuantity(mass, weights.value.from).value;
  const to = readQuantity(mass, weights.value.to).value;
  if (from === null || to === null || from < to) return [];
  return [faultAt(weights.at, "from is not smaller than to", "from < to", "put the two in order")];
}

/** Heads that leave for good and heads that are sent elsewhere are different heads. */
function leaving(json: unknown, { at }: Located): Fault[] {
  const removals = locatedList(json, ...at, "removals");
  const diversions = locatedList(json, ...at, "diversions");
  const carcasses = removals.filter(({ value }) => value.as === "carcass");
  const removed = sharesOf(json, removals);
  return [
    ...(removed > 1 ? [tooMuch([...at, "removals"], "the shares")] : []),
    ...(removed <= 1 && removed + sharesOf(json, diversions) > 1
      ? [tooMuch([...at, "diversions"], "the shares of removals and diversions")]
      : []),
    ...carcasses.map((removal) =>
      faultAt(
        [...removal.at, "as"],
        "'carcass' is the word for heads that go the whole way",
        "another name",
        "rename it",
      ),
    ),
  ];
}

function tooMuch(at: Located["at"], what: string): Fault {
  return faultAt(at, `${what} add up to more than 100 %`, "100 % or less", "lower them");
}

function sharesOf(json: unknown, list: readonly Located[]): number {
  return list.reduce((sum, branch) => sum + mostOf(json, branch), 0);
}

/** The share, or the most that it can be. */
function mostOf(json: unknown, { at, value }: Located): number {
  const by = ["weight", "time"].flatMap((key) => locatedList(json, ...at, "shareBy", key));
  return Math.max(...[value, ...by.map((point) => point.value)].map((each) => readShare(each.share).value ?? 0));
}
