import type { Varying } from "../../../maths/random/index.ts";
import type { FamilyName, Fitted } from "../family.ts";
import { type Law, logLikelihood } from "../law.ts";
import type { Sample } from "../sample.ts";

/** A fit put together, with its likelihood. */
export function fittedOf(
  family: FamilyName,
  parameters: Record<string, number>,
  law: Law,
  varying: Varying,
  sample: Sample,
): Fitted {
  return { family, parameters, logLikelihood: logLikelihood(law, sample), law, varying };
}
