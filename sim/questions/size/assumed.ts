import { formatPath } from "../../asked/plan/index.ts";
import { USUAL_HANDLING } from "./usualHandling.ts";

/** Where a figure of a design comes from. */
export type FigureSource = "given" | "published" | "common practice" | "invented";

/** A figure that is taken where a demand gives none, as its file would write it. */
export interface Assumption {
  path: string;
  what: string;
  value: unknown;
  source: Exclude<FigureSource, "given">;
  note: string;
  /** Where the numbers of one value have sources of their own: each in a line of its own. */
  parts?: Claim[];
}

/** One number and where it comes from. */
export interface Claim extends Omit<Assumption, "parts"> {}

const TO_BEGIN_WITH = "a figure to begin with; replace it by your own";

function invented(path: string, what: string, value: unknown, note = TO_BEGIN_WITH): Assumption {
  return { path, what, value, source: "invented", note };
}

const WORDS: Record<string, string> = {
  cratesAtOnce: "crates at once",
  waterPerCrate: "water for a crate",
  waterReused: "share of that water used again",
};

const LIVE_WEIGHT: Claim[] = [
  {
    path: "animals.liveWeight.normal.mean",
    what: "live weight, mean",
    value: "2.5 kg",
    source: "published",
    note: "Lebas, Cuniculture: 2.4 to 2.6 kg at 10 weeks; the middle of that",
  },
  invented("animals.liveWeight.normal.sd", "live weight, standard deviation", "0.18 kg"),
];

/** One table for the validator's defaults and for what a design says it took, so that the two cannot disagree. */
export const ASSUMPTIONS: readonly Assumption[] = [
  invented("week.peak", "busiest day over the mean day", 1, "every day alike"),
  invented("day.preStart", "checks before the first head", "5 min"),
  invented("day.cleaning", "cleaning after the last work", "45 min"),
  invented(
    "line.availability",
    "share of the hanging time in which the line runs",
    "90 %",
    "short stops, gaps and waiting of neighbours",
  ),
  invented("line.handLoad", "most load of a position worked by hand", "85 %", "the rest is for variation and for rest"),
  invented("line.machineLoad", "most load of a machine, its repairs counted", "90 %"),
  invented(
    "line.cover",
    "time that the places before a station can cover",
    "20 s",
    "a hand's pause; before a machine its usual stop",
  ),
  invented("line.walking", "walk to the next step of the same post", "1 s"),
  {
    ...invented("animals.liveWeight", "live weight", { normal: { mean: "2.5 kg", sd: "0.18 kg" } }),
    parts: LIVE_WEIGHT,
  },
  invented("animals.deadOnArrival", "dead on arrival", "0.15 %"),
  invented("animals.condemned", "condemned at inspection", "0.8 %"),
  invented("animals.toTrim", "sent from inspection to trim and back", "2 %"),
  invented(
    "animals.yield",
    "chilled carcass as a share of live weight",
    "52.5 %",
    "what the usual steps leave, less 2 % in the chiller: without head and paws, with liver and kidneys; weigh your own",
  ),
  invented("chilling.air", "air in the chiller", "0 degC"),
  {
    path: "chilling.core",
    what: "core temperature at which a carcass leaves",
    value: "4 degC",
    source: "published",
    note: "Regulation (EC) 853/2004, Annex III Section II; the law at the site decides",
  },
  invented("chilling.airSpeed", "air speed at the carcass", "2 m/s"),
  invented("chilling.carcassLength", "length of the carcass", "0.36 m"),
  invented("chilling.evaporating", "refrigerant evaporates at", "-8 degC"),
  invented("chilling.condensing", "refrigerant condenses at", "35 degC"),
  {
    ...invented("chilling.shareOfIdeal", "coefficient of performance by that of the ideal cycle", "65 %"),
    source: "common practice",
    note: "60 to 75 % of it is usual",
  },
  invented("chilling.fans", "electricity of the fans by the most heat of the carcasses", "15 %"),
  invented("chilling.otherHeat", "heat of doors, people and walls by the most heat of the carcasses", "25 %"),
  invented("chilling.headsPerHook", "heads on one hook", 2),
  invented("chilling.spare", "spare places in the chiller", "5 %"),
  invented("chain.pitch", "from shackle to shackle", "0.3 m"),
  invented("chain.filled", "share of the shackles that carry a head", "92 %"),
  invented("chain.back", "way of a shackle back through its washer", "100 s"),
  invented("crates.headsPerCrate", "heads in a crate", 12),
  invented("crates.perLorry", "crates on a lorry", 48),
  invented("crates.lead", "first lorry before the first shift", "40 min"),
  invented("crates.delay", "lorries late", { triangular: { min: "0 min", mode: "4 min", max: "25 min" } }),
  invented("crates.away", "crates on the way and at the farm", "3 h"),
  ...handling(),
  invented("byProducts.vessel", "capacity of a by-product vessel", "600 kg"),
  invented("byProducts.emptying", "emptying or exchanging it", "6 min"),
];

/** The crate steps of every way, a line for each key. */
function handling(): Assumption[] {
  return Object.entries(USUAL_HANDLING).flatMap(([way, steps]) =>
    Object.entries(steps).flatMap(([step, keys]) =>
      Object.entries(keys).map(([key, value]) => {
        return invented(formatPath(["crates", "handling", way, step, key]), `${step}: ${WORDS[key] ?? key}`, value);
      }),
    ),
  );
}

const BY_PATH = new Map(ASSUMPTIONS.map((assumption) => [assumption.path, assumption]));

/** The value that stands for this path where the demand gives none. */
export function assumedValue(path: string): unknown {
  const found = BY_PATH.get(path);
  if (found === undefined) throw new Error(`assumedValue: nothing is assumed for "${path}"`);
  return found.value;
}
