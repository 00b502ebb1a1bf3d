import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import type { StudyResults } from "../../days/results/index.ts";
import { type Demand, type Figure, marketsOf } from "../size/index.ts";
import { type CapitalSheet, capitalSheet, type Surroundings, wholeCapital } from "./capital.ts";
import { chooseKind, isUndominated, type KindChoice, mayBeBuilt, type OwnerRow } from "./choose.ts";
import { type ConnectionSheet, connectionSheet, type Service } from "./connections.ts";
import { type EquipmentRow, equipmentList } from "./equipment.ts";
import type { SizedKind } from "./kinds.ts";
import type { PlantLayout } from "./layout.ts";
import {
  type Business,
  breakEvenHeads,
  businessOf,
  cashFlows,
  type FullCost,
  fullCost,
  hasValue,
  type LoanPlan,
  loanPlan,
  netPresentValue,
  soldHeads,
  standstillWeek,
  type YearMoney,
  yearMoney,
  yearsUntilTooSmall,
} from "./money.ts";
import { type RampWeek, rampUp, type StaffingPlan, staffingOf } from "./people.ts";
import { plantLayout } from "./plantLayout.ts";
import {
  type CleaningRow,
  cleaningPlan,
  firstMonth,
  type MaintenanceTask,
  type MeasureRow,
  maintenanceTasks,
  type SpareRow,
  spareParts,
} from "./running.ts";
import { type KindTrial, trialsOf } from "./trial.ts";
import { overWorlds, type Swing, swings, WORLDS } from "./worlds.ts";

/** What the bank asks of one kind of plant; what has no price is null. */
export interface KindMoney {
  /** The year that cost, break-even and standstill are told of. */
  year: number;
  capital: CapitalSheet;
  cost: FullCost;
  years: YearMoney[];
  /** Heads asked of the plant in each year, beside those sold. */
  asked: number[];
  flows: number[] | null;
  breakEvenHeads: number | null;
  standstillWeek: number | null;
  loan: LoanPlan | null;
  swings: Swing[];
  /** What the swings move. */
  swingOf: "value" | "cost";
}

/** Everything that is told of one kind of plant. */
export interface KindTold {
  kind: SizedKind;
  trial: KindTrial;
  row: OwnerRow;
  built: Built;
  staffing: StaffingPlan;
  ramp: RampWeek[];
  /** Null where the demand names no money. */
  money: KindMoney | null;
}

/** The whole answer to "what should we build?". */
export interface Dossier {
  name: string;
  notes: string;
  currency: string | null;
  seed: string;
  days: number;
  /** Imagined worlds of the money. */
  worlds: number;
  kinds: KindTold[];
  choice: KindChoice;
  /** Of the kind to build, or of the first where none may be built. */
  cleaning: CleaningRow[];
  maintenance: MaintenanceTask[];
  spares: SpareRow[];
  measures: MeasureRow[];
  /** Every figure that it rests on, with its source. */
  figures: Figure[];
}

/**
 * Puts together what the kinds of plant, their simulated days and the demand's money say. A pure function. `results`: of `trialStudy` of the
 * same kinds in the same order, with traces of every variant.
 */
export function dossierOf(kinds: readonly SizedKind[], results: StudyResults): Dossier {
  const { demand } = kinds[0]!;
  const built = kinds.map(({ plan }, at) => builtOf(plan, [results.variants[at]!.day]));
  const around = built.map(surroundingsOf);
  const trials = trialsOf(kinds, results);
  const told = kinds.map((kind, at) => {
    const staffing = staffingOf(kind.demand, kind.design);
    const ramp = rampUp(kind.demand, kind.design);
    const capital = capitalSheet(kind.demand, kind.design, around[at]!);
    const business = businessOf(kind, trials[at]!, { capital, staffing, ramp, around: around[at]! });
    return { kind, trial: trials[at]!, staffing, ramp, capital, business };
  });
  const businesses = told.flatMap(({ business }) => (business === null ? [] : [business]));
  const valued = businesses.length === told.length && businesses.every(hasValue);
  const year = Math.min(demand.markets.length === 0 ? 1 : demand.years.sizedFor, demand.years.looked);
  const begun = told.map((each, at) => ({ ...each, row: rowBegun(each, around[at]!) }));
  const { seed } = results.study;
  const worlds =
    businesses.length < told.length
      ? null
      : overWorlds(businesses, {
          ranges: demand.ranges,
          seed,
          year,
          valued,
          mayWin: mayBeBuilt(begun.map(({ row }) => row)),
        });
  const filled = begun.map(({ row }, at) => ({
    ...row,
    ...(worlds?.[at] ?? { costPerKg: null, value: null, best: null, loss: null }),
  }));
  const rows = filled.map((row): OwnerRow => ({ ...row, undominated: isUndominated(row, filled) }));
  const choice = chooseKind(rows);
  const shown = choice.row ?? 0;
  return {
    ...{ name: demand.name, notes: demand.notes, currency: demand.money?.currency ?? null },
    ...{ seed, days: results.study.replications, worlds: WORLDS, choice },
    kinds: begun.map(({ kind, trial, staffing, ramp, capital, business }, at) => ({
      ...{ kind, trial, staffing, ramp, row: rows[at]!, built: built[at]! },
      money: business === null ? null : moneyOf(business, capital, { year, demand }),
    })),
    cleaning: cleaningPlan(kinds[shown]!, around[shown]!.sections),
    maintenance: maintenanceTasks(kinds[shown]!),
    spares: spareParts(kinds[shown]!),
    measures: firstMonth(kinds[shown]!),
    figures: [...kinds[shown]!.design.figures, ...demand.businessFigures],
  };
}

