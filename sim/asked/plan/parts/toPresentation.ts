import type { Presentation } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

export function toPresentation(file: NonNullable<PlanFile["presentation"]>): Presentation {
  const { chillLoss, journeyLoss, ...rest } = file;
  return { ...rest, chillLossShare: chillLoss, journeyLossShare: journeyLoss };
}
