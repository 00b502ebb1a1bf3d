import { meanOf } from "../../maths/random/index.ts";
import { estimate, quantile, replicationsNeeded } from "../../maths/statistics/index.ts";
import {
  type Check,
  countCheck,
  dependenceCheck,
  driftCheck,
  MIN_TO_FIT,
  mixtureCheck,
  outlierCheck,
  roundingCheck,
  runsCheck,
  zeroCheck,
} from "./checks/index.ts";
import type { ColumnFit, FamilyFit, Summary } from "./columnFit.ts";
import { FAMILIES } from "./families/index.ts";
import type { Family, Fitted } from "./family.ts";
import { canBeFitted, goodnessOfFit, type SimulationOptions } from "./goodnessOfFit.ts";
import { advise } from "./result/advise.ts";
import { objectionTo } from "./result/objection.ts";
import { planValue } from "./result/planValue.ts";
import { type Sample, sampleOf } from "./sample.ts";
import type { TimesColumn } from "./times/timesColumn.ts";

/** Finer than any stopwatch: values are taken as whole numbers of this. */
const FINEST = 1e-6;

export interface FitOptions {
  seed: string;
  /** Simulated samples for each p-value, at most; the smallest p that can be told is about 1 / samples. */
  samples: number;
  /** Called before each slow part. */
  progress?: (words: string) => void;
}

/** Level of the test by which a family is rejected. */
const ALPHA = 0.05;

const CONFIDENCE = 0.95;

/** Half-width of the mean that `Summary.needed` aims at, as a share of it. */
const WANTED = 0.05;

/**
 * Checks a column, fits every family that can be fitted, tests and ranks the fits. A pure function of its arguments; times
 * in the column's unit. `advice.inPlan` is what a plan writes. Sources of tests and estimates: the room's README. Example:
 *
 *     const fit = fitColumn(columns[0], { seed: "a", samples: 1000 });
 *     fit.advice.words;
 */
export function fitColumn(column: TimesColumn, { seed, samples, progress }: FitOptions): ColumnFit {
  const { heading, subject, unit, times } = column;
  const ended = times.filter(({ open, value }) => !open && value > 0);
  const open = times.filter((each) => each.open).map(({ value }) => value);
  const zeros = times.length - ended.length - open.length;
  const ordered = ended.map(({ value }) => value);
  const sample = sampleOf(ordered, open);
  const resolution = resolutionOf(sampleOf([...ordered, ...open]).ended);
  const simulation: SimulationOptions = { seed: JSON.stringify([seed, heading]), samples, resolution };
  const enough = ended.length >= MIN_TO_FIT && canBeFitted(sample);
  const { fits, notFitted } = enough ? fitAll(sample) : { fits: [], notFitted: [] };
  const summary = ended.length > 0 && open.length === 0 ? summaryOf(ordered) : null;
  const inOrder = times.filter((each) => each.open || each.value > 0);
  progress?.(`${heading}: checks`);
  const checks: Check[] = [
    countCheck(ended.length),
    zeroCheck(zeros),
    roundingCheck(resolution, estimate(ordered, CONFIDENCE)?.sd ?? null, unit),
    outlierCheck(ended, unit),
    driftCheck(inOrder, unit),
    dependenceCheck(inOrder, simulation.seed),
    runsCheck(inOrder),
    mixtureCheck(sample, fits[0] ?? null, unit, simulation),
  ];
  const tested = fits.map((candidate) => {
    progress?.(`${heading}: ${candidate.family.name}`);
    return familyFit(candidate, { sample, best: fits[0]!, unit, simulation });
  });
  return {
    heading,
    subject,
    unit,
    ended: [...sample.ended],
    open: [...sample.open],
    zeros,
    resolution,
    summary,
    checks,
    fits: tested,
    notFitted,
    advice: advise(sample, zeros, tested, unit),
  };
}

interface Candidate {
  family: Family;
  fitted: Fitted;
}

/** Akaike 1974: twice the parameters minus twice the log-likelihood. */
function aicOf({ family, fitted }: Candidate): number {
  return 2 * family.freedom - 2 * fitted.logLikelihood;
}

function fitAll(sample: Sample): { fits: Candidate[]; notFitted: ColumnFit["notFitted"] } {
  const fits: Candidate[] = [];
  const notFitted: ColumnFit["notFitted"] = [];
  for (const family of FAMILIES) {
    const fitted =
      sample.open.length > 0 && !family.takesOpen ? "limits cannot be told while times are open" : family.fit(sample);
    if (typeof fitted === "string") notFitted.push({ family: family.name, reason: fitted });
    else fits.push({ family, fitted });
  }
  return { fits: fits.sort((a, b) => aicOf(a) - aicOf(b)), notFitted };
}

function familyFit(
  candidate: Candidate,
  about: { sample: Sample; best: Candidate; unit: string; simulation: SimulationOptions },
): FamilyFit {
  const { family, fitted } = candidate;
  const { sample, best, unit, simulation } = about;
  const test = goodnessOfFit(family, fitted, sample, simulation);
  const aic = aicOf(candidate);
  return {
    family: family.name,
    parameters: fitted.parameters,
    mean: meanOf(fitted.varying),
    sd: fitted.law.sd,
    logLikelihood: fitted.logLikelihood,
    aic,
    behind: aic - aicOf(best),
    test,
    passes: test !== null && test.andersonDarling.p >= ALPHA,
    objection: objectionTo(fitted),
    inPlan: planValue(fitted.varying, unit, fitted.law.sd),
  };
}

function summaryOf(values: readonly number[]): Summary {
  const { n, mean, sd, min, max, low, high } = estimate(values, CONFIDENCE)!;
  const median = quantile(
    [...values].sort((a, b) => a - b),
    0.5,
  )!;
  const known = n > 1;
  return {
    mean,
    sd: known ? sd : null,
    cv: known ? sd / mean : null,
    min,
    median,
    max,
    meanLow: low,
    meanHigh: high,
    needed: known ? replicationsNeeded(WANTED * mean, sd, n, CONFIDENCE) : null,
  };
}

/**
 * The step to which times were noted: the greatest of which all of them are whole multiples (0.1 for 4.2, 5.1, 6.7; 0.5
 * for 4.5, 6.0). 0 where there is none of a millionth or more: times of a computer's clock.
 */
export function resolutionOf(values: Float64Array): number {
  let step = 0;
  for (const value of values) {
    const whole = Math.round(value / FINEST);
    if (Math.abs(value / FINEST - whole) > 1e-3 || !Number.isSafeInteger(whole)) return 0;
    step = commonDivisor(step, whole);
  }
  return step * FINEST;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
