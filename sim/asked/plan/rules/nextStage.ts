import type { Located } from "./located.ts";

/** Name of the stage that heads go to by default: what `next` says, else the next that is not off the line; null: out. */
export function nextStage(stages: readonly Located[], index: number): string | null {
  const { next } = (stages[index] as Located).value;
  if (typeof next === "string") return next;
  const following = stages.slice(index + 1).find(({ value }) => value.offLine !== true);
  return typeof following?.value.name === "string" ? following.value.name : null;
}
