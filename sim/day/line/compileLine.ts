import { type AtStart, CREW_RULES, MOMENTS, type Plan, type Point } from "../../asked/plan/plan.ts";
import { does } from "../../text/kinds/index.ts";
import { compileBreakdowns } from "./compileBreakdowns.ts";
import { compileCalendar, plannedPeople } from "./compileCalendar.ts";
import {
  BLED,
  type ChainColumns,
  type CompiledLine,
  type CompiledLoad,
  type CompiledStunned,
  type CompiledSupply,
  type CrewColumns,
  type KillLineColumns,
  NO_LIMIT,
  STUCK,
  STUNNED,
  type VesselColumns,
} from "./compiledLine.ts";
import { compileGates, compileLimits, compilePoints } from "./compileLimits.ts";
import { productsOf } from "./compileProducts.ts";
import { compileSlots } from "./compileSlots.ts";
import { compilePositions, compileStages, destinationsOf, sectionsOf } from "./compileStages.ts";
import { type KillLine, killLineOf } from "./killLine.ts";
import { protectedStages } from "./protectedStages.ts";
import { rowRanges } from "./rowRanges.ts";
import { byProductsOf, type Step, steps, workplace } from "./steps.ts";

const START = MOMENTS.indexOf("start");

const END = MOMENTS.indexOf("end");

const EXIT = MOMENTS.indexOf("exit");

/** Turns a checked plan into flat arrays. The plan must have passed `readPlan`; nothing is checked again here. */
export function compileLine(plan: Plan): CompiledLine {
  const all = steps(plan);
  const sectionNames = sectionsOf(plan);
  const destinationNames = destinationsOf(plan);
  const stages = compileStages(plan, all, sectionNames, destinationNames);
  const breakdowns = compileBreakdowns(plan, all, stages);
  const positions = compilePositions(all, stages);
  const chains = compileChains(all);
  const vessels = compileVessels(plan, all);
  return {
    stages,
    positions,
    breakdowns,
    chains,
    vessels,
    crews: compileCrews(plan, all),
    calendar: compileCalendar(plan, all),
    points: compilePoints(plan, all),
    limits: compileLimits(plan),
    gates: compileGates(plan, all),
    stunned: compileStunned(plan, all),
    slots: compileSlots(plan, { stages, positions, breakdowns, chains, vessels }),
    supply: compileSupply(plan, all, destinationNames),
    atStart: compileAtStart(plan, all),
    cleaning: compileCleaning(plan, sectionNames),
    killLine: compileKillLine(plan, all),
    sectionNames,
    destinationNames,
    productNames: productsOf(all),
    startClockSeconds: plan.day.startClockSeconds,
    shiftEndSeconds: plan.day.shifts.at(-1)?.toSeconds ?? 0,
    ceilingSeconds: plan.day.ceilingSeconds,
  };
}

function compileCrews(plan: Plan, all: Step[]): CrewColumns {
  const served = plan.crews.map((crew) =>
    all.flatMap((step, stage) => (workplace(step).crews.includes(crew.name) ? [stage] : [])),
  );
  const stretch = protectedStages(plan, all);
  return {
    count: plan.crews.length,
    names: plan.crews.map((crew) => crew.name),
    rule: Int8Array.from(plan.crews, (crew) => CREW_RULES.indexOf(crew.rule)),
    peopleMax: Int32Array.from(plan.crews, (crew) => Math.max(...crew.people, ...(crew.cover?.atLeast ?? []))),
    shiftPeople: plan.crews.map((crew) => crew.people),
    cover: plan.crews.map(({ cover }) =>
      cover === undefined
        ? null
        : {
            by: cover.by.map(({ crew }) => plan.crews.findIndex(({ name }) => name === crew)),
            keeps: cover.by.map(({ keeps }) => keeps),
            atLeast: cover.atLeast,
          },
    ),
    walkSeconds: Float64Array.from(plan.crews, (crew) => crew.walkSeconds),
    absentShare: Float64Array.from(plan.crews, (crew) => crew.absentShare),
    leavesFrom: Float64Array.from(plan.crews, (crew) => {
      if (!crew.leavesOnItsOwn) return Number.NaN;
      return plan.day.shifts[plannedPeople(crew).findLastIndex((there) => there > 0)]?.toSeconds ?? 0;
    }),
    protected: Int8Array.from(served, (list) => (list.some((stage) => stretch[stage]) ? 1 : 0)),
    stationFrom: rowRanges(served.map((list) => list.length)),
    stations: Int32Array.from(served.flat()),
  };
}

