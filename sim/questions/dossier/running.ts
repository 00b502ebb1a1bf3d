import { jStat } from "../../maths/numeric/index.ts";
import { meanOf, squaredCvOf } from "../../maths/random/index.ts";
import { STUN_TO_STICK } from "../size/index.ts";
import type { SizedKind } from "./kinds.ts";

/** What is cleaned after the last work. */
export interface CleaningRow {
  section: string;
  minutes: number;
  people: number;
  squareMetres: number;
  litres: number;
}

export interface MaintenanceTask {
  what: string;
  task: string;
  every: string;
  source: string;
}

/** Stops of one class on all machines of a station, and what is kept in stock for them. */
export interface SpareRow {
  station: string;
  breakdown: string;
  machines: number;
  stopsPerYear: number;
  hoursPerYear: number;
  /** Longer stops take a part; short ones are cleared by hand. */
  takesPart: boolean;
  /** Kept so that on 95 % of occasions nobody waits for a delivery; 0 where no part is taken. */
  stock: number;
}

export interface MeasureRow {
  what: string;
  /** For a mean within 5 % at 95 %, by the spread that the plan takes. */
  observations: number;
  why: string;
}

/** Cleaning water of a square metre: between 5 and 15 litres is common practice, no source. */
export const LITRES_PER_SQUARE_METRE = 10;

/** Sections are cleaned at once by the crews that work in them, for as long as the demand says. */
export function cleaningPlan({ demand, design }: SizedKind, floorOf: ReadonlyMap<string, number>): CleaningRow[] {
  const sections = [...new Set(demand.steps.map(({ section }) => section))];
  return sections.map((section) => {
    const own = design.crews.filter(
      ({ steps }) => design.stations.find(({ name }) => name === steps[0])?.section === section,
    );
    const squareMetres = floorOf.get(section) ?? 0;
    return {
      ...{ section, minutes: demand.day.cleaning / 60, people: own.reduce((sum, { people }) => sum + people, 0) },
      ...{ squareMetres, litres: squareMetres * LITRES_PER_SQUARE_METRE },
    };
  });
}

/** From so long a repair on a part is taken to be needed (our own rule). */
const MIN_PART_SECONDS = 300;
/** Days until an ordered part is there, taken where nobody says. */
const DELIVERY_DAYS = 10;
const IN_STOCK = 0.95;

/** Stops of a year: running time over mean uptime; parts in stock by Poisson's law over the time of delivery. */
export function spareParts({ demand, design }: SizedKind): SpareRow[] {
  const days = demand.years.weeks * demand.week.days;
  const figures = [...demand.steps, ...demand.handling[design.way]];
  return design.stations.flatMap(({ name: station, positions, visitsPerHead, cycleSeconds }) => {
    const { breakdowns = [] } = figures.find(({ name }) => name === station)!.figures;
    const workSeconds = design.rate.headsPerDay * visitsPerHead * cycleSeconds;
    return breakdowns.map(({ name, uptime, repair }): SpareRow => {
      const stopsPerYear = (workSeconds / meanOf(uptime)) * days;
      const seconds = meanOf(repair);
      const takesPart = seconds >= MIN_PART_SECONDS;
      return {
        ...{ station, breakdown: name, machines: positions, stopsPerYear, takesPart },
        hoursPerYear: (stopsPerYear * seconds) / 3600,
        stock: takesPart ? stockFor((stopsPerYear / days) * DELIVERY_DAYS) : 0,
      };
    });
  });
}

/** The fewest parts that a Poisson demand with this mean exceeds on 5 % of occasions at most. */
export function stockFor(mean: number): number {
  let [stock, term] = [0, Math.exp(-mean)];
  for (let sum = term; sum < IN_STOCK && stock < 1000; sum += term) {
    stock++;
    term *= mean / stock;
  }
  return stock;
}

const MANUAL = "the maker's manual decides";
const COMMON = "common practice, no source";

