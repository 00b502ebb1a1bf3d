import { type Fault, isRecord, parseJson, readNamedFile, type TextFiles } from "../plan/index.ts";

/** The raw JSON of the base plan and how files named in it are read; `label` goes before the paths of its faults. */
export type BasePlan =
  | { json: unknown; files: TextFiles; label: string; fault: null }
  | { json: null; files: null; label: string; fault: Fault };

/** Finds the base plan of a study file: in it, or in the file it names. Null when the key itself is wrong. */
export function basePlan(studyJson: unknown, files: TextFiles): BasePlan | null {
  const written = isRecord(studyJson) ? studyJson.plan : undefined;
  if (isRecord(written)) return { json: written, files, label: "plan", fault: null };
  if (typeof written !== "string" || written === "") return null;
  const text = readNamedFile(written, files, "the path of a plan file, from the folder of the study");
  if (text.fault !== null) return { json: null, files: null, label: written, fault: { path: "plan", ...text.fault } };
  const { value, fault } = parseJson(text.value);
  if (fault !== null)
    return { json: null, files: null, label: written, fault: { ...fault, path: `${written}, ${fault.path}` } };
  return { json: value, files: filesBeside(written, files), label: written, fault: null };
}

/** Files that a plan names lie where the plan lies. */
function filesBeside(planPath: string, files: TextFiles): TextFiles {
  const folder = planPath.slice(0, Math.max(planPath.lastIndexOf("/"), planPath.lastIndexOf("\\")) + 1);
  return { readText: (path) => files.readText(isAbsolute(path) ? path : folder + path) };
}

function isAbsolute(path: string): boolean {
  return /^(?:[\\/]|[A-Za-z]:)/u.test(path);
}
