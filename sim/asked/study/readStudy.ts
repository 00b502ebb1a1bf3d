import {
  type Fault,
  isRecord,
  NO_FILES,
  PARSING,
  type Plan,
  type PlanReading,
  readPlan,
  soundKeys,
  type TextFiles,
  tellable,
  zodFaults,
} from "../plan/index.ts";
import { type BasePlan, basePlan } from "./basePlan.ts";
import { buildVariants, planWith, type ReadSoFar } from "./buildVariants.ts";
import { designFaults } from "./designFaults.ts";
import type { Draft } from "./draft.ts";
import { draftVariants } from "./draftVariants.ts";
import { repeated, twice } from "./factorFaults.ts";
import type { KnownResponse } from "./knownResponse.ts";
import { procedureFaults } from "./procedureFaults.ts";
import { readOnce } from "./readOnce.ts";
import { responseFaults, untilOf } from "./responseFaults.ts";
import { DEFAULT_REPLICATIONS } from "./schema/procedureFile.ts";
import { type StudyFile, studyFile } from "./schema/studyFile.ts";
import type { Design, Procedure, Selection, StoppingRule, Study, Variant } from "./study.ts";

export interface StudyOptions {
  /** The responses that can be had from a plan; without it those that the study names are not checked. */
  knownResponses?: (plan: Plan) => readonly KnownResponse[];
  /** Told how far the reading of variants is: a study may have thousands. */
  read?: ReadSoFar;
}

/** `basePlan` is the base plan's JSON as the file wrote it. */
export type StudyReading =
  | { study: Study; basePlan: unknown; faults: [] }
  | { study: null; basePlan: null; faults: Fault[] };

type SoundBase = Extract<BasePlan, { fault: null }>;

/**
 * Checks the JSON of a study file, reads its base plan and the plan of every variant. All faults come at once: those of
 * the study, of the base plan, and of each variant beyond the base's own. Paths of files are taken from the study's
 * folder; `files` reads them. In a design of factors, the combination that equals the base is the base and is not run
 * twice. Responses that the study names are checked only where `knownResponses` says what there is. Example:
 *
 *     const files = { readText: (path) => readFileSync(resolve(folder, path), "utf8") };
 *     const { study, faults } = readStudy(JSON.parse(text), files, { knownResponses: responsesOf });
 */
export function readStudy(written: unknown, files: TextFiles = NO_FILES, options: StudyOptions = {}): StudyReading {
  const { json, fault } = tellable(written);
  if (fault !== null) return { study: null, basePlan: null, faults: [fault] };
  const shape = schema().safeParse(json, PARSING);
  const studyFiles = readOnce(files);
  const base = basePlan(json, studyFiles);
  const reading = base === null || base.fault !== null ? null : readPlan(base.json, base.files);
  const file = shape.success ? shape.data : soundPart(json, shape.error.issues);
  const ofDesign = file === null ? [] : designFaults(file);
  const faults = [
    ...(shape.success ? [] : zodFaults(shape.error.issues)),
    ...ofDesign,
    ...(shape.success ? procedureFaults(shape.data) : []),
    ...(base?.fault ? [base.fault] : []),
    ...(reading === null ? [] : reading.faults.map((fault) => ofBase(fault, (base as SoundBase).label))),
  ];
  const stop = file === null || base === null || base.fault !== null || reading === null;
  if (stop) return { study: null, basePlan: null, faults };
  // A design that is wrong in itself (say with too many combinations) is not worked out.
  const workedOut = ofDesign.length > 0 ? { ...file, design: undefined } : file;
  return withVariants(workedOut, { ...base, studyFiles }, reading, faults, options);
}

let built: ReturnType<typeof studyFile> | undefined;

/** Building the schema costs milliseconds, and the live page reads a study whenever a control moves. */
function schema(): ReturnType<typeof studyFile> {
  built ??= studyFile();
  return built;
}

/** What can be read of a file with faults of shape; null where that is nothing. Names of variants hang on that of the base. */
function soundPart(json: unknown, issues: Parameters<typeof soundKeys>[1]): StudyFile | null {
  const sound = soundKeys(json, issues);
  if (sound === null || !("plan" in sound)) return null;
  const { baseName, design, ...others } = sound;
  const together = isRecord(json) && "baseName" in json && baseName === undefined ? {} : { baseName, design };
  const shape = schema().safeParse({ name: "a study", ...others, ...together }, PARSING);
  return shape.success ? shape.data : null;
}

