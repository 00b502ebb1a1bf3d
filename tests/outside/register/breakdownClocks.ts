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
];
