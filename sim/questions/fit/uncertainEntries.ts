import { calledFigure, formatPath } from "../../asked/plan/index.ts";
import { uniformStream } from "../../maths/random/index.ts";
import { RunningMoments } from "../../maths/statistics/index.ts";
import type { ColumnFit } from "./columnFit.ts";
import { FAMILIES } from "./families/index.ts";
import { lawOf } from "./families/lawOf.ts";
import { resampler } from "./resample.ts";
import { sampleOf } from "./sample.ts";
import { subjectPath } from "./times/subject.ts";

/** An uncertain figure as a plan's file names it. */
export interface UncertainEntry {
  name: string;
  paths: string[];
  factor: { lognormal: { mean: number; cv: number } };
  kind: "measured";
  readings: number;
  note: string;
}

/** Samples drawn and fitted anew where times are still open. */
const SAMPLES = 200;
const DIGITS = 3;

/**
 * How well the mean of each advised column is known by its times: a factor of mean 1 whose coefficient of variation is the
 * mean's standard error as a share of it. `file` names the table in the notes. Columns without spread or advice are left out.
 */
export function uncertainEntries(fits: readonly ColumnFit[], file: string, seed: string): UncertainEntry[] {
  return fits.flatMap((fit) => {
    const cv = fit.advice.kind === "nothing" ? null : errorOf(fit, seed);
    if (cv === null || !(cv > 0)) return [];
    const path = formatPath(subjectPath(fit.subject));
    const times = fit.ended.length + fit.open.length;
    return [
      {
        name: calledFigure(fit.subject),
        paths: [path],
        factor: { lognormal: { mean: 1, cv: Number(cv.toPrecision(DIGITS)) } },
        kind: "measured" as const,
        readings: times,
        note: `standard error of the mean of ${times} times of ${file}`,
      },
    ];
  });
}

/** Of the mean, as a share of it; null where the times do not tell. */
function errorOf(fit: ColumnFit, seed: string): number | null {
  const { summary, ended, open } = fit;
  if (open.length > 0) return redrawnError(fit, seed);
  return summary?.cv == null ? null : summary.cv / Math.sqrt(ended.length);
}

/** Open times leave no plain standard error: what other such samples would have given. */
function redrawnError({ fits, advice, ended, open, resolution, heading }: ColumnFit, seed: string): number | null {
  const fitted = fits.find(({ family }) => family === advice.family);
  const family = FAMILIES.find(({ name }) => name === advice.family);
  if (fitted === undefined || family === undefined) return null;
  const { draw } = resampler(sampleOf(ended, open), resolution);
  const law = lawOf(fitted.family, fitted.parameters);
  const uniforms = uniformStream(seed, 0, heading, "uncertain");
  const moments = new RunningMoments();
  for (let sample = 0; sample < SAMPLES; sample++) {
    const drawn = draw(law, uniforms);
    const found = new Set(drawn.ended).size < 2 ? "too few" : family.fit(drawn);
    if (typeof found !== "string") moments.add(found.law.mean);
  }
  return moments.sd === null || moments.mean === null ? null : moments.sd / moments.mean;
}
