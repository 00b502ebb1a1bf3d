import { Sampler, uniformStream, type Varying } from "../../../maths/random/index.ts";

/** The quantile function by which a plan's draws are made, so that what is tested is what will be simulated. */
export function quantileOf(varying: Varying): (p: number) => number {
  let sampler: Sampler | null = null;
  return (p) => {
    sampler ??= new Sampler(varying, uniformStream("", 0, "", ""));
    return sampler.quantile(p);
  };
}
