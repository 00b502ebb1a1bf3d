import type { Fault } from "./fault.ts";
import { isRecord } from "./isRecord.ts";
import { parseJson } from "./parseJson.ts";
import { readNamedFile } from "./readNamedFile.ts";
import type { TextFiles } from "./textFiles.ts";

export type WholePlan = { json: unknown; files: TextFiles; fault: null } | { json: null; files: null; fault: Fault };

/**
 * The JSON of a plan that may name another plan's file under "plan": that plan, with each of this file's own keys in place of
 * the same key there. So a week can stand in a file of its own beside the plant. `files` reads by paths of this file; those
 * given back, by paths of the plan that is named.
 */
export function namedPlan(json: unknown, files: TextFiles): WholePlan {
  if (!isRecord(json) || typeof json.plan !== "string" || !isRecord(json.week)) return { json, files, fault: null };
  const { plan: path, ...own } = json;
  const text = readNamedFile(path as string, files, "the path of a plan file, from the folder of this one");
  if (text.fault !== null) return { json: null, files: null, fault: { path: "plan", ...text.fault } };
  const { value, fault } = parseJson(text.value);
  if (fault !== null) return { json: null, files: null, fault: { ...fault, path: `${path}, ${fault.path}` } };
  if (!isRecord(value)) return { json: value, files, fault: null };
  return { json: { ...value, ...own }, files: filesBeside(path as string, files), fault: null };
}

/** Files that a plan names lie where the plan lies. */
export function filesBeside(planPath: string, files: TextFiles): TextFiles {
  const folder = planPath.slice(0, Math.max(planPath.lastIndexOf("/"), planPath.lastIndexOf("\\")) + 1);
  return { readText: (path) => files.readText(isAbsolute(path) ? path : folder + path) };
}

function isAbsolute(path: string): boolean {
  return /^(?:[\\/]|[A-Za-z]:)/u.test(path);
}
