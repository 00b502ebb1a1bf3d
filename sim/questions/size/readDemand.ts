import {
  type Fault,
  formatPath,
  isRecord,
  NO_FILES,
  PARSING,
  parsePath,
  type TextFiles,
  tellable,
  varyingQuantities,
  zodFaults,
} from "../../asked/plan/index.ts";
import { formatShare } from "../../text/units/index.ts";
import { fullLine } from "./alternatives.ts";
import { ASSUMPTIONS } from "./assumed.ts";
import type { Demand, DemandStep, HandlingStep } from "./demand.ts";
import { businessFigures, figuresOf } from "./figuresOf.ts";
import { businessFaults, sizedWeek } from "./markets.ts";
import { type MergedStep, mergeSteps } from "./mergeSteps.ts";
import { type DemandFile, demandFile } from "./schema/demandFile.ts";
import { crateStep } from "./schema/handlingFile.ts";
import { type StepFile, stepFile } from "./schema/stepFile.ts";
import { USUAL_HANDLING } from "./usualHandling.ts";

export type DemandReading = { demand: Demand; faults: [] } | { demand: null; faults: Fault[] };

/**
 * Checks the JSON of a demand file; all faults come at once. `files` reads CSV files that distributions name; left out, such
 * a name is a fault. Example:
 *
 *     const { demand, faults } = readDemand(JSON.parse(text));
 */
export function readDemand(given: unknown, files: TextFiles = NO_FILES): DemandReading {
  const { json, fault } = tellable(given);
  if (fault !== null) return { demand: null, faults: [fault] };
  const shape = demandFile(files).safeParse(json, PARSING);
  if (!shape.success) return { demand: null, faults: [...zodFaults(shape.error.issues), ...partFaults(json, files)] };
  const { merged, faults: misplaced } = mergeSteps(shape.data.steps, json);
  const read = merged.map((step) => readStep(step, files));
  const faults = [
    ...weekFaults(shape.data),
    ...sharesBelowOne(shape.data),
    ...misplaced,
    ...read.flatMap((each) => each.faults),
    ...businessFaults(
      shape.data,
      json,
      merged.map(({ name }) => name),
    ),
  ];
  if (faults.length > 0) return { demand: null, faults };
  const leftOut = new Set(
    Object.entries(shape.data.steps).flatMap(([name, step]) => (step.leftOut === true ? [name] : [])),
  );
  const steps = read.flatMap(({ step }) => (step === null ? [] : [step]));
  const tooMuch = moreThanAnimal(shape.data, steps);
  if (tooMuch.length > 0) return { demand: null, faults: tooMuch };
  const { alternative = fullLine(shape.data.crates.way) } = shape.data;
  const [written, figures] = [completed(json), figuresOf(json, leftOut)];
  const { markets, week } = shape.data;
  const asked = markets.length === 0 ? week : { ...week, heads: sizedWeek(shape.data) };
  return {
    demand: {
      ...{ ...shape.data, week: asked, alternative, steps, handling: handlingOf(json, files), written, figures },
      businessFigures: businessFigures(json),
    },
    faults: [],
  };
}

/** The usual steps on crates of every way, with what the demand says of them. */
function handlingOf(json: unknown, files: TextFiles): Demand["handling"] {
  const schema = crateStep(varyingQuantities(files));
  const given = recordAt(recordAt(json, "crates"), "handling");
  const ways = Object.entries(USUAL_HANDLING).map(([way, steps]) => {
    const of = recordAt(given, way);
    const read = Object.entries(steps).map(([name, usual]): HandlingStep => {
      const written = { ...usual, ...recordAt(of, name) };
      const { cratesAtOnce = 1, people = 1, ...figures } = schema.parse(written);
      return { name, figures: { ...figures, time: figures.time!, cratesAtOnce, people }, written };
    });
    return [way, read];
  });
  return Object.fromEntries(ways) as Demand["handling"];
}

/** The record under the key, or an empty one. */
function recordAt(value: unknown, key: string): Record<string, unknown> {
  const found = isRecord(value) ? value[key] : undefined;
  return isRecord(found) ? found : {};
}

/** Rounding of shares written as percentages. */
const ALL = 1 + 1e-9;

/** Carcass and by-products come out of the same animal. */
function moreThanAnimal({ animals }: DemandFile, steps: readonly DemandStep[]): Fault[] {
  const off = steps.flatMap(({ figures }) => figures.takesOff ?? []).reduce((sum, { share }) => sum + share, 0);
  if (animals.yield + off <= ALL) return [];
  const found = `carcass and by-products together are ${formatShare(animals.yield + off)} of the live weight`;
  return [
    fault(
      ["animals", "yield"],
      found,
      "100 % or less",
      "lower it, or what the steps take off: a yield with the head does not go with steps that take it off",
    ),
  ];
}

