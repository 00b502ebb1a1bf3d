import type { OutsideRow } from "./outsideRow.ts";

const row = (
  id: string,
  what: string,
  source: string,
  sourceClass: OutsideRow["sourceClass"],
  exact: number,
  labels: OutsideRow["labels"] = ["V-num"],
): OutsideRow => ({ id, what, source, labels, sourceClass, simulated: 0, exact });

const otherRule = (id: string, what: string, source: string, elsewhere = ""): OutsideRow => ({
  ...row(id, what, source, "P", 0),
  notChecked: `a rule that this program does not use: it picks the best by that of Kim and Nelson (5.23)${elsewhere}`,
});

const TABLED_H = "; the tabled h checks Student's t in tests/sim/maths/statistics/studentTwoSidedP.test.ts";

export const STATISTICS: OutsideRow[] = [
  row("5.t", "Student t quantiles, 7 rows of 3, against the table and Cephes", "any statistics text; SciPy", "P", 42),
  row("5.p", "Two-sided p of t, against the incomplete beta function of Cephes", "any statistics text", "P", 3),
  row("5.1", "Mean, spread and Student interval of ten replications", "Student 1908; worked here", "W", 7),
  row("5.2", "Paired difference and its test", "Student 1908; worked here", "W", 7),
  row("5.3", "Unpaired difference: why pairing matters", "Welch 1947; worked here", "W", 5),
  row("5.4", "Variance of the difference, paired and unpaired, and the correlation", "worked here", "W", 3),
  row("5.5", "Replications for a wanted half-width", "Stein 1945; worked here", "W", 2),
  row("5.6", "Bonferroni's t for 4 comparisons", "Dunn 1961", "P", 1),
  row("5.7", "Adjusted p-values", "Bonferroni; Holm 1979; Benjamini and Hochberg 1995", "P", 15),
  row("5.8", "Median of 20 values between order statistics", "binomial, Conover 1999", "P", 4),
  row("5.9", "0.9 quantile of 100 values between order statistics", "binomial, Conover 1999", "P", 4),
  row("5.w", "Wilson's interval for a share solves its defining equation", "Wilson 1927", "P", 6),
  row("5.c", "Exact interval for a share, against Cephes", "Clopper and Pearson 1934", "P", 6),
  {
    ...row("5.10", "Cover of 2000 intervals of 95 %: 1867 to 1931 of them", "binomial", "W", 0),
    simulated: 1,
  },
  otherRule(
    "5.20",
    "Dudewicz-Dalal h at 0.90",
    "Dudewicz and Dalal 1975; Law, Simulation Modeling and Analysis, ch. 10",
    TABLED_H,
  ),
  otherRule(
    "5.21",
    "Dudewicz-Dalal h at 0.95",
    "Dudewicz and Dalal 1975; Law, Simulation Modeling and Analysis, ch. 10",
    TABLED_H,
  ),
  otherRule("5.22", "Rinott h at 0.95", "Rinott 1978"),
  row("5.23", "Constants of Kim and Nelson", "Kim and Nelson 2001, form from memory", "P", 6, ["V-closed", "MEM"]),
  row(
    "5.30",
    "MSER-5 on 60 values: statistics, deletion, kept mean",
    "White 1997; White, Cobb and Spratt 2000",
    "P",
    8,
  ),
  row("5.33", "The unbatched rule on the same values, with its guard", "White 1997, guard from memory", "P", 3, [
    "V-num",
    "MEM",
  ]),
  row("5.35", "Moving average over replications, window 2", "Welch 1983", "P", 8),
];
