import {
  type Fault,
  formatPath,
  isRecord,
  PARSING,
  type TextFiles,
  varyingQuantities,
  zodFaults,
} from "../plan/index.ts";
import { ASSUMPTIONS } from "./assumed.ts";
import type { Demand, Step } from "./demand.ts";
import { figuresOf } from "./figuresOf.ts";
import { type MergedStep, mergeSteps } from "./mergeSteps.ts";
import { type DemandFile, demandFile } from "./schema/demandFile.ts";
import { type StepFile, stepFile } from "./schema/stepFile.ts";

export type DemandReading = { demand: Demand; faults: [] } | { demand: null; faults: Fault[] };

/** Checks the JSON of a demand file; all faults come at once. `files` reads CSV files that distributions name. */
export function readDemand(json: unknown, files: TextFiles): DemandReading {
  const shape = demandFile(files).safeParse(json, PARSING);
  if (!shape.success) return { demand: null, faults: [...zodFaults(shape.error.issues), ...partFaults(json, files)] };
  const { merged, faults: misplaced } = mergeSteps(shape.data.steps, json);
  const read = merged.map((step) => readStep(step, files));
  const faults = [
    ...weekFaults(shape.data),
    ...sharesBelowOne(shape.data),
    ...misplaced,
    ...read.flatMap((each) => each.faults),
  ];
  if (faults.length > 0) return { demand: null, faults };
  const leftOut = new Set(
    Object.entries(shape.data.steps).flatMap(([name, step]) => (step.leftOut === true ? [name] : [])),
  );
  const steps = read.flatMap(({ step }) => (step === null ? [] : [step]));
  return { demand: { ...shape.data, steps, written: completed(json), figures: figuresOf(json, leftOut) }, faults: [] };
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
    ...(ofWeek.success ? weekFaults({ week: ofWeek.data }) : []),
    ...(living.success && running.success && hung.success
      ? sharesBelowOne({ animals: living.data, line: running.data, chain: hung.data })
      : []),
    ...faults,
    ...merged.flatMap((step) => readStep(step, files).faults),
  ];
}

function weekFaults({ week }: Pick<DemandFile, "week">): Fault[] {
  const keys = (["heads", "carcasses", "carcassMass"] as const).filter((key) => week[key] !== undefined);
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
): { step: Step | null; faults: Fault[] } {
  const figures = stepFile(varyingQuantities(files)).parse(json);
  const faults = stepFaults(name, figures);
  if (faults.length > 0) return { step: null, faults };
  return { step: { name, section, offLine, work: figures.work!, figures, written: json }, faults: [] };
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
    const [part, key] = path.split(".") as [string, string];
    if (!isRecord(copy[part])) copy[part] = {};
    const inside = copy[part] as Record<string, unknown>;
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
