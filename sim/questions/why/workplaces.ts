import { formatPath, mapWork, type Plan, type Work } from "../../asked/plan/index.ts";
import { fileSteps, type Step, steps, workplace } from "../../day/line/index.ts";
import { does, type KindThat } from "../../text/kinds/index.ts";

/** What has positions, crews and breakdowns of its own. */
export type WorkStep = Step & { kind: KindThat<"work"> };

/** The step with this name where somebody or something works; null for dwell stages and chains. */
export function workStep(plan: Plan, name: string): WorkStep | null {
  return workSteps(plan).find((step) => step.name === name) ?? null;
}

export function workSteps(plan: Plan): WorkStep[] {
  return steps(plan).filter((step) => does(step, "work"));
}

/** A copy of the plan with one workplace changed. */
export function withWorkplace(plan: Plan, of: string, change: (work: Work) => Partial<Work>): Plan {
  return mapWork(plan, (work, _path, name) => (name === of ? { ...work, ...change(work) } : work));
}

/** A copy of the plan with so many places in a dwell stage. */
export function withDwell(plan: Plan, of: string, places: number): Plan {
  const line = plan.line.map((stage) =>
    does(stage, "hold heads") && stage.name === of ? { ...stage, places } : stage,
  );
  return { ...plan, line };
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

/** Whether the crew has people for so many more places in every shift that it works. */
export function hasPeopleForMore(plan: Plan, crew: string, more: number): boolean {
  return Math.min(...peopleOf(plan, crew).filter((people) => people > 0)) >= placesOf(plan, crew) + more;
}

/** Whether one person more would have somewhere to work; with fewer places than people one more position has to come first. */
export function hasWorkForMore(plan: Plan, crew: string): boolean {
  return Math.min(...peopleOf(plan, crew).filter((people) => people > 0)) < placesOf(plan, crew);
}

/** People of the crew that could be at work at once: at positions, at repairs, at vessels. */
function placesOf(plan: Plan, crew: string): number {
  const all = steps(plan).map((step) => workplace(step));
  const atWork = all
    .filter(({ crews }) => crews.includes(crew))
    .reduce((sum, { positions, peoplePerPosition }) => sum + positions * peoplePerPosition, 0);
  const repairing = all
    .filter(({ breakdowns }) => breakdowns.some((each) => each.crew === crew))
    .reduce((sum, { positions }) => sum + positions, 0);
  const shared = plan.sharedBreakdowns.filter((each) => each.crew === crew).length;
  return atWork + repairing + shared + plan.vessels.filter((vessel) => vessel.crew === crew).length;
}

/** Where the plan's file has the step's `key`, as studies write it: "line.skinning.buffer". */
export function pathOf(step: WorkStep, key: string): string {
  return formatPath([...fileSteps(step), key]);
}
