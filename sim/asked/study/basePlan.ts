import {
  type Fault,
  filesBeside,
  isRecord,
  namedPlan,
  parseJson,
  readNamedFile,
  type TextFiles,
} from "../plan/index.ts";

/** The raw JSON of the base plan and how files named in it are read; `label` goes before the paths of its faults. */
export type BasePlan =
  | { json: unknown; files: TextFiles; label: string; fault: null }
  | { json: null; files: null; label: string; fault: Fault };

/** Finds the base plan of a study file: in it, or in the file it names. Null when the key itself is wrong. */
export function basePlan(studyJson: unknown, files: TextFiles): BasePlan | null {
  const written = isRecord(studyJson) ? studyJson.plan : undefined;
  if (isRecord(written)) return whole(written, files, "plan");
  if (typeof written !== "string" || written === "") return null;
  const text = readNamedFile(written, files, "the path of a plan file, from the folder of the study");
  if (text.fault !== null) return { json: null, files: null, label: written, fault: { path: "plan", ...text.fault } };
  const { value, fault } = parseJson(text.value);
  if (fault !== null)
    return { json: null, files: null, label: written, fault: { ...fault, path: `${written}, ${fault.path}` } };
  return whole(value, filesBeside(written, files), written);
}

/** A plan of a week may name the plan of the plant. */
function whole(json: unknown, files: TextFiles, label: string): BasePlan {
  const plan = namedPlan(json, files);
  if (plan.fault === null) return { json: plan.json, files: plan.files, label, fault: null };
  const path = label === "plan" ? `plan.${plan.fault.path}` : `${label}: ${plan.fault.path}`;
  return { json: null, files: null, label, fault: { ...plan.fault, path } };
}
