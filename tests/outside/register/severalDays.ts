import type { OutsideRow } from "./outsideRow.ts";

export const SEVERAL_DAYS: OutsideRow[] = [
  {
    id: "15.1",
    what: "One server over three days, closed at night, the head in hand finished: every end, sum of times in system, who is kept",
    source: "worked by hand; Lindley 1952",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 0,
    exact: 15,
  },
  {
    id: "15.2",
    what: "Backlog of a day's work: carried over after each of six days, for 1000, 1200, 900, 1150, 700, 0 heads and 1000 done a day",
    source: "Lindley 1952",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 0,
    exact: 6,
  },
  {
    id: "15.3",
    what: "Two lots a day with probability 0.4, else none, one worked a day: mean kept overnight 2, nothing kept on 1/3 of the nights",
    source: "gambler's walk (Feller 1968, An Introduction to Probability Theory I)",
    labels: ["V-closed"],
    sourceClass: "P",
    simulated: 2,
    exact: 0,
  },
  {
    id: "15.4",
    what: "Age replacement, Weibull of shape 3 and scale 1000 min, repair 120 min, planned 20 min, replaced at 480 min: availability; and run to failure",
    source: "Barlow and Hunter 1960, integrals by quadrature",
    labels: ["V-num"],
    sourceClass: "P",
    simulated: 2,
    exact: 0,
  },
];
