import { expect, test } from "vitest";
import { decisionLines } from "../../../viz/words/decisionLines.ts";
import { type DecisionTable, decisionTable } from "../../../viz/words/decisionTable.ts";
import { handMadeResults } from "../../support/handMadeResults.ts";

function wide(columns: number, rows: number): DecisionTable {
  const heads = Array.from({ length: columns }, (_, column) => `Figure of number ${column + 1}`);
  return {
    columns: [...heads, "Money a day, to today"],
    rows: Array.from({ length: rows }, (_, row) => ({
      name: `a plan with quite a long name, number ${row + 1}`,
      cells: [...heads, "money"].map((_, column) => ({
        value: `${row}.${column} EUR`,
        range: "",
        shown: column === 1 ? false : null,
      })),
      best: row === 2,
      harm: row === 3 ? "heads wait too long" : null,
    })),
    more: 0,
  };
}

test("a table for a terminal has at most 30 lines of 100 characters, and says what it left out", () => {
  const lines = decisionLines(wide(12, 25));
  expect(lines.length).toBeLessThanOrEqual(30);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
  const text = lines.join(" ").replace(/ +/g, " ");
  expect(text).toMatch(/\d+ more plans are in the report\./);
  expect(text).toMatch(/Left out for want of room: .*Figure of number 12\./);
  expect(text).toContain("24.12 EUR".slice(-4));
  expect(lines.some((line) => line.includes("0.12 EUR"))).toBe(true);
});

test("what is not shown stands in brackets, the best has a star, harm is named", () => {
  const text = decisionLines(wide(2, 5)).join("\n");
  expect(text).toContain("(0.1 EUR)");
  expect(text).toMatch(/^\* a plan with quite a long name,/m);
  expect(text).toMatch(/number 4 \(does\s+harm\)/);
});

test("columns and cells stay together: every value of a short table is on the terminal as in the table", () => {
  const { decision, variants } = handMadeResults();
  const table = decisionTable(decision!, variants[0]!.day.startClockSeconds, { rows: 12 });
  const lines = decisionLines(table);
  for (const { name, cells } of table.rows) {
    const line = lines.find((each) => each.includes(name))!;
    for (const { value, shown } of cells) expect(line).toContain(shown === false ? `(${value})` : value);
  }
});

test("columns that are too wide for the sheet go, those that no plan is shown to move first, and are named", () => {
  const { decision } = handMadeResults();
  const whole = decisionTable(decision!, 0, { rows: 9 });
  expect(whole.left).toEqual([]);
  const narrow = decisionTable(decision!, 0, { rows: 9, letters: 24 });
  expect(narrow.columns[0]).toBe(whole.columns[0]);
  expect(narrow.columns.length).toBeLessThan(whole.columns.length);
  expect([...narrow.columns, ...narrow.left!].sort()).toEqual([...whole.columns].sort());
  const longest = narrow.rows.map(({ cells }) => cells.reduce((sum, { value }) => sum + value.length, 0));
  expect(Math.max(...longest)).toBeLessThanOrEqual(24);
});

test("each reader sees first, after what decides, what he looks for", () => {
  const { decision } = handMadeResults();
  const info = (key: string) => ({ key, label: key, unit: "", format: "number" as const, better: null });
  const asked = ["headsPerHour", "finish", "beyond.kill to chill", "costPerKg"].map(info);
  const order = (reader: string) => decisionTable({ ...decision!, columns: asked }, 0, { rows: 9, reader }).columns[1];
  expect(order("owner")).toMatch(/Cost a kg|Money/);
  expect(order("planner")).toBe("End of work");
  expect(order("official veterinarian")).toBe("Outside \u2018kill to chill\u2019");
  const byEnd = { ...decision!, columns: [asked[1]!, asked[3]!, asked[0]!] };
  expect(decisionTable(byEnd, 0, { rows: 9, reader: "process engineer" }).columns[1]).toBe("Throughput");
});
