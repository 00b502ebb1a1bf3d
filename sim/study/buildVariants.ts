import { type Fault, formatFault, type Plan, readPlan, type TextFiles } from "../plan/index.ts";
import type { Draft, DraftVariant } from "./draftVariants.ts";
import { setPathInPlace } from "./setPath.ts";
import type { Variant } from "./study.ts";

export interface BuiltVariants {
  /** Without the base; empty when there are faults. */
  variants: Variant[];
  faults: Fault[];
}

type Base = { json: unknown; files: TextFiles };
type BuiltPlan = { plan: Plan; faults: [] } | { plan: null; faults: Fault[] };

/**
 * Reads the plan of every variant. Faults the base has too are left out; in a factorial a fault that comes back in many
 * combinations is told once, with the first of them.
 */
export function buildVariants(draft: Draft, base: Base, baseFaults: readonly Fault[]): BuiltVariants {
  const told = new Set(baseFaults.map(formatFault));
  const isFactorial = draft.factors.length > 0;
  const built = draft.variants.map((variant) => ({ variant, ...planWith(base, variant.set) }));
  const faults = built.flatMap(({ variant, faults }) => {
    const news = faults.filter((fault) => !told.has(formatFault(fault)));
    if (isFactorial) for (const fault of news) told.add(formatFault(fault));
    return news.map((fault) => ofVariant(variant, fault));
  });
  const variants = built.flatMap(({ variant, plan }) =>
    plan === null ? [] : [{ ...variant, insert: [], remove: [], plan }],
  );
  return faults.length > 0 ? { variants: [], faults } : { variants, faults };
}

/** The base with some values set, read anew. */
export function planWith(base: Base, set: Record<string, unknown>): BuiltPlan {
  const json = structuredClone(base.json);
  const faults = Object.entries(set)
    .map(([path, value]) => setPathInPlace(json, path, value))
    .filter((fault) => fault !== null);
  return faults.length > 0 ? { plan: null, faults } : readPlan(json, base.files);
}

function ofVariant({ name }: DraftVariant, fault: Fault): Fault {
  return { ...fault, path: `variant '${name}': ${fault.path === "" ? "the plan as a whole" : fault.path}` };
}