export function maintenanceTasks({ design }: SizedKind): MaintenanceTask[] {
  const machines = design.stations.filter(
    ({ work, crew }) => work === "machine" || (work === "crates" && crew === null),
  );
  const has = (name: string) => design.stations.some((station) => station.name === name);
  return [
    ...machines.flatMap(({ name }): MaintenanceTask[] => [
      { what: name, task: "guards, emergency stop and lock tried before the first head", every: "day", source: MANUAL },
      {
        what: name,
        task: "blades, bearings, lubrication, wear looked at with the power locked off",
        every: "week",
        source: MANUAL,
      },
    ]),
    ...(has("stunning")
      ? [
          {
            what: "stunning",
            task: "settings, calibration and electrodes checked; records kept for one year; a second device at hand",
            every: "day",
            source: "Regulation (EC) 1099/2009, Annex II 4.1 and Annex I Table 2; the official veterinarian decides",
          },
        ]
      : []),
    {
      what: "tool sterilisers",
      task: "water at not less than 82 degC",
      every: "day",
      source: "Regulation (EC) 853/2004, Annex III Section II Chapter II 3",
    },
    ...(design.chiller === null
      ? []
      : [
          {
            what: design.chiller.name,
            task: "air and core temperatures recorded, fans and coils free of ice",
            every: "day",
            source: COMMON,
          },
          {
            what: design.chiller.name,
            task: "refrigerant tightness, safety devices",
            every: "year",
            source: "the law at the site and licensed people decide",
          },
        ]),
    {
      what: "crates and crate washer",
      task: "crates broken or sharp taken out; nozzles and filters cleaned",
      every: "day",
      source: COMMON,
    },
    {
      what: "electrical installation",
      task: "protection against shock in wet rooms tested",
      every: "year",
      source: "the law at the site and licensed people decide",
    },
  ];
}

/** The measurements in the first month that say most, the fullest posts first: what `gambrel fit` and `gambrel calibrate` read. */
export function firstMonth({ demand, design }: SizedKind): MeasureRow[] {
  const busiest = design.stations
    .filter(({ work }) => work !== "crates")
    .toSorted((a, b) => b.load - a.load)
    .slice(0, BUSIEST);
  const times = busiest.map(({ name, load }): MeasureRow => {
    const { cycle } = demand.steps.find((step) => step.name === name)!.figures;
    const why = `its load is ${Math.round(load * 100)} %: a slower hand here ends the day later (gambrel fit)`;
    return {
      what: `times of single heads at ${name}, by stopwatch`,
      observations: neededFor(cycle === undefined ? 0 : squaredCvOf(cycle)),
      why,
    };
  });
  const stops = design.stations.filter(({ repairShare }) => repairShare > 0);
  return [
    {
      what: "by hour: heads whose work ended at the last place of work; end of work",
      observations: CALIBRATION_DAYS,
      why: "days that gambrel calibrate compares with the plan",
    },
    ...times,
    ...stops.map(
      ({ name }): MeasureRow => ({
        what: `each stop of ${name}: when, how long, why`,
        observations: STOPS,
        why: "uptimes and repairs are invented so far (gambrel fit)",
      }),
    ),
    {
      what: `${STUN_TO_STICK.name}, timed on heads taken at random every day`,
      observations: STUNNED,
      why: "animal welfare: the plan's times are no proof; the official veterinarian decides",
    },
    {
      what: "core temperature at the exit of the chiller, light and heavy carcasses",
      observations: CORES,
      why: "the chilling time is computed, not measured",
    },
    {
      what: "live weight at arrival and carcass weight after chilling, lot by lot",
      observations: LOTS,
      why: "the yield decides what is sold",
    },
    {
      what: "dead on arrival, condemned and sent to trim, lot by lot",
      observations: LOTS,
      why: "shares are invented so far",
    },
    {
      what: "meters of water and electricity, morning and evening",
      observations: CALIBRATION_DAYS,
      why: "the connections are reckoned, not measured",
    },
  ];
}

const BUSIEST = 5;
const CALIBRATION_DAYS = 12;
const STOPS = 40;
const STUNNED = 300;
const CORES = 60;
const LOTS = 40;
const WITHIN = 0.05;

/** (z cv / 0.05)^2, at least 20. */
function neededFor(squaredCv: number): number {
  const z = jStat.normal.inv(0.975, 0, 1);
  return Math.max(20, Math.ceil((z * z * squaredCv) / (WITHIN * WITHIN)));
}
