import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { doubtWords } from "../../../../sim/questions/doubt/index.ts";
import { doubtPlan, doubtStudy, type Response, readDoubt, reckonedDoubt } from "../../../support/doubtCase.ts";

const FIGURES = [
  { name: "skinning's jams", paths: ["line.skinning.cycle"], guess: "a third" },
  {
    name: "hanging's times",
    paths: ["line.hanging.cycle"],
    factor: { uniform: { min: 0.9, max: 1.1 } },
    kind: "measured",
  },
];
const VARIANTS = ["machine", "places"].map((name) => ({ name, set: { "line.skinning.buffer": 9 } }));
const COUNTS = { worlds: 40, days: 6, seed: "words" };

const uniforms = uniformStream("words", 0, "test", "luck");
const LUCK = Array.from({ length: 240 }, () => normalQuantile(uniforms.next()));

const questionOf = (list: typeof VARIANTS) =>
  readDoubt(doubtStudy(doubtPlan(...FIGURES), list, { responses: ["finish"] }), COUNTS).question!;
const ALONE = questionOf([]);
const CHOICE = questionOf(VARIANTS);

function wordsOf(value: Response, question = ALONE, others: Record<string, Response> = {}) {
  return doubtWords(reckonedDoubt(question, value, others));
}

/** Seconds after 06:00 with so much by the jams, whose factor has an sd of 0.19245, and so much luck. */
const ends =
  (jams: number, luck: number): Response =>
  (_, [a], day) =>
    27_000 + (jams * (a! - 1)) / 0.19245 + luck * LUCK[day]!;

describe("doubtWords", () => {
  it("says in one sentence when work ends, what part is luck, and what is not known, a guess being called one", () => {
    const { verdict, next, words } = wordsOf(ends(600 * Math.SQRT2, 600));
    expect(verdict).toMatch(
      /^Work ends between 1[23]:\d\d and 1[34]:\d\d on 95 of 100 days; (half|three fifths|two thirds) of that span is luck of the day, the rest is that we do not know skinning's jams \(a guess\)\.$/,
    );
    expect(next[0]).toMatch(
      /^Measure first: skinning's jams \(a guess\), nearly all of what is not known\. Known exactly, it would make the span \d+\.\d min narrower on average\.$/,
    );
    expect(next.join(" ")).toMatch(
      /Measuring hanging's times changes next to nothing \(at most \d+ % of what is not known\)\./,
    );
    expect(words.join(" ")).toMatch(/40 worlds with 6 days \(seed "words"\); .*: 2 uncertain, 1 of them guesses\./);
    expect(words.join(" ")).toMatch(/A range that was guessed is a guess/);
  });

  it("says so where it is nearly all luck, nearly all not knowing, or nothing varies", () => {
    const luck = wordsOf(ends(0, 600));
    expect(luck.verdict).toMatch(/nearly all of that span is luck of the day: what is not known hardly moves it\.$/);
    expect(luck.next).toEqual(["Measuring would hardly narrow the span: it is luck of the day."]);
    expect(wordsOf(ends(600, 6)).verdict).toMatch(
      /; hardly any of that span is luck of the day, the rest is that we do not know skinning's jams \(a guess\)\.$/,
    );
    expect(wordsOf(() => 27_000).verdict).toBe("Work ends at 13:30 on every day.");
  });

  it("says which variant to choose, in how many worlds it is better, what can be dropped and what knowing is worth", () => {
    const { verdict, words, next, tables } = wordsOf((variant, [a], day) => {
      const gain = [0, 300 + (500 * (a! - 1)) / 0.19245, -900][variant]!;
      return 27_000 + 600 * LUCK[day]! - gain;
    }, CHOICE);
    // P(300 + 500 u / 0.19245 > 0) for u uniform on -1/3 to 1/3: 1/2 + 0.3 / (2 sqrt(3) 0.5) = 0.6732.
    expect(verdict).toMatch(
      /^Whether “machine” or “base” is better is open: “machine” is better in 6[5-9] of 100 worlds, by 5(\.\d+)? min on average/,
    );
    expect(words.join(" ")).toMatch(/by this result they can be dropped: “places”\./);
    expect(words.join(" ")).toMatch(
      /Choosing “machine” now gives away \d[\d.]* (min|s) a day on average, against knowing every figure first\./,
    );
    expect(next.join(" ")).toMatch(
      /For the choice skinning's jams \(a guess\) matters most: to know it first is worth \d[\d.]* (min|s) a day on average\./,
    );
    expect(tables.map((table) => table.length)).toEqual([4, 2, 3, 2]);
  });

  it("says how many readings are worth their time, and what two figures do only together", () => {
    // Hanging's readings have a cv of 0.3, its mean a standard deviation of 0.0577: as known as by 27 readings.
    // 40 more leave 0.68 of the span where knowing leaves 0.32: not half of it; 80 more leave 0.57.
    const read = wordsOf((_, [, b], day) => 27_000 + (900 * (b! - 1)) / 0.0577 + 300 * LUCK[day]!);
    expect(read.next.join(" ")).toMatch(
      /Take 80 readings of hanging's times \(6 min 40 s of watching, or longer\): they make the span \d\d\.\d min narrower on average and leave half of what it may be off by\./,
    );
    expect(read.tables.at(-1)![0]).toMatch(/^narrower by so many more readings {2}taken {2,}10 {2,}40 {2,}160$/);
    expect(read.tables.at(-1)![1]).toMatch(/^hanging's times +none {2}/);
    const pair = wordsOf((_, [a, b], day) => 27_000 + 90_000 * (a! - 1) * (b! - 1) + 600 * (a! - 1) + LUCK[day]!);
    expect(pair.next.join(" ")).toMatch(
      /(Nearly all|Nine tenths|Four fifths) of what is not known skinning's jams \(a guess\) and hanging's times do only together: know both\./,
    );
  });

  it("says that no figure need be known where one is best in every world, and leaves out what does harm", () => {
    const carcasses: Response = (variant) => (variant === 2 ? 900 : 1000);
    const { verdict, words } = wordsOf((variant, [a], day) => 27_000 + 300 * a! + LUCK[day]! - 600 * variant, CHOICE, {
      carcasses,
    });
    expect(verdict).toMatch(
      /^“machine” is better than “base” in more than 99 of 100 worlds, by 10(\.0)? min on average \(End of work on the line\)\.$/,
    );
    expect(words.join(" ")).toMatch(
      /“machine” is the best in every world that was drawn, so no figure has to be known to choose it\./,
    );
    expect(words.join(" ")).toMatch(/“places” is left out of the choice: it handles 100 fewer heads a day\./);
  });

  it("takes care of days that did not end, and of a response without values", () => {
    const unfinished: Response = (_, __, day) => (day === 0 ? 1 : 0);
    expect(wordsOf(ends(600, 600), ALONE, { unfinished }).words.join(" ")).toMatch(
      /Take care: 1 of the simulated days did not end/,
    );
    expect(wordsOf(() => null).verdict).toBe("End of work on the line: some world has no value.");
  });
});
