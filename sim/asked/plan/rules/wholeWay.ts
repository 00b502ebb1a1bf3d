import type { Located } from "./located.ts";
import { nextStage } from "./nextStage.ts";

/** The stages that heads pass when nobody sends them elsewhere, in order. */
export function wholeWay(stages: readonly Located[]): Located[] {
  const way: Located[] = [];
  let at = 0;
  while (at >= 0 && at < stages.length && !way.includes(stages[at] as Located)) {
    way.push(stages[at] as Located);
    const name = nextStage(stages, at);
    at = stages.findIndex(({ value }) => value.name === name);
  }
  return way;
}
