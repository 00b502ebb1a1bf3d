import type { Demand, DemandStep } from "../demand.ts";
import type { Parts } from "../parts.ts";
import { MAINTENANCE } from "../repairs.ts";
import { soldOf } from "./soldOf.ts";

const BLEEDING = "bleeding";
const INSPECTION = "inspection";
const TRIM = "trim";

/** The stages of the line in order. */
export function lineOf(demand: Demand, parts: Parts): Record<string, unknown>[] {
  return demand.steps.map((step) => {
    const common = { name: step.name, section: step.section };
    if (step.work === "chilling")
      return { ...common, ...chiller(step.written, demand, parts), ...extras(step, demand) };
    if (step.work === "dwell") return { ...common, ...dwell(step, demand, parts), ...extras(step, demand) };
    return { ...common, ...station(step, parts), ...extras(step, demand) };
  });
}

function station({ name, work, written, offLine }: DemandStep, { stations }: Parts): Record<string, unknown> {
  const { positions, places, crew, peoplePerPosition } = stations.find((each) => each.name === name)!;
  return {
    kind: "station",
    work,
    positions,
    buffer: offLine ? null : places,
    ...picked(written, ["cycle", "rate"]),
    ...(crew === null ? {} : { crew, peoplePerPosition }),
    ...(offLine ? { offLine, next: INSPECTION } : {}),
    ...breakdowns(written),
  };
}

/** Repairs take somebody of the crew that repairs, unless the demand names another way. */
function breakdowns({ breakdowns: given }: Record<string, unknown>): Record<string, unknown> {
  if (!Array.isArray(given) || given.length === 0) return {};
  return { breakdowns: given.map((each) => ({ crew: MAINTENANCE, ...each })) };
}

function dwell(
  { name, written }: DemandStep,
  { chain, written: demand }: Demand,
  parts: Parts,
): Record<string, unknown> {
  if (chain.use && name === BLEEDING && parts.chain !== null) {
    const { metres, metresPerSecond } = parts.chain;
    const { pitch } = demand.chain as { pitch: string };
    return { kind: "chain", length: `${tidy(metres)} m`, pitch, speed: `${tidy(metresPerSecond * 60)} m/min` };
  }
  return { kind: "dwell", places: parts.dwells.find((each) => each.name === name)!.places, dwell: written.dwell };
}

function chiller(own: DemandStep["written"], demand: Demand, parts: Parts): Record<string, unknown> {
  const { air, core, airSpeed, carcassLength, headsPerHook, evaporating, condensing, shareOfIdeal } = demand.written
    .chilling as Record<string, unknown>;
  const { fanKilowatts, otherKilowatts } = parts.chiller!;
  return {
    kind: "dwell",
    places: parts.chiller!.places,
    headsPerHook,
    chilling: { air, core, airSpeed, carcassLength },
    ...(soldOf(demand) === null ? {} : { takesOff: [{ name: "drip", parts: ["chillLoss"] }] }),
    ...(own.power === undefined
      ? {
          cooling: {
            ...{ evaporating, condensing, shareOfIdeal },
            fans: { power: `${tidy(fanKilowatts)} kW` },
            walls: `${tidy(otherKilowatts)} kW`,
          },
        }
      : {}),
  };
}

/** What any stage may have: travel, by-products into their vessels, water, power, and what inspection decides. */
function extras(step: DemandStep, { animals, steps, chain, written: demand }: Demand): Record<string, unknown> {
  const { name, written, offLine } = step;
  const leadsToChain = chain.use && steps[steps.indexOf(step) + 1]?.name === BLEEDING;
  const { travel, takesOff, waterPerHead, waterPerHour, power } = written;
  const trims = steps.some((step) => step.name === TRIM) && animals.toTrim > 0;
  const shares = demand.animals as Record<string, unknown>;
  const water = {
    ...(waterPerHead === undefined ? {} : { perHead: waterPerHead }),
    ...(waterPerHour === undefined ? {} : { perHour: waterPerHour }),
  };
  return {
    ...(travel == null || offLine || leadsToChain ? {} : { travel }),
    ...(Array.isArray(takesOff) ? { takesOff: takesOff.map((each) => ({ ...each, vessel: each.name })) } : {}),
    ...(Object.keys(water).length > 0 ? { water } : {}),
    ...(power === undefined ? {} : { power }),
    ...(name === INSPECTION ? { removals: [{ as: "condemned", share: shares.condemned }] } : {}),
    ...(name === INSPECTION && trims ? { diversions: [{ to: TRIM, share: shares.toTrim }] } : {}),
  };
}

function picked(written: Record<string, unknown>, keys: readonly string[]): Record<string, unknown> {
  return Object.fromEntries(keys.flatMap((key) => (written[key] === undefined ? [] : [[key, written[key]]])));
}

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
