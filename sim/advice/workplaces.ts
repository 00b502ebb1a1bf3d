import { type Step, steps } from "../line/index.ts";
import { formatPath, mapWork, type Plan, type Work } from "../plan/index.ts";

/** What has positions, crews and breakdowns of its own. */
export type WorkStep = Exclude<Step, { kind: "dwell" } | { kind: "chain" }>;

/** The step with this name where somebody or something works; null for dwell stages and chains. */
export function workStep(plan: Plan, name: string): WorkStep | null {
  const found = steps(plan).find((step) => step.name === name);
  return found === undefined || found.kind === "dwell" || found.kind === "chain" ? null : found;
}

/** A copy of the plan with one workplace changed. */
export function withWorkplace(plan: Plan, of: string, change: (work: Work) => Partial<Work>): Plan {
  return mapWork(plan, (work, _path, name) => (name === of ? { ...work, ...change(work) } : work));
}

/** A copy of the plan in which the crew has so many more people in every shift that it works. */
export function withMorePeople(plan: Plan, crew: string, more: number): Plan {
  const crews = plan.crews.map((each) =>
    each.name === crew ? { ...each, people: each.people.map((people) => (people > 0 ? people + more : 0)) } : each,
  );
  return { ...plan, crews };
}

export function peopleOf(plan: Plan, crew: string): number[] {
  return plan.crews.find(({ name }) => name === crew)?.people ?? [];
}

/** Where the plan's file has the step's `key`, as studies write it: "line.skinning.buffer". */
export function pathOf(step: WorkStep, key: string): string {
  return formatPath([...placeOf(step), key]);
}

function placeOf(step: WorkStep): string[] {
  if (step.kind === "station") return ["line", step.name];
  if (step.kind === "chain station") return ["line", step.chain.name, "stations", step.name];
  return ["liveHandling", step.name];
}
