import { type Fault, formatFault, type Plan, readPlan, type TextFiles } from "../plan/index.ts";
import { applyChangeInPlace } from "./applyChange.ts";
import { basePlan } from "./basePlan.ts";
import type { Change } from "./change.ts";
import type { Draft, DraftVariant } from "./draft.ts";
import type { Variant } from "./study.ts";

export interface BuiltVariants {
  /** Without the base; empty when there are faults. */
  variants: Variant[];
  faults: Fault[];
}

/** Is told before each variant is read how many were, and of how many. */
export type ReadSoFar = (done: number, total: number) => void;

/** `studyFiles` reads the files that the study names. */
type Base = { json: unknown; files: TextFiles; studyFiles: TextFiles };
type BuiltPlan = { plan: Plan; faults: [] } | { plan: null; faults: Fault[] };

/**
 * Reads the plan of every variant. Faults the base has too are left out; in a design of factors a fault that comes back
 * in many combinations is told once, with the first of them.
 */
export function buildVariants(
  draft: Draft,
  base: Base,
  baseFaults: readonly Fault[],
  read: ReadSoFar = () => {},
): BuiltVariants {
  const told = new Set(baseFaults.map(formatFault));
  const hasFactors = draft.dimensions.length > 0;
  const built = draft.variants.map(({ planPath, ...variant }, index) => {
    read(index, draft.variants.length);
    if (planPath === undefined) return { variant, ...planWith(base, variant) };
    // What was changed, for whoever reads the results: another plan first of all.
    return { variant: { ...variant, set: { plan: planPath, ...variant.set } }, ...planFrom(planPath, base, variant) };
  });
  const faults = built.flatMap(({ variant, faults }) => {
    const news = faults.filter((fault) => !told.has(formatFault(fault)));
    if (hasFactors) for (const fault of news) told.add(formatFault(fault));
    return news.map((fault) => ofVariant(variant, fault));
  });
  const variants = built.flatMap(({ variant, plan }) => (plan === null ? [] : [{ ...variant, plan }]));
  return faults.length > 0 ? { variants: [], faults } : { variants, faults };
}

/** The base with some things changed, read anew. */
export function planWith(base: Pick<Base, "json" | "files">, change: Change): BuiltPlan {
  const { json, faults } = changedJson(base.json, change);
  return faults.length > 0 ? { plan: null, faults } : readPlan(json, base.files);
}

/** A changed copy of a plan's JSON, with every path of the change that leads nowhere. */
export function changedJson(base: unknown, change: Change): { json: unknown; faults: Fault[] } {
  const json = structuredClone(base);
  return { json, faults: applyChangeInPlace(json, change) };
}

/** Another plan file, with the variant's changes, in place of the base. */
function planFrom(planPath: string, { studyFiles }: Base, change: Change): BuiltPlan {
  const other = basePlan({ plan: planPath }, studyFiles);
  if (other === null || other.fault !== null) return { plan: null, faults: other === null ? [] : [other.fault] };
  return planWith({ json: other.json, files: other.files }, change);
}

function ofVariant({ name }: DraftVariant, fault: Fault): Fault {
  return { ...fault, path: `variant '${name}': ${fault.path === "" ? "the plan as a whole" : fault.path}` };
}
