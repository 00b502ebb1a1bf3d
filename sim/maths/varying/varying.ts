/**
 * A quantity that varies from head to head, in SI units: what a plan's distribution object becomes once it is read.
 *
 * Every family is given by what a stopwatch yields (mean, coefficient of variation `cv` = standard deviation / mean, or
 * limits), never by shape parameters. All values are non-negative. `normal` is cut at 0 and renormalised, so `mean` and
 * `sd` are those *before* the cut. `pert` is the beta distribution on [min, max] with shape 4 (Malcolm et al. 1959).
 * `empirical` draws one of the observed values (sorted, ascending) with equal probability.
 */
export type Varying =
  | { family: "constant"; value: number }
  | { family: "exponential"; mean: number }
  | { family: "lognormal"; mean: number; cv: number }
  | { family: "gamma"; mean: number; cv: number }
  | { family: "weibull"; mean: number; cv: number }
  | { family: "erlang"; mean: number; k: number }
  | { family: "uniform"; min: number; max: number }
  | { family: "triangular"; min: number; mode: number; max: number }
  | { family: "pert"; min: number; mode: number; max: number }
  | { family: "normal"; mean: number; sd: number }
  | { family: "empirical"; values: number[] };

/**
 * What to throw at the end of a switch over the families: nothing is drawn from, or reckoned of, one that no check has seen.
 * The compiler takes it only where every family has its case.
 */
export function unknownFamily(varying: never): RangeError {
  const { family } = varying as { family: unknown };
  return new RangeError(
    `no distribution is called ${JSON.stringify(family)}: read plans with readPlan, which says what is`,
  );
}
