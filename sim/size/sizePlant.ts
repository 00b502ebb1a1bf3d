import { estimateDay } from "../estimate/index.ts";
import { type Fault, type Plan, readPlan, type TextFiles } from "../plan/index.ts";
import type { Demand } from "./demand.ts";
import type { Design, RequiredRate } from "./design.ts";
import { easeLine } from "./easeLine.ts";
import { firstPlan } from "./firstPlan.ts";
import type { Parts } from "./parts.ts";
import { requiredRate } from "./requiredRate.ts";
import { sizeByProducts } from "./sizeByProducts.ts";
import { sizeChain } from "./sizeChain.ts";
import { sizeCrateSteps, sizeCrates } from "./sizeCrates.ts";
import { sizeCrews } from "./sizeCrews.ts";
import { sizeChiller, sizeDwells } from "./sizeDwells.ts";
import { type Extra, NOTHING_EXTRA, sizeStations } from "./sizeStations.ts";
import { sizeUtilities } from "./sizeUtilities.ts";

export type Sizing = { design: Design; plan: Plan; faults: [] } | { design: null; plan: null; faults: Fault[] };

/** Times that places or a position are added before the estimate is taken as it is. */
const MOST_CHANGES = 8;

/**
 * Sizes a plant from its demand: every part from the required rate, then more places or positions at its narrowest
 * station until the analytic estimate of the line reaches that rate. Faults when the demand asks for what no plan can be.
 */
export function sizePlant(demand: Demand, files: TextFiles): Sizing {
  const rate = requiredRate(demand);
  if (!(rate.hangingSeconds > 0))
    return impossible("day", "breaks, checks and the way down the line leave no time to hang heads", "longer shifts");
  let extra: Extra = NOTHING_EXTRA;
  const changes: string[] = [];
  for (;;) {
    const parts = partsOf(demand, rate, extra);
    const json = firstPlan(demand, parts);
    const { plan, faults } = readPlan(json, files);
    if (plan === null) return { design: null, plan: null, faults: faults.map(ofPlan) };
    const estimate = estimateDay(plan);
    const enough = estimate.line.headsPerSecond >= rate.headsPerSecond || changes.length >= MOST_CHANGES;
    const next = enough ? null : easeLine(extra, { demand, parts, line: estimate.line, round: changes.length });
    if (next === null) return { design: designOf(demand, parts, { json, estimate, changes }), plan, faults: [] };
    changes.push(next.words);
    extra = next.extra;
  }
}

function partsOf(demand: Demand, rate: RequiredRate, extra: Extra): Parts {
  const { designHeadsPerSecond } = rate;
  const stations = sizeStations(demand, designHeadsPerSecond, extra);
  const crateSteps = sizeCrateSteps(demand, designHeadsPerSecond);
  return {
    rate,
    stations,
    crateSteps,
    crews: sizeCrews(demand, [...crateSteps, ...stations]),
    dwells: sizeDwells(demand, designHeadsPerSecond, stations),
    chiller: sizeChiller(demand, rate),
    chain: sizeChain(demand, designHeadsPerSecond),
    crates: sizeCrates(demand, rate),
    byProducts: sizeByProducts(demand, rate),
  };
}

function designOf(
  demand: Demand,
  parts: Parts,
  { json, estimate, changes }: { json: Record<string, unknown>; estimate: Design["estimate"]; changes: string[] },
): Design {
  const { stations: ofLine, crateSteps, ...rest } = parts;
  const stations = [...crateSteps, ...ofLine];
  const people = rest.crews.reduce((sum, crew) => sum + crew.people, 0);
  const busy = rest.crews.reduce((sum, crew) => sum + crew.load * crew.people, 0);
  return {
    ...rest,
    name: demand.name,
    stations,
    people,
    balance: people === 0 ? 0 : busy / people,
    utilities: sizeUtilities(demand, parts.rate, parts.crates, ofLine),
    figures: demand.figures,
    changes,
    estimate,
    plan: json,
  };
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
