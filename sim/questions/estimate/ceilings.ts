import type { Chain, Dwell, Plan, Stage } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind, does } from "../../text/kinds/index.ts";
import type { Ceiling } from "./ceiling.ts";
import { dwellSeconds, meanDwellSeconds } from "./dwellSeconds.ts";
import { headFlow } from "./headFlow.ts";
import { peopleCeilings } from "./peopleCeilings.ts";
import { sharedFactor } from "./sharedStops.ts";
import { stretchSeconds } from "./stretchSeconds.ts";
import { type WorkItem, workList } from "./workList.ts";

/** Of a rate that depends on itself, and hardly. */
const ROUNDS = 6;

/**
 * What each part of the plant could do if it were alone, in heads hung per second, the lowest first: positions with their
 * breakdowns, dwells and chains with their places (Little 1961), people, gates. No line does more than the first of them.
 */
export function ceilings(plan: Plan): Ceiling[] {
  const items = workList(plan);
  return [
    ...items.map((item) => ofPositions(item, sharedFactor(plan, item.name))),
    ...placeCeilings(plan),
    ...peopleCeilings(plan, items),
    ...gateCeilings(plan),
  ]
    .filter(({ headsPerSecond }) => Number.isFinite(headsPerSecond))
    .toSorted((a, b) => a.headsPerSecond - b.headsPerSecond);
}

/** `shared`: what breakdowns that stop other places too add, as a factor. */
function ofPositions({ name, kind, secondsPerHead, positions, breakdowns }: WorkItem, shared: number): Ceiling {
  const repair = breakdowns.reduce(
    (sum, { uptimeSeconds, repairSeconds }) => sum + meanOf(repairSeconds) / meanOf(uptimeSeconds),
    0,
  );
  return { what: name, kind, headsPerSecond: positions / (secondsPerHead * (shared + repair)) };
}

/** Heads in so many places leave them no faster than places / seconds. */
function placeCeilings(plan: Plan): Ceiling[] {
  const { visits } = headFlow(plan);
  return plan.line.map((stage): Ceiling => {
    const heads = visits.get(stage.name) ?? 0;
    const kind = does(stage, "carry stations") ? "chain" : "places";
    return { what: stage.name, kind, headsPerSecond: perSecond(stage, plan) / heads };
  });
}

function perSecond(stage: Stage, plan: Plan): number {
  const travelSeconds = travelBefore(plan, stage);
  return byKind<Stage, number>(stage, {
    station: ({ buffer, positions, cycleSeconds }) => (buffer + positions) / (travelSeconds + meanOf(cycleSeconds)),
    dwell: (own) => dwellPerSecond(own, travelSeconds, plan),
    chain: (own) => 1 / (own.secondsPerShackle * chainFactor(plan, own)),
  });
}

/** A chain stands with every station on it. */
function chainFactor(plan: Plan, { name, stations }: Chain): number {
  return Math.max(...[name, ...stations.map((station) => station.name)].map((each) => sharedFactor(plan, each)));
}

/** The faster heads come, the longer they wait for those before them. Hooks of several places are hardly ever full. */
function dwellPerSecond(dwell: Dwell, travelSeconds: number, plan: Plan): number {
  const places = Math.max(1, dwell.places - (dwell.headsPerHook - 1) / 2);
  if (places === Number.POSITIVE_INFINITY) return places;
  let rate = places / (travelSeconds + meanDwellSeconds(dwell, plan));
  for (let round = 0; round < ROUNDS; round++) rate = places / (travelSeconds + dwellSeconds(dwell, plan, rate));
  return rate;
}

/** A travelling head holds its place already. */
function travelBefore({ line }: Plan, stage: Stage): number {
  const before = line.slice(0, line.indexOf(stage)).findLast(({ offLine }) => !offLine);
  const travel = stage.offLine ? null : (before?.travelSeconds ?? null);
  return travel === null ? 0 : meanOf(travel);
}

/** At most so many heads between two points, over the least time that a head takes from one to the other (Little 1961). */
function gateCeilings(plan: Plan): Ceiling[] {
  return plan.gates.map(({ name, from, to, atMost }) => {
    const whole = to.stage === null || to.moment === "end" || to.moment === "exit";
    return { what: name, kind: "gate", headsPerSecond: atMost / stretchSeconds(plan, from, to.stage, whole) };
  });
}
