import { type Reader, readerOf } from "../../sim/text/kinds/index.ts";
import { formatDecimals, formatEstimate } from "../../sim/text/units/index.ts";
import type { Decision, DecisionRow, ResponseInfo } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { ENDS } from "./bestWords.ts";

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
  /** What the rows are; default: "Plan". */
  rowsAre?: string;
  /** Headings of columns that were left out since it would be too wide. */
  left?: string[];
}

/** What a table has room for, and for whom it is. */
export interface TableRoom {
  /** Most plans. */
  rows: number;
  /** Most figures of a plan; default: all. */
  columns?: number;
  /** Letters of a row, its name (of which long ones are broken) and gaps left out; default: as many as there are. */
  letters?: number;
  /** As the study names them: "planner", "owner". */
  reader?: string;
}

type Group = "pace" | "end" | "people" | "limits" | "money" | "asked";

/** What each reader looks for first. The response that decides always comes first. Common practice, no source. */
const FIRST: Record<Reader, readonly Group[]> = {
  veterinarian: ["limits", "pace", "end", "people", "money"],
  owner: ["money", "end", "people", "pace", "limits"],
  planner: ["end", "people", "pace", "money", "limits"],
  engineer: ["pace", "end", "people", "limits", "money"],
  trainer: ["pace", "end", "limits", "people", "money"],
};
/** Of whoever else reads it. */
const OTHERWISE: readonly Group[] = ["pace", "end", "limits", "money", "people"];

const PACE = new Set(["headsPerHour", "carcasses"]);

/** "Thursday.finish", "week.overtime". */
const DAY_IN_FRONT = /^([^.]+)\.(.+)$/;

function groupOf(written: string): Group {
  const [, , ofDay] = DAY_IN_FRONT.exec(written) ?? [];
  const key = ofDay !== undefined && (PACE.has(ofDay) || ENDS.has(ofDay)) ? ofDay : written;
  if (PACE.has(key)) return "pace";
  if (ENDS.has(key)) return "end";
  if (key.startsWith("beyond.")) return "limits";
  return /cost|margin/i.test(key) ? "money" : "asked";
}

const SHORT: Record<string, string> = {
  finish: "End of work",
  overtime: "Overtime",
  lastOut: "Last carcass out",
  cleaningEnd: "End of cleaning",
  headsPerHour: "Throughput",
  carcasses: "Carcasses",
  "cost.overtimePay": "Overtime pay",
  costPerHead: "Cost a head",
  costPerKg: "Cost a kg",
  fullCostPerKg: "Cost a kg, plant included",
  margin: "Margin a day",
  fullMargin: "Margin a day, plant included",
};

const MONEY = { day: "Money a day, to today", week: "Money a week, to today" };

/** What a change brings or costs is asked of every change. */
export function isMoney(heading: string): boolean {
  return Object.values(MONEY).includes(heading);
}

/** Most plans that a decision is told of on first pages and terminal. */
const MAX_ROWS = 12;
/** A design of factors with so many plans is told by what each factor does, and by the few plans that matter. */
export const MANY_PLANS = 9;
const FEW_ROWS = 6;

/** How many of its plans a decision's table has. */
export function plansTold({ rows }: Decision, hasFactors: boolean): number {
  return hasFactors && rows.length >= MANY_PLANS ? FEW_ROWS : MAX_ROWS;
}

/** One column before it is known whether there is room for it. */
interface Column {
  heading: string;
  group: Group;
  cell: (row: DecisionRow) => DecisionCell;
  /** Differs between the plans, as far as the days show. */
  moves: boolean;
}

/**
 * Today's plan first, then the others in the study's order; of more than there is room for the recommended one and those that are
 * best by the deciding response are kept. Columns that the reader looks for come first; where there is no room for all,
 * those go first that show no difference, then the reader's last. `startClockSeconds`: of the day, after midnight.
 */
