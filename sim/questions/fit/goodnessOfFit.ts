import { uniformStream } from "../../maths/random/index.ts";
import { distances } from "./distances.ts";
import type { Family, Fitted } from "./family.ts";
import { resampler } from "./resample.ts";
import type { Sample } from "./sample.ts";
import { simulatedSamples } from "./sampleSize.ts";
import { TailCount } from "./tailCount.ts";

/** A distance and how often it is at least as large when the fitted law is true. */
export interface FitTest {
  statistic: number;
  p: number;
}

export interface GoodnessOfFit {
  kolmogorov: FitTest;
  andersonDarling: FitTest;
  /** Samples simulated. */
  samples: number;
}

export interface SimulationOptions {
  seed: string;
  /** Simulated samples at most. */
  samples: number;
  /** Step to which the times were noted. */
  resolution: number;
}

/** A share of simulated samples without a fit beyond which the p-values mean nothing. */
const MAX_WITHOUT_FIT = 0.1;

/**
 * Both tests of a fit whose parameters come from the same sample. Tables for known parameters would hardly ever reject,
 * so samples are drawn from the fit (as `resampler` does), fitted again, and their distances compared with the one seen
 * (parametric bootstrap; Stute, Gonzalez-Manteiga and Presedo-Quindimil 1993, Metrika 40). Null where one simulated sample in ten
 * cannot be fitted.
 */
export function goodnessOfFit(
  family: Family,
  fitted: Fitted,
  sample: Sample,
  { seed, samples, resolution }: SimulationOptions,
): GoodnessOfFit | null {
  const seen = distances(fitted.law, sample);
  const d = new TailCount(seen.kolmogorov);
  const a = new TailCount(seen.andersonDarling);
  const { draw } = resampler(sample, resolution);
  const most = simulatedSamples(samples, sample.ended.length + sample.open.length);
  let drawn = 0;
  let without = 0;
  for (; drawn < most && !(d.settled && a.settled); drawn++) {
    const again = draw(fitted.law, uniformStream(seed, drawn, family.name, "goodness of fit"));
    const refitted = canBeFitted(again) ? family.fit(again) : "nothing varies";
    if (typeof refitted === "string") {
      without++;
      continue;
    }
    const found = distances(refitted.law, again);
    d.add(found.kolmogorov);
    a.add(found.andersonDarling);
  }
  if (without > MAX_WITHOUT_FIT * drawn) return null;
  return {
    kolmogorov: { statistic: seen.kolmogorov, p: d.p },
    andersonDarling: { statistic: seen.andersonDarling, p: a.p },
    samples: drawn,
  };
}

/** Two different ended times at least. */
export function canBeFitted({ ended }: Sample): boolean {
  return ended.length > 1 && ended[0]! < ended.at(-1)!;
}
