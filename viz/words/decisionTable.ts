import { type FigureKind, formatDecimals, formatEstimate } from "../../sim/text/units/index.ts";
import type { Decision, DecisionRow, ResponseInfo } from "../contract.ts";
import { isolated } from "../frame/index.ts";

/** One figure of the table, as text. */
export interface DecisionCell {
  /** "14:37"; "" where there is none. */
  value: string;
  /** "14:30 to 14:44"; "" where there is none. */
  range: string;
  /** Shown to differ from today's plan; null where nothing is compared. */
  shown: boolean | null;
}

export interface DecisionLine {
  name: string;
  cells: DecisionCell[];
  /** Recommended. */
  best: boolean;
  /** Why it must not be chosen; null where nothing speaks against it. */
  harm: string | null;
}

/** What somebody decides by: plans down, figures across; as text for terminal, report and page alike. */
export interface DecisionTable {
  /** Heading of each column, those of the plan's name left out. */
  columns: string[];
  rows: DecisionLine[];
  /** Plans that were left out since the table would be too long. */
  more: number;
}

const SHORT: Record<string, string> = {
  finish: "End of work",
  overtime: "Overtime",
  headsPerHour: "Throughput",
  carcasses: "Carcasses",
  "cost.overtimePay": "Overtime pay",
  costPerHead: "Cost a head",
  costPerKg: "Cost a kg",
  fullCostPerKg: "Cost a kg, plant included",
  margin: "Margin a day",
  fullMargin: "Margin a day, plant included",
};

/**
 * Today's plan first, then the others in the study's order; of more than `most` the recommended one and those that are best
 * by the deciding response are kept. `startClockSeconds`: of the day, after midnight.
 */
export function decisionTable(decision: Decision, startClockSeconds: number, most: number): DecisionTable {
  const { columns, rows } = decision;
  const kept = keptRows(decision, most);
  const hasPeople = rows.some(({ people }) => people !== null);
  const hasMoney = rows.some(({ money }) => money !== null);
  return {
    columns: [
      ...columns.map(heading),
      ...(hasPeople ? ["People"] : []),
      ...(hasMoney ? ["Money a day, to today"] : []),
    ],
    rows: kept.map((index) => {
      const row = rows[index]!;
      return {
        name: index === 0 ? `${isolated(row.name)} (today's plan)` : isolated(row.name),
        cells: [
          ...columns.map((info) => cell(row, info, startClockSeconds)),
          ...(hasPeople ? [plain(row.people === null ? "" : String(row.people))] : []),
          ...(hasMoney ? [moneyCell(row)] : []),
        ],
        best: index === decision.best,
        harm: row.harm,
      };
    }),
    more: rows.length - kept.length,
  };
}

function keptRows({ rows, best }: Decision, most: number): number[] {
  const all = rows.map((_, index) => index);
  if (all.length <= most) return all;
  const worth = (index: number) =>
    index === 0 || index === best
      ? Number.POSITIVE_INFINITY
      : rows[index]!.harm === null
        ? (rows[index]!.gain?.mean ?? Number.NEGATIVE_INFINITY)
        : Number.NEGATIVE_INFINITY;
  return [...all]
    .sort((a, b) => worth(b) - worth(a))
    .slice(0, most)
    .sort((a, b) => a - b);
}

function heading({ key, label }: ResponseInfo): string {
  if (key.startsWith("beyond.")) return `Outside \u2018${isolated(key.slice("beyond.".length))}\u2019`;
  return SHORT[key] ?? isolated(label);
}

function plain(value: string): DecisionCell {
  return { value, range: "", shown: null };
}

function cell({ estimates, differences }: DecisionRow, info: ResponseInfo, startClockSeconds: number): DecisionCell {
  const found = estimates[info.key];
  if (found === undefined) return plain("no value");
  const [value, range] = formatEstimate(found, bare(info), startClockSeconds);
  return {
    value,
    range: found.mean === 0 && found.max === 0 ? "" : range,
    shown: differences[info.key]?.shown ?? null,
  };
}

/** Units that the heading says already are left out. */
function bare({ format, unit }: ResponseInfo): FigureKind {
  return {
    format,
    unit: unit
      .replace(/\/(head|kg)$/, "")
      .replace("carcasses/h", "/h")
      .replace(/^carcasses$/, ""),
  };
}

function moneyCell({ money }: DecisionRow): DecisionCell {
  if (money === null) return plain("");
  const { mean, low, high, halfWidth } = money.perDay;
  const fine = (halfWidth ?? 1) < 1 && Math.abs(mean) < 100 ? 2 : 0;
  const text = (value: number) => `${value > 0 ? "+" : ""}${formatDecimals(value, fine)}`;
  const range = low === null || high === null || low === high ? "" : `${text(low)} to ${text(high)}`;
  return {
    value: `${text(mean)} ${isolated(money.currency)}`,
    range,
    shown: money.size !== "open" && (low! > 0 || high! < 0),
  };
}
