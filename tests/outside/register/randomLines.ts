import type { OutsideRow } from "./outsideRow.ts";

export const RANDOM_LINES: OutsideRow[] = [
  {
    id: "R.4",
    what: "10 random lines of exponential stations, parallel, failing, saturated or fed: throughput, states, waiting",
    source: "exact chain, worked here",
    labels: ["V-chain"],
    sourceClass: "W",
    simulated: 38,
    exact: 0,
  },
  {
    id: "R.5",
    what: "The chain solver against M/M/1/K and Erlang B",
    source: "Erlang 1917; Gross and Harris",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 0,
    exact: 4,
  },
  {
    id: "R.6",
    what: "Slopes of throughput in each mean cycle time, and their Euler sum, of the chain solver",
    source: "central differences and Euler's theorem, worked here",
    labels: ["V-chain"],
    sourceClass: "W",
    simulated: 0,
    exact: 13,
  },
  {
    id: "R.7",
    what: "The bulk-arrival formula L = rho (r + 1) / (2 (1 - rho)) against its chain",
    source: "Gross and Harris, from memory",
    labels: ["V-chain", "MEM"],
    sourceClass: "P",
    simulated: 0,
    exact: 3,
  },
];
