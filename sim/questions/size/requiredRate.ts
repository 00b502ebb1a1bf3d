import { meanOf } from "../../maths/random/index.ts";
import type { Demand, DemandStep } from "./demand.ts";
import type { RequiredRate } from "./design.ts";
import { headsOf } from "./markets.ts";
import { stepSeconds } from "./stepSeconds.ts";

/** From the week's demand to the rate at which heads must be hung. */
export function requiredRate(demand: Demand): RequiredRate {
  const { week, animals, line } = demand;
  const share = (1 - animals.deadOnArrival) * (1 - animals.condemned);
  const carcassKg = meanOf(animals.liveWeight) * animals.yield;
  const headsPerWeek = headsOf(week, animals);
  const headsPerDay = Math.ceil((headsPerWeek / week.days) * week.peak);
  const time = hangingTime(demand);
  const { hangingSeconds } = time;
  const headsPerSecond = headsPerDay / hangingSeconds;
  const designHeadsPerSecond = headsPerSecond / line.availability;
  const carcassesPerDay = headsPerDay * share;
  return {
    ...{
      headsPerWeek,
      availability: line.availability,
      headsPerDay,
      carcassesPerDay,
      carcassKgPerDay: carcassesPerDay * carcassKg,
      ...time,
    },
    ...{ headsPerSecond, designHeadsPerSecond, taktSeconds: 1 / designHeadsPerSecond },
  };
}

/** Hanging seconds: 0 or less when breaks and the way down the line leave nothing of the shifts. */
function hangingTime({ day, steps }: Demand): Pick<RequiredRate, HangingTime> {
  const shiftSeconds = day.shifts.reduce((sum, { from, to }) => sum + to - from, 0);
  const main = steps.filter(({ offLine, work }) => !offLine && work !== "chilling");
  const breakSeconds = day.breaks.reduce((sum, { length }) => sum + length, 0);
  const emptyingSeconds = day.breaks.length * between(main, "stunning", "bleeding");
  const lastHeadSeconds = main.reduce((sum, step) => sum + wholeSeconds(step), 0);
  const hangingSeconds = shiftSeconds - day.preStart - breakSeconds - emptyingSeconds - lastHeadSeconds;
  return {
    shiftSeconds,
    preStartSeconds: day.preStart,
    breakSeconds,
    emptyingSeconds,
    lastHeadSeconds,
    hangingSeconds,
  };
}

type HangingTime =
  | "shiftSeconds"
  | "preStartSeconds"
  | "breakSeconds"
  | "emptyingSeconds"
  | "lastHeadSeconds"
  | "hangingSeconds";

function between(steps: readonly DemandStep[], from: string, to: string): number {
  const first = steps.findIndex(({ name }) => name === from);
  const last = steps.findIndex(({ name }) => name === to);
  return first === -1 || last === -1
    ? 0
    : steps.slice(first, last + 1).reduce((sum, step) => sum + wholeSeconds(step), 0);
}

function wholeSeconds(step: DemandStep): number {
  const { travel } = step.figures;
  return stepSeconds(step) + (travel == null ? 0 : meanOf(travel));
}
