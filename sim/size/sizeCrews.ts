import type { Demand } from "./demand.ts";
import type { SizedCrew, SizedStation } from "./design.ts";

const ROUNDING = 1e-9;
export const MAINTENANCE = "maintenance";

/**
 * People of every crew. One at each position of the line; those who handle crates share their steps, as many as their work takes. One
 * person repairs where anything breaks down.
 */
export function sizeCrews({ line, steps }: Demand, stations: readonly SizedStation[]): SizedCrew[] {
  const names = [...new Set(stations.flatMap(({ crew }) => (crew === null ? [] : [crew])))];
  const crews = names.map((name) => {
    const own = stations.filter(({ crew }) => crew === name);
    const busy = own.reduce(
      (sum, { load, positions, peoplePerPosition }) => sum + load * positions * peoplePerPosition,
      0,
    );
    const posts = own.reduce((sum, { positions, peoplePerPosition }) => sum + positions * peoplePerPosition, 0);
    const people = own.length > 1 ? Math.min(posts, Math.max(1, Math.ceil(busy / line.handLoad - ROUNDING))) : posts;
    return { name, people, load: busy / people };
  });
  const breaks = steps.some(({ figures }) => (figures.breakdowns ?? []).length > 0);
  return breaks ? [...crews, { name: MAINTENANCE, people: 1, load: 0 }] : crews;
}
