import type { Break, Crew, Plan } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileRotation = NonNullable<PlanFile["crews"][number]["rotation"]>;

/**
 * The crews that change places do so as on a short break of their own: so long after the start of the shift, after a break,
 * or after they changed last. Whoever has a head in hand finishes it first.
 */
export function withRotations(plan: Plan, { crews }: PlanFile): Plan {
  if (crews.every(({ rotation }) => rotation === null)) return plan;
  const changes = plan.crews.flatMap((crew, row) => {
    const { rotation } = crews[row]!;
    return rotation === null ? [] : changesOf(plan, crew, rotation);
  });
  return {
    ...plan,
    crews: plan.crews.map((crew, row) => (crews[row]!.rotation === null ? crew : { ...crew, rotates: true as const })),
    day: { ...plan.day, breaks: [...plan.day.breaks, ...changes] },
  };
}

function changesOf({ day }: Plan, crew: Crew, { every, takes }: FileRotation): Break[] {
  const starts = day.shifts.flatMap((shift, row) =>
    isThere(crew, row) ? changesIn(stopsOf(day.breaks, crew), shift, { every, takes }) : [],
  );
  return starts.map((atSeconds, index) => ({
    ...{ name: `${crew.name} changes places ${index + 1}`, atSeconds, lengthSeconds: takes, crews: [crew.name] },
    ...{ ends: "after its length", laterSeconds: {}, stages: [] },
  }));
}

function isThere({ people, cover }: Crew, shift: number): boolean {
  return Math.max(people[shift]!, cover?.atLeast[shift] ?? 0) > 0;
}

interface Stretch {
  fromSeconds: number;
  toSeconds: number;
}

function changesIn(stops: readonly Stretch[], shift: Stretch, { every, takes }: FileRotation): number[] {
  const changes: number[] = [];
  let since = shift.fromSeconds;
  for (;;) {
    const next = since + every;
    const stop = stops.find(({ fromSeconds, toSeconds }) => toSeconds > since && fromSeconds <= next + takes);
    if (stop !== undefined) since = Math.max(since, stop.toSeconds);
    else if (next + takes >= shift.toSeconds) return changes;
    else {
      changes.push(next);
      since = next + takes;
    }
  }
}

/** The crew's breaks, in the order in which they begin. */
export function stopsOf(breaks: readonly Break[], { name }: Pick<Crew, "name">): Stretch[] {
  return breaks
    .filter(({ crews }) => crews.includes(name))
    .map(({ atSeconds, lengthSeconds, laterSeconds }) => {
      const fromSeconds = atSeconds + (laterSeconds[name] ?? 0);
      return { fromSeconds, toSeconds: fromSeconds + lengthSeconds };
    })
    .sort((a, b) => a.fromSeconds - b.fromSeconds);
}
