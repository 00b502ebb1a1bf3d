import type { Demand } from "./demand.ts";
import type { SizedCrew, SizedStation } from "./design.ts";
import { MAINTENANCE } from "./repairs.ts";

const ROUNDING = 1e-9;

/**
 * People where each step has a crew of its own. One at each position of the line; those who handle crates share their steps, as many as their
 * work takes.
 */
export function sizeCrews({ line }: Demand, stations: readonly SizedStation[], headsPerSecond: number): SizedCrew[] {
  const names = [...new Set(stations.flatMap(({ crew }) => (crew === null ? [] : [crew])))];
  return names.map((name) => {
    const own = stations.filter(({ crew }) => crew === name);
    const busy = own.reduce((sum, { personSecondsPerHead }) => sum + personSecondsPerHead * headsPerSecond, 0);
    const posts = own.reduce((sum, { positions, peoplePerPosition }) => sum + positions * peoplePerPosition, 0);
    const least = Math.max(...own.map(({ peoplePerPosition }) => peoplePerPosition));
    const people =
      own.length > 1 ? Math.min(posts, Math.max(least, Math.ceil(busy / line.handLoad - ROUNDING))) : posts;
    return {
      name,
      zone: null,
      people,
      steps: own.map((station) => station.name),
      walkingSeconds: 0,
      load: busy / people,
    };
  });
}

/** Those who repair, where anything breaks down: as many as the repairs take, and at least one. */
export function sizeMaintenance({ line }: Demand, stations: readonly SizedStation[]): SizedCrew[] {
  const repaired = stations.filter(({ repairLoad }) => repairLoad > 0);
  if (repaired.length === 0) return [];
  const busy = repaired.reduce((sum, { repairLoad }) => sum + repairLoad, 0);
  const people = Math.max(1, Math.ceil(busy / line.handLoad - ROUNDING));
  const steps = repaired.map(({ name }) => name);
  return [{ name: MAINTENANCE, zone: null, people, steps, walkingSeconds: 0, load: busy / people }];
}
