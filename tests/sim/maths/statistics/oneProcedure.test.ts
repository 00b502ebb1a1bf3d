import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { type ComparisonInWords, comparisonsInWords } from "../../../../sim/days/results/index.ts";
import { type UniformStream, uniformStream } from "../../../../sim/maths/random/index.ts";
import { compareWithBest, normalQuantile } from "../../../../sim/maths/statistics/index.ts";
import { differenceWords, responseFormat } from "../../../../viz/words/index.ts";

const RATES = ["family-wise", "false discovery", "per comparison"] as const;
const INFOS: ResponseInfo[] = [
  { key: "a", label: "Throughput", unit: "carcasses/h", format: "number", better: "more" },
  { key: "b", label: "End", unit: "s", format: "clock", better: "less" },
  { key: "c", label: "Outside", unit: "share", format: "share", better: "less" },
  { key: "d", label: "Wait", unit: "s", format: "duration", better: "less" },
];

/** Days of 2 to 12 variants on common random numbers, some of them alike, some better, with values that are missing. */
function randomDays(uniforms: UniformStream): { values: (number | null)[][]; gaps: boolean } {
  const upTo = (most: number) => Math.floor(uniforms.next() * (most + 1));
  const normal = () => normalQuantile(uniforms.next() || 0.5);
  const [variants, days, scale] = [2 + upTo(10), 2 + upTo(28), 10 ** (upTo(6) - 3)];
  const luck = Array.from({ length: days }, normal);
  const gaps = uniforms.next() < 0.2;
  const values = Array.from({ length: variants }, () => {
    const kind = upTo(5);
    const effect = kind < 3 ? 0 : kind * 0.25 * normal();
    const noise = kind === 0 ? 0 : 0.5;
    return luck.map((day) => (gaps && uniforms.next() < 0.1 ? null : scale * (day + effect + noise * normal())));
  });
  return { values, gaps };
}

const STUDIES = 400;

function everyStudy(tell: (values: (number | null)[][], study: { index: number; gaps: boolean }) => void): void {
  for (let index = 0; index < STUDIES; index++) {
    const { values, gaps } = randomDays(uniformStream("81", index, "test", "procedure"));
    tell(values, { index, gaps });
  }
}

