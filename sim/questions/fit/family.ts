import type { Varying } from "../../maths/random/index.ts";
import type { Law } from "./law.ts";
import type { Sample } from "./sample.ts";

/** The families that are fitted, by the names that plans use. */
export const FAMILY_NAMES = [
  "exponential",
  "lognormal",
  "gamma",
  "weibull",
  "erlang",
  "normal",
  "triangular",
  "pert",
] as const;
export type FamilyName = (typeof FAMILY_NAMES)[number];

/** The member of a family that makes a sample most likely. */
export interface Fitted {
  family: FamilyName;
  /** Its textbook parameters by name; lengths are in the sample's unit. */
  parameters: Record<string, number>;
  logLikelihood: number;
  law: Law;
  /** The same as a plan says it, in the sample's unit. */
  varying: Varying;
}

/** A family that can be fitted by maximum likelihood. */
export interface Family {
  name: FamilyName;
  /** Number of parameters, for AIC. */
  freedom: number;
  /** Whether times that are still open can be used. */
  takesOpen: boolean;
  /** The fit, or the reason why there is none. Wants two different ended times at least, all above 0. */
  fit(sample: Sample): Fitted | string;
}
