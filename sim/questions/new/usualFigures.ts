import { isRecord, NO_FILES, varyingQuantities } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { readShare } from "../../text/units/index.ts";
import { assumedValue, USUAL_STEPS, type UsualStep } from "../size/index.ts";
import type { NewAnswers } from "./question.ts";

/** No animal passes a line of this program without these, in this order. */
export const KILL_STEPS = ["hanging", "stunning", "sticking", "bleeding"] as const;
/** What may come after bleeding, in the order in which heads pass it. */
export const LATER_STEPS = USUAL_STEPS.filter(({ offLine }) => !offLine)
  .map(({ name }) => name)
  .slice(KILL_STEPS.length);
export const USUAL_LATER_STEPS = ["skinning", "evisceration", "inspection", "chilling"];

const { time: TIME } = varyingQuantities(NO_FILES);

/** Invented: no usual figure of `gambrel size` speaks for skinning by hand. */
const HAND_SKINNING_SECONDS = 22;
const HAND_SKINNING_CV = 0.25;

/** Limits that may be watched, in seconds, and between which steps. All but the first are invented house rules. */
export const WATCHED = {
  "stun to stick": { from: "end of stunning", to: "start of sticking", seconds: 10, needs: "sticking" },
  "arrival to stunning": { from: "arrival", to: "start of stunning", seconds: 3 * 3600, needs: "stunning" },
  "stick to evisceration": {
    from: "end of sticking",
    to: "start of evisceration",
    seconds: 25 * 60,
    needs: "evisceration",
  },
  "kill to chill": { from: "end of sticking", to: "entry to chilling", seconds: 45 * 60, needs: "chilling" },
} as const;

export function usualStep(name: string): UsualStep {
  return USUAL_STEPS.find((step) => step.name === name)!;
}

/** Every step of the line in order. */
export function stepsOf({ steps }: Pick<NewAnswers, "steps">): string[] {
  return [...KILL_STEPS, ...LATER_STEPS.filter((name) => steps.includes(name))];
}

/** Those that take a head a time of work: all but bleeding and chilling. */
export function workedSteps(answers: Pick<NewAnswers, "steps">): string[] {
  return stepsOf(answers).filter((name) => ["manual", "machine"].includes(String(usualStep(name).json.work)));
}

export function isMachine(name: string, { skinning }: Pick<NewAnswers, "skinning">): boolean {
  return name === "skinning" ? skinning === "machine" : usualStep(name).json.work === "machine";
}

/** Mean seconds a head, to a tenth. */
export function usualSeconds(name: string, answers: Pick<NewAnswers, "skinning">): number {
  if (name === "skinning" && !isMachine(name, answers)) return HAND_SKINNING_SECONDS;
  return Math.round(meanSeconds(usualStep(name).json.cycle) * 10) / 10;
}

/** How uneven the times of a hand are: standard deviation by mean. */
export function usualCv(name: string): number {
  const { cycle } = usualStep(name).json;
  const law = isRecord(cycle) ? cycle.lognormal : undefined;
  return isRecord(law) ? Number(law.cv) : HAND_SKINNING_CV;
}

/** Of a time as a usual figure writes it, fixed or varying. */
export function meanSeconds(written: unknown): number {
  return meanOf(TIME.parse(written));
}

/** Seconds in which heads are worked on, breaks and checks apart. */
export function workingSeconds({ start, end, breaks }: Pick<NewAnswers, "start" | "end" | "breaks">): number {
  const checks = meanSeconds(assumedValue("day.preStart"));
  return end - start - checks - breaks.reduce((sum, { seconds }) => sum + seconds, 0);
}

/** Positions that keep up with the heads at the load that is usual for hands or machines. */
export function neededPositions(name: string, answers: NewAnswers): number {
  const load = share(isMachine(name, answers) ? "line.machineLoad" : "line.handLoad") * share("line.availability");
  const perHead = workingSeconds(answers) / answers.heads;
  return Math.max(1, Math.ceil(answers.seconds[name]! / (perHead * load)));
}

function share(path: string): number {
  return readShare(assumedValue(path)).value!;
}
