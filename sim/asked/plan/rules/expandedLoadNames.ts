import { isRecord } from "../isRecord.ts";
import { CEILINGS } from "../schema/ceilings.ts";

/** The names one written load stands for: its own, or "name 1" to "name n" when it repeats. */
export function expandedLoadNames(load: { name?: unknown; repeat?: unknown }): string[] {
  if (typeof load.name !== "string") return [];
  const times = isRecord(load.repeat) ? load.repeat.times : undefined;
  if (typeof times !== "number") return [load.name];
  const count = Math.min(Math.max(times, 0), CEILINGS.loads);
  return Array.from({ length: count }, (_, index) => `${load.name} ${index + 1}`);
}
