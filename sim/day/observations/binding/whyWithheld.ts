import type { Breakdown, Plan } from "../../../asked/plan/index.ts";
import type { Varying } from "../../../maths/random/index.ts";
import { byKind, does } from "../../../text/kinds/index.ts";
import { byProductsOf, ownTime, type Step, stageOf, steps, workplace } from "../../line/index.ts";

/**
 * The seconds of one run's path that grow with a time are the slope of the mean only where a small change of any time moves
 * every event a little and never makes one jump (Glasserman 1991, Gradient Estimation via Perturbation Analysis; Heidelberger,
 * Cao, Zazanis and Suri 1988, Management Science 34; both from memory). In a row in which heads keep their order, each start
 * is the latest of some earlier moments, and that holds. What breaks it is told here, in words for a reader: a decision
 * that hangs on the clock, on who comes first, or on how far something has run.
 */

/** Why no slope of this plan is given; null where that of some time may be. */
export function whyNoneHolds(plan: Plan): string | null {
  return hourReason(plan) ?? orderReason(plan) ?? breakdownReason(plan) ?? tieReason(plan);
}

/**
 * Why the slopes in the step's own work and in its uptimes are not given, though others are; null where they are. A failure
 * adds a whole repair at the moment when enough work is done: more work brings whole failures more, and each meets other
 * heads in the places around than those that the day saw.
 */
export function whyWorkIsWithheld(step: Step): string | null {
  if (workplace(step).breakdowns.length === 0) return null;
  return `${step.name} breaks down: more work, or less time between stops, adds whole stops, which one day cannot show`;
}

/** Why the slope in the arrival of one load is not given. */
export function whyLoadIsWithheld({ supply }: Plan): string | null {
  if (supply.kind !== "loads") return null;
  if (supply.loads.some(({ delay }) => delay !== null)) return "delays differ, so loads may come in another order";
  const times = new Set(supply.loads.map(({ atSeconds }) => atSeconds));
  return times.size === supply.loads.length
    ? null
    : "loads come at the same moment, and a small change settles which is first";
}

/** Decisions that hang on an hour: who just misses it waits for all that follows. */
function hourReason(plan: Plan): string | null {
  const { day, crews } = plan;
  if (day.overnight !== undefined)
    return "the day goes on from the one before, and a small change of both alters what it begins with";
  if (plan.atStart !== undefined)
    return "work on what is there when the day begins is told apart, so no slope counts all the work of a step";
  const paced = steps(plan).find(({ of }) => "pace" in of && of.pace.length > 0);
  if (paced !== undefined)
    return `${paced.name} changes its speed at an hour, so a small change alters which heads it meets`;
  if (day.closing.rule === "stop hanging")
    return "hanging stops at an hour, so a small change alters how many heads are hung";
  const held = plan.supply.kind === "loads" ? plan.supply.loads.find((load) => load.held !== undefined) : undefined;
  if (held !== undefined)
    return `${held.name} is held in ${held.held!.in} until an hour, so a small change alters what waits behind it`;
  if (day.breaks.length > 0) return "breaks begin at an hour: a head that just misses one waits for all of it";
  if (day.shifts.length > 1 && crews.length > 0)
    return "shifts end at an hour: a head that just misses one waits for the next";
  return null;
}

/** Decisions that hang on who comes first or on what is there. */
function orderReason(plan: Plan): string | null {
  return supplyReason(plan) ?? lineReason(plan) ?? peopleReason(plan) ?? vesselReason(plan) ?? weightReason(plan);
}

