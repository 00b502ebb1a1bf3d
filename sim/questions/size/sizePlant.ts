import {
  type Fault,
  formatPath,
  NO_FILES,
  type Plan,
  readPlan,
  type TextFiles,
  type Way,
} from "../../asked/plan/index.ts";
import { meanOf, timesAsLong, type Varying } from "../../maths/random/index.ts";
import { does } from "../../text/kinds/index.ts";
import { estimateDay } from "../estimate/index.ts";
import { alternativeOf } from "./alternatives.ts";
import type { Demand } from "./demand.ts";
import type { PlantDesign, RequiredRate, SizedByProduct, SizedChain, SizedCrew, SizedStation } from "./design.ts";
import { easeLine } from "./easeLine.ts";
import { firstPlan } from "./firstPlan.ts";
import type { Parts } from "./parts.ts";
import { poolCrews } from "./poolCrews.ts";
import { MAINTENANCE } from "./repairs.ts";
import { requiredRate } from "./requiredRate.ts";
import { sizeCrateSteps, sizeCrates } from "./sizeCrates.ts";
import { sizeChiller, sizeDwells } from "./sizeDwells.ts";
import { type Extra, NOTHING_EXTRA, sizeStations } from "./sizeStations.ts";
import { sizeUtilities } from "./sizeUtilities.ts";
import { stepShares } from "./stepShares.ts";

const ROUNDING = 1e-9;

const BLEEDING = "bleeding";

export type Sizing = { design: PlantDesign; plan: Plan; faults: [] } | { design: null; plan: null; faults: Fault[] };

/** Times that places, positions or people are added before the estimate is taken as it is. */
const MAX_CHANGES = 8;

/**
 * Sizes a plant from its demand: every part from the required rate, then more places, positions or people at its narrowest
 * station until the analytic estimate of the line reaches that rate. Faults when the demand asks for what no plan can be.
 * Times in seconds, masses in kilograms. `design.plan` is the JSON of the plan, to be kept; `plan` the same, checked. Rates
 * and balance after Helgeson and Birnie 1961 (see the room's README). Example:
 *
 *     const { demand } = readDemand(JSON.parse(text));
 *     const { design, plan } = sizePlant(demand);
 *     design.people; // in each shift
 */
export function sizePlant(demand: Demand, files: TextFiles = NO_FILES, alternative = demand.alternative): Sizing {
  const rate = requiredRate(demand);
  if (!(rate.hangingSeconds > 0))
    return impossible("day", "breaks, checks and the way down the line leave no time to hang heads", "longer shifts");
  const choice = { name: alternative, ...alternativeOf(alternative, demand.crates.way) };
  let extra: Extra = NOTHING_EXTRA;
  const changes: string[] = [];
  for (;;) {
    const parts = partsOf(demand, rate, { choice, extra });
    const json = firstPlan(demand, parts);
    const { plan, faults } = readPlan(json, files);
    if (plan === null) return { design: null, plan: null, faults: faults.map(ofPlan) };
    const estimate = estimateDay(withWalking(plan));
    const enough = estimate.line.headsPerSecond >= rate.headsPerSecond || changes.length >= MAX_CHANGES;
    const next = enough ? null : easeLine(extra, { demand, parts, line: estimate.line, round: changes.length });
    if (next === null) return { design: designOf(demand, parts, { json, estimate, changes }), plan, faults: [] };
    changes.push(next.words);
    extra = next.extra;
  }
}

