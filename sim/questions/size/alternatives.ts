import type { WAYS, Way } from "../../asked/plan/index.ts";

/** Kinds of plant that a demand is sized to. */
export const ALTERNATIVES = [
  "full line by hand",
  "full line with lift",
  "full line automatic",
  "compact plant",
  "compact plant, fewest people",
] as const;

export type AlternativeName = (typeof ALTERNATIVES)[number];

/**
 * How people are placed: a crew of its own for each step; posts that take in neighbouring steps, enough of them for the design rate; or such
 * posts for the required rate alone, without a reserve for stops of the line.
 */
export type Staffing = "a crew for each step" | "pooled posts" | "pooled posts, fewest people";

const FULL: Record<(typeof WAYS)[number], AlternativeName> = {
  "hand-slid": "full line by hand",
  lift: "full line with lift",
  automatic: "full line automatic",
};

/** What is sized where a demand names nothing: the full line, with live crates handled as the demand says. */
export function fullLine(way: Way): AlternativeName {
  return FULL[way];
}

/** What a name stands for. A compact plant handles live crates as the demand says. */
export function alternativeOf(name: AlternativeName, way: Way): { way: Way; staffing: Staffing } {
  if (name === "compact plant") return { way, staffing: "pooled posts" };
  if (name === "compact plant, fewest people") return { way, staffing: "pooled posts, fewest people" };
  const found = Object.entries(FULL).find(([, full]) => full === name)!;
  return { way: found[0] as Way, staffing: "a crew for each step" };
}
