import { type Fault, formatPath, type Plan, readPlan, type TextFiles, type Way } from "../../asked/plan/index.ts";
import { estimateDay } from "../estimate/index.ts";
import { alternativeOf } from "./alternatives.ts";
import type { Demand } from "./demand.ts";
import type { Design, RequiredRate, SizedStation } from "./design.ts";
import { easeLine } from "./easeLine.ts";
import { firstPlan } from "./firstPlan.ts";
import type { Parts } from "./parts.ts";
import { poolCrews } from "./poolCrews.ts";
import { requiredRate } from "./requiredRate.ts";
import { sizeByProducts } from "./sizeByProducts.ts";
import { sizeChain } from "./sizeChain.ts";
import { sizeCrateSteps, sizeCrates } from "./sizeCrates.ts";
import { sizeCrews, sizeMaintenance } from "./sizeCrews.ts";
import { sizeChiller, sizeDwells } from "./sizeDwells.ts";
import { type Extra, NOTHING_EXTRA, sizeStations } from "./sizeStations.ts";
import { sizeUtilities } from "./sizeUtilities.ts";
import { withWalking } from "./withWalking.ts";

export type Sizing = { design: Design; plan: Plan; faults: [] } | { design: null; plan: null; faults: Fault[] };

/** Times that places, positions or people are added before the estimate is taken as it is. */
const MOST_CHANGES = 8;

/**
 * Sizes a plant from its demand: every part from the required rate, then more places, positions or people at its narrowest
 * station until the analytic estimate of the line reaches that rate. Faults when the demand asks for what no plan can be.
 */
export function sizePlant(demand: Demand, files: TextFiles, alternative = demand.alternative): Sizing {
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
    const enough = estimate.line.headsPerSecond >= rate.headsPerSecond || changes.length >= MOST_CHANGES;
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
  { json, estimate, changes }: { json: Record<string, unknown>; estimate: Design["estimate"]; changes: string[] },
): Design {
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

function neededOf({ day }: Demand, { carcassesPerDay }: RequiredRate): Design["needed"] {
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
