import { CAUTIONS, chartTables, type DecisionTable, weekClock, weekTold } from "../../viz/index.ts";
import {
  type Decision,
  figureCell,
  resultsTable,
  type Sheet,
  type SheetCell,
  type SheetTable,
  type StudyResults,
  spanCell,
  tableRows,
  tableWidths,
  type WeekCell,
  type WeekOutline,
  type WeekTable,
  weekMoment,
  weekTables,
  workbook,
} from "../days/results/index.ts";

type Titled = ReturnType<typeof chartTables>[number];

/** Sheets of several tables, each with the names of the pictures whose figures it holds; a name goes to the first that fits. */
const GATHERED: { name: string; about: string; holds: RegExp }[] = [
  { name: "Inputs", about: "every input of today's plan with its source", holds: /^inputs$/ },
  { name: "Where the time went", about: "what the line waited for", holds: /^(binding|slopes)-/ },
  {
    name: "Limits and stops",
    about: "time limits and stops of the kill line on a day",
    holds: /-(limit-\d|kill-stops)/,
  },
  {
    name: "The week by the clock",
    about: "people of each crew, half hour by half hour",
    holds: /^(base|furthest)-week(-\d+)?$/,
  },
  { name: "A day by the clock", about: "one simulated day, an example", holds: /^(base|furthest)-/ },
  { name: "Figures of pictures", about: "the pictures of the results", holds: /^/ },
];

/**
 * The tables of a run as a workbook of a few sheets: the answer to read, every result with cells of its kind, and
 * the figures of all pictures, gathered by what they tell.
 */
export function runWorkbook(results: StudyResults, planFile: unknown): Promise<Uint8Array> {
  const every = resultsTable(results);
  const week = weekTables(results).map((table) => ({ name: WEEK_SHEETS[table.name], table }));
  const gathered = gather(chartTables(results, planFile));
  const list = [
    ["Results", "every result of every variant, with ranges and differences to today's plan"],
    ...week.map(({ name, table }) => [name, table.row]),
    ...gathered.map(({ name, about }) => [name, about]),
  ] as [string, string][];
  return workbook([
    answerSheet(results, list),
    { name: "Results", rows: tableRows(every), frozen: 1, widths: tableWidths(every) },
    ...week.map(({ name, table }) => weekSheet(name, table, results.plan.week!)),
    ...gathered.map(({ name, tables }) => tablesSheet(name, tables)),
  ]);
}

const WEEK_SHEETS = { days: "Days", lots: "Lots", orders: "Orders", weeks: "All weeks" } as const;

/** Moments are dates with their time where the plan says when its week begins, else the day's name and the time. */
function weekSheet(name: string, { columns, rows }: WeekTable, week: WeekOutline): Sheet {
  const cell = (each: WeekCell): SheetCell => {
    if (each === null || typeof each !== "object") return each;
    if (each.moment === null) return null;
    return week.begins === null
      ? { words: weekClock(week.days, each.moment), as: "prose" }
      : { date: weekMoment(week, each.moment) };
  };
  const table = {
    columns: columns.map((column) => ({ name: column.name, unit: "" })),
    rows: rows.map((row) => row.map(cell)),
  };
  return { name, rows: tableRows(table), frozen: 1, widths: tableWidths(table) };
}

function gather(tables: readonly Titled[]): { name: string; about: string; tables: Titled[] }[] {
  const sheetOf = ({ name }: Titled) => GATHERED.find(({ holds }) => holds.test(name))!;
  return GATHERED.map((sheet) => ({ ...sheet, tables: tables.filter((table) => sheetOf(table) === sheet) })).filter(
    (sheet) => sheet.tables.length > 0,
  );
}

/** One table below the other, each under its title; of a single one the heading stays at the top. */
function tablesSheet(name: string, tables: readonly Titled[]): Sheet {
  const rows = tables.flatMap(({ title, table }): SheetCell[][] => [
    [{ words: title, as: "title" }],
    ...tableRows(table),
    [],
  ]);
  const widths = tables.map(({ table }) => tableWidths(table));
  const most = Math.max(...widths.map(({ length }) => length));
  const widest = Array.from({ length: most }, (_, index) => Math.max(...widths.map((each) => each[index] ?? 0)));
  return { name, rows, frozen: tables.length === 1 ? 2 : 1, widths: widest };
}

