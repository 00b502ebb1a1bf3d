import type { OutsideRow } from "./outsideRow.ts";

export const BREAKDOWN_CLOCKS: OutsideRow[] = [
  {
    id: "1.15",
    what: "M/M/1, breakdowns by the calendar, work resumed: heads present, shares working and down",
    source: "Avi-Itzhak and Naor 1963, form derived here",
    labels: ["V-chain", "V-closed"],
    sourceClass: "P",
    simulated: 6,
    exact: 1,
  },
  {
    id: "1.16",
    what: "M/M/1, breakdowns on running time, work resumed: heads present, shares working and down",
    source: "Pollaczek 1930, Khinchine 1932 on the completion time",
    labels: ["V-closed", "V-chain"],
    sourceClass: "P",
    simulated: 6,
    exact: 1,
  },
  {
    id: "1.21",
    what: "One cause that stops 3 stations: each is down r/(u+r) of the time, throughput 1/(1+r/u) by any clock, as of one machine and not of three",
    source: "alternating renewal process (Barlow and Proschan 1965); common cause against Buzacott 1967, from memory",
    labels: ["V-closed", "MEM"],
    sourceClass: "P",
    simulated: 12,
    exact: 0,
  },
];
