import type { Cover, Crew, Plan } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { workPlaces } from "../warnings/mannedPlaces.ts";

type FileCrew = PlanFile["crews"][number];

/** Who steps in for whom, when all else of the plan is known: a crew keeps what its own work takes. */
export function withCover(plan: Plan, { crews, day }: PlanFile): Plan {
  if (crews.every(({ cover }) => cover.length === 0)) return plan;
  const covered = plan.crews.map((crew, row): Crew => {
    const file = crews[row]!;
    return file.cover.length === 0 ? crew : { ...crew, cover: coverOf(plan, file, day.shifts) };
  });
  return { ...plan, crews: covered };
}

function coverOf(plan: Plan, file: FileCrew, shifts: PlanFile["day"]["shifts"]): Cover {
  const least = file.atLeast ?? Math.max(1, peopleKept(plan, file.name));
  return {
    by: file.cover.map((crew) => ({ crew, keeps: peopleKept(plan, crew) })),
    atLeast: peopleByShift(file, shifts).map((there) => Math.min(least, there)),
  };
}

/** People of the shifts as the plan has them, whoever is ill. */
export function peopleByShift({ people }: FileCrew, shifts: PlanFile["day"]["shifts"]): number[] {
  return shifts.map(({ name }) => (typeof people === "number" ? people : (people[name] ?? 0)));
}

/** The most people that a piece of work takes which only this crew may do: without them it would never be done. */
export function peopleKept(plan: Plan, crew: string): number {
  const places = workPlaces(plan);
  const positions = places.flatMap(({ crews, peoplePerPosition }) =>
    crews.length === 1 && crews[0] === crew ? [peoplePerPosition] : [],
  );
  const jobs = [
    ...places.flatMap(({ breakdowns }) => breakdowns),
    ...plan.sharedBreakdowns,
    ...plan.vessels,
    ...(plan.stunned?.late ? [plan.stunned.late] : []),
  ];
  return Math.max(0, ...positions, jobs.some((job) => job.crew === crew) ? 1 : 0);
}
