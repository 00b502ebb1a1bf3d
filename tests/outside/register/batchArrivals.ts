import type { OutsideRow } from "./outsideRow.ts";

export const BATCH_ARRIVALS: OutsideRow[] = [
  {
    id: "B.1",
    what: "Crates of 4, 5 and 10 heads as bulk arrivals, M^X/M/1: heads present, share busy, time in system",
    source: "Gross and Harris, from memory; the formula is checked against its chain in row R.7",
    labels: ["V-chain", "MEM"],
    sourceClass: "P",
    simulated: 9,
    exact: 0,
  },
];
