import { claimForJob, freePeople } from "./people.ts";
import type { BreakdownState } from "./state/breakdownState.ts";
import type { CrewState } from "./state/crewState.ts";
import { type DayState, POSITION_REPAIRED } from "./state/dayState.ts";
import type { VesselState } from "./state/vesselState.ts";
import { beginHelp, helpJob } from "./stunned/help.ts";

/*
 * Jobs that one person of a crew may have to be there for: a repair (its number is the breakdown's), emptying a vessel
 * (numbered behind the breakdowns), and helping stunned heads that wait too long (the last number). Without a crew help is
 * always at hand; with one, jobs wait first come first served and go before the crew's other work.
 */

export function requestJob(day: DayState, job: number): void {
  const crew = crewOfJob(day, job);
  if (crew === null) startJob(day, job);
  else {
    crew.jobs.push(job);
    startJobs(day, crew);
  }
}

/** Free people take the jobs that wait. */
export function startJobs(day: DayState, crew: CrewState): void {
  const { jobs } = crew;
  while (jobs.length > 0 && freePeople(crew) >= 1) {
    const job = jobs.shift()!;
    claimForJob(day, crew, job);
    startJob(day, job);
  }
}

function crewOfJob(day: DayState, job: number): CrewState | null {
  const { breakdownAt, vesselAt, line } = day;
  if (job === helpJob(day)) return day.crewAt[line.stunned!.late!.crew] ?? null;
  const { crew } = breakdownAt[job] ?? vesselAt[job - breakdownAt.length]!;
  return day.crewAt[crew] ?? null;
}

/** The job is under way; whoever does it is there already. */
export function startJob(day: DayState, job: number): void {
  const { breakdownAt, vesselAt } = day;
  if (job === helpJob(day)) beginHelp(day);
  else if (job < breakdownAt.length) beginRepair(day, breakdownAt[job]!);
  else beginEmptying(day, vesselAt[job - breakdownAt.length]!);
}

function beginRepair(day: DayState, breakdown: BreakdownState): void {
  const repaired = day.now + breakdown.downTime();
  day.path?.repairBegins(day, breakdown);
  if (breakdown.slot >= 0) {
    day.calendar.schedule(breakdown.slot, repaired);
    return;
  }
  const position = breakdown.positions[0]!;
  position.announces = POSITION_REPAIRED;
  day.calendar.schedule(position.slot, repaired);
}

/** The number of the job of emptying the vessel. */
export function emptyingJob({ breakdownAt }: DayState, { index }: VesselState): number {
  return breakdownAt.length + index;
}

function beginEmptying(day: DayState, vessel: VesselState): void {
  vessel.takenKg = vessel.kg;
  day.path?.emptyingBegins(vessel.index);
  day.calendar.schedule(vessel.slot, day.now + vessel.emptyingSeconds);
}
