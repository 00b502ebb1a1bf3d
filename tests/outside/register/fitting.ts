import type { OutsideRow } from "./outsideRow.ts";

const row = (
  id: string,
  what: string,
  source: string,
  counts: { simulated?: number; exact?: number },
  labels: OutsideRow["labels"] = ["V-num"],
  sourceClass: OutsideRow["sourceClass"] = "P",
): OutsideRow => ({ id, what, source, labels, sourceClass, simulated: 0, exact: 0, ...counts });

const KNOWN = "Kolmogorov 1933; Massey 1951";

export const FITTING: OutsideRow[] = [
  row("6.1", "Kolmogorov's D of 5 values, law known: 10, 5 and 1 % points", KNOWN, { simulated: 3 }),
  row("6.2", "Kolmogorov's D of 10 values", KNOWN, { simulated: 3 }),
  row("6.3", "Kolmogorov's D of 20 values", KNOWN, { simulated: 3 }),
  row("6.4", "Kolmogorov's D of 50 values", KNOWN, { simulated: 3 }),
  row(
    "6.6",
    "Anderson and Darling's A2, law known: 10, 5 and 1 % points (many books print 3.857 for the last)",
    "Anderson and Darling 1954; Marsaglia and Marsaglia 2004",
    { simulated: 3 },
  ),
  row("6.7", "A2, normal with both parameters fitted, 20 values", "Stephens 1986", { simulated: 3 }, ["MEM", "V-MC"]),
  row("6.8", "D, normal with both parameters fitted", "Stephens 1974", { simulated: 3 }, ["MEM", "V-MC"]),
  row("6.9", "A2, exponential with mean fitted, 20 values", "Stephens 1986", { simulated: 3 }, ["MEM", "V-MC"]),
  row("6.10", "D, exponential with mean fitted", "Stephens 1974", { simulated: 3 }, ["MEM", "V-MC"]),
  row("6.11", "A2, Weibull with both parameters fitted, 20 values", "Stephens 1977, 1986", { simulated: 3 }, [
    "MEM",
    "V-MC",
  ]),
  row("6.s", "Twenty cycle times: mean, spread, median", "worked here", { exact: 4 }, ["V-num"], "W"),
  row("6.l", "Lognormal fit: parameters, likelihood, AIC, D, A2", "SciPy; worked here", { exact: 8 }, ["V-num"], "W"),
  row("6.g", "Gamma fit", "SciPy; worked here", { exact: 6 }, ["V-num"], "W"),
  row("6.n", "Normal fit", "SciPy; worked here", { exact: 6 }, ["V-num"], "W"),
  row("6.w", "Weibull fit", "SciPy; worked here", { exact: 6 }, ["V-num"], "W"),
  row("6.e", "Exponential fit, and the ranking of the five by AIC", "SciPy; worked here", { exact: 6 }, ["V-num"], "W"),
  row(
    "6.ce",
    "Open up-times: exponential, and what dropping them would give",
    "worked here",
    { exact: 3 },
    ["V-num"],
    "W",
  ),
  row("6.cw", "Open up-times: Weibull", "worked here", { exact: 4 }, ["V-num"], "W"),
  row("6.cl", "Open up-times: lognormal", "worked here", { exact: 3 }, ["V-num"], "W"),
  row(
    "6.t",
    "Triangular mode between known limits, with the product of each candidate",
    "Johnson and Kotz 1999; Kotz and van Dorp 2004",
    { exact: 9 },
    ["MEM", "V-num"],
  ),
  row("6.q", "Parameters that mean and spread imply, 8 laws", "worked here", { exact: 16 }, ["V-num"], "W"),
];
