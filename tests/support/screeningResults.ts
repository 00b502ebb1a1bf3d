import type { StudyResults } from "../../sim/days/results/index.ts";
import { syntheticStudy } from "./syntheticStudy.ts";

function effects(mu: number, muStar: number, sigma: number) {
  return { n: 8, mu, muStar, sigma, muHalfWidth: 2, muStarHalfWidth: 2 };
}

/** A screening of four factors in the responses of the synthetic study; every figure invented. */
export function screeningResults(): StudyResults {
  const names = ["places", "time per head", "walking", "an unused factor"];
  const factors = names.map((name) => ({ name, path: name, levels: ["1", "2"] }));
  const throughput = [effects(6, 6, 11), effects(-46, 46, 34), effects(1, 9, 10), null];
  return { ...syntheticStudy(), factors, screening: { throughput } };
}
