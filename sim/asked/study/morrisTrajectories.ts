import { uniformStream } from "../../maths/random/index.ts";
import { shuffled } from "./shuffled.ts";

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
