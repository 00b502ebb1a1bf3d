import type { Plan } from "../../asked/plan/plan.ts";
import { compileCalendar } from "./compileCalendar.ts";
import { compileChains } from "./compileChains.ts";
import { compileCrews } from "./compileCrews.ts";
import type { CompiledLine } from "./compiledLine.ts";
import { compileFailures } from "./compileFailures.ts";
import { compileKillLine } from "./compileKillLine.ts";
import { compileGates, compileLimits, compilePoints } from "./compileLimits.ts";
import { productsOf } from "./compileProducts.ts";
import { compileSlots } from "./compileSlots.ts";
import { compilePositions, compileStages, destinationsOf, sectionsOf } from "./compileStages.ts";
import { compileStunned } from "./compileStunned.ts";
import { compileSupply } from "./compileSupply.ts";
import { compileVessels } from "./compileVessels.ts";
import { steps } from "./steps.ts";

/** Turns a checked plan into flat arrays. The plan must have passed `readPlan`; nothing is checked again here. */
export function compileLine(plan: Plan): CompiledLine {
  const all = steps(plan);
  const sectionNames = sectionsOf(plan);
  const destinationNames = destinationsOf(plan);
  const stages = compileStages(plan, all, sectionNames, destinationNames);
  const failures = compileFailures(plan, all, stages);
  const positions = compilePositions(all, stages);
  const chains = compileChains(all);
  const vessels = compileVessels(plan, all);
  return {
    stages,
    positions,
    failures,
    chains,
    vessels,
    crews: compileCrews(plan, all),
    calendar: compileCalendar(plan, all),
    points: compilePoints(plan, all),
    limits: compileLimits(plan),
    gates: compileGates(plan, all),
    stunned: compileStunned(plan, all),
    slots: compileSlots(plan, { stages, positions, failures, chains, vessels }),
    supply: compileSupply(plan, all),
    killLine: compileKillLine(plan, all),
    sectionNames,
    destinationNames,
    productNames: productsOf(all),
    startClockSeconds: plan.day.startClockSeconds,
    shiftEndSeconds: plan.day.shifts.at(-1)?.toSeconds ?? 0,
    ceilingSeconds: plan.day.ceilingSeconds,
  };
}
