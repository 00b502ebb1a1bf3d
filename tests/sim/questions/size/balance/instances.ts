import type { Tasks } from "../../../../../sim/questions/size/balance/tasks.ts";

/**
 * Line-balancing instances of the literature, as collected by Scholl 1993, Schriften zur Quantitativen Betriebswirtschaftslehre 16/93. Their
 * least stations and cycles were found again by complete search over all sets of tasks.
 */
export interface Instance {
  tasks: Tasks;
  /** Cycle: fewest stations. */
  stations: Record<number, number>;
  /** Stations: least cycle. */
  cycles: Record<number, number>;
}

export const INSTANCES: Record<string, Instance> = {
  "Jackson 1956": {
    tasks: tasksOf("6 2 5 7 1 2 3 6 5 5 4", "1-2 1-3 1-4 1-5 2-6 3-7 4-7 5-7 6-8 7-9 8-10 9-11 10-11"),
    stations: { 7: 8, 9: 6, 10: 5, 13: 4, 14: 4, 21: 3 },
    cycles: { 2: 23, 3: 16, 4: 12, 5: 10, 6: 9 },
  },
  "Mansoor 1964": {
    tasks: tasksOf("4 38 45 12 10 8 12 10 2 10 34", "1-4 2-4 2-5 3-11 4-6 5-7 6-8 7-9 8-10 9-10 10-11"),
    stations: { 48: 4, 62: 3, 94: 2 },
    cycles: { 2: 93, 3: 62, 4: 48, 5: 45, 6: 45 },
  },
  "Bowman 1960": {
    tasks: tasksOf("11 17 9 5 8 12 10 3", "1-2 2-3 2-4 3-5 3-6 4-6 5-7 6-8"),
    stations: { 20: 5 },
    cycles: { 2: 38, 3: 28, 4: 22, 5: 17, 6: 17 },
  },
  "Jaeschke 1964": {
    tasks: tasksOf("5 3 4 5 4 5 1 4 6", "1-2 1-3 2-4 3-4 4-5 4-6 4-7 5-8 6-9 7-9 8-9"),
    stations: { 6: 8, 7: 7, 8: 6, 10: 4, 18: 3 },
    cycles: { 2: 19, 3: 13, 4: 10, 5: 9, 6: 8 },
  },
  "Heskiaoff 1968": {
    tasks: tasksOf(
      "70 59 33 6 1 27 17 62 31 53 21 19 108 52 5 8 97 8 47 67 17 8 3 21 107 3 2 72",
      "1-3 1-4 1-5 1-8 1-19 1-21 1-22 1-23 1-24 1-26 2-6 2-17 3-28 4-28 5-28 6-7 7-18 8-9 9-10 10-11 10-12 11-15 12-13 13-14 13-16 14-28 15-28 16-28 17-28 18-28 19-20 20-28 21-28 22-28 23-28 24-25 25-28 26-27 27-28",
    ),
    stations: { 138: 8, 205: 5, 216: 5, 256: 4, 324: 4, 342: 3 },
    cycles: {},
  },
};

function tasksOf(times: string, arcs: string): Tasks {
  const before = arcs.split(" ").map((arc) => arc.split("-").map((task) => Number(task) - 1) as [number, number]);
  const seconds = times.split(" ").map(Number);
  return { seconds, before, walking: seconds.map(() => 0), pooled: false };
}
