import { uniformStream } from "../../maths/random/index.ts";
import { changeAt } from "./changeAt.ts";
import { dimension } from "./dimension.ts";
import type { Draft, DraftVariant } from "./draft.ts";
import type { Range } from "./range.ts";
import type { FactorFile } from "./schema/factorFile.ts";
import { shuffled } from "./shuffled.ts";

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

/**
 * Random walks through a grid for elementary effects (Morris 1991, Technometrics 33(2)): each begins at a random grid
 * point and moves one factor at a time, each factor once, in random order, up or down by half the levels.
 *
 * `levels` even: every level is then as likely as every other. Gives, for each trajectory, `factors` + 1 points of
 * `factors` level indices. The seed alone decides; more trajectories leave the earlier ones as they were.
 */
export function morrisTrajectories(factors: number, trajectories: number, levels: number, seed: string): number[][][] {
  return Array.from({ length: trajectories }, (_, trajectory) => {
    const uniforms = uniformStream(seed, trajectory, "design", "screening");
    const half = levels / 2;
    const low = Array.from({ length: factors }, () => Math.floor(uniforms.next() * half));
    const upward = low.map(() => uniforms.next() < 0.5);
    const order = shuffled(factors, uniforms);
    const point = low.map((level, factor) => (upward[factor] ? level : level + half));
    const points = [[...point]];
    for (const factor of order) {
      point[factor] = upward[factor] ? low[factor]! + half : low[factor]!;
      points.push([...point]);
    }
    return points;
  });
}
