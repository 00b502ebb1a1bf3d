import { MIN_TO_FIT } from "../checks/index.ts";
import type { FamilyFit, FitAdvice } from "../columnFit.ts";
import { exponential } from "../families/exponential.ts";
import type { FamilyName, Fitted } from "../family.ts";
import type { Sample } from "../sample.ts";
import { planValue } from "./planValue.ts";

/** Families this close in AIC are as good as each other (Burnham and Anderson 2002, section 2.6). */
const AS_GOOD = 2;

/**
 * Limits fitted to a sample lie hardly beyond it, so that a plan would never meet anything longer; and AIC is too kind to
 * them, as its theory asks for a range that does not depend on the parameters.
 */
const WITH_LIMITS: readonly FamilyName[] = ["triangular", "pert"];

/**
 * What a plan should take: the best family by AIC among those that the test of Anderson and Darling does not reject at
 * 5 % and that nothing speaks against, one with fitted limits only where no other is left; the observed values themselves
 * where there is none, or where there are too few times; with open times among too few the exponential distribution,
 * which is the only one that they can give.
 */
export function advise(sample: Sample, zeros: number, fits: readonly FamilyFit[], unit: string): FitAdvice {
  const { ended, open } = sample;
  if (ended.length === 0) return nothing(open.length);
  if (open.length === 0 && ended[0] === ended.at(-1)) return always(ended[0]!, ended.length, unit);
  if (fits.length === 0) return tooFew(sample, zeros, unit);
  const usable = fits.filter(({ passes, objection }) => passes && objection === "");
  if (usable.length > 0) return family(usable);
  if (open.length > 0) return leastBad(fits);
  const words =
    "No family fits: a test rejects each at 5 %. Look at the checks first; else use the observed times themselves.";
  return empirical(ended, zeros, unit, words);
}

function family(usable: readonly FamilyFit[]): FitAdvice {
  const without = usable.filter((fit) => !WITH_LIMITS.includes(fit.family));
  const candidates = without.length > 0 ? without : usable;
  const best = candidates[0]!;
  const kind = without.length > 0 ? "families without fixed limits" : "families";
  const others = candidates.filter((fit) => fit !== best && fit.aic - best.aic < AS_GOOD).map((fit) => fit.family);
  const more = others.length === 0 ? "" : ` Just as good (AIC less than ${AS_GOOD} higher): ${others.join(", ")}.`;
  const words = `${best.family} fits best: lowest AIC of the ${kind} that the test does not reject.${more}`;
  return { kind: "family", family: best.family, inPlan: best.inPlan, words };
}

function nothing(open: number): FitAdvice {
  const words = `No time ended, so nothing can be fitted (${open} still open): watch longer.`;
  return { kind: "nothing", family: null, inPlan: null, words };
}

function always(value: number, count: number, unit: string): FitAdvice {
  const inPlan = planValue({ family: "constant", value }, unit, 0);
  const what = count === 1 ? "One time only" : `All ${count} times are the same`;
  return { kind: "constant", family: null, inPlan, words: `${what}: ${inPlan}, which never varies.` };
}

function tooFew(sample: Sample, zeros: number, unit: string): FitAdvice {
  const { ended, open } = sample;
  if (open.length === 0) {
    const words = `${ended.length} times are too few to fit a distribution; ${MIN_TO_FIT} are needed. Until then use the observed times themselves, each equally likely.`;
    return empirical(ended, zeros, unit, words);
  }
  const { law, varying } = exponential.fit(sample) as Fitted;
  const inPlan = planValue(varying, unit, law.sd);
  const words = `Too few times ended to fit a distribution (${ended.length}; ${MIN_TO_FIT} are needed). Until then use an exponential one: its mean is all the time watched, divided by the number that ended.`;
  return { kind: "family", family: "exponential", inPlan, words };
}

function leastBad(fits: readonly FamilyFit[]): FitAdvice {
  const best = fits.find(({ objection }) => objection === "");
  if (best === undefined)
    return {
      kind: "nothing",
      family: null,
      inPlan: null,
      words: "No fitted family is fit for a plan; take more times.",
    };
  const words = `${best.family} has the lowest AIC, but a test rejects it at 5 %; while times are open there is no better way. Look at the checks and the picture.`;
  return { kind: "family", family: best.family, inPlan: best.inPlan, words };
}

/** Zeros were seen too, though no family can hold them. */
function empirical(ended: Float64Array, zeros: number, unit: string, words: string): FitAdvice {
  const values = [...new Array<number>(zeros).fill(0), ...ended];
  return { kind: "empirical", family: null, inPlan: planValue({ family: "empirical", values }, unit, 0), words };
}