/** Vessels; their slots are filled in by `compileSlots`. */
function compileVessels(plan: Plan, all: Step[]): VesselColumns {
  const crews = plan.crews.map((crew) => crew.name);
  const feeders = plan.vessels.map((vessel) =>
    all.flatMap((step, stage) => (byProductsOf(step).some((product) => product.vessel === vessel.name) ? [stage] : [])),
  );
  return {
    count: plan.vessels.length,
    names: plan.vessels.map((vessel) => vessel.name),
    capacityKg: Float64Array.from(plan.vessels, (vessel) => vessel.capacityKg),
    emptyAtKg: Float64Array.from(plan.vessels, (vessel) => vessel.emptyAtKg),
    emptyingSeconds: Float64Array.from(plan.vessels, (vessel) => vessel.emptyingSeconds),
    crew: Int32Array.from(plan.vessels, (vessel) => crews.indexOf(vessel.crew ?? "")),
    stopsFeeders: Int8Array.from(plan.vessels, (vessel) => (vessel.whenFull === "stop" ? 1 : 0)),
    slot: new Int32Array(plan.vessels.length).fill(-1),
    feederFrom: rowRanges(feeders.map((list) => list.length)),
    feeder: Int32Array.from(feeders.flat()),
  };
}

/** Chains; their slots are filled in by `compileSlots`. */
function compileChains(all: Step[]): ChainColumns {
  const names = all.map((step) => step.name);
  const rows = all.flatMap((step, stage) => (does(step, "carry stations") ? [{ stage, chain: step.of }] : []));
  const onChain = (step: Step) => (does(step, "stand on a chain") ? step.of : null);
  return {
    count: rows.length,
    stage: Int32Array.from(rows, (row) => row.stage),
    stationCount: Int32Array.from(rows, (row) => row.chain.stations.length),
    places: Int32Array.from(rows, (row) => row.chain.places),
    secondsPerShackle: Float64Array.from(rows, (row) => row.chain.secondsPerShackle),
    shackles: Int32Array.from(rows, (row) => row.chain.shackles?.count ?? NO_LIMIT),
    backSeconds: Float64Array.from(rows, (row) => row.chain.shackles?.backSeconds ?? 0),
    unfinishedTo: Int32Array.from(rows, (row) => names.lastIndexOf(row.chain.unfinishedTo ?? "")),
    slot: new Int32Array(rows.length).fill(-1),
    windowFrom: Int32Array.from(all, (step) => onChain(step)?.at ?? -1),
    windowTo: Int32Array.from(all, (step) => {
      const station = onChain(step);
      return station === null ? -1 : station.at + station.window;
    }),
    stopsChain: Int8Array.from(all, (step) => (onChain(step)?.ifUnfinished === "stop" ? 1 : 0)),
  };
}

/** The care for stunned heads, with the limits that a second stun begins anew. */
function compileStunned(plan: Plan, all: Step[]): CompiledStunned | null {
  if (plan.stunned === null) return null;
  const { from, to, hold, late } = plan.stunned;
  const names = all.map((step) => step.name);
  const limits = plan.limits.flatMap((limit, index) =>
    isWorkAt(limit.from, from) && isWorkAt(limit.to, to) ? [index] : [],
  );
  return {
    from: names.lastIndexOf(from),
    to: names.lastIndexOf(to),
    hold,
    limits: Int32Array.from(limits),
    late: late && {
      afterSeconds: late.afterSeconds,
      takesSeconds: late.takesSeconds,
      sticks: late.help === "stick there",
      crew: plan.crews.findIndex(({ name }) => name === late.crew),
    },
  };
}

function isWorkAt({ stage, moment }: Point, name: string): boolean {
  return stage === name && (moment === "start" || moment === "end");
}

/** Null where the plan has no kill line. */
function compileKillLine(plan: Plan, all: Step[]): KillLineColumns | null {
  const line = killLineOf(plan);
  if (line === null) return null;
  const indexOf = (name: string) => all.findLastIndex((step) => step.name === name);
  const marks = marksOf(line, all, indexOf);
  return {
    names: line,
    steps: Int32Array.from(line.steps, indexOf),
    last: Math.max(...[...line.sticking, ...line.bleeding, ...line.steps].map(indexOf)),
    marks: Int8Array.from({ length: all.length * MOMENTS.length }, (_, point) => marks.get(point) ?? 0),
  };
}

