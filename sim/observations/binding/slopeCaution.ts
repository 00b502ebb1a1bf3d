import { type Step, steps, workplace } from "../../line/index.ts";
import type { Plan } from "../../plan/index.ts";

/**
 * Why the slope in a time of this step need not be that of the mean: where a small change can alter the order of what
 * happens (who goes where, which head passes a window undone) the end of work jumps, and jumps leave no mark on the path
 * of one run (Heidelberger, Cao, Zazanis and Suri 1988, from memory). Null where it holds.
 */
export function slopeCaution(plan: Plan, step: Step): string | null {
  if (plan.day.closing.rule === "stop hanging")
    return "hanging stops at an hour: how many heads are hung changes as well";
  const { crews } = workplace(step);
  const shared = crews.find((crew) => isShared(plan, crew));
  if (shared !== undefined) return `the people of ${shared} also work elsewhere, and who goes where may change`;
  if (step.kind === "crates" && step.of.cratesPerCycle > 1) return "how many crates are taken at once may change";
  if (step.kind === "chain station" && step.of.ifUnfinished === "pass")
    return "which heads pass its window undone may change";
  return null;
}

/** The crew has work at more than one place: stations, repairs, vessels. */
function isShared(plan: Plan, crew: string): boolean {
  const places = steps(plan).map(workplace);
  const stations = places.filter(({ crews }) => crews.includes(crew)).length;
  const repairs = places.some(({ breakdowns }) => breakdowns.some((breakdown) => breakdown.crew === crew));
  const vessels = plan.vessels.some((vessel) => vessel.crew === crew);
  return stations > 1 || repairs || vessels;
}
