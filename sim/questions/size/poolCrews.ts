import { fewestPeople } from "./balance/fewestPeople.ts";
import { leastCycle } from "./balance/leastCycle.ts";
import type { Tasks } from "./balance/tasks.ts";
import type { Demand } from "./demand.ts";
import type { SizedCrew, SizedStation } from "./design.ts";
import { LIVE_SIDE, ZONES, type Zone } from "./zones.ts";

/** The work of one zone, in the order in which heads pass it. */
interface ZoneWork {
  zone: Zone;
  steps: SizedStation[];
  tasks: Tasks;
  people: number;
}

/**
 * Posts that take in neighbouring steps of one zone: the fewest people whose load at this rate, walking counted, stays within the most load
 * by hand (`fewestPeople`), and where they are asked for some more; then so shared out that the busiest of them has least
 * (`leastCycle`). `at`: the rate that people are to keep up with, and the design rate that their load is told for.
 */
export function poolCrews(
  demand: Demand,
  stations: readonly SizedStation[],
  at: { headsPerSecond: number; designHeadsPerSecond: number },
  extra: ReadonlyMap<Zone, number>,
): SizedCrew[] {
  const cycle = demand.line.handLoad / at.headsPerSecond;
  return ZONES.flatMap((zone) => {
    const steps = stepsIn(zone, demand, stations);
    if (steps.length === 0) return [];
    const tasks = tasksOf(steps, demand);
    const people = fewestPeople(tasks, cycle)!.people + (extra.get(zone) ?? 0);
    return crewsOf({ zone, steps, tasks, people }, at.designHeadsPerSecond);
  });
}

/** Crate steps first and last, hanging between them; then as the line runs. Machines need nobody. */
function stepsIn(zone: Zone, { steps }: Demand, stations: readonly SizedStation[]): SizedStation[] {
  const zoneOf = new Map<string, Zone>(steps.map((step) => [step.name, step.zone]));
  const manned = stations.filter(({ crew }) => crew !== null);
  const own = manned.filter(({ name, work }) => (work === "crates" ? LIVE_SIDE : zoneOf.get(name)) === zone);
  const full = own.findIndex(({ name }) => name === "washing" || name === "restacking" || name === "palletsOut");
  const crates = own.filter(({ work }) => work === "crates");
  const before = full === -1 ? crates.length : full;
  return [...crates.slice(0, before), ...own.filter(({ work }) => work !== "crates"), ...crates.slice(before)];
}

/** One after the other, so that a post's steps lie side by side. */
function tasksOf(steps: readonly SizedStation[], { line }: Demand): Tasks {
  return {
    seconds: steps.map(({ personSecondsPerHead }) => personSecondsPerHead),
    before: steps.slice(1).map((_, index) => [index, index + 1] as const),
    walking: steps.map(({ visitsPerHead }) => line.walking * visitsPerHead),
    pooled: true,
  };
}

function crewsOf({ zone, steps, tasks, people }: ZoneWork, headsPerSecond: number): SizedCrew[] {
  const { posts } = leastCycle(tasks, people)!.balance;
  return posts.map((post, index): SizedCrew => {
    const own = post.tasks.map((task) => steps[task]!);
    const hands = Math.max(post.people, ...own.map(({ peoplePerPosition }) => peoplePerPosition));
    return {
      name: posts.length === 1 ? zone : `${zone} ${index + 1}`,
      zone,
      people: hands,
      steps: own.map(({ name }) => name),
      walkingSeconds: own.length > 1 ? post.tasks.reduce((sum, task) => sum + tasks.walking[task]!, 0) : 0,
      load: (post.loadSeconds * post.people * headsPerSecond) / hands,
    };
  });
}
