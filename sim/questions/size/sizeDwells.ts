import { type ChillingConditions, chillingOf, idealCop } from "../../maths/chilling/index.ts";
import { meanOf, squaredCvOf } from "../../maths/random/index.ts";
import { inOrderSeconds } from "../estimate/index.ts";
import type { Demand, DemandStep } from "./demand.ts";
import type { RequiredRate, SizedChiller, SizedCrates, SizedDwell, SizedStation } from "./design.ts";
import { stepShares } from "./stepShares.ts";

/** Carcass warm from the line; meat figures by analogy with other lean meat, the plan's own defaults. */
const START_CELSIUS = 38;

const CONDUCTIVITY = 0.48;

const DENSITY = 1070;

const SPECIFIC_HEAT = 3500;

/** Its gate counts the heads that are being stunned and stuck as well. */
const GATED = "bleeding";

const INSIDE = ["stunning", "sticking"];

/**
 * Places of every dwell: heads that come while one stays (Little 1961), travel to it included, and those that come while the
 * station behind it pauses for the time to be covered. Bleeding has a place for every head that is being stunned or stuck.
 */
export function sizeDwells(demand: Demand, headsPerSecond: number, stations: readonly SizedStation[]): SizedDwell[] {
  const before = stations
    .filter(({ name }) => INSIDE.includes(name))
    .reduce((sum, { positions }) => sum + positions, 0);
  const shares = stepShares(demand);
  return demand.steps
    .filter(({ work }) => work === "dwell")
    .map((step) => {
      const rate = headsPerSecond * shares.get(step.name)!;
      const seconds = meanOf(step.figures.dwell!);
      const stay = inOrderSeconds(seconds, seconds * Math.sqrt(squaredCvOf(step.figures.dwell!)), 1 / rate);
      const [travelSeconds, coverSeconds] = [travelTo(step, demand), demand.line.cover];
      const needed = Math.ceil(rate * (stay + travelSeconds + coverSeconds));
      const reserved = step.name === GATED ? before : 0;
      return {
        ...{ name: step.name, seconds, headsPerSecond: rate, staySeconds: stay, travelSeconds, coverSeconds, reserved },
        ...{ given: step.figures.places !== undefined, places: step.figures.places ?? needed + reserved },
      };
    });
}

function travelTo(step: DemandStep, { steps }: Demand): number {
  const before = steps[steps.indexOf(step) - 1];
  return before?.figures.travel == null ? 0 : meanOf(before.figures.travel);
}

/** What fills the chiller: the rates, the loads, and how fast the line can bring a load. */
export interface Filling {
  rate: Pick<RequiredRate, "designHeadsPerSecond" | "carcassesPerDay" | "hangingSeconds">;
  crates: Pick<SizedCrates, "heads" | "lorries" | "everySeconds">;
  stations: readonly SizedStation[];
}

/**
 * The chiller, null where the demand leaves it out: places for the heads that come while a carcass chills (Little 1961), leaving
 * in order, or for the loads that a line faster than the design rate works off meanwhile; and the spare ones; never more than a day's
 * carcasses. Heat out of the carcasses alone.
 */
export function sizeChiller(demand: Demand, { rate, crates, stations }: Filling): SizedChiller | null {
  const step = demand.steps.find(({ work }) => work === "chilling");
  if (step === undefined) return null;
  const { chilling } = demand;
  const { headsPerHook } = chilling;
  const carcasses = rate.designHeadsPerSecond * stepShares(demand).get(step.name)!;
  const { seconds, sdSeconds, joules } = chillingTime(demand);
  const stay = inOrderSeconds(seconds, sdSeconds, 1 / carcasses);
  const fromLoads = inLoads(stay, crates, fastest(stations));
  const present = Math.min(Math.max(carcasses * stay, fromLoads), rate.carcassesPerDay);
  const hooks = Math.ceil((present * (1 + chilling.spare)) / headsPerHook);
  const places = step.figures.places ?? hooks * headsPerHook;
  return {
    ...{
      name: step.name,
      seconds,
      headsPerSecond: carcasses,
      staySeconds: stay,
      fromLoads,
      present,
      spareShare: chilling.spare,
    },
    ...{
      given: step.figures.places !== undefined,
      places,
      hooks: Math.ceil(places / headsPerHook),
      headsPerHook,
      joules,
    },
    ...coldRoom(demand.chilling, {
      meanKilowatts: (rate.carcassesPerDay * joules) / (rate.hangingSeconds + seconds) / 1000,
      peakKilowatts: (present * joules) / stay / 1000,
    }),
  };
}

