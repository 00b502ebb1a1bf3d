import type { StudyResults, VariantResults } from "../contract.ts";
import { type DayScene, isolated } from "../frame/index.ts";
import { quoted } from "../words/index.ts";

export function dayScene(results: StudyResults, variant: VariantResults): DayScene {
  return {
    startClockSeconds: variant.day.startClockSeconds,
    endSeconds: Math.max(1, variant.day.finishSeconds),
    pauses: results.plan.breaks.map((pause) => ({ ...pause, name: isolated(pause.name) })),
  };
}

/** "one day of “As it is”, day 1": one day is one draw, so every picture of it says which. */
export function dayWords(results: StudyResults, variant: VariantResults): string {
  const which =
    results.study.replications > 1
      ? `one day of ${quoted(variant.name)} out of ${results.study.replications}`
      : "one day";
  return `${which} (day ${variant.day.replication + 1})`;
}
