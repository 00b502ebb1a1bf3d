import { USUAL_HANDLING, type UsualHandling } from "../size/index.ts";
import type { NewAnswers } from "./question.ts";
import { meanSeconds, workingSeconds } from "./usualFigures.ts";

/** People at the crates are busy for no more than this share of the day: lorries come all at once. */
const MAX_BUSY = 0.35;

/** People that the usual crate steps of a way take, so that crates keep up with the heads. */
export function liveHandlers(answers: NewAnswers): number {
  const { heads, headsPerCrate, handling } = answers;
  const secondsPerCrate = (workingSeconds(answers) * headsPerCrate) / heads;
  return Math.max(1, Math.ceil(handSeconds(USUAL_HANDLING[handling]) / (secondsPerCrate * MAX_BUSY)));
}

/** Seconds of people's work for one crate. */
function handSeconds(handling: UsualHandling): number {
  return Object.values(handling).reduce(
    (sum, { time, people, cratesAtOnce = 1 }) => sum + (meanSeconds(time) * Number(people)) / Number(cratesAtOnce),
    0,
  );
}

/** Places that work side by side at a crate step, so that it keeps up with the heads. */
export function cratePositions(step: UsualHandling[string], answers: NewAnswers): number {
  const { heads, headsPerCrate, handlers } = answers;
  const perCrate = (workingSeconds(answers) * headsPerCrate) / heads;
  const own = meanSeconds(step.time) / Number(step.cratesAtOnce ?? 1);
  const needed = Math.max(1, Math.ceil(own / (perCrate * MAX_BUSY)));
  return Math.min(64, Number(step.people) > 0 ? Math.min(handlers, needed) : needed);
}
