import {
  type ByProduct,
  type ByProductCategory,
  type ChainStation,
  chillLossNames,
  type Plan,
  type Stage,
  siteFigure,
} from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import { CARCASS, DEAD_ON_ARRIVAL } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";
import { roomsOfLine } from "./railLine.ts";

/** A by-product or a way out of the plant that is not food. */
export interface ByProductRow {
  name: string;
  category: ByProductCategory;
  /** The article that it falls under, or why the safe side was taken. */
  reason: string;
  /** Means over the simulated days, and the most of one. */
  kilograms: number;
  kilogramsMost: number;
  containerKilograms: number;
  /** In use at once: those that fill up, and one to change. */
  containers: number;
  /** Changed or emptied on the busiest day. */
  changes: number;
  collectionsPerDay: number;
}

interface Ruling {
  category: ByProductCategory;
  reason: string;
}

const GIVEN = "as the plan says";
/** Regulation (EC) 1069/2009. */
const RULINGS: readonly [RegExp, Ruling][] = [
  [
    /gut|viscer|intestin|stomach|manure|dung|content|screening/iu,
    {
      category: 2,
      reason:
        "gut content, Art. 9(a); what is mixed with it is Category 2 as a whole, Art. 9(g): kept apart it would cost less",
    },
  ],
  [/blood/iu, { category: 3, reason: "blood of animals that passed inspection alive, Art. 10(b)" }],
  [/skin|pelt|hide|fur|paw|feet|foot|\bleg|head/iu, { category: 3, reason: "skins, feet, heads, Art. 10(b)" }],
];
const UNWANTED: Ruling = { category: 3, reason: "fit for people but not wanted, Art. 10(a)" };
const DEAD: Ruling = { category: 2, reason: "died before slaughter, Art. 9(f)(i): our reading" };
const REJECTED: Ruling = {
  category: 2,
  reason:
    "the safe side; without a sign of a communicable disease Category 3, Art. 10(b): the official veterinarian decides",
};

/**
 * What leaves the plant and is no food, by legal category (Regulation (EC) 1069/2009 as quoted in each reason; a mixture takes the strictest), with
 * containers and collections. Kilograms are means over the days and the most of one; by-products are told by the words in their names unless
 * `site.categoryOf` says. What the chiller dries off is water and left out. So is what cutting takes off and sells.
 */
export function byProductRows(plan: Plan, days: readonly DayRecord[]): ByProductRow[] {
  const kept = new Set([CARCASS, ...chillLossNames(plan.line), ...soldCuts(plan)]);
  const names = new Set(
    days.flatMap(({ masses }) => [...Object.keys(masses.byProductsKg), ...Object.keys(masses.outKg)]),
  );
  const rows = [...names].filter((name) => !kept.has(name)).map((name) => rowOf(name, plan, days));
  return withCollections(
    rows.filter(({ kilogramsMost }) => kilogramsMost > 0),
    siteFigure(plan, "byProducts.collection"),
  );
}

function rowOf(name: string, plan: Plan, days: readonly DayRecord[]): ByProductRow {
  const kilograms = days.map(({ masses }) => masses.byProductsKg[name] ?? masses.outKg[name] ?? 0);
  const kilogramsMost = Math.max(...kilograms);
  const containerKilograms = containerOf(name, plan);
  return {
    name,
    ...rulingOf(name, plan, days),
    kilograms: kilograms.reduce((sum, each) => sum + each, 0) / days.length,
    kilogramsMost,
    containerKilograms,
    containers: 0,
    changes: Math.ceil(kilogramsMost / containerKilograms),
    collectionsPerDay: 0,
  };
}

function rulingOf(name: string, { site }: Plan, days: readonly DayRecord[]): Ruling {
  const given = site?.categories[name];
  if (given !== undefined) return { category: given, reason: GIVEN };
  if (name === DEAD_ON_ARRIVAL) return DEAD;
  if (days.some(({ masses }) => name in masses.outKg)) return REJECTED;
  return RULINGS.find(([words]) => words.test(name))?.[1] ?? UNWANTED;
}

/** What is in it when it is changed. */
function containerOf(name: string, plan: Plan): number {
  const vessel = plan.vessels.find((each) => each.name === takenOff(plan).find((taken) => taken.name === name)?.vessel);
  return vessel?.emptyAtKg ?? siteFigure(plan, "byProducts.container") * siteFigure(plan, "byProducts.filled");
}

function takenOff({ line }: Plan): ByProduct[] {
  return line.flatMap((stage) => [
    ...stage.byProducts,
    ...(does(stage, "carry stations") ? stage.stations.flatMap(({ byProducts }) => byProducts) : []),
  ]);
}

/** Cuts that fetch a price are food. */
function soldCuts(plan: Plan): string[] {
  const rooms = roomsOfLine(plan);
  return plan.line
    .flatMap((stage): (Stage | ChainStation)[] => [stage, ...(does(stage, "carry stations") ? stage.stations : [])])
    .filter(({ name }) => rooms.get(name) === "cutting and packing")
    .flatMap(({ byProducts }) => byProducts.map(({ name }) => name))
    .filter((name) => (plan.money?.pricesPerKg[name] ?? 0) > 0);
}

/** One lorry takes all of a category: containers stand until the next one comes, and one more is there to be filled. */
function withCollections(rows: readonly ByProductRow[], collectionKilograms: number): ByProductRow[] {
  return rows.map((row) => {
    const alike = rows.filter(({ category }) => category === row.category);
    const kilograms = alike.reduce((sum, { kilogramsMost }) => sum + kilogramsMost, 0);
    const collectionsPerDay = Math.ceil(kilograms / collectionKilograms);
    return { ...row, collectionsPerDay, containers: Math.ceil(row.changes / collectionsPerDay) + 1 };
  });
}
