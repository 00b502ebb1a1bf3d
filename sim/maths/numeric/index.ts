/** Small numerical methods: leaf, imports nothing. */

export { annuityFactor, loanPayment } from "./annuity.ts";
export { digamma, trigamma } from "./digamma.ts";
export { jStat } from "./jStat.ts";
export { atRightAngles, type LeastSquares, leastSquares, leastSquaresOn } from "./leastSquares.ts";
export { type Minimum, nelderMead } from "./nelderMead.ts";
export { power } from "./power.ts";
export { safeRoot } from "./safeRoot.ts";
