import { describe, expect, it } from "vitest";
import { fitAnswer, fitColumn, fitPicture, readTimes } from "../../../sim/questions/fit/index.ts";
import { renderFitReport } from "../../../viz/report/index.ts";
import { CYCLES } from "../../support/timeStudies.ts";

function told(table: string): string {
  const { columns } = readTimes(table, { unit: null, by: null });
  const fits = columns!.map((column) => fitColumn(column, { seed: "1", samples: 99 }));
  const answer = fitAnswer(fits);
  const page = renderFitReport({
    ...{ file: "times.csv", seed: "1", samples: 99, answer, columns: fits },
    pictures: fits.map((fit) => fitPicture(fit, "1")),
  });
  return page
    .replace(/<(style|script|svg)[^>]*>.*?<\/\1>/gs, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ");
}

const ONE = `skinning (s)\n${CYCLES.join("\n")}\n`;
const TWO = `skinning (s),trim (s)\n${CYCLES.map((time) => `${time},${2 * time}`).join("\n")}\n`;

describe("the report of measured times", () => {
  it("begins with the question and what to use, before any picture, test or method", () => {
    const text = told(ONE);
    const at = ["Question: Which distributions", "Answer skinning: Use a", "What to do next", "Cautions", "Method"].map(
      (piece) => text.indexOf(piece),
    );
    expect(at.every((place) => place >= 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it("says the same in the table: times, mean with its range, what to put into the plan, how many are missing", () => {
    const mean = CYCLES.reduce((sum, time) => sum + time, 0) / CYCLES.length;
    const text = told(ONE);
    expect(text).toMatch(new RegExp(`skinning 20 ${mean.toPrecision(3)} s \\d[\\d.]* to \\d[\\d.]* s (an? )?\\w+`));
    const [, verdictMore] = /Answer skinning: Use .*? time (\d+) more/.exec(text) ?? [];
    expect(verdictMore).toBeDefined();
    expect(text).toMatch(new RegExp(`skinning 20 .*? ${verdictMore} .*What to do next`));
  });

  it("of several columns has a sentence and a row for each", () => {
    const text = told(TWO);
    expect(text).toMatch(/skinning: (Use|Time) .*trim: (Use|Time) /);
    expect(text).toMatch(/Timed Times Mean Use in the plan Time more Findings skinning 20 .* trim 20 /);
  });

  it("tells of a finding that forbids the use before anything else", () => {
    // Every time a hundredth longer than the one before: a drift that no chance makes.
    const drift = Array.from({ length: 60 }, (_, index) => (5 * 1.03 ** index).toFixed(2));
    const text = told(`skinning (s)\n${drift.join("\n")}\n`);
    expect(text).toMatch(/Answer skinning: Do not use these times yet \(.*drift/);
    expect(text).toMatch(/skinning 60 .*? nothing yet: find out first /);
  });
});