export function decisionTable(decision: Decision, startClockSeconds: number, room: TableRoom): DecisionTable {
  const kept = keptRows(decision, room.rows);
  const sorted = inOrder(columnsOf(decision, startClockSeconds), room.reader ?? "");
  const columns = roomFor(
    sorted,
    kept.map((index) => decision.rows[index]!),
    room,
  );
  return {
    columns: columns.map(({ heading }) => heading),
    rows: kept.map((index) => {
      const row = decision.rows[index]!;
      const name = isolated(row.name);
      return {
        name: index === 0 && !/today's plan/i.test(name) ? `${name} (today's plan)` : name,
        cells: columns.map(({ cell }) => cell(row)),
        best: index === decision.best,
        harm: row.harm,
      };
    }),
    more: decision.rows.length - kept.length,
    left: sorted.filter((column) => !columns.includes(column)).map(({ heading }) => heading),
  };
}

function columnsOf({ columns, rows }: Decision, startClockSeconds: number): Column[] {
  const figures = columns.map((info) => ({
    heading: responseHeading(info),
    group: groupOf(info.key),
    cell: (row: DecisionRow) => cell(row, info, startClockSeconds),
    moves: rows.some(({ differences }) => differences[info.key]?.shown === true),
  }));
  const counts = rows.map(({ people }) => people);
  const people = {
    heading: "People",
    group: "people" as const,
    cell: ({ people }: DecisionRow) => plain(people === null ? "" : String(people)),
    moves: new Set(counts).size > 1,
  };
  const ofWeek = rows.some((row) => (row.money?.daysTogether ?? 1) > 1);
  const money = { heading: ofWeek ? MONEY.week : MONEY.day, group: "money" as const, cell: moneyCell, moves: true };
  return [
    ...figures,
    ...(counts.some((count) => count !== null) ? [people] : []),
    ...(rows.some((row) => row.money !== null) ? [money] : []),
  ];
}

/** The first column, which decides, stays where it is; what else the study asks for comes after what the reader looks for first. */
function inOrder([first, ...others]: readonly Column[], reader: string): Column[] {
  if (first === undefined) return [];
  const known = readerOf(reader);
  const sought = known === null ? OTHERWISE : FIRST[known];
  const groups: readonly Group[] = [...sought.slice(0, SOUGHT), "asked", ...sought.slice(SOUGHT)];
  const rank = ({ group }: Column) => groups.indexOf(group);
  return [first, ...others.sort((a, b) => rank(a) - rank(b))];
}

/** Groups that a reader looks for before anything else. */
const SOUGHT = 2;

function roomFor(columns: readonly Column[], rows: readonly DecisionRow[], room: TableRoom): Column[] {
  const { columns: most = columns.length, letters = Number.POSITIVE_INFINITY } = room;
  const [first, ...others] = columns;
  if (first === undefined) return [];
  const inTurn = [
    others.filter(({ heading }) => isMoney(heading)),
    others.filter(({ moves }) => moves),
    others.filter(({ moves }) => !moves),
  ];
  let left = letters - lettersOf(first, rows);
  const wanted = new Set<Column>();
  for (const column of new Set(inTurn.flat())) {
    left -= lettersOf(column, rows);
    if (left < 0 || wanted.size === most - 1) break;
    wanted.add(column);
  }
  return columns.filter((column) => column === first || wanted.has(column));
}

/** The longest word of the heading, or the longest figure; ranges are printed smaller. */
function lettersOf({ heading, cell }: Column, rows: readonly DecisionRow[]): number {
  const figures = rows.map((row) => cell(row)).flatMap(({ value, range }) => [value.length, SMALL * range.length]);
  return Math.max(...heading.split(" ").map(({ length }) => length), ...figures);
}

const SMALL = 0.9;

/** The plans that stand in the table, as places among the study's variants. */
export function plansShown(decision: Decision, hasFactors: boolean): number[] {
  return keptRows(decision, plansTold(decision, hasFactors));
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

/** A response as the heading of a column: "End of work", "Outside \u2018kill to chill\u2019". */
export function responseHeading({ key, label }: ResponseInfo): string {
  if (key.startsWith("beyond.")) return `Outside \u2018${isolated(key.slice("beyond.".length))}\u2019`;
  const [, day, ofDay] = DAY_IN_FRONT.exec(key) ?? [];
  if (ofDay !== undefined && SHORT[ofDay] !== undefined && label.toLowerCase().startsWith(`${day!.toLowerCase()}: `))
    return `${SHORT[ofDay]}, ${isolated(day!)}`;
  return SHORT[key] ?? isolated(label);
}

function plain(value: string): DecisionCell {
  return { value, range: "", shown: null };
}

function cell({ estimates, differences }: DecisionRow, info: ResponseInfo, startClockSeconds: number): DecisionCell {
  const found = estimates[info.key];
  if (found === undefined) return plain("no value");
  const [value, range] = formatEstimate(found, { format: info.format, unit: bareUnit(info) }, startClockSeconds);
  return {
    value,
    range: found.mean === 0 && found.max === 0 ? "" : range,
    shown: differences[info.key]?.shown ?? null,
  };
}

/** The unit of a response without what its heading says already. */
export function bareUnit({ unit }: ResponseInfo): string {
  return unit
    .replace(/\/(head|kg)$/, "")
    .replace("carcasses/h", "/h")
    .replace(/^carcasses(\/person-hour)?$/, "");
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
