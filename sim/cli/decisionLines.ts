import { decisionTable } from "../../viz/index.ts";
import type { Decision } from "../days/results/index.ts";
import { textTable } from "../text/units/index.ts";
import type { Line } from "./terminal.ts";
import { plainLine } from "./terminal.ts";

/** Most plans that the terminal's table has a line for. */
const MAX_LINES = 20;

/** What every answer begins with on the terminal: the verdict, what it rests on, the table to decide by, what to do next. */
export function answerLines(
  { verdict, words, next }: Pick<Decision, "verdict" | "words" | "next">,
  decision: Decision | null | undefined,
  startClockSeconds: number,
): Line[] {
  return [
    { line: verdict, style: "bold" },
    ...words.map((line) => plainLine(`  ${line}`)),
    ...(decision == null ? [] : tableLines(decision, startClockSeconds)).map(plainLine),
    ...next.map(plainLine),
    plainLine(""),
  ];
}

/** As in the report; what is not shown to differ from today's plan stands in brackets. */
function tableLines(decision: Decision, startClockSeconds: number): string[] {
  const { columns, rows, more } = decisionTable(decision, startClockSeconds, MAX_LINES);
  if (rows.length < 2) return [];
  const lines = rows.map(({ name, cells, best, harm }) => [
    `${best ? "* " : "  "}${name}${harm === null ? "" : " (does harm)"}`,
    ...cells.map(({ value, shown }) => (shown === false ? `(${value})` : value)),
  ]);
  return [
    "",
    ...textTable([["", ...columns], ...lines]),
    ...(more === 0 ? [] : [`  ${more} more are in the report.`]),
    "  * best; in brackets: no difference to today's plan shown.",
  ];
}
