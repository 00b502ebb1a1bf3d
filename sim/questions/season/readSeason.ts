import {
  type Fault,
  formatPath,
  inWorld,
  isRecord,
  NO_FILES,
  PARSING,
  type Plan,
  parsePath,
  readPlan,
  resolvePath,
  type TextFiles,
  tellable,
  zodFaults,
} from "../../asked/plan/index.ts";
import { basePlan, changedJson, PLAIN_PROCEDURE, planWith, type Study, type Variant } from "../../asked/study/index.ts";
import { countedDays, responsesOf, usualResponses } from "../../day/observations/index.ts";
import { type SeasonFile, seasonFile } from "./seasonFile.ts";

type Json = Record<string, unknown>;
type Entry = SeasonFile["weeks"][number];

/** A checked season. */
export interface SeasonQuestion {
  name: string;
  question: string;
  begins: string | null;
  /** The week as the plan has it first, then every other kind of week once: a study of as many weeks of each. */
  study: Study;
  /** A row for each entry of the file. */
  entries: SeasonEntry[];
  /** The plan as it was read, with what is otherwise in all weeks. */
  json: unknown;
}

/** Weeks of one kind, one after another. */
export interface SeasonEntry extends Pick<Entry, "name" | "times" | "heads" | "weight" | "absence"> {
  /** Of the study. */
  variant: number;
}

export type SeasonReading = { question: SeasonQuestion; faults: [] } | { question: null; faults: Fault[] };

/** Checks the JSON of a season's file, its plan, and what every kind of week makes of the plan. Paths of files are taken from the folder of the file. */
export function readSeason(written: unknown, files: TextFiles = NO_FILES): SeasonReading {
  const { json, fault } = tellable(written);
  if (fault !== null) return refusedFor([fault]);
  const shape = seasonFile().safeParse(json, PARSING);
  const base = basePlan(json, files);
  if (base === null || base.fault !== null)
    return refusedFor([
      ...(shape.success ? [] : zodFaults(shape.error.issues)),
      ...(base === null ? [] : [base.fault!]),
    ]);
  const { plan, faults } = readPlan(base.json, base.files);
  const ofPlan = faults.map((each) => ({
    ...each,
    path: [base.label, each.path].filter((part) => part !== "").join(": "),
  }));
  const ofWeek = plan !== null && plan.week === undefined ? [noWeek()] : [];
  if (!shape.success || plan === null || ofWeek.length > 0)
    return refusedFor([...(shape.success ? [] : zodFaults(shape.error.issues)), ...ofPlan, ...ofWeek]);
  return readKinds(shape.data, { json: base.json as Json, files: base.files });
}

function refusedFor(faults: Fault[]): SeasonReading {
  return { question: null, faults };
}

function noWeek(): Fault {
  const remedy = 'name a plan with a "week"';
  return { path: "plan", found: "the plan is of one day alone", allowed: "a plan with a week", remedy };
}

interface Base {
  json: Json;
  files: TextFiles;
}

function readKinds(file: SeasonFile, base: Base): SeasonReading {
  const usual = usualWeek(file, base);
  if (usual.plan === null) return refusedFor(usual.faults);
  const variants: Variant[] = [
    { name: "the week as planned", levels: [], set: usual.set, insert: [], remove: [], plan: usual.plan },
  ];
  const [known, faults] = [new Map<string, number>([[kindKey(PLAIN), 0]]), [...repeatedFaults(file.weeks)]];
  const entries = file.weeks.map((entry, index): SeasonEntry => {
    const { name, times, heads, weight, absence } = entry;
    const key = kindKey(entry);
    if (!known.has(key)) {
      const kind = kindOf(entry, usual, base.files);
      faults.push(
        ...kind.faults.map((fault) => ({ ...fault, path: `${formatPath(["weeks", index])}: ${fault.path}` })),
      );
      if (kind.plan !== null)
        variants.push({
          name,
          levels: [],
          set: { ...usual.set, ...kind.set },
          insert: [],
          remove: [],
          plan: kind.plan,
        });
      known.set(key, variants.length - 1);
    }
    return { name, times, heads, weight, absence, variant: known.get(key)! };
  });
  faults.push(...absenceFaults(file, usual.plan));
  if (faults.length > 0) return refusedFor(faults);
  const { name, question, begins } = file;
  return {
    question: { name, question, begins, entries, json: usual.json, study: studyOf(file, variants) },
    faults: [],
  };
}

const PLAIN = { heads: 1, weight: 1, absence: 1, set: {} };

function kindKey({ heads, weight, absence, set }: Pick<Entry, "heads" | "weight" | "absence" | "set">): string {
  return JSON.stringify([heads, weight, absence, set]);
}

function repeatedFaults(weeks: readonly Entry[]): Fault[] {
  return weeks.flatMap(({ name }, index): Fault[] => {
    if (weeks.findIndex((other) => other.name === name) === index) return [];
    const path = formatPath(["weeks", index, "name"]);
    return [{ path, found: `'${name}' appears twice`, allowed: "each name once", remedy: "rename one of them" }];
  });
}

