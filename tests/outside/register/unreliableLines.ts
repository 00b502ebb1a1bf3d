import type { OutsideRow } from "./outsideRow.ts";

const chain = (id: string, what: string, simulated: number, exact: number): OutsideRow => ({
  id,
  what: `${what}: throughput, all state shares, waiting heads`,
  source: "model of Gershwin and Berman 1981, with blocking after service instead of theirs",
  labels: ["V-chain"],
  sourceClass: "W",
  simulated,
  exact,
});

const BUZACOTT = {
  source: "Buzacott 1967; Buzacott and Shanthikumar 1993, form from memory",
  sourceClass: "P",
} as const;

export const UNRELIABLE_LINES: OutsideRow[] = [
  chain("4.1", "2 equal failing stations, no places", 7, 11),
  chain("4.2", "2 equal failing stations, 5 places", 8, 11),
  chain("4.3", "2 equal failing stations, 20 places", 8, 11),
  chain("4.4", "2 unequal failing stations, 4 places", 8, 11),
  chain("4.5", "3 failing stations, 3 places each", 13, 16),
  chain("4.6", "2 servers, then 1, failing, 3 places", 8, 11),
  {
    id: "4.10",
    what: "No storage, everything stops together: 1 / (1 + sum MTTR/MTBF)",
    ...BUZACOTT,
    labels: ["V-closed", "MEM"],
    simulated: 2,
    exact: 2,
  },
  {
    id: "4.11",
    what: "Unlimited storage: the least efficiency of the line",
    ...BUZACOTT,
    labels: ["V-closed", "MEM"],
    simulated: 3,
    exact: 2,
  },
  {
    id: "4.12",
    what: "2 stations, cycle 1, MTBF 100, MTTR 10, no places: 1 / E[max of completion times]",
    source: "renewal argument, worked here",
    labels: ["V-num"],
    sourceClass: "W",
    simulated: 1,
    exact: 1,
  },
  {
    id: "4.13",
    what: "The same with 1 to 100 places",
    source: "departure-time recursion, worked here, standard error 0.0003",
    labels: ["V-MC"],
    sourceClass: "W",
    simulated: 6,
    exact: 0,
  },
  {
    id: "4.14",
    what: "The same, 0 to 2,000 places and unlimited, same failures: rises with every place and tends to the unlimited line's",
    ...BUZACOTT,
    labels: ["V-closed"],
    simulated: 0,
    exact: 6,
  },
];
