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
  {
    id: "1.22",
    what: "Share that rises straight with the live weight, weights uniform: share taken off, mean weight of those",
    source: "integrals of the two straight lines, worked here",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 2,
    exact: 0,
  },
  {
    id: "1.23",
    what: "Share that rises straight with the wait in an M/M/1 queue up to all: E min(W, T) / T = rho (1 - exp(-(mu - lambda) T)) / ((mu - lambda) T)",
    source: "law of the wait: Erlang; Kleinrock 1975; integral worked here",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 1,
    exact: 0,
  },
];
