import { readMoneyRate, writeClock } from "../../text/units/index.ts";
import { assumedValue, USUAL_HANDLING, USUAL_PRESENTATION } from "../size/index.ts";
import type { NewAsked } from "./askNew.ts";
import { HANDLERS, MAINTENANCE } from "./crewNames.ts";
import { cratePositions } from "./liveHandlers.ts";
import { newLine, PLACES_BEFORE, positionsOf, trough, usualCarcass } from "./newLine.ts";
import { limitSource, newSources } from "./newSources.ts";
import type { NewAnswers } from "./question.ts";
import { writeTime } from "./readAnswer.ts";
import { isMachine, meanSeconds, stepsOf, usualStep, WATCHED, workedSteps } from "./usualFigures.ts";

const LATE = { after: "8 s", help: "stick there", takes: "5 s", crew: null };

/** The plan that the answers describe, as its file writes it. */
export function newPlan(asked: NewAsked): Record<string, unknown> {
  const { answers } = asked;
  const { pay } = answers;
  const plan = {
    name: answers.name,
    notes: "A first plan by gambrel new, from answers and guesses; sources says which figure is which.",
    day: day(answers),
    supply: { loads: [load(answers)] },
    liveHandling: liveHandling(answers),
    crews: crews(answers),
    line: newLine(answers),
    limits: limits(asked),
    stunned: { from: "stunning", to: "sticking", hold: true, late: LATE },
    gates: gates(answers),
    ...(pay === null ? {} : { money: { currency: readMoneyRate(pay).value!.currency, overtimeFactor: 1.5 } }),
    ...(usualCarcass(answers) ? { presentation: USUAL_PRESENTATION } : { dressing: "Say what stays on the carcass" }),
  };
  const { name, notes, ...others } = plan;
  return { name, notes, sources: newSources(asked), ...others };
}

function day(answers: NewAnswers): Record<string, unknown> {
  const { start, end, breaks, firstLorry } = answers;
  const later = laterOf(answers);
  return {
    start: writeClock(Math.min(start, firstLorry)),
    shifts: [{ name: "day", from: writeClock(start), to: writeClock(end) }],
    breaks: breaks.map(({ at, seconds }, index) => ({
      name: `break ${index + 1}`,
      at: writeClock(at),
      length: writeTime(seconds),
      later,
    })),
    preStart: assumedValue("day.preStart"),
    cleaning: { length: assumedValue("day.cleaning") },
    safeStop: { from: "stunning", to: "bleeding" },
  };
}

/**
 * Crews behind bleeding go to their breaks when the line before them has run empty: the trough and the places on the way
 * may be full, and the slowest step sets the pace. Who repairs goes last.
 */
function laterOf(answers: NewAnswers): Record<string, string> {
  const { bleeding, seconds } = answers;
  const steps = stepsOf(answers);
  const behind = steps.slice(steps.indexOf("bleeding") + 1).filter((name) => name in seconds);
  const slowest = Math.max(0, ...behind.map((name) => seconds[name]! / positionsOf(name, answers)));
  const later: Record<string, string> = {};
  let heads = trough(answers);
  let way = 0;
  const minutes = () => `${Math.ceil((Math.max(bleeding, heads * slowest) + way) / 60)} min`;
  for (const name of behind) {
    heads += PLACES_BEFORE + positionsOf(name, answers);
    way += travelSeconds(name);
    if (!isMachine(name, answers)) later[name] = minutes();
  }
  return hasRepairs(answers) ? { ...later, [MAINTENANCE]: minutes() } : later;
}

function travelSeconds(name: string): number {
  const { travel } = usualStep(name).json;
  return travel === undefined ? 0 : meanSeconds(travel);
}

function load(answers: NewAnswers): Record<string, unknown> {
  const { lorries, firstLorry, every, crates, headsPerCrate } = answers;
  return {
    name: "lorry",
    at: writeClock(firstLorry),
    ...(lorries === 1 ? {} : { repeat: { every: writeTime(every), times: lorries } }),
    delay: assumedValue("crates.delay"),
    crates,
    headsPerCrate,
    deadOnArrival: assumedValue("animals.deadOnArrival"),
    liveWeight: assumedValue("animals.liveWeight"),
  };
}

/** Two lorries stand in the lairage at most; a third waits. */
function liveHandling(answers: NewAnswers): Record<string, unknown> {
  const { handling, crates } = answers;
  const steps = Object.entries(USUAL_HANDLING[handling]).map(([name, step]) => [name, crateStep(step, answers)]);
  const { unloading, ...others } = Object.fromEntries(steps);
  const atOnce = Number(USUAL_HANDLING[handling].feeding!.cratesAtOnce ?? 1);
  return { way: handling, unloading, lairageCrates: 2 * crates, ...others, cratesAtHanging: Math.max(2, atOnce) };
}

function crateStep(step: Record<string, unknown>, answers: NewAnswers): Record<string, unknown> {
  const { time, people, cratesAtOnce = 1, breakdowns, ...others } = step;
  const stops = answers.breakdowns && Array.isArray(breakdowns) ? breakdowns : [];
  return {
    positions: cratePositions(step, answers),
    ...(cratesAtOnce === 1 ? { perCrate: time } : { perCycle: time, cratesPerCycle: cratesAtOnce }),
    ...(people === 0 ? {} : { crew: HANDLERS }),
    ...(stops.length === 0 ? {} : { breakdowns: stops.map((stop) => ({ crew: MAINTENANCE, ...stop })) }),
    ...others,
  };
}

function crews(answers: NewAnswers): Record<string, unknown>[] {
  const { handlers, people, pay } = answers;
  const all: [string, number][] = [[HANDLERS, handlers], ...Object.entries(people)];
  if (hasRepairs(answers)) all.push([MAINTENANCE, 1]);
  return all.map(([name, number]) => ({ name, people: number, ...(pay === null ? {} : { pay }) }));
}

/** Whether anything in the plan breaks down. */
function hasRepairs(answers: NewAnswers): boolean {
  if (!answers.breakdowns) return false;
  const crateStops = Object.values(USUAL_HANDLING[answers.handling]).some(({ breakdowns }) => breakdowns !== undefined);
  return crateStops || workedSteps(answers).some((name) => isMachine(name, answers));
}

function limits({ answers, given }: NewAsked): Record<string, unknown>[] {
  return Object.entries(WATCHED).flatMap(([name, { from, to }]) => {
    const seconds = answers.limits[name] ?? null;
    if (seconds === null) return [];
    return [{ name, from, to, max: writeTime(seconds), source: limitSource(name, given.has(`limits.${name}`)) }];
  });
}

function gates(answers: NewAnswers): Record<string, unknown>[] {
  const from = "start of stunning";
  return [
    { name: "stun only when sticking has room", from, to: "start of sticking", atMost: answers.people.sticking },
    { name: "stun only when bleeding has room", from, to: "exit from bleeding", atMost: trough(answers) },
  ];
}
