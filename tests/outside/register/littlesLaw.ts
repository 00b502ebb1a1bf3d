import type { OutsideRow } from "./outsideRow.ts";

const LITTLE = { source: "Little 1961", labels: ["V-closed"] as OutsideRow["labels"], sourceClass: "P" as const };

export const LITTLES_LAW: OutsideRow[] = [
  {
    id: "1.17",
    what: "Sum of times on the line = integral of heads on it, 200 random plans with every feature, 1e-9; and every plan in experiments/plans",
    ...LITTLE,
    simulated: 0,
    exact: 200,
  },
  {
    id: "1.17 queues",
    what: "Sum of waits = integral of heads waiting, every stage of 200 random lines, 1e-9",
    ...LITTLE,
    simulated: 0,
    exact: 200,
  },
];
