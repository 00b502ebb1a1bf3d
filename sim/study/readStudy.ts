import { type Fault, type Plan, type PlanReading, readPlan, type TextFiles, zodFaults } from "../plan/index.ts";
import { baseLevels } from "./baseLevels.ts";
import { type BasePlan, basePlan } from "./basePlan.ts";
import { buildVariants } from "./buildVariants.ts";
import { designFaults } from "./designFaults.ts";
import { draftVariants } from "./draftVariants.ts";
import { readOnce } from "./readOnce.ts";
import { responseFaults } from "./responseFaults.ts";
import { PLAIN_PROCEDURE, type Study } from "./study.ts";
import { type StudyFile, studyFile } from "./studyFile.ts";

export interface StudyOptions {
  /** Keys of the responses that can be had from a plan; without it they are not checked. */
  knownResponses?: (plan: Plan) => string[];
}

/** `basePlan` is the base plan's JSON as the file wrote it. */
export type StudyReading =
  | { study: Study; basePlan: unknown; faults: [] }
  | { study: null; basePlan: null; faults: Fault[] };

type SoundBase = Extract<BasePlan, { fault: null }>;

/**
 * Checks the JSON of a study file, reads its base plan and the plan of every variant. All faults come at once: those of
 * the study, of the base plan, and of each variant beyond the base's own. Paths of files are taken from the study's
 * folder; `files` reads them. In a factorial, the combination that equals the base is the base and is not run twice.
 */
export function readStudy(json: unknown, files: TextFiles, options: StudyOptions = {}): StudyReading {
  const shape = studyFile().safeParse(json, { reportInput: true });
  const base = basePlan(json, readOnce(files));
  const reading = base === null || base.fault !== null ? null : readPlan(base.json, base.files);
  const ownFaults = shape.success ? designFaults(shape.data) : zodFaults(shape.error.issues);
  const faults = [
    ...ownFaults,
    ...(base?.fault ? [base.fault] : []),
    ...(reading === null ? [] : reading.faults.map((fault) => ofBase(fault, (base as SoundBase).label))),
  ];
  // A design that is wrong in itself (say with too many combinations) is not worked out.
  const stop = !shape.success || ownFaults.length > 0 || base === null || base.fault !== null || reading === null;
  if (stop) return { study: null, basePlan: null, faults };
  return withVariants(shape.data, base, reading, faults, options);
}

function withVariants(
  file: StudyFile,
  base: SoundBase,
  reading: PlanReading,
  earlier: readonly Fault[],
  options: StudyOptions,
): StudyReading {
  const draft = draftVariants(file.design);
  const built = buildVariants(draft, base, reading.faults);
  const known = reading.plan === null ? undefined : options.knownResponses?.(reading.plan);
  const faults = [...earlier, ...built.faults, ...(known === undefined ? [] : responseFaults(file.responses, known))];
  if (reading.plan === null || faults.length > 0) return { study: null, basePlan: null, faults };
  const levels = baseLevels(draft, base, reading.plan);
  const isBase = (variant: { levels: number[] }) => levels.length > 0 && variant.levels.join() === levels.join();
  const variants = built.variants.filter((variant) => !isBase(variant));
  const first = { name: file.baseName, levels, set: {}, insert: [], remove: [], plan: reading.plan };
  return { study: toStudy(file, draft.factors, [first, ...variants]), basePlan: base.json, faults: [] };
}

function toStudy(file: StudyFile, factors: Study["factors"], variants: Study["variants"]): Study {
  const { name, question, reader, seed, replications, confidence, responses } = file;
  return {
    ...{ name, question, reader, seed, replications, confidence, responses, factors, variants },
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}

function ofBase(fault: Fault, label: string): Fault {
  if (label === "plan") return { ...fault, path: fault.path === "" ? label : `${label}.${fault.path}` };
  return { ...fault, path: fault.path === "" ? label : `${label}: ${fault.path}` };
}
