import type { Demand } from "../demand.ts";
import { USUAL_STEPS } from "../usualSteps.ts";

/** What is left when the usual steps have taken off what they do. */
export const USUAL_PRESENTATION = {
  ...{ head: "off", paws: "off", liver: "on", kidneys: "on", heartAndLungs: "off" },
  ...{ weighed: "cold", liveWeight: "slaughter", chillLoss: "2 %" },
};

/** What the plan sells: known where the steps take off the usual parts, else for the user to say. */
export function soldOf({ steps }: Demand): Record<string, unknown> | null {
  const takes = (list: readonly { takesOff?: unknown }[]) =>
    JSON.stringify(list.map(({ takesOff }) => takesOff).filter((each) => each !== undefined));
  const usual = takes(USUAL_STEPS.map(({ json }) => json)) === takes(steps.map(({ written }) => written));
  return usual ? USUAL_PRESENTATION : null;
}
