import { type DecisionTable, decisionTable } from "../../viz/index.ts";
import type { Decision } from "../days/results/index.ts";
import { textTable } from "../text/units/index.ts";
import { type Line, plainLine } from "./terminal.ts";

/** Most plans that the terminal's table has a line for. */
const MAX_LINES = 20;

/** What every answer begins with on the terminal: the verdict, what it rests on, the table to decide by, what to do next. */
export function answerLines(
  { verdict, words, next }: Pick<Decision, "verdict" | "words" | "next">,
  table: DecisionTable | null,
): Line[] {
  return [
    { line: verdict, style: "bold" },
    ...words.map((line) => plainLine(`  ${line}`)),
    ...(table === null || table.rows.length < 2 ? [] : tableLines(table).map(plainLine)),
    ...next.map(plainLine),
    plainLine(""),
  ];
}

/** The same of a decision, with its own table. */
export function decisionLines(decision: Decision, startClockSeconds: number): Line[] {
  return answerLines(decision, decisionTable(decision, startClockSeconds, MAX_LINES));
}

/** As in the report; what is not shown to differ from today's plan stands in brackets. */
function tableLines({ columns, rows, more }: DecisionTable): string[] {
  const lines = rows.map(({ name, cells, best, harm }) => [
    `${best ? "* " : "  "}${name}${harm === null ? "" : " (does harm)"}`,
    ...cells.map(({ value, shown }) => (shown === false ? `(${value})` : value)),
  ]);
  const notes = [
    ...(rows.some(({ best }) => best) ? ["* best"] : []),
    "in brackets: no difference to today's plan shown",
  ];
  return [
    "",
    ...textTable([["", ...columns], ...lines]),
    ...(more === 0 ? [] : [`  ${more} more are in the report.`]),
    `  ${notes.join("; ")}.`,
  ];
}
