import { changeAt } from "./changeAt.ts";
import { dimension } from "./dimension.ts";
import type { Draft, DraftVariant } from "./draft.ts";
import { morrisTrajectories } from "./morrisTrajectories.ts";
import type { Range } from "./range.ts";
import type { FactorFile } from "./schema/factorFile.ts";

interface Screening {
  factors: readonly FactorFile[];
  trajectories: number;
  levels: number;
  seed: string;
}

/** Variants at the points of the trajectories; a point that two of them share is one variant. */
export function draftScreening({ factors, trajectories, levels, seed }: Screening): Draft {
  const cut = (range: Range) => Array.from({ length: levels }, (_, level) => range.at(level / (levels - 1)));
  const dimensions = factors.map((factor) => dimension(factor, cut));
  const variants: DraftVariant[] = [];
  const known = new Map<string, number>();
  const indexOf = (point: number[], name: string): number => {
    const before = known.get(point.join());
    if (before !== undefined) return before;
    known.set(point.join(), variants.length);
    return variants.push({ name, levels: point, ...changeAt(dimensions, point) }) - 1;
  };
  const walks = morrisTrajectories(factors.length, trajectories, levels, seed).map((points, walk) =>
    points.map((point, step) => indexOf(point, `trajectory ${walk + 1}, point ${step + 1}`)),
  );
  return { dimensions, variants, design: { kind: "screening", levels, trajectories: walks }, baseHasLevels: true };
}
