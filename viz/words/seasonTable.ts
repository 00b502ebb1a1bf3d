import { formatDecimals, formatEstimate } from "../../sim/text/units/index.ts";
import type { Season, SeasonKey } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import type { DecisionCell, DecisionTable } from "./decisionTable.ts";

type Kind = Season["kinds"][number];

/** A row for each kind of week, in the order of the calendar, and one for the year. */
export function seasonTable(season: Season): DecisionTable {
  const { kinds, orders, year } = season;
  const factors = (["heads", "weight", "absence"] as const).filter((key) => kinds.some((kind) => kind[key] !== 1));
  const late = orders > 0;
  const sum = (found: Season["year"]["late"]) => (found === null ? plain("") : cellOf(found, false, season));
  const all = kinds.reduce((total, { times }) => total + times, 0);
  return {
    columns: [
      "Weeks",
      ...(factors.length === 0 ? [] : [`Times the usual ${factors.join(", ")}`]),
      ...["Latest end", "Overtime, h a week"],
      ...(late ? [`Late of ${orders} orders`] : []),
      "People it takes",
    ],
    rows: [
      ...kinds.map((kind) => ({
        name: isolated(kind.name),
        cells: [
          plain(weeksOf(kind)),
          ...(factors.length === 0 ? [] : [plain(factors.map((key) => factorWords(kind[key])).join(", "))]),
          ...KEYS.filter((key) => late || key !== "late").map((key) => figure(kind, key, season)),
        ],
        ...{ best: false, harm: null },
      })),
      {
        name: "the year",
        cells: [
          plain(String(all)),
          ...(factors.length === 0 ? [] : [plain("")]),
          plain(""),
          sum(year.overtimeHours),
          ...(late ? [sum(year.late)] : []),
          plain(""),
        ],
        ...{ best: false, harm: null },
      },
    ],
    more: 0,
    rowsAre: "Kind of week",
  };
}

const KEYS: readonly SeasonKey[] = ["end", "overtimeHours", "late", "people"];

/** "3", "3 to 6". */
export function weeksOf({ from, times }: Pick<Kind, "from" | "times">): string {
  return times === 1 ? String(from) : `${from} to ${from + times - 1}`;
}

/** "0.86", "1". */
function factorWords(factor: number): string {
  return Number.isInteger(factor) ? String(factor) : formatDecimals(factor, 2);
}

function figure({ figures }: Kind, key: SeasonKey, season: Season): DecisionCell {
  const found = figures[key];
  return found === null ? plain("") : cellOf(found, key === "end", season);
}

function cellOf(
  found: NonNullable<Kind["figures"]["end"]>,
  isClock: boolean,
  { startClockSeconds }: Season,
): DecisionCell {
  const info = isClock ? ({ unit: "s", format: "clock" } as const) : ({ unit: "", format: "number" } as const);
  const [value, range] = formatEstimate(found, info, startClockSeconds);
  return { value, range: found.low === found.high ? "" : range, shown: null };
}

function plain(value: string): DecisionCell {
  return { value, range: "", shown: null };
}
