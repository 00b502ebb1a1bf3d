import type { OutsideRow } from "./outsideRow.ts";

const row = (id: string, what: string, source: string, labels: OutsideRow["labels"], exact: number): OutsideRow => ({
  id,
  what,
  source,
  labels,
  sourceClass: labels.includes("V-MC") ? "W" : "P",
  simulated: 0,
  exact,
});

export const ESTIMATES: OutsideRow[] = [
  row(
    "E.1",
    "Analytic estimate of saturated exponential lines, 3 to 6 stations, 0 to 4 places: 6 % at most",
    "Hunt 1956; Hillier and Boling 1967",
    ["V-chain"],
    12,
  ),
  row("E.2", "The same of parallel servers: 1 % at most", "birth-death chains; rows 2.20 to 2.23", ["V-chain"], 4),
  row(
    "E.3",
    "The same of failing exponential stations: 1.5 % at most",
    "model of Gershwin and Berman 1981, with blocking after service",
    ["V-chain"],
    5,
  ),
  row(
    "E.4",
    "The same of constant cycles with repairs, 0 to 100 places: 3 % at most",
    "departure-time recursion, row 4.13",
    ["V-MC"],
    7,
  ),
];
