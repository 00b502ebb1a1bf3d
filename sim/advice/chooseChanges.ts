import { steps, workplace } from "../line/index.ts";
import type { Plan } from "../plan/index.ts";
import type { BoundPart, Why } from "../results/index.ts";
import type { PlanChange } from "./change.ts";
import { noBreakdowns, onePersonMore, onePlaceMore, onePositionMore, shorterCycle } from "./changesOf.ts";
import { type WorkStep, workStep } from "./workplaces.ts";

/** How many stages, crews and buffers are tried at most. */
const MOST_STAGES = 3;
const MOST_CREWS = 3;
const MOST_PLACES = 3;
/** Share of the day that something has to bind to be worth a try. */
const WORTH = 0.005;

/**
 * The changes that the binding path says are worth trying on the plan, few enough to run: one position more, a quicker
 * cycle and no breakdowns at the stages that bind most; one person more in the crews whose people were waited for, and in
 * the crew of the stage that binds most; one place more before the stages that held those before them back.
 */
export function chooseChanges(plan: Plan, why: Why): PlanChange[] {
  const worth = why.total.mean * WORTH;
  const binding = why.stages
    .filter(({ share }) => share.mean >= WORTH)
    .map(({ stage }) => workStep(plan, stage))
    .filter((step) => step !== null)
    .slice(0, MOST_STAGES);
  return [
    ...binding.flatMap((step) => ofStep(plan, step, why)),
    ...crewsToTry(plan, binding, why, worth).map((crew) => onePersonMore(plan, crew)),
    ...placesToTry(plan, binding, why, worth).map(onePlaceMore),
  ];
}

function ofStep(plan: Plan, step: WorkStep, { parts, total }: Why): PlanChange[] {
  const repairs = secondsOf(parts, step.name, ["repair", "repairer"]);
  return [
    onePositionMore(plan, step),
    shorterCycle(step),
    ...(repairs >= total.mean * WORTH ? [noBreakdowns(step)] : []),
  ];
}

/** With as many people as positions one more has nowhere to work: that is the position's to try. */
function crewsToTry(plan: Plan, binding: readonly WorkStep[], { parts }: Why, worth: number): string[] {
  const waited = new Map<string, number>();
  for (const { cause, stage, seconds } of parts) {
    if (cause !== "people" && cause !== "walking") continue;
    const step = workStep(plan, stage);
    for (const crew of step === null ? [] : workplace(step).crews) {
      waited.set(crew, (waited.get(crew) ?? 0) + seconds.mean);
    }
  }
  const first = binding[0] === undefined ? [] : workplace(binding[0]).crews.slice(0, 1);
  const scarce = [...waited].filter(([, seconds]) => seconds >= worth).sort((a, b) => b[1] - a[1]);
  const crews = new Set([...scarce.map(([crew]) => crew), ...first]);
  return [...crews].filter((crew) => hasWorkForMore(plan, crew)).slice(0, MOST_CREWS);
}

function hasWorkForMore(plan: Plan, crew: string): boolean {
  const { people } = plan.crews.find(({ name }) => name === crew)!;
  const places = steps(plan)
    .map((step) => workplace(step))
    .filter(({ crews }) => crews.includes(crew))
    .reduce((sum, { positions, peoplePerPosition }) => sum + positions * peoplePerPosition, 0);
  return Math.max(...people) < places;
}

function placesToTry(
  plan: Plan,
  binding: readonly WorkStep[],
  { parts }: Why,
  worth: number,
): Extract<WorkStep, { kind: "station" }>[] {
  const holding = parts
    .filter(({ cause, seconds }) => cause === "place" && seconds.mean >= worth)
    .map(({ stage }) => workStep(plan, stage));
  const found = [...new Set([...holding, binding[0] ?? null].map((step) => step?.name))];
  return found
    .map((name) => (name === undefined ? null : workStep(plan, name)))
    .filter((step) => step?.kind === "station")
    .filter((step) => step.name !== plan.line[0]?.name && Number.isFinite(step.of.buffer))
    .slice(0, MOST_PLACES);
}

function secondsOf(parts: readonly BoundPart[], of: string, causes: readonly string[]): number {
  return parts.reduce(
    (sum, { stage, cause, seconds }) => (stage === of && causes.includes(cause) ? sum + seconds.mean : sum),
    0,
  );
}
