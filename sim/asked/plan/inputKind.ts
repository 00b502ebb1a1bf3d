/** Kinds of files that people write. */
export type InputKind = "plan" | "study" | "demand" | "options" | "improve" | "season";

/** Keys that tell kinds apart; those that all have say nothing. Where as many speak for two kinds, the first one is meant. */
const KEYS: Record<InputKind, readonly string[]> = {
  study: ["plan", "design", "question", "replications", "responses", "baseName"],
  plan: ["line", "supply", "day", "crews", "liveHandling"],
  demand: ["week", "animals", "steps", "crates", "day", "line"],
  options: ["plan", "options", "interest", "daysPerYear", "question", "replications", "baseName"],
  improve: ["plan", "allocate", "goal", "search", "firstStage", "question", "baseName", "interest", "daysPerYear"],
  season: ["plan", "weeks", "runs", "absent", "begins"],
};

/** What a file's content is; null when it shows signs of nothing. Its name does not matter. */
export function inputKind(json: unknown): InputKind | null {
  if (typeof json !== "object" || json === null || Array.isArray(json)) return null;
  // A week in a file of its own names the plan of the plant.
  if (Object.hasOwn(json, "plan") && Object.hasOwn(json, "week")) return "plan";
  const kinds = Object.keys(KEYS) as InputKind[];
  const signs = (kind: InputKind): number => KEYS[kind].filter((key) => Object.hasOwn(json, key)).length;
  const likeliest = kinds.reduce((best, kind) => (signs(kind) > signs(best) ? kind : best));
  return signs(likeliest) === 0 ? null : likeliest;
}
