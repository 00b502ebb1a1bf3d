import type { Design, Variant } from "./study.ts";

/**
 * Puts the base before the variants of its design. Where a variant kept the base's value it gets the base's level; a
 * variant that has the base's level of every factor is the base, and the design's trajectories then point at it.
 */
export function joinBase(
  base: Variant,
  drafted: readonly Variant[],
  design: Design,
): { variants: Variant[]; design: Design } {
  const levelled = drafted.map((variant) => ({ ...variant, levels: filled(variant.levels, base.levels) }));
  const isBase = levelled.map(({ levels }) => levels.length > 0 && isSame(levels, base.levels));
  const variants = [base];
  const indexOf = levelled.map((variant, index) => (isBase[index] ? 0 : variants.push(variant) - 1));
  if (design.kind !== "screening") return { variants, design };
  const trajectories = design.trajectories.map((points) => points.map((point) => indexOf[point]!));
  return { variants, design: { ...design, trajectories } };
}

function filled(levels: readonly number[], base: readonly number[]): number[] {
  return levels.map((level, factor) => (level === -1 ? base[factor]! : level));
}

/** Where the base has no level of a factor (-1), only a variant that kept the base's value is the same there. */
function isSame(levels: readonly number[], base: readonly number[]): boolean {
  return levels.every((level, factor) => level === base[factor]);
}
