/** Where a figure of a design comes from. */
export type FigureSource = "given" | "published" | "common practice" | "assumed";

/** A figure that is taken where a demand gives none, as its file would write it. */
export interface Assumption {
  path: string;
  what: string;
  value: unknown;
  source: Exclude<FigureSource, "given">;
  note: string;
}

const NO_SOURCE = "usual in the trade, no source";
const FOR_ILLUSTRATION = "a figure to begin with; replace it by your own";

function assumed(path: string, what: string, value: unknown, note = FOR_ILLUSTRATION): Assumption {
  return { path, what, value, source: "assumed", note };
}

function common(path: string, what: string, value: unknown, note = NO_SOURCE): Assumption {
  return { path, what, value, source: "common practice", note };
}

/** One table for the validator's defaults and for what a design says it assumed, so that the two cannot disagree. */
export const ASSUMPTIONS: readonly Assumption[] = [
  assumed("week.peak", "busiest day over the mean day", 1, "every day alike"),
  assumed("day.preStart", "checks before the first head", "5 min"),
  assumed("day.cleaning", "cleaning after the last work", "45 min"),
  assumed(
    "line.availability",
    "share of the hanging time in which the line runs",
    "90 %",
    "short stops, gaps and waiting of neighbours",
  ),
  assumed("line.handLoad", "most load of a position worked by hand", "85 %", "the rest is for variation and for rest"),
  assumed("line.machineLoad", "most load of a machine, its repairs counted", "90 %"),
  assumed(
    "line.cover",
    "time that the places before a station can cover",
    "20 s",
    "a hand's pause; before a machine its usual stop",
  ),
  {
    path: "animals.liveWeight",
    what: "live weight",
    value: { normal: { mean: "2.5 kg", sd: "0.18 kg" } },
    source: "published",
    note: "mean: Lebas, Cuniculture, 2.4 to 2.6 kg at 10 weeks; the spread is assumed",
  },
  assumed("animals.deadOnArrival", "dead on arrival", "0.15 %"),
  assumed("animals.condemned", "condemned at inspection", "0.8 %"),
  assumed("animals.toTrim", "sent from inspection to trim and back", "2 %"),
  {
    path: "animals.yield",
    what: "chilled carcass as a share of live weight",
    value: "57 %",
    source: "published",
    note: "La Semaine Veterinaire 1592, 2014: 57.5 to 59 %; Ouhayoun 1989: 57.1 %; it depends on what stays on the carcass",
  },
  assumed("chilling.air", "air in the chiller", "0 degC"),
  {
    path: "chilling.core",
    what: "core temperature at which a carcass leaves",
    value: "4 degC",
    source: "published",
    note: "Regulation (EC) 853/2004, Annex III Section II (from memory); the law at the site decides",
  },
  assumed("chilling.airSpeed", "air speed at the carcass", "2 m/s"),
  assumed("chilling.carcassLength", "length of the carcass", "0.36 m"),
  common("chilling.headsPerHook", "heads on one hook", 2),
  assumed("chilling.spare", "spare places in the chiller", "5 %"),
  assumed("chain.pitch", "from shackle to shackle", "0.3 m"),
  assumed("chain.filled", "share of the shackles that carry a head", "92 %"),
  assumed("chain.back", "way of a shackle back through its washer", "100 s"),
  assumed("crates.headsPerCrate", "heads in a crate", 12),
  assumed("crates.perLorry", "crates on a lorry", 48),
  assumed("crates.lead", "first lorry before the first shift", "40 min"),
  assumed("crates.delay", "lorries late", { triangular: { min: "0 min", mode: "4 min", max: "25 min" } }),
  assumed("crates.away", "crates on the way and at the farm", "3 h"),
  assumed("crates.unloading", "unloading, a crate", { lognormal: { mean: "22 s", cv: 0.25 } }),
  assumed("crates.feeding", "feeding to the hanging point, a crate", { lognormal: { mean: "18 s", cv: 0.2 } }),
  assumed("crates.washing", "washing, a crate", { lognormal: { mean: "30 s", cv: 0.2 } }),
  assumed("crates.restacking", "restacking, a crate", { lognormal: { mean: "12 s", cv: 0.25 } }),
  assumed("crates.waterPerCrate", "wash water, a crate", "9 L"),
  assumed("byProducts.vessel", "capacity of a by-product vessel", "600 kg"),
  assumed("byProducts.emptying", "emptying or exchanging it", "6 min"),
];

const BY_PATH = new Map(ASSUMPTIONS.map((assumption) => [assumption.path, assumption]));

/** The value that stands for this path where the demand gives none. */
export function assumedValue(path: string): unknown {
  const found = BY_PATH.get(path);
  if (found === undefined) throw new Error(`assumedValue: nothing is assumed for "${path}"`);
  return found.value;
}