function supplyReason({ supply, liveHandling }: Plan): string | null {
  if (supply.kind === "stream" && supply.whenFull === "turn away")
    return "heads are turned away when the first stage is full, so a small change alters how many come in";
  const crateSteps = [...(liveHandling?.toHanging ?? []), ...(liveHandling?.back ?? [])];
  const batch = crateSteps.find(({ cratesPerCycle }) => cratesPerCycle > 1);
  if (batch !== undefined) return `${batch.name} takes as many crates as are there, so a small change alters how many`;
  const beside = crateSteps.find(({ positions }) => positions > 1);
  if (beside !== undefined) return `crates pass each other at ${beside.name}, so a small change alters their order`;
  return liveHandling?.fleet
    ? "lorries wait for crates of a limited number, so a small change alters when they come"
    : null;
}

function lineReason(plan: Plan): string | null {
  const { stunned } = plan;
  if (stunned?.hold)
    return `${stunned.from} begins a head only when nothing will make it wait, so a small change alters when that is asked`;
  if (stunned !== null)
    return `help is called to a head that waits too long for ${stunned.to}, and a small change alters which one that is`;
  const moving = plan.line.find((stage) => does(stage, "carry stations"));
  if (moving !== undefined) return `a head that just misses a shackle of ${moving.name} waits for the next one`;
  const away = plan.line.find(({ diversions, next, offLine }) => diversions.length > 0 || (next !== null && !offLine));
  if (away !== undefined) return `heads leave the row at ${away.name}, so a small change alters their order`;
  const changing = steps(plan).find(({ of }) => "changeoverSeconds" in of && of.changeoverSeconds !== undefined);
  if (changing !== undefined)
    return `${changing.name} changes over with the first head of a lot, and a small change alters which one that is`;
  const learning = steps(plan).find(({ of }) => "learning" in of && of.learning !== undefined);
  if (learning !== undefined) return `the time at ${learning.name} falls with what was done there before`;
  const replaced = steps(plan).find((step) => workplace(step).breakdowns.some((each) => each.replaced !== undefined));
  if (replaced !== undefined)
    return `what wears at ${replaced.name} is replaced after so much work, so a small change alters before which head`;
  const waited = steps(plan).find((step) => sharesOf(step).includes("time"));
  if (waited !== undefined)
    return `how long a head took decides whether it leaves the row at ${waited.name}, so a small change alters which do`;
  const choosy = plan.line.find((stage) => does(stage, "work") && stage.weights !== null);
  return choosy === undefined
    ? null
    : `heads leave the row at ${choosy.name} by weight, so a small change alters their order`;
}

function peopleReason(plan: Plan): string | null {
  const relieved = steps(plan).find((step) => workplace(step).crews.length > 1);
  if (relieved !== undefined) return `more than one crew works at ${relieved.name}, and who goes where may change`;
  const shared = plan.crews.find(({ name }) => jobsOf(plan, name) > 1);
  return shared === undefined ? null : `${shared.name} has more than one job, and who goes where may change`;
}

/** Stations, machines that it repairs one by one, and vessels. */
function jobsOf(plan: Plan, crew: string): number {
  const jobs = steps(plan).map((step) => {
    const { crews, breakdowns, positions } = workplace(step);
    const repaired = breakdowns.filter((breakdown) => breakdown.crew === crew);
    const machines = repaired.map(({ scope }) => (scope === "station" ? 1 : positions));
    return machines.reduce((sum, each) => sum + each, crews.includes(crew) ? 1 : 0);
  });
  return jobs.reduce((sum, each) => sum + each, plan.vessels.filter((vessel) => vessel.crew === crew).length);
}

function vesselReason(plan: Plan): string | null {
  const feeds = steps(plan).flatMap((step) => byProductsOf(step).map(({ vessel }) => vessel));
  const stopping = plan.vessels.find(({ name, whenFull }) => whenFull === "stop" && feeds.includes(name));
  return stopping === undefined
    ? null
    : `${stopping.name} stops the line when it is full, at another head after a small change`;
}