function withVariants(
  file: StudyFile,
  base: SoundBase & { studyFiles: TextFiles },
  reading: PlanReading,
  earlier: readonly Fault[],
  options: StudyOptions,
): StudyReading {
  const draft = draftVariants(file);
  const names = draft.dimensions.length > 0 ? generatedNameFaults(file.baseName, draft.variants) : [];
  const built = buildVariants(draft, base, reading.faults, options.read);
  const known = reading.plan === null ? undefined : options.knownResponses?.(reading.plan);
  const faults = [...earlier, ...names, ...built.faults, ...(known === undefined ? [] : responseFaults(file, known))];
  if (reading.plan === null || faults.length > 0) return { study: null, basePlan: null, faults };
  const levels = baseLevels(draft, base, reading.plan);
  const first = { name: file.baseName, levels, set: {}, insert: [], remove: [], plan: reading.plan };
  const joined = joinBase(first, built.variants, draft.design);
  const { name, question, reader, seed, confidence, responses, why } = file;
  const { replications, procedure } = toProcedure(file);
  const factors = draft.dimensions.map(({ name, path, levels }) => ({ name, path, levels }));
  const asked = { name, question, reader, seed, replications, confidence, responses, why, ...asks(file) };
  const study = { ...asked, factors, ...joined, procedure };
  return { study, basePlan: base.json, faults: [] };
}

/** What the file says of its question, and nothing where it does not. */
function asks({ asks: kind, matters }: StudyFile): Pick<Study, "kind" | "matters"> {
  const least = matters.map(({ response, difference }) => [response, difference.value] as const);
  return {
    ...(kind === undefined ? {} : { kind }),
    ...(least.length === 0 ? {} : { matters: Object.fromEntries(least) }),
  };
}

/** Names made of factors and levels can meet by chance; those of a list were looked at with the design. */
function generatedNameFaults(baseName: string, variants: readonly { name: string }[]): Fault[] {
  const names = [baseName, ...variants.map(({ name }) => name)];
  return repeated(names).map((index) => twice(["design"], names[index]!, "variants, the base included"));
}

function ofBase(fault: Fault, label: string): Fault {
  if (label === "plan") return { ...fault, path: fault.path === "" ? label : `${label}.${fault.path}` };
  return { ...fault, path: fault.path === "" ? label : `${label}: ${fault.path}` };
}

/**
 * For each factor the level that leaves the base plan as it is, or -1 when none does. Plans are compared, not words, so
 * "60 s" and "1 min" are one level.
 */
function baseLevels(draft: Draft, base: { json: unknown; files: TextFiles }, plan: Plan): number[] {
  if (!draft.baseHasLevels) return draft.dimensions.map(() => -1);
  const basePlan = comparable(plan);
  return draft.dimensions.map(({ changes }) =>
    changes.findIndex((change) => {
      const changed = planWith(base, change).plan;
      return changed !== null && comparable(changed) === basePlan;
    }),
  );
}

/** JSON has no word for infinity; and plans are always built with their keys in one order. */
function comparable(plan: Plan): string {
  return JSON.stringify(plan, (_, value) => (value === Number.POSITIVE_INFINITY ? "no limit" : value));
}

/**
 * Puts the base before the variants of its design. Where a variant kept the base's value it gets the base's level; a
 * variant that has the base's level of every factor is the base, and the design's trajectories then point at it.
 */
export function joinBase(
  base: Variant,
  drafted: readonly Variant[],
  design: Design,
): { variants: Variant[]; design: Design } {
  const levelled = drafted.map((variant) => ({ ...variant, levels: filled(variant.levels, base.levels) }));
  const isBase = levelled.map(({ levels }) => levels.length > 0 && isSame(levels, base.levels));
  const variants = [base];
  const indexOf = levelled.map((variant, index) => (isBase[index] ? 0 : variants.push(variant) - 1));
  if (design.kind !== "screening") return { variants, design };
  const trajectories = design.trajectories.map((points) => points.map((point) => indexOf[point]!));
  return { variants, design: { ...design, trajectories } };
}

function filled(levels: readonly number[], base: readonly number[]): number[] {
  return levels.map((level, factor) => (level === -1 ? base[factor]! : level));
}

/** Where the base has no level of a factor (-1), only a variant that kept the base's value is the same there. */
function isSame(levels: readonly number[], base: readonly number[]): boolean {
  return levels.every((level, factor) => level === base[factor]);
}

/** How days are run and compared, and how many there are at most, from a file without faults. */
function toProcedure(file: StudyFile): { replications: number; procedure: Procedure } {
  const { antithetic, errorRate } = file;
  const stopping = toStopping(file);
  const selection = toSelection(file);
  const controls = file.controls.map(({ response, mean }) => ({ response, mean: mean.value }));
  const written = typeof file.replications === "number" ? file.replications : DEFAULT_REPLICATIONS;
  const replications = stopping?.atMost ?? selection?.atMost ?? written;
  return { replications, procedure: { stopping, selection, antithetic, controls, errorRate } };
}

function toStopping(file: StudyFile): StoppingRule | null {
  const until = untilOf(file);
  if (until === undefined) return null;
  const { response, halfWidth, of, atLeast, atMost } = until;
  const kind = halfWidth.form === "percent" ? "relative" : "absolute";
  return { response, halfWidth: { kind, value: halfWidth.value }, of, atLeast, atMost };
}

function toSelection({ selection }: StudyFile): Selection | null {
  if (selection === undefined) return null;
  const { response, better, difference, probability, firstStage, atMost } = selection;
  return { response, better: better ?? null, difference: difference.value, probability, firstStage, atMost };
}
