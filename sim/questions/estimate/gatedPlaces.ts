import type { Plan } from "../../asked/plan/index.ts";

/** Most heads that a gate lets stand between a station and the one before it, finished heads without a place not counted. */
export function gatedPlaces(name: string, { line, gates }: Plan): number {
  const main = line.filter(({ offLine }) => !offLine);
  const before = main[main.findIndex((stage) => stage.name === name) - 1];
  if (before === undefined) return Number.POSITIVE_INFINITY;
  const spanning = gates.filter(({ from, to }) => from === before.name && to.stage === name && to.moment === "start");
  const positions = before.kind === "station" ? before.positions : 0;
  return Math.min(...spanning.map(({ atMost }) => Math.max(0, atMost - positions)));
}
