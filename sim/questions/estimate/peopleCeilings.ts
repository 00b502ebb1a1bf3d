import type { Crew, Plan } from "../../asked/plan/index.ts";
import type { Ceiling } from "./ceiling.ts";
import type { WorkItem } from "./workList.ts";

/**
 * Crews that share work are taken together: what they can do is their people over the person-seconds of a head. Work
 * that only one crew may do must fit into that crew as well. Walking, relief and repairs are not in it.
 */
export function peopleCeilings(plan: Plan, items: readonly WorkItem[]): Ceiling[] {
  const groups = new Map<string, Set<string>>();
  for (const { crews } of items) join(groups, crews);
  const together = new Set(groups.values());
  const shared = [...together].map((names) =>
    ceiling(
      plan,
      names,
      items.filter(({ crews }) => crews.some((crew) => names.has(crew))),
    ),
  );
  const alone = [...together]
    .filter(({ size }) => size > 1)
    .flatMap((names) =>
      [...names].map((name) =>
        ceiling(
          plan,
          new Set([name]),
          items.filter(({ crews }) => crews.length === 1 && crews[0] === name),
        ),
      ),
    );
  return [...shared, ...alone];
}

function join(groups: Map<string, Set<string>>, crews: readonly string[]): void {
  const merged = new Set(crews.flatMap((crew) => [...(groups.get(crew) ?? []), crew]));
  for (const crew of merged) groups.set(crew, merged);
}

function ceiling(plan: Plan, names: ReadonlySet<string>, items: readonly WorkItem[]): Ceiling {
  const personSeconds = items.reduce((sum, { secondsPerHead, people }) => sum + secondsPerHead * people, 0);
  const people = plan.crews
    .filter(({ name }) => names.has(name))
    .reduce((sum, crew) => sum + meanPeople(crew, plan), 0);
  return {
    what: [...names].join(", "),
    kind: "people",
    headsPerSecond: personSeconds === 0 ? Infinity : people / personSeconds,
  };
}

/** Over the shifts in which somebody is there. */
export function meanPeople({ people, absentShare }: Crew, { day }: Plan): number {
  let [personSeconds, seconds] = [0, 0];
  day.shifts.forEach(({ fromSeconds, toSeconds }, shift) => {
    if (people[shift] === 0) return;
    personSeconds += people[shift]! * (toSeconds - fromSeconds);
    seconds += toSeconds - fromSeconds;
  });
  return seconds === 0 ? 0 : (personSeconds / seconds) * (1 - absentShare);
}