/** Heads that passed each other take their weights with them to whatever goes by weight. */
function weightReason(plan: Plan): string | null {
  const list = steps(plan);
  const passing = list.findIndex((step) => !does(step, "handle crates") && workplace(step).positions > 1);
  const leaving = passing < 0 ? undefined : list.slice(passing).find((step) => sharesOf(step).includes("live weight"));
  if (leaving !== undefined)
    return `heads pass each other at ${list[passing]!.name}, and their weights decide which leave the row at ${leaving.name}`;
  if (passing < 0 || !list.slice(passing + 1).some(goesByWeight)) return null;
  return `heads pass each other at ${list[passing]!.name}, and their weights decide how long they take further on`;
}

/** What the shares of heads that leave the row there depend on. */
function sharesOf(step: Step): string[] {
  const stage = stageOf(step);
  if (stage === null) return [];
  return [...stage.removals, ...stage.diversions].flatMap(({ shareBy }) => shareBy?.of.kind ?? []);
}

/** Stations on a chain are not asked: a chain withholds every slope. */
function goesByWeight(step: Step): boolean {
  return byKind(step, {
    crates: () => false,
    station: ({ of }) => of.weightFactor !== null,
    dwell: ({ of }) => of.dwell.kind === "chilling",
    chain: () => false,
    "chain station": () => false,
  });
}

/** Failures whose place in the sequence of heads moves with what other stages do. */
function breakdownReason(plan: Plan): string | null {
  const shared = plan.sharedBreakdowns[0];
  if (shared !== undefined)
    return `${shared.name} stops several places at once, and a small change alters which heads it catches at each of them`;
  for (const step of steps(plan)) {
    for (const breakdown of workplace(step).breakdowns) {
      const reason = whyItMoves(step, breakdown);
      if (reason !== null) return reason;
    }
  }
  return null;
}

function whyItMoves(step: Step, { name, clock, scope, uptimeSeconds, headInHand }: Breakdown): string | null {
  const what = `${name} (${step.name})`;
  const { positions } = workplace(step);
  if (clock === "calendar") return `${what} goes by the clock and also strikes an idle machine`;
  if (headInHand !== "resume")
    return `heads leave the row at ${step.name} when it breaks down, so a small change alters their order`;
  if (positions === 1) return null;
  if (scope === "station") return `${what} counts the time in which any of several positions works`;
  return uptimeSeconds.family === "exponential"
    ? null
    : `${what} makes the positions of its station differ, and a small change alters which one takes a head`;
}

/**
 * Two fixed times can bring two stages level, to the second: there the end of work has one slope for more of a time and
 * another for less. With one fixed time among times that vary, that has probability 0.
 */
function tieReason(plan: Plan): string | null {
  const [first, second] = fixedTimes(plan);
  if (first === undefined || second === undefined) return null;
  return `two times never vary (${first} and ${second}): where two stages are level, more of a time and less of it differ`;
}

function fixedTimes(plan: Plan): string[] {
  const { supply } = plan;
  const gaps = supply.kind === "stream" ? named("arrivals", supply.interarrival) : [];
  const loads = supply.kind === "loads" && supply.loads.length > 1 ? ["the loads' arrival"] : [];
  return [...gaps, ...loads, ...steps(plan).flatMap(timesOf)];
}

function timesOf(step: Step): string[] {
  const { name } = step;
  const { breakdowns } = workplace(step);
  const stops = breakdowns.flatMap((each) => [
    ...named(`${name}: uptime of ${each.name}`, each.uptimeSeconds),
    ...named(`${name}: repair of ${each.name}`, each.repairSeconds),
  ]);
  return [
    ...named(name, ownTime(step)),
    ...named(`the way from ${name}`, stageOf(step)?.travelSeconds ?? null),
    ...stops,
  ];
}

/** The name, if the time never varies or only between a few values; nothing for one that is 0. */
function named(name: string, time: Varying | null): string[] {
  if (time === null) return [];
  if (time.family === "constant") return time.value > 0 ? [name] : [];
  return time.family === "empirical" ? [name] : [];
}
