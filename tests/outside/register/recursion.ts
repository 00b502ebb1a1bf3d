import type { OutsideRow } from "./outsideRow.ts";

const WORKED = { labels: ["V-closed"] as OutsideRow["labels"], sourceClass: "P" as const, simulated: 0 };

export const RECURSION: OutsideRow[] = [
  {
    id: "R.1",
    what: "200 random lines of single positions, finite buffers: 120 heads' leaving times at every station, 1e-9",
    source: "departure-time recursion; Buzacott and Shanthikumar 1993",
    ...WORKED,
    exact: 200,
  },
  {
    id: "R.2",
    what: "200 random lines with 1 to 4 positions, dwell stages, travel: all four moments of every head, 1e-9",
    source: "departure-time recursion, extended here to parallel positions",
    ...WORKED,
    sourceClass: "W",
    exact: 200,
  },
  {
    id: "R.3",
    what: "The extended recursion against the plain one on 50 random lines of single positions",
    source: "departure-time recursion; Buzacott and Shanthikumar 1993",
    ...WORKED,
    exact: 50,
  },
];
