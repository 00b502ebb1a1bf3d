import { buildChillingCurve, type ChillingCurve } from "../../maths/chilling/index.ts";
import type { Step } from "./steps.ts";

const curves = new Map<string, ChillingCurve>();

/** The chilling curve of a computed dwell, null elsewhere; kept by its figures, since a study compiles many like lines. */
export function chillingCurve(step: Step): ChillingCurve | null {
  if (step.kind !== "dwell" || step.of.dwell.kind !== "chilling") return null;
  const key = JSON.stringify(step.of.dwell.chilling);
  const known = curves.get(key);
  if (known !== undefined) return known;
  const curve = buildChillingCurve(step.of.dwell.chilling);
  curves.set(key, curve);
  return curve;
}