/** What a builder asks for of one kind of plant. */
export interface Built {
  layout: PlantLayout;
  equipment: EquipmentRow[];
  connections: ConnectionSheet;
}

function builtOf(plan: Plan, days: readonly DayRecord[]): Built {
  const layout = plantLayout(plan, days);
  return { layout, equipment: equipmentList(plan, layout, days), connections: connectionSheet(plan, layout, days) };
}

function surroundingsOf({ layout, connections }: Built): Surroundings {
  const sections = new Map<string, number>();
  for (const { lineRoom, squareMetres } of layout.rooms)
    if (lineRoom !== null) sections.set(lineRoom, (sections.get(lineRoom) ?? 0) + squareMetres);
  const figure = (service: Service, what: string): number =>
    connections.parts.find((part) => part.service === service)?.rows.find((row) => row.what === what)?.value ?? 0;
  return {
    squareMetres: layout.areas.find(({ kind }) => kind === "building")!.squareMetres,
    kilowatts: figure("electricity", "to ask for"),
    cubicMetres: figure("cold water", "fresh water a day"),
    litresPerMinute: figure("cold water", "fresh water, busiest minutes"),
    kilowattHours: figure("electricity", "a day"),
    fuelKilowattHours: figure("electricity", "fuel for hot water"),
    sections,
  };
}

interface Begun {
  kind: SizedKind;
  trial: KindTrial;
  staffing: StaffingPlan;
  capital: CapitalSheet;
  business: Business | null;
}

type RowBegun = Omit<OwnerRow, "undominated">;

function rowBegun({ kind, trial, staffing, capital, business }: Begun, around: Surroundings): RowBegun {
  const { demand, name, shifts } = kind;
  const open = demand.capital === null ? ["capital"] : capital.open;
  return {
    ...{ name, shifts, open, people: staffing.atPosts, employed: staffing.employed },
    capital: open.length > 0 ? null : wholeCapital(capital),
    ...{ squareMetres: around.squareMetres, kilowatts: around.kilowatts, cubicMetres: around.cubicMetres },
    ...{ costPerKg: null, value: null, best: null, loss: null },
    ...{ overtimeSeconds: trial.overtimeSeconds, limits: trial.limits, spare: trial.spare },
    yearsUntilTooSmall: business === null ? tooSmallWithout(kind, trial) : yearsUntilTooSmall(business),
    obstacles: obstaclesOf(demand, trial, around),
  };
}

/** The same of a demand without money. */
function tooSmallWithout({ demand }: SizedKind, trial: KindTrial): number | null {
  return yearsUntilTooSmall({
    markets: marketsOf(demand),
    years: { looked: demand.years.looked },
    daysPerWeek: demand.week.days,
    peak: demand.week.peak,
    capacityHeads: trial.capacityHeads.mean,
  });
}

/** What stands against a kind whatever it earns: the site, and a day that it does not manage. */
function obstaclesOf({ available, day }: Demand, trial: KindTrial, around: Surroundings): string[] {
  const too = (what: string, needed: number, has: number | undefined, unit: string): string[] =>
    has !== undefined && needed > has
      ? [`${what}: ${Math.ceil(needed)} ${unit} needed, the site has ${Math.floor(has)}`]
      : [];
  const cleaned = trial.finish.mean + day.cleaning;
  return [
    ...too("electricity", around.kilowatts, available.power === undefined ? undefined : available.power / 1000, "kW"),
    ...too("water in the busiest minutes", around.litresPerMinute, perMinute(available.water), "L/min"),
    ...too("water of a day", around.cubicMetres, available.waterPerDay, "m3"),
    ...too("waste water of a day", around.cubicMetres, available.drains, "m3"),
    ...too("floor", around.squareMetres, available.floor, "m2"),
    ...(trial.spare.high < 0 ? ["the shifts cannot take the heads of the busiest day"] : []),
    ...(available.to !== undefined && cleaned > available.to ? ["cleaning ends after the hours of the site"] : []),
  ];
}

const LITRES = 1000;
const MINUTE = 60;

function perMinute(cubicMetresPerSecond: number | undefined): number | undefined {
  return cubicMetresPerSecond === undefined ? undefined : cubicMetresPerSecond * LITRES * MINUTE;
}

function moneyOf(
  business: Business,
  capital: CapitalSheet,
  { year, demand }: { year: number; demand: Demand },
): KindMoney {
  const valued = hasValue(business);
  const years = Array.from({ length: business.years.looked }, (_, index) => index + 1);
  return {
    ...{ year, capital, cost: fullCost(business, year) },
    years: years.map((each) => yearMoney(business, each)),
    asked: years.map((each) => soldHeads(business, each, 1).asked),
    flows: valued ? cashFlows(business) : null,
    breakEvenHeads: breakEvenHeads(business, year),
    standstillWeek: standstillWeek(business, year),
    loan: loanPlan(business),
    swingOf: valued ? "value" : "cost",
    swings: swings(business, demand.ranges, (factors) =>
      valued ? netPresentValue(business, factors) : fullCost(business, year, factors).perKg,
    ),
  };
}
