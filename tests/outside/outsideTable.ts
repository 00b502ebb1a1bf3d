import { FALSE_ALARM } from "../support/agreesWith.ts";
import { CLASSES, LABELS, type OutsideRow, REGISTER } from "./register/index.ts";

/** The text of tests/outside/README.md. */
export function outsideTable(): string {
  return `${[heading(), ...REGISTER.map(section), legend()].join("\n\n")}\n`;
}

function heading(): string {
  const rows = REGISTER.flatMap((part) => part.rows);
  const simulated = rows.reduce((sum, row) => sum + row.simulated, 0);
  const exact = rows.reduce((sum, row) => sum + row.exact, 0);
  const any = Math.round(100 * (1 - (1 - FALSE_ALARM) ** simulated));
  return `# Checked against the outside world

Written by \`npx tsx tests/outside/makeTable.ts\` from the rows in \`register/\`; a test fails when it is out of date, and every
test file fails when it makes more or fewer comparisons than its rows say.

**${simulated + exact} comparisons: ${simulated} of simulated figures, ${exact} without chance.**

A simulated figure is the mean of at least 20 independent replications. It passes when it lies within Student's
t(0.9995, n - 1) standard errors of the exact value and at the same time its standard error is under 0.5 % of that value (shares of time and small
shares: the bound stands beside the check). Comparisons of shape and frequency pass at the same level. So one comparison of a
faultless program fails with probability ${FALSE_ALARM}, and the whole suite, over all seeds it could have, with probability about
${any} % (${(simulated * FALSE_ALARM).toFixed(2)} false alarms expected; fewer, as many comparisons share their days). Nobody chose the seeds: each is the name of
its row and case, so what passes once passes always. A check that fails is looked into with further
replications and other seeds, and is never made to pass by another seed: if it was chance, the row runs twice as many
replications, the unlucky ones among them. That happened twice (rows 2.11 and 4.3; the figures stand beside them).`;
}

function section({ file, about, rows }: (typeof REGISTER)[number]): string {
  const head = ["row", "what", "source", "sure by", "class", "simulated", "exact"];
  return `## ${about} (\`${file}\`)\n\n${alignedTable(head, rows.map(cellsOf), 2)}`;
}

function cellsOf({ id, what, source, labels, sourceClass, simulated, exact, notChecked }: OutsideRow): string[] {
  const said = notChecked === undefined ? what : `${what}. **Not checked:** ${notChecked}`;
  return [id, said, source, labels.join(", "), sourceClass, `${simulated}`, `${exact}`];
}

/** Markdown table with padded columns, as the project's formatter leaves it; the last `numbers` columns flush right. */
export function alignedTable(head: string[], rows: string[][], numbers: number): string {
  const widths = head.map((title, column) => Math.max(3, title.length, ...rows.map((cells) => cells[column]!.length)));
  const isNumber = (column: number) => column >= head.length - numbers;
  const line = (cells: string[]) =>
    `| ${cells.map((cell, i) => (isNumber(i) ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!))).join(" | ")} |`;
  const rule = widths.map((width, i) => (isNumber(i) ? `${"-".repeat(width - 1)}:` : "-".repeat(width)));
  return [line(head), `| ${rule.join(" | ")} |`, ...rows.map(line)].join("\n");
}

function legend(): string {
  const lines = (words: Record<string, string>) =>
    Object.entries(words).map(([key, meaning]) => `- ${key}: ${meaning}`);
  return ["## Labels and classes", "", ...lines(LABELS), "", ...lines(CLASSES)].join("\n");
}
