import { textTable } from "../../sim/text/units/index.ts";
import { type DecisionTable, isMoney } from "./decisionTable.ts";

/** Characters; a terminal that somebody has made no wider. */
const WIDTH = 100;
/** Lines of the table, what is left out included. */
const MAX_LINES = 30;
/** Characters of a plan's name in one line. */
const NAME = 34;
/** Of a heading: "Outside ‘kill" / "to chill’". */
const HEADING = 13;
const GAP = 2;

/**
 * The table to decide by as lines of text: headings over two lines or more, names cut at words, at most 100 characters wide
 * and 30 lines long. What has no room is left out, the last columns and the last plans, and it is said which.
 */
export function decisionLines(table: DecisionTable): string[] {
  const names = table.rows.map(({ name, best, harm }) => [
    ...wrapped(`${best ? "* " : "  "}${name}${harm === null ? "" : " (does harm)"}`, NAME, "    "),
  ]);
  const columns = fitting(table, Math.max(0, ...names.flat().map((line) => line.length)));
  const heads = columns.map((column) => wrapped(table.columns[column]!, HEADING, ""));
  const height = Math.max(1, ...heads.map((lines) => lines.length));
  const header = Array.from({ length: height }, (_, line) => [
    "",
    ...heads.map((lines) => lines[line - height + lines.length] ?? ""),
  ]);
  const cells = table.rows.map((row) => columns.map((column) => textOf(row.cells[column]!)));
  const bodies = names.map((lines, row) =>
    lines.map((line, index) => [line, ...(index === 0 ? cells[row]! : columns.map(() => ""))]),
  );
  const left = [...table.columns.filter((_, column) => !columns.includes(column)), ...(table.left ?? [])];
  const kept = rowsFor(bodies, MAX_LINES - height - (left.length > 0 ? 2 : 0) - 1);
  const more = table.more + bodies.length - kept.length;
  return [
    ...textTable([...header, ...kept.flat()]).map((line) => line.trimEnd()),
    ...(more === 0 ? [] : [`  ${more === 1 ? "1 more plan is" : `${more} more plans are`} in the report.`]),
    ...(left.length === 0 ? [] : wrapped(`  Left out for want of room: ${left.join(", ")}.`, WIDTH, "  ")),
  ];
}

/** Sentences in lines of at most 100 characters, those after the first set in. */
export function wrappedLines(text: string, indent = ""): string[] {
  return wrapped(`${indent}${text}`, WIDTH, `${indent}  `);
}

function textOf({ value, shown }: DecisionTable["rows"][number]["cells"][number]): string {
  return shown === false ? `(${value})` : value;
}

/** The columns, from the left, that stand beside names of a width; the money is always one of them. */
function fitting({ columns, rows }: DecisionTable, names: number): number[] {
  const widths = columns.map((heading, column) =>
    Math.max(
      ...wrapped(heading, HEADING, "").map((line) => line.length),
      ...rows.map(({ cells }) => textOf(cells[column]!).length),
    ),
  );
  const money = columns.findIndex(isMoney);
  const must = [0, ...(money > 0 ? [money] : [])].filter((column) => column < columns.length);
  let room = WIDTH - names - must.reduce((sum, column) => sum + widths[column]! + GAP, 0);
  return columns
    .map((_, column) => column)
    .filter((column) => {
      if (must.includes(column)) return true;
      room -= widths[column]! + GAP;
      return room >= 0;
    });
}

function rowsFor<Row extends readonly unknown[]>(rows: readonly Row[], lines: number): Row[] {
  let room = lines;
  return rows.filter((row) => {
    room -= row.length;
    return room >= 0;
  });
}

function wrapped(text: string, width: number, indent: string): string[] {
  const start = /^ */.exec(text)![0];
  const lines: string[] = [];
  let line = start;
  for (const word of text.trim().split(" ")) {
    const isEmpty = line.trim() === "" || line === indent;
    if (!isEmpty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = `${indent}${word}`;
    } else {
      line = isEmpty ? `${line}${word}` : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