function partsOf(
  demand: Demand,
  rate: RequiredRate,
  { choice, extra }: { choice: Parts["choice"]; extra: Extra },
): Parts {
  const { designHeadsPerSecond } = rate;
  const handling = demand.handling[choice.way];
  const stations = sizeStations(demand, designHeadsPerSecond, extra);
  const crateSteps = sizeCrateSteps(demand, designHeadsPerSecond, handling);
  const crates = sizeCrates(demand, rate, handling);
  const all = [...crateSteps, ...stations];
  const headsPerSecond = choice.staffing === "pooled posts, fewest people" ? rate.headsPerSecond : designHeadsPerSecond;
  const crews =
    choice.staffing === "a crew for each step"
      ? sizeCrews(demand, all, designHeadsPerSecond)
      : poolCrews(demand, all, { headsPerSecond, designHeadsPerSecond }, extra.people);
  const manned = (station: SizedStation): SizedStation => {
    const post = crews.find(({ steps }) => steps.includes(station.name));
    return { ...station, crew: post?.name ?? null };
  };
  return {
    ...{ choice, rate, stations: stations.map(manned), crateSteps: crateSteps.map(manned) },
    crews: [...crews, ...sizeMaintenance(demand, all)],
    dwells: sizeDwells(demand, designHeadsPerSecond, stations),
    chiller: sizeChiller(demand, { rate, crates, stations }),
    chain: sizeChain(demand, designHeadsPerSecond),
    crates,
    byProducts: sizeByProducts(demand, rate),
  };
}

function designOf(
  demand: Demand,
  parts: Parts,
  { json, estimate, changes }: { json: Record<string, unknown>; estimate: PlantDesign["estimate"]; changes: string[] },
): PlantDesign {
  const { stations: ofLine, crateSteps, choice, ...rest } = parts;
  const stations = [...crateSteps, ...ofLine];
  const people = rest.crews.reduce((sum, crew) => sum + crew.people, 0);
  const busy = rest.crews.reduce((sum, crew) => sum + crew.load * crew.people, 0);
  const handling = demand.handling[choice.way];
  return {
    ...rest,
    name: demand.name,
    alternative: choice.name,
    way: choice.way,
    needed: neededOf(demand, parts.rate),
    stations,
    people,
    shifts: demand.day.shifts.length,
    balance: people === 0 ? 0 : busy / people,
    utilities: sizeUtilities(demand, parts.rate, parts.crates, { stations, handling, chiller: parts.chiller }),
    figures: demand.figures.filter(({ path }) => !isOfAnotherWay(path, choice.way)),
    changes,
    estimate,
    plan: json,
  };
}

function neededOf({ day }: Demand, { carcassesPerDay }: RequiredRate): PlantDesign["needed"] {
  const { to } = day.shifts.at(-1)!;
  const hours = (to - day.shifts[0]!.from) / 3600;
  return { carcasses: carcassesPerDay, carcassesPerHour: carcassesPerDay / hours, byClockSeconds: to };
}

/** Figures of a way of live handling that the plan does not have. */
function isOfAnotherWay(path: string, way: Way): boolean {
  const prefix = formatPath(["crates", "handling"]);
  return path.startsWith(`${prefix}.`) && !path.startsWith(`${formatPath(["crates", "handling", way])}.`);
}

function impossible(path: string, found: string, remedy: string): Sizing {
  return { design: null, plan: null, faults: [{ path, found, allowed: "", remedy }] };
}

/** The day stands in the plan as in the demand; the rest is told as of the plan. */
function ofPlan(fault: Fault): Fault {
  return fault.path.startsWith("day.shifts") || fault.path.startsWith("day.breaks")
    ? fault
    : { ...fault, path: `the plan it gives, ${fault.path}` };
}

/**
 * The plan with every walk of a pooled post counted as work at the step it leads to, once for each head, or cycle of crates: what the
 * estimate, which knows no walking, is made from. The posts are sized by the same rule.
 */
export function withWalking(plan: Plan): Plan {
  const walks = new Map(plan.crews.map(({ name, walkSeconds }) => [name, walkSeconds]));
  const longer = (cycle: Varying, crews: readonly string[]): Varying => {
    const walk = Math.max(0, ...crews.map((crew) => walks.get(crew) ?? 0));
    return walk === 0 ? cycle : timesAsLong(cycle, 1 + walk / meanOf(cycle));
  };
  const { liveHandling } = plan;
  const crateSteps = <DemandStep extends { secondsPerCycle: Varying; crews: string[] }>(
    steps: DemandStep[],
  ): DemandStep[] => steps.map((step) => ({ ...step, secondsPerCycle: longer(step.secondsPerCycle, step.crews) }));
  return {
    ...plan,
    line: plan.line.map((stage) =>
      does(stage, "work") ? { ...stage, cycleSeconds: longer(stage.cycleSeconds, stage.crews) } : stage,
    ),
    liveHandling:
      liveHandling === null
        ? null
        : { ...liveHandling, toHanging: crateSteps(liveHandling.toHanging), back: crateSteps(liveHandling.back) },
  };
}

