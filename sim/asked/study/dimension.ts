import { isRecord, parsePath } from "../plan/index.ts";
import { type Change, toChange } from "./change.ts";
import type { Dimension } from "./draft.ts";
import { type Range, readRange } from "./range.ts";
import type { FactorFile, SpanFile } from "./schema/factorFile.ts";

const WITHOUT_LIMIT = new Set<unknown>(["buffer", "places", "lairageCrates"]);

/**
 * Turns a sound factor of the file into levels. `valuesOf` says which values of a range become levels; all linked paths
 * get the same number of them.
 */
export function dimension(factor: FactorFile, valuesOf: (range: Range) => unknown[]): Dimension {
  const { name, options } = factor;
  if (options !== undefined)
    return { name, path: "", levels: options.map((option) => option.name), changes: options.map(toChange) };
  const links = (factor.sets ?? [{ ...factor, path: factor.path as string }]).map((link) => ({
    path: link.path,
    values: valuesIn(link, valuesOf),
  }));
  const count = links[0]!.values.length;
  const indices = Array.from({ length: count }, (_, level) => level);
  const words = indices.map((level) => links.map(({ path, values }) => levelWords(values[level], path)).join(" + "));
  const changes = indices.map((level): Change => {
    return { set: Object.fromEntries(links.map(({ path, values }) => [path, values[level]])), insert: [], remove: [] };
  });
  return { name, path: links.map(({ path }) => path).join(" + "), levels: factor.labels ?? words, changes };
}

function valuesIn(span: SpanFile, valuesOf: (range: Range) => unknown[]): unknown[] {
  if (span.levels !== undefined) return span.levels;
  const { value, fault } = readRange(span.from, span.to);
  if (fault !== null) throw new Error(`dimension: ${fault.found}`);
  return valuesOf(value);
}

/** A value of a plan file in words to show, for a level of the factor with this path: an object names its keys and values. */
export function levelWords(value: unknown, path: string): string {
  return value === null && WITHOUT_LIMIT.has(parsePath(path)?.at(-1)) ? "no limit" : valueWords(value);
}

function valueWords(value: unknown): string {
  if (value === null) return "none";
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return `[${value.map(valueWords).join(", ")}]`;
  if (!isRecord(value)) return String(value);
  return Object.entries(value)
    .map(([key, inner]) => (isRecord(inner) ? `${key} (${valueWords(inner)})` : `${key} ${valueWords(inner)}`))
    .join(", ");
}
