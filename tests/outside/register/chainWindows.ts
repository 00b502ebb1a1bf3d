import type { OutsideRow } from "./outsideRow.ts";

const WORKED = { source: "worked here", labels: ["V-closed"] as OutsideRow["labels"], sourceClass: "W" as const };

export const CHAIN_WINDOWS: OutsideRow[] = [
  {
    id: "C.1",
    what: "A full chain without stations gives a head every pitch / speed, places x pitch / speed after it was hung",
    ...WORKED,
    simulated: 0,
    exact: 6,
  },
  {
    id: "C.2",
    what: "A window that stops the chain: a head every max(pitch / speed, cycle / positions) once it has settled",
    ...WORKED,
    simulated: 0,
    exact: 8,
  },
  {
    id: "C.3",
    what: "A window that heads pass: finished and unfinished heads, one by one, against start = max(entry, free), end <= entry + window",
    ...WORKED,
    simulated: 0,
    exact: 30,
  },
];
