import { uniformStream } from "../../maths/random/index.ts";
import { quantile } from "../../maths/statistics/index.ts";
import type { ColumnFit, FamilyFit } from "./columnFit.ts";
import { lawOf } from "./families/lawOf.ts";
import type { FamilyName } from "./family.ts";
import { kaplanMeier } from "./kaplanMeier.ts";
import type { Law } from "./law.ts";
import { resampler } from "./resample.ts";
import { type Sample, sampleOf } from "./sample.ts";

/** What the pictures of a column show; times in its unit. */
export interface FitPicture {
  /** Share of the times that ended at each different one (open times pass theirs on to later ones); ascending. */
  steps: { time: number; share: number }[];
  /** Densities of the foremost fits over the range of the times, best first; per unit. */
  densities: { family: FamilyName; x: number[]; density: number[] }[];
  /** Observed against fitted times of the advised family, the foremost one where none is; null without a fit. */
  quantiles: { family: FamilyName; points: QuantilePoint[] } | null;
}

export interface QuantilePoint {
  fitted: number;
  observed: number;
  /** Where 95 % of such points lie when the fit is true, each on its own; null with open times. */
  low: number | null;
  high: number | null;
}

const MAX_DENSITIES = 3;
const DENSITY_POINTS = 161;
const MAX_POINTS = 200;
const SIMULATED = 400;

/** The columns of the pictures of a fit. `seed` is that of the band's simulated samples. */
export function fitPicture(fit: ColumnFit, seed: string): FitPicture {
  const sample = sampleOf(fit.ended, fit.open);
  const steps = kaplanMeier(sample);
  const chosen = fit.fits.find(({ family }) => family === fit.advice.family) ?? fit.fits[0];
  return {
    steps: steps.map(({ time, before, after }) => ({ time, share: after - before })),
    densities: drawnFits(fit).map(({ family, parameters }) => {
      const law = lawOf(family, parameters);
      const x = evenly(...rangeOf(sample, law));
      return { family, x, density: x.map((at) => finite(Math.exp(law.logDensity(at)))) };
    }),
    quantiles:
      chosen === undefined
        ? null
        : { family: chosen.family, points: quantilePoints(sample, lawOf(chosen.family, chosen.parameters), fit, seed) },
  };
}

/** The foremost fits and the advised one; of gamma and Erlang, which look the same, the better one only. */
function drawnFits({ fits, advice }: ColumnFit): FamilyFit[] {
  const twin = (family: FamilyName) => (family === "erlang" ? "gamma" : family);
  const different = fits.filter((fit, i) => fits.findIndex(({ family }) => twin(family) === twin(fit.family)) === i);
  const advised = different.findIndex(({ family }) => twin(family) === twin(advice.family ?? family));
  return different.filter((_, i) => i < MAX_DENSITIES - (advised >= MAX_DENSITIES ? 1 : 0) || i === advised);
}

/** From a little below the times to a little above them, and to where nearly all of the law lies. */
function rangeOf({ ended, open }: Sample, law: Law): [number, number] {
  const least = Math.min(ended[0]!, law.quantile(0.002));
  const longest = Math.max(ended.at(-1)!, open.at(-1) ?? 0);
  return [Math.max(0, least), Math.max(longest, Math.min(law.quantile(0.998), 1.5 * longest))];
}

function evenly(from: number, to: number): number[] {
  return Array.from({ length: DENSITY_POINTS }, (_, i) => from + ((to - from) * i) / (DENSITY_POINTS - 1));
}

/** A density can be infinite at 0 (gamma, Weibull). */
function finite(density: number): number {
  return Number.isFinite(density) ? density : 0;
}

function quantilePoints(sample: Sample, law: Law, { resolution, heading }: ColumnFit, seed: string): QuantilePoint[] {
  const steps = kaplanMeier(sample);
  const every = Math.ceil(steps.length / MAX_POINTS);
  const shown = steps.filter((_, i) => i % every === 0 || i === steps.length - 1);
  const middles = shown.map(({ before, after }) => (before + after) / 2);
  const bands =
    sample.open.length > 0 ? null : bandsAt(middles, sample, law, resolution, JSON.stringify([seed, heading]));
  return shown.map(({ time }, i) => ({
    fitted: law.quantile(middles[i]!),
    observed: time,
    low: bands?.[i]?.[0] ?? null,
    high: bands?.[i]?.[1] ?? null,
  }));
}

/** Ends of the middle 95 % of the sample quantiles at each probability, over simulated samples as large as the one seen. */
function bandsAt(
  probabilities: readonly number[],
  sample: Sample,
  law: Law,
  resolution: number,
  seed: string,
): [number, number][] {
  const { draw } = resampler(sample, resolution);
  const samples = Array.from(
    { length: SIMULATED },
    (_, i) => draw(law, uniformStream(seed, i, "band", "quantiles")).ended,
  );
  return probabilities.map((p) => {
    const rank = Math.min(Math.floor(p * sample.ended.length), sample.ended.length - 1);
    const values = samples.map((each) => each[rank]!).sort((a, b) => a - b);
    return [quantile(values, 0.025)!, quantile(values, 0.975)!];
  });
}
