import type { OutsideRow } from "./outsideRow.ts";

export const REMOVALS: OutsideRow[] = [
  {
    id: "1.18",
    what: "Tandem whose stations take 25 and 10 % off: each station as if alone behind a thinned stream; shares by destination",
    source: "Jackson 1957",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 5,
    exact: 0,
  },
];
