import type { Fault } from "./fault.ts";
import { PARSING } from "./parsing.ts";
import type { Plan } from "./plan.ts";
import { checkRules } from "./rules/checkRules.ts";
import { planFile } from "./schema/planFile.ts";
import { tellable } from "./tellable.ts";
import { NO_FILES, type TextFiles } from "./textFiles.ts";
import { toPlan } from "./toPlan.ts";
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
  const warnings = planWarnings(plan, json);
  if (shape.data.week === null) return { plan, faults: [], warnings };
  const whole = { json: json as Record<string, unknown>, plan, file: shape.data.week };
  const reading = readWeek({ ...whole, readDay: (day) => readPlan(day, files) });
  if (reading.week === null) return { plan: null, faults: reading.faults };
  return { plan: { ...plan, week: reading.week }, faults: [], warnings };
}

function schemaFor(files: TextFiles): ReturnType<typeof planFile> {
  const known = schemas.get(files);
  if (known !== undefined) return known;
  const built = planFile(files);
  schemas.set(files, built);
  return built;
}
