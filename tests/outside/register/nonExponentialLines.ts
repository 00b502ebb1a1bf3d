import type { OutsideRow } from "./outsideRow.ts";

const worked = (id: string, what: string, simulated: number, exact: number): OutsideRow => ({
  id,
  what,
  source: "renewal argument, worked here",
  labels: ["V-num"],
  sourceClass: "W",
  simulated,
  exact,
});

export const NON_EXPONENTIAL_LINES: OutsideRow[] = [
  worked("3.1", "Two stations, no places, unequal laws: throughput 1 / E[max]", 4, 0),
  worked("3.2", "Two uniform stations, no places", 1, 1),
  worked("3.3", "Two gamma stations, no places", 1, 1),
  worked("3.4", "Two lognormal stations, no places", 1, 1),
  worked("3.5", "Two triangular stations, no places", 1, 1),
  {
    id: "3.6",
    what: "Exponential, then constant, no places: 1 / (1 + exp(-1))",
    source: "worked here",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 1,
    exact: 2,
  },
  {
    id: "3.7",
    what: "Exponential, then constant, 1, 2 and 5 places: M/D/1/K",
    source: "Keilson 1966; Gross and Harris",
    labels: ["V-num"],
    sourceClass: "P",
    simulated: 3,
    exact: 3,
  },
  {
    id: "3.8",
    what: "Constant cycle times with any places: head j leaves at sum + longest x (j - 1), 200 heads, four lines",
    source: "worked here",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 0,
    exact: 4,
  },
];
