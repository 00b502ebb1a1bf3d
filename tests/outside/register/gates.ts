import type { OutsideRow } from "./outsideRow.ts";

const CLOSED = { labels: ["V-closed"] as OutsideRow["labels"], sourceClass: "P" as const };

export const GATES: OutsideRow[] = [
  {
    id: "G.1",
    what: "Equal exponential stations behind a gate for N heads, 2 to 4 stations, N 1 to 8: throughput N / (N + M - 1)",
    source: "Gordon and Newell 1967",
    ...CLOSED,
    simulated: 9,
    exact: 0,
  },
  {
    id: "G.2",
    what: "Three unequal stations behind a gate: throughput, heads at the second and third, heads between the gate's points",
    source: "Gordon and Newell 1967; Buzen 1973",
    ...CLOSED,
    simulated: 11,
    exact: 0,
  },
  {
    id: "G.3",
    what: "The convolution against N / (N + M - 1)",
    source: "Gordon and Newell 1967",
    ...CLOSED,
    simulated: 0,
    exact: 24,
  },
];