type Heat = Pick<SizedChiller, "meanKilowatts" | "peakKilowatts">;

/** Fans and what else warms the room go by the most heat of the carcasses: a larger chiller has larger ones. */
function coldRoom(
  { evaporating, condensing, shareOfIdeal, fans, otherHeat }: Demand["chilling"],
  heat: Heat,
): Heat & Pick<SizedChiller, "fanKilowatts" | "otherKilowatts" | "cop" | "electricKilowatts"> {
  const cop = shareOfIdeal * idealCop("ammonia", evaporating, condensing);
  const fanKilowatts = fans * heat.peakKilowatts;
  const otherKilowatts = otherHeat * heat.peakKilowatts;
  const electricKilowatts = (heat.meanKilowatts + fanKilowatts + otherKilowatts) / cop + fanKilowatts;
  return { ...heat, fanKilowatts, otherKilowatts, cop, electricKilowatts };
}

/** Heads of the whole loads that come within the stay, and of the next one as many as the line then has time for. */
function inLoads(stay: number, { heads, lorries, everySeconds }: Filling["crates"], headsPerSecond: number): number {
  const load = heads / lorries;
  const whole = Math.min(lorries, Math.floor(stay / everySeconds));
  const left = whole === lorries ? 0 : Math.min(load, headsPerSecond * (stay - whole * everySeconds));
  return whole * load + left;
}

/** Heads a second that the narrowest station lets through. */
function fastest(stations: readonly SizedStation[]): number {
  return Math.min(...stations.map(({ headsPerSecondAtMost }) => headsPerSecondAtMost));
}

/** Of a carcass of mean weight; the spread of the time by that of the weights, nearly straight between a light and a heavy one. */
function chillingTime(demand: Demand): { seconds: number; sdSeconds: number; joules: number } {
  const figures = chillingFigures(demand);
  const mean = meanOf(demand.animals.liveWeight);
  const sd = mean * Math.sqrt(squaredCvOf(demand.animals.liveWeight));
  const of = (weightKg: number) => chillingOf(figures, weightKg * figures.carcassShare);
  const { seconds, joules } = of(mean);
  return { seconds, sdSeconds: (of(mean + sd).seconds - of(Math.max(mean - sd, mean / 2)).seconds) / 2, joules };
}

/** What the chilling time is computed from. */
function chillingFigures({ chilling, steps }: Pick<Demand, "chilling" | "steps">): ChillingConditions {
  return {
    startCelsius: START_CELSIUS,
    airCelsius: chilling.air,
    coreCelsius: chilling.core,
    airMetresPerSecond: chilling.airSpeed,
    carcassLengthMetres: chilling.carcassLength,
    carcassShare: hotShare(steps),
    conductivity: CONDUCTIVITY,
    density: DENSITY,
    specificHeat: SPECIFIC_HEAT,
  };
}

/** What the steps before the chiller leave of the live weight. */
function hotShare(steps: Demand["steps"]): number {
  const before = steps
    .slice(
      0,
      steps.findIndex(({ work }) => work === "chilling"),
    )
    .filter(({ offLine }) => !offLine);
  return before.flatMap(({ figures }) => figures.takesOff ?? []).reduce((left, { share }) => left - share, 1);
}