function marksOf({ stunning, sticking, bleeding }: KillLine, all: Step[], indexOf: (name: string) => number) {
  const at = (name: string, moment: number) => indexOf(name) * MOMENTS.length + moment;
  const bled = bleeding.length > 0 ? bleeding.slice(-1) : sticking;
  return new Map([
    ...bled.map((name) => [at(name, does(all[indexOf(name)]!, "carry stations") ? EXIT : END), BLED] as const),
    ...stunning.map((name) => [at(name, END), STUNNED] as const),
    ...sticking.map((name) => [at(name, START), STUCK] as const),
  ]);
}

function compileCleaning({ day, crews }: Plan, sectionNames: readonly string[]): CompiledLine["cleaning"] {
  const { cleaning } = day;
  if (cleaning?.sections === undefined) return null;
  return {
    sections: cleaning.sections.map((each) => ({ ...each, section: sectionNames.indexOf(each.section) })),
    crews: cleaning.crews.map((crew) => crews.findIndex(({ name }) => name === crew)),
  };
}

function compileAtStart({ atStart }: Plan, all: Step[]): CompiledLine["atStart"] {
  if (atStart === undefined) return null;
  return {
    crates: atStart.crates.map((entry) => loadBefore(entry, entry)),
    carcasses: atStart.carcasses.map((entry) => ({
      load: loadBefore(entry, { crates: 1, headsPerCrate: entry.heads }),
      stage: all.findLastIndex(({ name }) => name === entry.in),
      heads: entry.heads,
      leftShare: entry.leftShare,
    })),
  };
}

/** What is there when the day begins came before it did. */
function loadBefore(
  { lot, forSeconds, liveWeightKg }: AtStart["crates" | "carcasses"][number],
  { crates, headsPerCrate }: Pick<CompiledLoad, "crates" | "headsPerCrate">,
): CompiledLoad {
  return {
    ...{
      name: lot ?? "there at the start",
      lot,
      seconds: -forSeconds,
      delay: null,
      comesShare: 1,
      crates,
      headsPerCrate,
    },
    ...{ withdrawnChance: 0, withdrawnAt: -1, withdrawnTo: -1, heldIn: -1, heldUntil: 0 },
    ...{ deadOnArrivalShare: 0, liveWeightKg },
  };
}

function compileSupply(plan: Plan, all: Step[], destinations: string[]): CompiledSupply {
  const { supply } = plan;
  if (supply.kind === "saturated") return { kind: "saturated", heads: supply.heads, liveWeightKg: supply.liveWeightKg };
  if (supply.kind === "stream") {
    const { interarrival, heads, whenFull, liveWeightKg } = supply;
    return { kind: "stream", interarrival, heads, turnAway: whenFull === "turn away", liveWeightKg };
  }
  const handling = plan.liveHandling!;
  return {
    kind: "loads",
    loads: supply.loads.map((load) => ({
      name: load.name,
      lot: load.lot ?? null,
      withdrawnChance: load.withdrawn?.chance ?? 0,
      withdrawnAt: all.findLastIndex(({ name }) => name === load.withdrawn?.at),
      heldIn: all.findLastIndex(({ name }) => name === load.held?.in),
      heldUntil: load.held?.untilSeconds ?? 0,
      withdrawnTo: destinations.indexOf(load.withdrawn?.as ?? ""),
      seconds: load.atSeconds,
      delay: load.delay,
      comesShare: load.comesShare,
      crates: load.crates,
      headsPerCrate: load.headsPerCrate,
      deadOnArrivalShare: load.deadOnArrivalShare,
      liveWeightKg: load.liveWeightKg,
    })),
    cratesAtHanging: handling.cratesAtHanging,
    unloading: 0,
    feeding: handling.toHanging.length - 1,
    firstBack: all.findIndex((step) => does(step, "handle crates") && step.isBack),
    fleet: handling.fleet?.crates ?? NO_LIMIT,
    awaySeconds: handling.fleet?.awaySeconds ?? 0,
  };
}