/** The interval that a sentence prints, as numbers. */
function printed(sentence: string): [number, number] | null {
  const found = /\(([^ ]+)[^(]*? to ([^ ]+)/.exec(sentence.replaceAll("\u2212", "-").replaceAll("\u202F", ""));
  return found === null ? null : [Number(found[1]), Number(found[2])];
}

/** How large a difference that is not shown may be, by the sentence, and by how much that may be rounded; null where it says nothing. */
function most(sentence: string): { size: number; rounding: number } | null {
  const found = /less than ([^ ]+)/.exec(sentence.replaceAll("\u202F", ""));
  if (found === null) return null;
  const [, behind = ""] = found[1]!.split(".");
  return { size: Number(found[1]), rounding: 0.5 * 10 ** -behind.length };
}

/** Figures that are printed in their own unit, or in hundredths of it. */
const PRINTED_AS: Partial<Record<ResponseInfo["format"], number>> = { number: 1, share: 100 };

function isSaidToBeSmall(sentence: string, [low, high]: [number, number], { format }: ResponseInfo): void {
  const said = most(sentence);
  expect(said).not.toBeNull();
  const times = PRINTED_AS[format];
  if (times !== undefined)
    expect(said!.size + said!.rounding).toBeGreaterThanOrEqual(times * Math.max(-low, high) - 1e-9);
}

const leavesOutZero = ([low, high]: readonly [number, number]) => low > 0 || high < 0;

describe.each(RATES)(
  "one procedure for interval and verdict, error rate %s (400 random studies, seed 81)",
  (errorRate) => {
    const told = (one: ComparisonInWords): [number, number] =>
      errorRate === "per comparison" ? [one.low!, one.high!] : [one.familyLow!, one.familyHigh!];
    const each = (say: (one: ComparisonInWords, info: ResponseInfo) => void) =>
      everyStudy((values, { index }) => {
        const info = INFOS[index % INFOS.length]!;
        for (const one of comparisonsInWords(values, 0, { confidence: 0.95, errorRate }, info)) {
          if (one !== null && one.low !== null) say(one, info);
        }
      });

    it("a difference is shown where its interval leaves 0 out, and only there; both happen often", () => {
      const counts = { shown: 0, not: 0 };
      each((one) => {
        expect(one.shown).toBe(leavesOutZero(told(one)));
        counts[one.shown ? "shown" : "not"] += 1;
      });
      expect(counts.shown).toBeGreaterThan(300);
      expect(counts.not).toBeGreaterThan(300);
    });

    it("the sentence of the terminal prints an interval that leaves 0 out, or how large a difference may be", () => {
      each((one, info) => {
        const { words, shown } = one;
        const ends = printed(words);
        if (shown) expect(leavesOutZero(ends!)).toBe(true);
        else if (!words.startsWith("The same as today's plan")) isSaidToBeSmall(words, told(one), info);
        expect(/ (more|less|earlier|later) than today/.test(words)).toBe(shown);
      });
    });

    it("the sentence of report and page does too", () => {
      each((one, info) => {
        const joint = errorRate !== "per comparison" && one.comparisons > 1;
        const words = differenceWords({ ...one, joint }, responseFormat(info, 0), 0.95);
        const ends = printed(words.sentence);
        if (one.shown) expect(leavesOutZero(ends!)).toBe(true);
        else if (words.verdict !== "the same") isSaidToBeSmall(words.sentence, told(one), info);
        expect(words.verdict === "shown").toBe(one.shown);
      });
    });

    it("goes by the adjusted p-value of its name, but for what rounding leaves open", () => {
      each((one) => {
        const p = {
          "family-wise": one.bonferroniP,
          "false discovery": one.benjaminiHochbergP,
          "per comparison": one.p,
        }[errorRate]!;
        if (Math.abs(p - 0.05) > 1e-9) expect(one.shown).toBe(p < 0.05);
      });
    });
  },
);

it("a variant that the comparison with the best rules out by the base, or that rules the base out, is shown to differ", () => {
  let ruledOut = 0;
  everyStudy((values, { gaps }) => {
    if (gaps) return;
    const compared = comparisonsInWords(values, 0, { confidence: 0.95, errorRate: "family-wise" }, INFOS[0]!);
    const best = compareWithBest(values as number[][], "more", 0.95)!;
    const better = compared.some((one) => one?.shown && one.mean > 0);
    // The base is ruled out exactly where some variant is shown to be better than it.
    expect(best[0]!.mayBeBest).toBe(!better);
    compared.forEach((one, variant) => {
      if (one?.shown && one.mean < 0) expect(best[variant]!.mayBeBest).toBe(false);
    });
    if (better) ruledOut += 1;
  });
  expect(ruledOut).toBeGreaterThan(50);
});

it("shows a false difference in at most 5 % of families of 10, error probability 0.001 (1,000 families, seed 82)", () => {
  let wrong = 0;
  for (let family = 0; family < 1000; family++) {
    const uniforms = uniformStream("82", family, "test", "families");
    const normal = () => normalQuantile(uniforms.next() || 0.5);
    const days = Array.from({ length: 10 }, normal);
    const values = Array.from({ length: 11 }, () => days.map((day) => day + normal()));
    const found = comparisonsInWords(values, 0, { confidence: 0.95, errorRate: "family-wise" }, INFOS[0]!);
    if (found.some((one) => one?.shown)) wrong += 1;
  }
  // At exactly 5 % more than 73 of 1,000 would come up with a probability under 0.001 (binomial).
  expect(wrong).toBeLessThanOrEqual(73);
  expect(wrong).toBeGreaterThan(5);
});