/** Kilograms of each by-product, and vessels so many that one is emptied while the others take what comes. */
export function sizeByProducts(demand: Demand, rate: RequiredRate): SizedByProduct[] {
  const shares = stepShares(demand);
  const liveKg = meanOf(demand.animals.liveWeight);
  const kgPerHead = new Map<string, number>();
  for (const { name: step, figures } of demand.steps) {
    for (const { name, share } of figures.takesOff ?? []) {
      kgPerHead.set(name, (kgPerHead.get(name) ?? 0) + share * liveKg * shares.get(step)!);
    }
  }
  const { vessel, emptying } = demand.byProducts;
  return [...kgPerHead].map(([name, kg]) => {
    const kgPerSecond = kg * rate.designHeadsPerSecond;
    return {
      name,
      kgPerHead: kg,
      kgPerDay: kg * rate.headsPerDay,
      kgPerHour: kg * rate.headsPerSecond * 3600,
      vessels: Math.ceil((kgPerSecond * emptying) / vessel),
      emptyingsPerDay: Math.ceil((kg * rate.headsPerDay) / vessel),
    };
  });
}

/**
 * An overhead chain through the bleeding: so fast that enough shackles come by with some left empty, so long that a head stays its
 * time; shackles on it and on their way back (Little 1961). Null without bleeding.
 */
export function sizeChain(demand: Demand, headsPerSecond: number): SizedChain | null {
  const step = demand.steps.find(({ name, work }) => name === BLEEDING && work === "dwell");
  if (step === undefined) return null;
  const { pitch, filled, back } = demand.chain;
  const shacklesPerSecond = (headsPerSecond * stepShares(demand).get(BLEEDING)!) / filled;
  const metresPerSecond = shacklesPerSecond * pitch;
  // No way leads onto a chain: it begins where the heads are hung on it.
  const before = demand.steps[demand.steps.indexOf(step) - 1]?.figures.travel;
  const seconds = meanOf(step.figures.dwell!) + (before == null ? 0 : meanOf(before));
  const places = Math.ceil(shacklesPerSecond * seconds);
  return {
    shacklesPerSecond,
    seconds,
    metresPerSecond,
    metres: places * pitch,
    shackles: places + Math.ceil(shacklesPerSecond * back) + 1,
  };
}

/**
 * People where each step has a crew of its own. One at each position of the line; those who handle crates share their steps, as many as their
 * work takes.
 */
export function sizeCrews({ line }: Demand, stations: readonly SizedStation[], headsPerSecond: number): SizedCrew[] {
  const names = [...new Set(stations.flatMap(({ crew }) => (crew === null ? [] : [crew])))];
  return names.map((name) => {
    const own = stations.filter(({ crew }) => crew === name);
    const busy = own.reduce((sum, { personSecondsPerHead }) => sum + personSecondsPerHead * headsPerSecond, 0);
    const posts = own.reduce((sum, { positions, peoplePerPosition }) => sum + positions * peoplePerPosition, 0);
    const least = Math.max(...own.map(({ peoplePerPosition }) => peoplePerPosition));
    const people =
      own.length > 1 ? Math.min(posts, Math.max(least, Math.ceil(busy / line.handLoad - ROUNDING))) : posts;
    return {
      name,
      zone: null,
      people,
      steps: own.map((station) => station.name),
      walkingSeconds: 0,
      load: busy / people,
    };
  });
}

/** Those who repair, where anything breaks down: as many as the repairs take, and at least one. */
export function sizeMaintenance({ line }: Demand, stations: readonly SizedStation[]): SizedCrew[] {
  const repaired = stations.filter(({ repairLoad }) => repairLoad > 0);
  if (repaired.length === 0) return [];
  const busy = repaired.reduce((sum, { repairLoad }) => sum + repairLoad, 0);
  const people = Math.max(1, Math.ceil(busy / line.handLoad - ROUNDING));
  const steps = repaired.map(({ name }) => name);
  return [{ name: MAINTENANCE, zone: null, people, steps, walkingSeconds: 0, load: busy / people }];
}
