import { type DecisionTable, decisionLines, decisionTable, wrappedLines } from "../../viz/index.ts";
import type { Decision } from "../days/results/index.ts";
import { type Line, plainLine } from "./terminal.ts";

/** Most plans that the terminal's table has a line for. */
const MAX_ROWS = 20;

/** What every answer begins with on the terminal: the verdict, what it rests on, the table to decide by, what to do next. */
export function answerLines(
  { verdict, words, next }: Pick<Decision, "verdict" | "words" | "next">,
  table: DecisionTable | null,
): Line[] {
  return [
    ...wrappedLines(verdict).map((line): Line => ({ line, style: "bold" })),
    ...words.flatMap((line) => wrappedLines(line, "  ")).map(plainLine),
    ...(table === null || table.rows.length < 2 ? [] : ["", ...tableLines(table)].map(plainLine)),
    ...next.flatMap((line) => wrappedLines(line)).map(plainLine),
    plainLine(""),
  ];
}

/** The same of a decision, with its own table. */
export function decidedLines(decision: Decision, startClockSeconds: number): Line[] {
  return answerLines(decision, decisionTable(decision, startClockSeconds, { rows: MAX_ROWS }));
}

/** As in the report; what is not shown to differ from today's plan stands in brackets. */
export function tableLines(table: DecisionTable): string[] {
  const notes = [
    ...(table.rows.some(({ best }) => best) ? ["* best"] : []),
    "in brackets: no difference to today's plan shown",
  ];
  return [...decisionLines(table), `  ${notes.join("; ")}.`];
}