/** What somebody reads who opens the workbook: question, answer, the table to decide by, the other sheets, cautions. */
function answerSheet(results: StudyResults, sheets: readonly [string, string][]): Sheet {
  const { study, plan, decision } = results;
  const isOneWeek = plan.week !== undefined && results.variants.length === 1;
  const told = isOneWeek ? weekTold(results) : null;
  const lines: [string, string][] = [
    ["Question", study.question],
    ...(told === null ? (decision == null ? [] : answerRows(decision)) : answerRows(told)),
    ["Plan", plan.name],
    [
      "How it was found",
      `${study.replications} simulated ${plan.week === undefined ? "days" : "weeks"} of each variant, seed ${study.seed}`,
    ],
    ["How to repeat it", study.command],
    ["Program", `gambrel ${results.gambrel}`],
  ];
  const line = ([name, words]: readonly [string, string]): SheetCell[] => [
    { words: name, as: "heading" },
    { words, as: "prose" },
  ];
  const rows: SheetCell[][] = [
    [{ words: study.name, as: "title" }],
    ...lines.map(line),
    [],
    ...answerTable(results),
    [{ words: "The other sheets", as: "heading" }],
    ...sheets.map(line),
    [],
    [{ words: "Cautions", as: "heading" }],
    ...CAUTIONS.map((caution) => line(["", caution])),
  ];
  return { name: "Answer", rows, frozen: 1, widths: [28, 80, ...new Array<number>(40).fill(18)] };
}

/** The table to decide by; of one week its days. */
function answerTable(results: StudyResults): SheetCell[][] {
  const { plan, variants, decision } = results;
  if (plan.week !== undefined && variants.length === 1) return [...tableRows(dayCells(weekTold(results).table)), []];
  return decision == null ? [] : [...tableRows(decisionCells(results, decision)), []];
}

/** As they are told: a mean and its range are words. */
function dayCells({ columns, rows }: DecisionTable): SheetTable {
  return {
    columns: ["Day", ...columns].map((name) => ({ name, unit: "" })),
    rows: rows.map(({ name, cells }) => [
      name,
      ...cells.map(({ value, range }) => (range === "" ? value : `${value} (${range})`)),
    ]),
  };
}

function answerRows({
  verdict,
  words,
  next,
  orders = [],
}: Pick<Decision, "verdict" | "words" | "next"> & { orders?: string[] }): [string, string][] {
  return [
    ["Answer", verdict],
    ...[...orders, ...words].map((each): [string, string] => ["", each]),
    ...next.map((each, index): [string, string] => [index === 0 ? "What to do next" : "", each]),
  ];
}

/** Means of the results that decide, and differences to today's plan where they are shown. */
function decisionCells({ variants }: StudyResults, { columns, rows, best }: Decision): SheetTable {
  const start = variants[0]!.day.startClockSeconds;
  const said = (name: string, unit = "") => ({ name, unit });
  return {
    columns: [
      ...[said("Variant"), said("Verdict"), said("People")],
      ...columns.flatMap(({ label, unit, format }) => {
        const isPlain = format === "clock" || format === "share";
        return [
          said(label, isPlain ? "" : unit),
          said("to today, where shown", format === "clock" ? "s" : isPlain ? "" : unit),
        ];
      }),
    ],
    rows: rows.map(({ name, people, estimates, differences, harm }, index) => [
      ...[name, index === best ? "best" : harm === null ? "" : `does harm: ${harm}`, people],
      ...columns.flatMap((info): SheetCell[] => {
        const difference = differences[info.key];
        const shown = difference?.shown ? difference.mean : null;
        return [figureCell(estimates[info.key]?.mean, info, start), spanCell(shown, info)];
      }),
    ]),
  };
}
