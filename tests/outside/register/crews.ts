import type { OutsideRow } from "./outsideRow.ts";

export const CREWS: OutsideRow[] = [
  {
    id: "1.19",
    what: "M/M/c where people are short, not positions: heads present, people busy, positions without a crew",
    source: "Erlang C, Erlang 1917",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 6,
    exact: 0,
  },
  {
    id: "1.20",
    what: "People who follow each head down a saturated line: throughput = people / sum of means",
    source: "renewal argument, worked here",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 2,
    exact: 0,
  },
  {
    id: "K.1",
    what: "One person, constant cycle, one break: leaving times of 60 heads",
    source: "worked here",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 0,
    exact: 3,
  },
  {
    id: "K.2",
    what: "One person at both ends of a machine, fixed order: begins of the second task",
    source: "worked here",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 0,
    exact: 3,
  },
];
