import type { FamilyName } from "../family.ts";
import type { Law } from "../law.ts";
import { exponentialLaw } from "./exponential.ts";
import { gammaLaw } from "./gamma.ts";
import { lognormalLaw } from "./lognormal.ts";
import { normalLaw } from "./normal.ts";
import { pertLaw } from "./pert.ts";
import { triangularLaw } from "./triangular.ts";
import { weibullLaw } from "./weibull.ts";

const LAWS: Record<FamilyName, (parameters: Record<string, number>) => Law> = {
  exponential: ({ mean }) => exponentialLaw(mean!),
  lognormal: ({ mu, sigma }) => lognormalLaw(mu!, sigma!),
  gamma: ({ shape, scale }) => gammaLaw(shape!, scale!),
  weibull: ({ shape, scale }) => weibullLaw(shape!, scale!),
  erlang: ({ mean, k }) => gammaLaw(k!, mean! / k!),
  normal: ({ mean, sd }) => normalLaw(mean!, sd!),
  triangular: ({ min, mode, max }) => triangularLaw(min!, mode!, max!),
  pert: ({ min, mode, max }) => pertLaw(min!, mode!, max!),
};

/** The distribution with the parameters of a fit. */
export function lawOf(family: FamilyName, parameters: Record<string, number>): Law {
  return LAWS[family](parameters);
}
