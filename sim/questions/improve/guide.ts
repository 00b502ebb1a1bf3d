import { type PathStep, type Plan, parsePath } from "../../asked/plan/index.ts";
import { steps, workplace } from "../../day/line/index.ts";
import type { Why } from "../../days/results/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { ImproveQuestion } from "./question.ts";
import { type Counts, isMoved } from "./space.ts";

/**
 * What one more of each element is likely to take off the end of work, seconds, and what one fewer adds, from the
 * binding path of a design's days: so also where no slope is given to readers. A guide to what is tried next, not a forecast.
 *
 * Places: the seconds for which the stage held those before it back, and what both sides of the buffer bind (the lesser:
 * a buffer helps as far as now one and now the other is the slower one), shared out over the places there are. People:
 * what the work of the crew's stations binds and how long its people were waited for; n + 1 people take n / (n + 1) of
 * the time. Options: what the stages and crews they speak of bind.
 */
export interface Guide {
  more: number[];
  fewer: number[];
}

export function guideOf(why: Why, counts: Counts, { space, base }: ImproveQuestion): Guide {
  const bound = boundBy(why, base.plan);
  if (space.kind === "places") {
    return forEach(counts, (index, count) => {
      const worth = worthOfPlaces(base.plan, space.elements[index]!.name, bound);
      return { more: worth / (count + 1), fewer: worth / Math.max(1, count) };
    });
  }
  if (space.kind === "people") {
    return forEach(counts, (index, count) => {
      const worth = worthOfPeople(base.plan, space.elements[index]!.name, bound);
      return { more: worth / (count + 1), fewer: worth / Math.max(0.5, count - 1) };
    });
  }
  if (isMoved(space)) return forEach(counts, () => ({ more: 0, fewer: 0 }));
  return forEach(counts, (index) => {
    const option = space.elements.map((_, other) => (other === index ? 1 : 0));
    const worth = worthOfPaths(base.plan, Object.keys(space.changeOf(option).set), bound);
    return { more: worth, fewer: worth };
  });
}

function forEach(counts: Counts, worth: (index: number, count: number) => { more: number; fewer: number }): Guide {
  const found = counts.map((count, index) => worth(index, count));
  return { more: found.map(({ more }) => more), fewer: found.map(({ fewer }) => fewer) };
}

/** Seconds of the day by stage. */
interface Bound {
  /** That grow with the mean of its time. */
  work(stage: string): number;
  /** For which it held those before it back. */
  place(stage: string): number;
  /** For which its people were waited for. */
  people(stage: string): number;
}

/** A station's or a dwell's own seconds by all causes: they grow with the mean of its time, nearly (a chain's pace is none). */
const OF_WORK: readonly Why["parts"][number]["cause"][] = [
  "work",
  "place",
  "people",
  "hold",
  "dwell",
  "repair",
  "repairer",
];

function boundBy({ parts }: Why, plan: Plan): Bound {
  const chains = plan.line.filter((stage) => does(stage, "carry stations")).map(({ name }) => name);
  const ofParts = (causes: readonly string[]) => (stage: string) =>
    sum(parts.filter((part) => part.stage === stage && causes.includes(part.cause)).map(({ seconds }) => seconds.mean));
  return {
    work: (stage) => (chains.includes(stage) ? 0 : ofParts(OF_WORK)(stage)),
    place: ofParts(["place"]),
    people: ofParts(["people", "walking"]),
  };
}

function worthOfPlaces(plan: Plan, station: string, bound: Bound): number {
  const names = plan.line.filter((stage) => does(stage, "work") && !stage.offLine).map(({ name }) => name);
  const before = names[names.indexOf(station) - 1];
  const either = before === undefined ? 0 : Math.min(bound.work(before), bound.work(station));
  return bound.place(station) + either;
}

function worthOfPeople(plan: Plan, crew: string, bound: Bound): number {
  const stages = steps(plan).filter((step) => workplace(step).crews.includes(crew));
  return sum(stages.map(({ name }) => bound.work(name) + bound.people(name)));
}

function worthOfPaths(plan: Plan, paths: readonly string[], bound: Bound): number {
  const named = new Set(paths.flatMap((path): PathStep[] => parsePath(path) ?? []));
  const stages = steps(plan).filter(({ name }) => named.has(name));
  const crews = plan.crews.filter(({ name }) => named.has(name));
  return (
    sum(stages.map(({ name }) => bound.work(name) + bound.place(name))) +
    sum(crews.map(({ name }) => worthOfPeople(plan, name, bound)))
  );
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
