import type { Study } from "../../asked/study/index.ts";
import { type ElementaryEffects, elementaryEffects } from "../../maths/statistics/index.ts";

/**
 * The elementary effects of a study's factors on one response, in the order of its factors; null when the study is no
 * screening. `means[variant]`: the response's mean over the days of each variant, null where it has none.
 */
export function screeningEffects(
  { design, variants, factors }: Pick<Study, "design" | "variants" | "factors">,
  means: readonly (number | null)[],
  confidence: number,
): (ElementaryEffects | null)[] | null {
  if (design.kind !== "screening") return null;
  const { levels, trajectories } = design;
  const points = trajectories.map((indices) =>
    indices.map((variant) => ({
      point: variants[variant]!.levels.map((level) => level / (levels - 1)),
      value: means[variant] ?? null,
    })),
  );
  return elementaryEffects(points, factors.length, confidence);
}
