/** Keys that only a study file has; a plan has none of them. */
const STUDY_KEYS = ["plan", "design", "question", "replications", "responses", "baseName"];
const PLAN_KEYS = ["line", "supply", "day", "crews", "liveHandling"];

/** Whether a file's content is a plan or a study; null when it shows signs of neither. Its name does not matter. */
export function inputKind(json: unknown): "plan" | "study" | null {
  if (typeof json !== "object" || json === null || Array.isArray(json)) return null;
  const signs = (keys: readonly string[]): number => keys.filter((key) => Object.hasOwn(json, key)).length;
  const study = signs(STUDY_KEYS);
  const plan = signs(PLAN_KEYS);
  if (study === 0 && plan === 0) return null;
  return study >= plan ? "study" : "plan";
}