/** A factor on a chance that nobody has says nothing. */
function absenceFaults({ weeks }: SeasonFile, { crews }: Plan): Fault[] {
  const isAsked = weeks.findIndex(({ absence }) => absence !== 1);
  if (isAsked === -1 || crews.some(({ absentShare }) => absentShare > 0)) return [];
  const remedy = 'write for example "absent": "4 %", or leave the factor out';
  const path = formatPath(["weeks", isAsked, "absence"]);
  return [
    {
      path,
      found: "nobody is ever missing in the plan",
      allowed: 'a factor where the season or its plan has "absent"',
      remedy,
    },
  ];
}

interface Usual {
  json: Json;
  plan: Plan;
  set: Json;
}

function usualWeek(
  { set, absent }: SeasonFile,
  base: Base,
): (Usual & { faults: [] }) | { plan: null; faults: Fault[] } {
  const everyCrew = absent === undefined ? {} : Object.fromEntries(crewPaths(base.json).map((path) => [path, absent]));
  const all = { ...everyCrew, ...set };
  const { json, faults } = changedJson(base.json, { set: all, insert: [], remove: [] });
  const found = faults.length > 0 ? { plan: null, faults } : readPlan(json, base.files);
  return found.plan === null
    ? { plan: null, faults: found.faults }
    : { json: json as Json, plan: found.plan, set: all, faults: [] };
}

/** The plan's week with so many times the animals, the weight and the absence. */
function kindOf(
  { heads, weight, absence, set }: Entry,
  { json, plan }: Usual,
  files: TextFiles,
): { plan: Plan | null; set: Json; faults: Fault[] } {
  const figures = [
    { paths: headPaths(json), factor: heads },
    { paths: loadPaths(json).map((at) => formatPath([...at, "liveWeight"])), factor: weight },
    { paths: absentPaths(plan), factor: absence },
  ].filter(({ factor }) => factor !== 1);
  const scaled = inWorld(
    json,
    figures.map(({ paths, factor }) => ({ paths, factors: paths.map(() => factor) })),
  );
  const values = figures.flatMap(({ paths }) => paths.map((path) => [path, valueAt(scaled.json, path)]));
  const all = { ...Object.fromEntries(values), ...set };
  if (scaled.faults.length > 0) return { plan: null, set: all, faults: scaled.faults };
  return { set: all, ...planWith({ json, files }, { set: all, insert: [], remove: [] }) };
}

function valueAt(json: unknown, path: string): unknown {
  const { place } = resolvePath(json, parsePath(path)!);
  return (place!.parent as Record<PropertyKey, unknown>)[place!.key];
}

/** Where the file has the animals' numbers: crates of lorries, or the heads of a stream, and what is promised of them. */
function headPaths(json: Json): string[] {
  const { supply } = json;
  const stream = isRecord(supply) && isRecord(supply.stream) ? [formatPath(["supply", "stream", "heads"])] : [];
  return [...loadPaths(json).map((at) => formatPath([...at, "crates"])), ...stream, ...orderPaths(json)];
}

/** Who brings more animals has sold them. */
function orderPaths({ week }: Json): string[] {
  const { orders } = week as Json;
  return (Array.isArray(orders) ? orders.filter(isRecord) : []).map(({ name, carcasses }) =>
    formatPath(["week", "orders", String(name), carcasses === undefined ? "kilograms" : "carcasses"]),
  );
}

/** Of the usual day, and of each day that has lorries of its own. */
function loadPaths({ supply, week }: Json): (string | number)[][] {
  const usual = isRecord(supply) ? named(supply.loads).map((load) => ["supply", "loads", load]) : [];
  const { days } = week as { days: Json[] };
  return [
    ...usual,
    ...days.flatMap((day) => named(day.loads).map((load) => ["week", "days", String(day.name), "loads", load])),
  ];
}

function named(list: unknown): string[] {
  return Array.isArray(list) ? list.filter(isRecord).map(({ name }) => String(name)) : [];
}

function crewPaths({ crews }: Json): string[] {
  return named(crews).map((crew) => formatPath(["crews", crew, "absent"]));
}

/** Of crews of which somebody may be missing. */
function absentPaths({ crews }: Plan): string[] {
  return crews.filter(({ absentShare }) => absentShare > 0).map(({ name }) => formatPath(["crews", name, "absent"]));
}

function studyOf({ name, question, seed, confidence, runs }: SeasonFile, variants: readonly Variant[]): Study {
  const [{ plan }] = variants as [Variant, ...Variant[]];
  const ends = countedDays(plan).map((day) => `${day.name}.finish`);
  const asked = [...usualResponses(plan), "unfinished", ...ends, ...SUMS];
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  return {
    ...{
      name,
      question: question || "What does the year come to?",
      kind: "what if",
      reader: "planner",
      seed,
      confidence,
    },
    ...{ replications: runs, why: false, factors: [], variants: [...variants] },
    responses: [...new Set(asked)]
      .filter((key) => known.has(key))
      .concat([...known].filter((key) => key.startsWith("cutShort"))),
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}

/** Of the week; what a year is the sum of. */
const SUMS = [
  ...[
    "week.overtime",
    "week.overtimeHours",
    "week.paidHours",
    "week.made",
    "week.carcassKg",
    "week.cost.processing",
    "week.margin",
    "ordersMet",
  ],
];
