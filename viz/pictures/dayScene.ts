import { capital } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { type DayScene, isolated } from "../frame/index.ts";
import { hoursOf, quoted, whichDay } from "../words/index.ts";

export function dayScene(results: StudyResults, variant: VariantResults): DayScene {
  return {
    startClockSeconds: variant.day.startClockSeconds,
    endSeconds: Math.max(1, variant.day.finishSeconds),
    pauses: hoursOf(results, variant.day).breaks.map((pause) => ({ ...pause, name: isolated(pause.name) })),
  };
}

/** "one day of “As it is” out of 20 (day 1)", "Monday of week 1 of “As it is”": one day is one draw, so every picture of it says which. */
export function dayWords(results: StudyResults, variant: VariantResults, asSentence = false): string {
  if (results.plan.week !== undefined) return `${whichDay(results, variant.day)} of ${quoted(variant.name)}`;
  const which =
    results.study.replications > 1
      ? `one day of ${quoted(variant.name)} out of ${results.study.replications}`
      : "one day";
  const words = `${which} (${whichDay(results, variant.day)})`;
  return asSentence ? capital(words) : words;
}