/** Of a file that is not sound as a whole: what its sound parts say by themselves, so that all faults come at once. */
function partFaults(json: unknown, files: TextFiles): Fault[] {
  if (!isRecord(json)) return [];
  const { week, animals, line, chain, steps } = demandFile(files).shape;
  const [ofWeek, named] = [week.safeParse(json.week), steps.safeParse(json.steps)];
  const [living, running, hung] = [
    animals.safeParse(json.animals),
    line.safeParse(json.line),
    chain.safeParse(json.chain),
  ];
  const { merged, faults } = named.success ? mergeSteps(named.data, json) : { merged: [], faults: [] };
  return [
    ...(ofWeek.success && !("markets" in json) ? weekFaults({ week: ofWeek.data, markets: [] }) : []),
    ...(living.success && running.success && hung.success
      ? sharesBelowOne({ animals: living.data, line: running.data, chain: hung.data })
      : []),
    ...faults,
    ...merged.flatMap((step) => readStep(step, files).faults),
  ];
}

function weekFaults({ week, markets }: Pick<DemandFile, "week" | "markets">): Fault[] {
  const keys = (["heads", "carcasses", "carcassMass"] as const).filter((key) => week[key] !== undefined);
  if (markets.length > 0) {
    const remedy = "keep it under one of the two";
    return keys.length === 0
      ? []
      : [fault(["week"], `${listed(keys)}, but the markets say how much a week brings`, "", remedy)];
  }
  if (keys.length === 1) return [];
  const found = keys.length === 0 ? "no quantity" : listed(keys);
  return [
    fault(
      ["week"],
      found,
      'exactly one of "heads", "carcasses" and "carcassMass"',
      keys.length === 0 ? 'write for example "heads": 20000' : "keep one",
    ),
  ];
}

/** Shares that something is divided by, or of which nothing would be left. */
function sharesBelowOne({ animals, line, chain }: Pick<DemandFile, "animals" | "line" | "chain">): Fault[] {
  const lost = animals.condemned + animals.deadOnArrival;
  const zero = [
    ["animals", "yield", animals.yield],
    ["line", "availability", line.availability],
    ["line", "handLoad", line.handLoad],
    ["line", "machineLoad", line.machineLoad],
    ["chain", "filled", chain.filled],
  ] as const;
  return [
    ...zero
      .filter(([, , value]) => value === 0)
      .map(([part, key]) => fault([part, key], "it is 0", "more than 0", "raise it")),
    ...(lost >= 1
      ? [
          fault(
            ["animals"],
            "nothing is left of the heads",
            "deadOnArrival and condemned together below 1 (100 %)",
            "lower them",
          ),
        ]
      : []),
  ];
}

function readStep(
  { name, section, offLine, json }: MergedStep,
  files: TextFiles,
): { step: DemandStep | null; faults: Fault[] } {
  const figures = stepFile(varyingQuantities(files)).parse(json);
  const faults = stepFaults(name, figures);
  if (faults.length > 0) return { step: null, faults };
  const { work, zone } = figures;
  return { step: { name, section, offLine, work: work!, zone: zone!, figures, written: json }, faults: [] };
}

function stepFaults(name: string, { work, cycle, rate, dwell }: StepFile): Fault[] {
  const at = ["steps", name];
  if (work === undefined)
    return [
      fault(
        at,
        "it does not say what kind of work it is",
        "manual, machine, dwell",
        'write for example "work": "manual"',
      ),
    ];
  const times = [cycle, rate, dwell].filter((time) => time !== undefined).length;
  if (work === "chilling")
    return times === 0
      ? []
      : [fault(at, "a time, but that of chilling is computed", "none", 'delete it, or write "work": "dwell"')];
  const wanted = work === "dwell" ? "dwell" : "cycle or rate";
  const right = work === "dwell" ? dwell !== undefined : (cycle !== undefined) !== (rate !== undefined);
  if (right && times === 1) return [];
  return [
    fault(
      at,
      times === 0 ? "it has no time" : "its times do not suit its work",
      `exactly one: ${wanted}`,
      `${work} work takes ${wanted}`,
    ),
  ];
}

/** The demand with every assumption filled in. */
function completed(json: unknown): Record<string, unknown> {
  const copy = structuredClone(json) as Record<string, unknown>;
  for (const { path, value } of ASSUMPTIONS) {
    const steps = parsePath(path) as string[];
    const key = steps.pop()!;
    let inside = copy;
    for (const step of steps) {
      if (!isRecord(inside[step])) inside[step] = {};
      inside = inside[step] as Record<string, unknown>;
    }
    if (inside[key] === undefined) inside[key] = structuredClone(value);
  }
  return copy;
}

function listed(keys: readonly string[]): string {
  return keys.map((key) => `"${key}"`).join(" and ");
}

function fault(at: readonly string[], found: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(at), found, allowed, remedy };
}
