import { dimension } from "./dimension.ts";
import type { Draft } from "./draft.ts";
import type { FactorFile } from "./schema/factorFile.ts";

/** Every level of every factor by itself, factor by factor; of a range, its two ends. */
export function draftOneAtATime({ factors }: { factors: readonly FactorFile[] }): Draft {
  const dimensions = factors.map((factor) => dimension(factor, (range) => [range.at(0), range.at(1)]));
  const variants = dimensions.flatMap((factor, index) =>
    factor.changes.map((change, level) => ({
      name: `${factor.name} ${factor.levels[level]}`,
      levels: dimensions.map((_, other) => (other === index ? level : -1)),
      ...change,
    })),
  );
  return { dimensions, variants, design: { kind: "one at a time" }, baseHasLevels: true };
}
