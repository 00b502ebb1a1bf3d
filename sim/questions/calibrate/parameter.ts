import { formatPath, mapWork, type Plan, type SharedBreakdown, type Work } from "../../asked/plan/index.ts";
import { meanOf, timesAsLong, type Varying } from "../../maths/random/index.ts";

/** One figure of a plan that can be moved to see what becomes of its days. */
export interface PlanFigure {
  kind: "cycle" | "uptime" | "repair" | "people";
  /** "mean cycle time of skinning", "people of evisceration". */
  label: string;
  /** Where it stands in the plan, as studies write paths. */
  path: string;
  /** Seconds; people in the largest shift. */
  value: number;
  /** The plan with the figure multiplied by `factor`; people: so many more in every shift, 1 at least where there is one. */
  moved(plan: Plan, by: number): Plan;
}

/** Every mean cycle time, uptime and repair time, and every crew. Figures that are 0 cannot be moved and are left out. */
export function parametersOf(plan: Plan): PlanFigure[] {
  const found: PlanFigure[] = [];
  mapWork(plan, (work, path, name) => {
    found.push(...workParameters(work, path, name));
    return work;
  });
  found.push(...plan.sharedBreakdowns.flatMap(sharedParameters));
  return [...found.filter(({ value }) => value > 0), ...plan.crews.map(({ name }) => crewParameter(plan, name))];
}

function timeKey(work: Work): "cycleSeconds" | "secondsPerCycle" {
  return "cycleSeconds" in work ? "cycleSeconds" : "secondsPerCycle";
}

function timeOf(work: Work): Varying {
  return "cycleSeconds" in work ? work.cycleSeconds : work.secondsPerCycle;
}

function workParameters(work: Work, path: string[], name: string): PlanFigure[] {
  const here = formatPath(path);
  const moveHere = (plan: Plan, change: <Kind extends Work>(work: Kind) => Kind): Plan =>
    mapWork(plan, (other, otherPath) => (formatPath(otherPath) === here ? change(other) : other));
  const key = timeKey(work);
  const cycle: PlanFigure = {
    kind: "cycle",
    label: `mean cycle time of ${name}`,
    path: formatPath([...path, key === "cycleSeconds" ? "cycle" : "perCrate"]),
    value: meanOf(timeOf(work)),
    moved: (plan, by) => moveHere(plan, (other) => ({ ...other, [key]: timesAsLong(timeOf(other), by) })),
  };
  return [cycle, ...work.breakdowns.flatMap((breakdown, index) => breakdownParameters(breakdown.name, index))];

  function breakdownParameters(breakdown: string, index: number): PlanFigure[] {
    const kinds = ["uptime", "repair"] as const;
    return kinds.map((kind) => {
      const seconds = `${kind}Seconds` as const;
      const change = <Kind extends Work>(other: Kind, by: number): Kind => ({
        ...other,
        breakdowns: other.breakdowns.map((each, i) =>
          i === index ? { ...each, [seconds]: timesAsLong(each[seconds], by) } : each,
        ),
      });
      return {
        kind,
        label: `mean ${kind === "uptime" ? "uptime to" : "repair time of"} "${breakdown}" at ${name}`,
        path: formatPath([...path, "breakdowns", breakdown, kind]),
        value: meanOf(work.breakdowns[index]![seconds]),
        moved: (plan, by) => moveHere(plan, (other) => change(other, by)),
      };
    });
  }
}

function sharedParameters({ name, uptimeSeconds, repairSeconds }: SharedBreakdown): PlanFigure[] {
  const parameter = (kind: "uptime" | "repair", words: string, value: number): PlanFigure => {
    const seconds = `${kind}Seconds` as const;
    return {
      kind,
      label: `mean ${words} "${name}"`,
      path: formatPath(["sharedBreakdowns", name, kind]),
      value,
      moved: (plan, by) => ({
        ...plan,
        sharedBreakdowns: plan.sharedBreakdowns.map((each) =>
          each.name === name ? { ...each, [seconds]: timesAsLong(each[seconds], by) } : each,
        ),
      }),
    };
  };
  return [
    parameter("uptime", "uptime to", meanOf(uptimeSeconds)),
    parameter("repair", "repair time of", meanOf(repairSeconds)),
  ];
}

function crewParameter(plan: Plan, name: string): PlanFigure {
  const { people } = plan.crews.find((crew) => crew.name === name)!;
  const more = (count: number, by: number) => (count === 0 ? 0 : Math.max(1, count + by));
  return {
    kind: "people",
    label: `people of ${name}`,
    path: formatPath(["crews", name, "people"]),
    value: Math.max(...people),
    moved: (other, by) => ({
      ...other,
      crews: other.crews.map((crew) =>
        crew.name === name ? { ...crew, people: crew.people.map((count) => more(count, by)) } : crew,
      ),
    }),
  };
}
