import { CREW_RULES } from "../../asked/plan/plan.ts";
import { noteCall } from "./calls.ts";
import { explainIdle, hasWork, isOpen, startNext } from "./flow.ts";
import { startJobs } from "./jobs.ts";
import { crewFor } from "./people.ts";
import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";

/*
 * Who goes where. While things happen at one instant, crewed stations only call for people, and crews are only noted as
 * having somebody free; when all of it is over, before the clock goes on, people are sent: those who stood idle and those
 * who have just come free alike, by their crew's rule.
 */

/**
 * Crews in the plan's order take jobs first, then go where their rule says; all of them again and again until nobody can
 * begin anything more, because what one crew takes in hand leaves another one free to relieve elsewhere. Then the stations
 * that called say why they still idle.
 */
export function sendPeople(day: DayState): void {
  let began = true;
  while (began) {
    began = false;
    for (const crew of day.crewAt) if (crew.looks && sendCrew(day, crew)) began = true;
  }
  for (const crew of day.crewAt) crew.looks = false;
  for (let row = 0; row < day.callingCount; row++) explainCall(day, day.calling[row]!);
  day.callingCount = 0;
  day.unsent = false;
  day.path?.everybodyIsSent(day.crewAt);
}

/** True when somebody of the crew began at a station. */
function sendCrew(day: DayState, crew: CrewState): boolean {
  if (crew.jobs.length > 0) {
    day.path?.sendsToJob(crew.index);
    startJobs(day, crew);
  }
  let began = false;
  for (;;) {
    const stage = chooseStation(day, crew);
    if (stage === null) return began;
    began = true;
    noteCall(day, stage);
    day.path?.sends(stage.index, crew.index);
    startNext(day, stage, crew);
  }
}

const LONGEST_QUEUE = CREW_RULES.indexOf("longest queue");
const FIXED_ORDER = CREW_RULES.indexOf("fixed order");

/** A station whose work these people are the first to take. Ties of the longest queue go to the one further downstream. */
function chooseStation(day: DayState, crew: CrewState): StageState | null {
  const { stations, rule } = crew;
  let chosen: StageState | null = null;
  for (let row = 0; row < stations.length; row++) {
    const stage = stations[row]!;
    if (stage.idle === 0 || !hasWork(day, stage) || crewFor(stage) !== crew || !isOpen(day, stage)) continue;
    if (rule === FIXED_ORDER) return stage;
    if (chosen === null || rule !== LONGEST_QUEUE || stage.shown.heads >= chosen.shown.heads) chosen = stage;
  }
  return chosen;
}

function explainCall(day: DayState, stage: StageState): void {
  stage.isCalling = false;
  day.path?.recall(stage.index);
  if (stage.idle > 0) explainIdle(day, stage);
  else if (day.path && hasWork(day, stage)) day.path.waits(stage);
}
