import { describe, expect, it } from "vitest";
import { answerLines, decidedLines, effectLines, tableLines } from "../../../sim/cli/answerLines.ts";
import type { DecisionTable } from "../../../viz/index.ts";
import { gain, handMadeDecision } from "../../support/handMadeDecision.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

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

describe("effectLines", () => {
  const study = syntheticStudy();
  const info = study.responses[0]!;
  const factors = ["lorries every", "places", "hooks"].map((name) => ({ name, path: "", levels: ["few", "many"] }));
  const share = (value: number) => ({ value, low: value - 0.1, high: value + 0.1 });
  const effects = {
    points: 199,
    explained: 0.97,
    ranked: [
      { factors: [1], share: share(0.6), total: share(0.8), span: 720, lowest: [1], highest: [0] },
      { factors: [0, 1], share: share(0.2), total: null, span: 300, lowest: [0, 1], highest: [1, 0] },
      {
        factors: [2],
        share: { value: 0.001, low: 0, high: 0.002 },
        total: share(0.1),
        span: 5,
        lowest: [0],
        highest: [1],
      },
    ],
  };

  it("tells the greatest effects first, each in the result's unit, and names what does next to nothing", () => {
    const lines = effectLines({ ...study, factors, effects: { [info.key]: effects } }, info);
    expect(lines[0]).toMatch(/^What moves .* over all 199 points, the most first \(95 % ranges\):$/);
    const text = lines.join("\n");
    expect(text).toMatch(/\n {2}places +60 % \(50 % to 70 %\) +80 % .*many +few\n/);
    expect(text).toMatch(/\n {2}lorries every, places \(together\) +20 % \(10 % to 30 %\) .*few, many +many, few\n/);
    expect(text).toMatch(/account for 97 % of the differences\. Next to nothing: "hooks"\.$/);
    expect(text).not.toMatch(/\n {2}hooks /);
  });

  it("says nothing where no effects were looked for", () => {
    expect(effectLines(study, info)).toEqual([]);
    expect(effectLines({ ...study, effects: { [info.key]: null } }, info)).toEqual([]);
  });
});
