import { claimForJob, freePeople } from "./people.ts";
import type { CrewState } from "./state/crewState.ts";
import { type DayState, POSITION_REPAIRED } from "./state/dayState.ts";
import { beginHelp, helpJob } from "./stunned/help.ts";

/*
 * Jobs that one person of a crew may have to be there for: repairing a failure unit (job = unit), emptying a vessel
 * (job = failures.count + vessel), and helping stunned heads that wait too long (the job behind these). Without a crew help is always at hand; with one, jobs wait first come first served and
 * go before the crew's other work.
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
  const { failures, vessels, stunned } = day.line;
  if (job === helpJob(day)) return day.crewAt[stunned!.late!.crew] ?? null;
  const crew = job < failures.count ? failures.crew[job]! : vessels.crew[job - failures.count]!;
  return day.crewAt[crew] ?? null;
}

/** The job is under way; whoever does it is there already. */
export function startJob(day: DayState, job: number): void {
  const { failures, vessels } = day.line;
  if (job === helpJob(day)) {
    beginHelp(day);
    return;
  }
  if (job >= failures.count) {
    const vessel = job - failures.count;
    day.vesselTaken[vessel] = day.vesselKg[vessel]!;
    day.path?.emptyingBegins(vessel);
    day.calendar.schedule(vessels.slot[vessel]!, day.now + vessels.emptyingSeconds[vessel]!);
    return;
  }
  const repaired = day.now + day.repair[job]!.draw();
  day.path?.repairBegins(day, job);
  if (job >= failures.ownCount) day.calendar.schedule(failures.slot[job]!, repaired);
  else {
    const position = day.positionAt[failures.positionFrom[job]!]!;
    position.announces = POSITION_REPAIRED;
    day.calendar.schedule(position.slot, repaired);
  }
}
