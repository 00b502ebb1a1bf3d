/** Names of the two plans in results, files and pictures. */
export const BASE_NAME = "today's plan";
export const VARIANT_NAME = "the variant";

/** The study file that the command line repeats the page's figures with. */
export function studyFile(parts: {
  plan: unknown;
  set: Record<string, unknown>;
  seed: string;
  replications: number;
  responses: readonly string[];
}): Record<string, unknown> {
  const { plan, set, seed, replications, responses } = parts;
  return {
    name: "From the live page",
    question: "What does the change do?",
    reader: "whoever works with the page",
    plan,
    baseName: BASE_NAME,
    seed,
    replications,
    responses,
    design: { list: [{ name: VARIANT_NAME, set }] },
  };
}
