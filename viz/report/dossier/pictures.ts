import { formatDecimals } from "../../../sim/text/units/index.ts";
import type { Dossier, KindTold } from "../../contract.ts";
import { isolated } from "../../frame/index.ts";
import {
  type DifferenceColumns,
  differenceChart,
  differenceTable,
  layoutChart,
  layoutTable,
  type ResponseColumns,
  responseChart,
  responseTable,
} from "../../pictures/index.ts";
import type { PlannedChart } from "../studyCharts.ts";
import { moneyWords } from "./ownerWords.ts";
import { RANGE_WORDS, shownKind } from "./tables.ts";

/** Worth (or cost of a kilogram) of each kind with its range; null where the demand names no money. */
export function worthPicture({ kinds, currency }: Dossier): PlannedChart | null {
  const valued = kinds.every(({ row }) => row.value !== null);
  if (!valued && kinds.some(({ row }) => row.costPerKg === null)) return null;
  const scale = valued ? 1e-6 : 1;
  const unit = valued ? `million ${currency}` : `${currency}/kg`;
  const rows = kinds.map(({ row }) => {
    const range = valued ? row.value! : row.costPerKg!;
    const text = (value: number) => formatDecimals(value * scale, 2);
    return {
      name: isolated(row.name),
      ...{ mean: range.mean * scale, low: range.low * scale, high: range.high * scale },
      text: `${text(range.mean)} ${unit}\n${text(range.low)} to ${text(range.high)}`,
    };
  });
  const columns: ResponseColumns = {
    title: valued ? "What each kind of plant is worth" : "What a kilogram costs in each kind of plant",
    caption: valued ? "Right is better. Ranges move together: see the column 'best of all'" : "Left is better",
    subtitle: valued
      ? "Net present value over the years looked at; the range holds nineteen worlds of twenty"
      : "Full cost without animals; the range holds nineteen worlds of twenty",
    description: rows.map(({ name, text }) => `${name}: ${text.replace("\n", ", ")}.`).join(" "),
    quantity: { kind: "number", label: valued ? "net present value" : "full cost", unit },
    rows,
    base: null,
  };
  return {
    ...{ name: "worth", title: columns.title, description: columns.description, readings: null },
    draw: (context) => responseChart(columns, context),
    table: () => responseTable(columns),
  };
}

/** What each figure of the business alone does, the widest on top; null where nothing moves. */
export function swingPicture(dossier: Dossier): PlannedChart | null {
  const told = shownKind(dossier);
  const { money, row } = told;
  if (money === null || money.swings.length === 0) return null;
  const isValue = money.swingOf === "value";
  const middle = isValue ? row.value!.mean : money.cost.perKg;
  const scale = isValue ? 1e-6 : 1;
  const unit = isValue ? `million ${dossier.currency}` : `${dossier.currency}/kg`;
  const rows = money.swings.map((swing) =>
    swingRow(swing, { middle, scale, words: wordsFor(told, dossier.currency!) }),
  );
  const columns: DifferenceColumns = {
    title: `What moves the ${isValue ? "worth" : "cost"} of ${isolated(row.name)}`,
    caption: "The widest bar on top: settle this figure first",
    subtitle: "One figure at a time at either end of its range, the others as written",
    description: rows.map(({ name, text }) => `${name}: ${text.replace("\n", ", ")}.`).join(" "),
    quantity: { kind: "number", label: isValue ? "change in net present value" : "change in full cost", unit },
    sides: isValue ? ["worth less", "worth more"] : ["cheaper", "dearer"],
    rows,
  };
  return {
    ...{ name: "swings", title: columns.title, description: columns.description, readings: null },
    draw: (context) => differenceChart(columns, context),
    table: () => differenceTable(columns),
  };
}

/** The floor plan of a kind. */
export function drawing({ built: { layout }, row }: KindTold): PlannedChart {
  const title = `Layout of ${isolated(row.name)}`;
  const rooms = layout.rooms.map(({ name }) => name).join(", ");
  return {
    ...{ name: "layout", title, readings: null },
    description: `A schematic to talk about, not to build from. Rooms: ${rooms}.`,
    draw: (context) => layoutChart(layout, context),
    table: () => layoutTable(layout),
  };
}

type SwingTold = NonNullable<KindTold["money"]>["swings"][number];

function wordsFor({ money }: KindTold, currency: string): (value: number) => string {
  return (value) =>
    money!.swingOf === "value" ? moneyWords(value, currency) : `${formatDecimals(value, 2)} ${currency}/kg`;
}

function swingRow(
  { key, range, atLow, atHigh }: SwingTold,
  { middle, scale, words }: { middle: number; scale: number; words: (value: number) => string },
) {
  const [low, high] = [Math.min(atLow, atHigh), Math.max(atLow, atHigh)];
  return {
    name: `${RANGE_WORDS[key]!}, ±${Math.round(100 * range)}\u00a0%`,
    ...{ mean: 0, low: (low - middle) * scale, high: (high - middle) * scale, shown: true },
    text: `${words(low)}\nto ${words(high)}`,
  };
}
