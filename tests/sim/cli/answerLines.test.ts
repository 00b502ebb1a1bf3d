import { describe, expect, it } from "vitest";
import { answerLines, decidedLines, tableLines } from "../../../sim/cli/answerLines.ts";
import type { DecisionTable } from "../../../viz/index.ts";
import { gain, handMadeDecision } from "../../support/handMadeDecision.ts";

const SAID = { verdict: "Yes: take it.", words: ["It saves 60 EUR a day."], next: ["Ask the crews."] };

function table(rows: number, best: number | null): DecisionTable {
  return {
    columns: ["End of work"],
    rows: Array.from({ length: rows }, (_, row) => ({
      ...{ name: `plan ${row}`, best: row === best, harm: null },
      cells: [{ value: `14:0${row}`, range: "", shown: row === 1 ? false : null }],
    })),
    more: 0,
  };
}

describe("an answer on the terminal", () => {
  it("begins with the verdict in bold, then what it rests on, the table, what to do next", () => {
    const lines = answerLines(SAID, table(2, 0));
    expect(lines[0]).toEqual({ line: "Yes: take it.", style: "bold" });
    const text = lines.map(({ line }) => line).join("\n");
    expect(text).toMatch(/^Yes: take it\.\n {2}It saves 60 EUR a day\.\n\n[\s\S]*plan 0[\s\S]*\nAsk the crews\.\n$/);
    expect(lines.filter(({ style }) => style === "bold")).toHaveLength(1);
  });

  it("has no table where there is nothing to choose among", () => {
    expect(answerLines(SAID, table(1, 0)).some(({ line }) => line.includes("plan 0"))).toBe(false);
    expect(answerLines(SAID, null)).toEqual(answerLines(SAID, table(1, 0)));
  });

  it("explains the star only where a plan has it", () => {
    expect(tableLines(table(2, 1)).at(-1)).toBe("  * best; in brackets: no difference to today's plan shown.");
    expect(tableLines(table(2, null)).at(-1)).toBe("  in brackets: no difference to today's plan shown.");
  });

  it("breaks long sentences at words, at most 100 characters wide", () => {
    const verdict = `Yes: ${"take one person from hanging ".repeat(9)}.`;
    const lines = answerLines({ ...SAID, verdict }, null).map(({ line }) => line);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(lines.join(" ").replace(/ +/g, " ")).toContain(verdict.replace(/ +/g, " "));
  });

  it("of a decision has its own table, with today's plan in it", () => {
    const decision = { ...handMadeDecision([{ name: "one more", gain: gain("gain", 20) }]), ...SAID, best: 1 };
    const text = decidedLines(decision, 21_600)
      .map(({ line }) => line)
      .join("\n");
    expect(text).toContain("base (today's plan)");
    expect(text).toMatch(/\n\* one more +14:20/);
  });
});
