import type { Demand } from "../demand.ts";
import type { Parts } from "../parts.ts";
import type { CRATE_STEPS } from "../sizeCrates.ts";

/** Crates from the lorry to the hanging point and back. */
export function liveHandlingOf({ crates, written }: Demand, parts: Parts): Record<string, unknown> {
  const given = written.crates as Record<string, unknown>;
  const step = (name: keyof typeof CRATE_STEPS): Record<string, unknown> => {
    const { positions, crew } = parts.crateSteps.find((each) => each.name === name)!;
    return { positions, perCrate: given[name], crew };
  };
  return {
    way: crates.way,
    unloading: step("unloading"),
    lairageCrates: parts.crates.lairageCrates,
    feeding: step("feeding"),
    washing: { ...step("washing"), waterPerCrate: given.waterPerCrate },
    restacking: step("restacking"),
    fleet: { crates: parts.crates.fleet, away: given.away },
  };
}
