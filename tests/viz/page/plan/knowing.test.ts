import { describe, expect, it } from "vitest";
import { spansTold, unsureOf, unsureWords } from "../../../../viz/page/plan/knowing.ts";
import { syntheticStudy } from "../../../support/syntheticStudy.ts";

const figure = (kind: object) => ({ name: "f", paths: ["line.a.cycle"], ...kind });

describe("unsureWords", () => {
  it("counts uncertain figures, and calls those that nobody measured guesses", () => {
    const wordsOf = (...kinds: object[]) => unsureWords(unsureOf({ uncertain: kinds.map(figure) }));
    const [guess, measured] = [{ guess: "a third" }, { kind: "measured", factor: {} }];
    expect(wordsOf(guess, measured)).toBe("2 figures of this plan are uncertain, 1 of them a guess");
    expect(wordsOf(guess, { kind: "guess", factor: {} }, measured)).toMatch(/3 figures .*, 2 of them guesses$/);
    expect(wordsOf(guess, guess)).toMatch(/all of them guesses$/);
    expect(wordsOf(measured)).toBe("One figure of this plan is uncertain");
    expect(wordsOf(guess)).toBe("One figure of this plan is uncertain, by guess");
    for (const plan of [null, {}, { uncertain: "all" }]) expect(unsureOf(plan)).toEqual({ figures: 0, guesses: 0 });
  });
});

describe("spansTold", () => {
  const info = { key: "finish", label: "End of work", unit: "", format: "clock", better: "less" } as const;
  /** A study whose days end so many minutes after 13:00. */
  const endingAt = (...minutes: number[][]) => {
    const study = syntheticStudy();
    const start = study.variants[0]!.day.startClockSeconds;
    const variants = minutes.map((days, index) => ({
      ...study.variants[index]!,
      values: { finish: days.map((minute) => 13 * 3600 + 60 * minute - start) },
    }));
    return { ...study, study: { ...study.study, replications: minutes[0]!.length }, responses: [info], variants };
  };

  it("tells between which ends all of the days lie, both ways, of both lines", () => {
    expect(spansTold(endingAt([20, 5, 12]), endingAt([40, -10, 12]))).toBe(
      "On these 3 days work ends between 13:05 and 13:20 as if we knew every figure, between 12:50 and 13:40 as well as we know them.",
    );
    expect(spansTold(endingAt([20, 5], [1, 2]), endingAt([40, 0], [0, 3]))).toMatch(
      / In the variant work ends between 13:01 and 13:02 as if we knew every figure, between 13:00 and 13:03 as well as we know them\.$/,
    );
  });

  it("says nothing where a line has no value", () => {
    expect(spansTold(endingAt([]), endingAt([]))).toBe("");
  });
});
