import { expect, test } from "vitest";
import { answer } from "../../../viz/words/index.ts";
import { syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

test("the answer gives today's plan first, then each variant, best first, each figure with its interval", () => {
  expect(answer(syntheticStudy())).toEqual([
    "Throughput while hanging, today's plan (“As it is”): 589 heads/h (586 to 591 at 95 %, 20 simulated days).",
    "“One more at evisceration”: 36.3 heads/h more than today's plan (35.0 to 37.5).",
    "“Twelve more places before evisceration”: no difference from today's plan shown (less than 2.1 heads/h).",
    "“Lorries 20 minutes later, so that crates do not wait so long”: 4.2 heads/h less than today's plan (2.9 to 5.5).",
    "Compared on the same days; ranges are at 95 %.",
  ]);
});

test("many variants are counted, and only the two furthest in the wanted direction are told", () => {
  const sentences = answer({ ...syntheticFactorial(), levelSteps: null });
  expect(sentences).toHaveLength(5);
  expect(sentences[1]).toBe("All 11 variants differ from today's plan.");
  expect(sentences[2]).toContain("“32 places, 4.8 s”");
});

test("variants of which none is shown are not ranked", () => {
  const study = { ...syntheticFactorial(), levelSteps: null };
  for (const variant of study.variants.slice(1)) variant.differences!.throughput!.shown = false;
  expect(answer(study).slice(1)).toEqual([
    "None of the 11 variants is shown to differ from today's plan.",
    "Compared on the same days; ranges are at 95 %.",
  ]);
});

test("a day that was cut off or got stuck is warned of beside the figures", () => {
  const study = syntheticStudy();
  study.variants[0]!.day.status = "ceiling";
  study.variants[1]!.day.status = "stuck";
  study.variants[1]!.day.stuckAt = ["Evisceration"];
  const sentences = answer(study).slice(-2);
  expect(sentences[0]).toContain("got stuck, with heads left at Evisceration");
  expect(sentences[1]).toContain("“As it is” was cut off");
});

test("a study without responses says that there is no answer", () => {
  expect(answer({ ...syntheticStudy(), responses: [] })).toEqual([
    "The study asks for no result, so there is no answer to give.",
  ]);
});

test("a study of factors is answered by its best variant and by what each step of a factor did", () => {
  const study = syntheticFactorial();
  study.variants.forEach((variant, index) => {
    variant.againstBest = {
      throughput: { gap: index === 3 ? 5 : -index - 5, low: 0, high: 9, mayBeBest: index === 3 },
    };
  });
  const [base, best, steps, ...more] = answer(study);
  expect(base).toMatch(/^Throughput while hanging, today's plan/);
  expect(best).toMatch(/^Best of 12 is “32 places, 4.8 s”, .* more than today's plan \(.*\); all others are worse/);
  expect(steps).toMatch(/^Skinning cycle time: .* instead of/);
  expect(more).toHaveLength(2);
  expect(more[0]).toMatch(/^Places before skinning: .* instead of/);
  expect(more[1]).toMatch(
    /^Each figure is an average over the other factors; ranges are at 95 %, sure even though \d+ steps were compared\.$/,
  );
});
