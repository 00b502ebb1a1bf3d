import type { OutsideRow } from "./outsideRow.ts";

export const WORTH: OutsideRow[] = [
  {
    id: "W.1",
    what: "Annuity factors P/A and present-worth factors P/F, 5 to 20 %, 3 to 20 years, four decimals",
    source: "compound interest tables of engineering economy texts (Blank and Tarquin; Park), from memory",
    labels: ["MEM", "V-closed"],
    sourceClass: "P",
    simulated: 0,
    exact: 12,
  },
  {
    id: "W.2",
    what: "10,000 that bring 3,000 a year for 5 years at 10 %: net present value, yearly amount, both paybacks",
    source: "worked here, flows discounted one by one",
    labels: ["V-closed"],
    sourceClass: "W",
    simulated: 0,
    exact: 4,
  },
];
