import {
  type Fault,
  isRecord,
  PARSING,
  type Plan,
  type PlanReading,
  readPlan,
  soundKeys,
  type TextFiles,
  zodFaults,
} from "../plan/index.ts";
import { baseLevels } from "./baseLevels.ts";
import { type BasePlan, basePlan } from "./basePlan.ts";
import { buildVariants } from "./buildVariants.ts";
import { designFaults } from "./designFaults.ts";
import { draftVariants } from "./draftVariants.ts";
import { repeated, twice } from "./factorFaults.ts";
import { joinBase } from "./joinBase.ts";
import type { KnownResponse } from "./knownResponse.ts";
import { procedureFaults } from "./procedureFaults.ts";
import { readOnce } from "./readOnce.ts";
import { responseFaults } from "./responseFaults.ts";
import { type StudyFile, studyFile } from "./schema/studyFile.ts";
import type { Study } from "./study.ts";
import { toProcedure } from "./toProcedure.ts";

export interface StudyOptions {
  /** The responses that can be had from a plan; without it those that the study names are not checked. */
  knownResponses?: (plan: Plan) => readonly KnownResponse[];
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
 * twice.
 */
export function readStudy(json: unknown, files: TextFiles, options: StudyOptions = {}): StudyReading {
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
  const built = buildVariants(draft, base, reading.faults);
  const known = reading.plan === null ? undefined : options.knownResponses?.(reading.plan);
  const faults = [...earlier, ...names, ...built.faults, ...(known === undefined ? [] : responseFaults(file, known))];
  if (reading.plan === null || faults.length > 0) return { study: null, basePlan: null, faults };
  const levels = baseLevels(draft, base, reading.plan);
  const first = { name: file.baseName, levels, set: {}, insert: [], remove: [], plan: reading.plan };
  const joined = joinBase(first, built.variants, draft.design);
  const { name, question, reader, seed, confidence, responses, why } = file;
  const { replications, procedure } = toProcedure(file);
  const factors = draft.dimensions.map(({ name, path, levels }) => ({ name, path, levels }));
  const asked = { name, question, reader, seed, replications, confidence, responses, why };
  const study = { ...asked, factors, ...joined, procedure };
  return { study, basePlan: base.json, faults: [] };
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
