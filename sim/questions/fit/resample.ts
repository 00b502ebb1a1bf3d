import type { UniformStream } from "../../maths/random/index.ts";
import { kaplanMeier } from "./kaplanMeier.ts";
import type { Law } from "./law.ts";
import type { Sample } from "./sample.ts";

/** Draws samples such as the one seen would be if a law were true. */
export interface Resampler {
  draw(law: Law, uniforms: UniformStream): Sample;
}

/**
 * As many times as in `sample`, noted to the same `resolution` (0: to the last digit; times that would be noted as 0 are
 * drawn again, as zeros are left out of fits). Where the sample has open times, each drawn time is cut short by a
 * watching time drawn from the Kaplan-Meier distribution of the sample's own (Efron 1981, Journal of the American
 * Statistical Association 76).
 */
export function resampler(sample: Sample, resolution: number): Resampler {
  const n = sample.ended.length + sample.open.length;
  const watching = kaplanMeier({ ended: sample.open, open: sample.ended });
  return {
    draw(law, uniforms) {
      const ended: number[] = [];
      const open: number[] = [];
      for (let i = 0; i < n; i++) {
        const time = noted(law, uniforms, resolution);
        const until = watching.length === 0 ? Number.POSITIVE_INFINITY : watchedFor(watching, uniforms.next());
        if (time <= until) ended.push(time);
        else open.push(until);
      }
      return { ended: Float64Array.from(ended).sort(), open: Float64Array.from(open).sort() };
    },
  };
}

function noted(law: Law, uniforms: UniformStream, resolution: number): number {
  for (;;) {
    const time = law.quantile(uniforms.next());
    const written = resolution === 0 ? time : Math.round(time / resolution) * resolution;
    if (written > 0) return written;
  }
}

/** What is left at the end of the steps was watched for as long as it took. */
function watchedFor(steps: ReturnType<typeof kaplanMeier>, u: number): number {
  return steps.find(({ after }) => u < after)?.time ?? Number.POSITIVE_INFINITY;
}
