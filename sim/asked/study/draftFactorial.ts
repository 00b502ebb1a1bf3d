import { changeAt } from "./changeAt.ts";
import { dimension } from "./dimension.ts";
import type { Dimension, Draft, DraftVariant } from "./draft.ts";
import type { FactorFile } from "./schema/factorFile.ts";

/** Every combination of the levels; the last factor changes fastest. */
export function draftFactorial({ factors }: { factors: readonly FactorFile[] }): Draft {
  const dimensions = factors.map((factor) => dimension(factor, () => []));
  const variants = combinations(dimensions).map((levels) => combined(dimensions, levels));
  return { dimensions, variants, design: { kind: "factorial" }, baseHasLevels: true };
}

function combinations(dimensions: readonly Dimension[]): number[][] {
  return dimensions.reduce<number[][]>(
    (sofar, { levels }) => sofar.flatMap((before) => levels.map((_, level) => [...before, level])),
    [[]],
  );
}

function combined(dimensions: readonly Dimension[], levels: number[]): DraftVariant {
  const name = dimensions.map((factor, index) => `${factor.name} ${factor.levels[levels[index]!]}`).join(", ");
  return { name, levels, ...changeAt(dimensions, levels) };
}
