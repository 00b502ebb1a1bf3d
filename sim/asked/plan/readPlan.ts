import type { Fault } from "./fault.ts";
import { PARSING } from "./parsing.ts";
import type { Plan } from "./plan.ts";
import { checkRules } from "./rules/checkRules.ts";
import { planFile } from "./schema/planFile.ts";
import { tellable } from "./tellable.ts";
import { NO_FILES, type TextFiles } from "./textFiles.ts";
import { toPlan } from "./toPlan.ts";
import { factorsAt } from "./uncertain/factorsAt.ts";
import { inWorld } from "./uncertain/inWorld.ts";
import { planWarnings } from "./warnings/planWarnings.ts";
import { readWeek } from "./week/readWeek.ts";
import { zodFaults } from "./zodFaults.ts";

/** `warnings` are what a sound plan probably does not mean; they have the shape of faults. */
export type PlanReading = { plan: Plan; faults: []; warnings: Fault[] } | { plan: null; faults: Fault[] };

/** Building the schema costs milliseconds, and a study reads thousands of plans with the same files. */
const schemas = new WeakMap<TextFiles, ReturnType<typeof planFile>>();

/**
 * Checks the JSON of a plan file and turns it into a plan in SI units. All faults come at once: those of shape, and what
 * the sound parts say wrongly of each other. `files` reads CSV files that distributions name; left out, such a name is a
 * fault. The JSON is left untouched. Example:
 *
 *     const { plan, faults } = readPlan(JSON.parse(text));
 *     if (plan === null) throw new Error(faults.map(formatFault).join("\n"));
 */
export function readPlan(written: unknown, files: TextFiles = NO_FILES): PlanReading {
  const { json, fault } = tellable(written);
  if (fault !== null) return { plan: null, faults: [fault] };
  const shape = schemaFor(files).safeParse(json, PARSING);
  const shapeFaults = shape.success ? [] : zodFaults(shape.error.issues);
  const faults = [...shapeFaults, ...checkRules(json)];
  if (!shape.success || faults.length > 0) return { plan: null, faults };
  const plan = toPlan(shape.data);
  const extreme = extremeFaults(plan, json as Record<string, unknown>, files);
  if (extreme.length > 0) return { plan: null, faults: extreme };
  const warnings = planWarnings(plan, json);
  if (shape.data.week === null) return { plan, faults: [], warnings };
  const whole = { json: json as Record<string, unknown>, plan, file: shape.data.week };
  const reading = readWeek({ ...whole, readDay: (day) => readPlan(day, files) });
  if (reading.week === null) return { plan: null, faults: reading.faults };
  return { plan: { ...plan, week: reading.week }, faults: [], warnings };
}

/** Shares of what an uncertain figure may be that lie below where it is tried: hardly anything lies beyond. */
const EXTREMES = { lowest: 0.001, highest: 0.999 } as const;

/** The plan is sound too where all that is uncertain is as small, or as large, as it may well be. */
function extremeFaults({ uncertain = [] }: Plan, json: Record<string, unknown>, files: TextFiles): Fault[] {
  if (uncertain.length === 0) return [];
  for (const [which, u] of Object.entries(EXTREMES)) {
    const figures = uncertain.map((figure) => ({ paths: figure.paths, factors: factorsAt(figure, u) }));
    const { faults } = readPlan(inWorld(json, figures).json, files);
    if (faults.length > 0)
      return faults.map((fault) => ({ ...fault, path: `uncertain, every factor at its ${which}: ${fault.path}` }));
  }
  return [];
}

function schemaFor(files: TextFiles): ReturnType<typeof planFile> {
  const known = schemas.get(files);
  if (known !== undefined) return known;
  const built = planFile(files);
  schemas.set(files, built);
  return built;
}
