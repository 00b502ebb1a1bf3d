import { expect, test } from "vitest";
import { answer } from "../../../viz/words/index.ts";
import { syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

test("the answer gives the base case first, then each variant, best first, each figure with its interval", () => {
  expect(answer(syntheticStudy())).toEqual([
    "Throughput while hanging in today's plan, “As it is”, is 589 heads/h (586 to 591 at 95 %, 20 simulated days).",
    "With “One more at evisceration” it is 36.3 heads/h more than today's plan (+35.0 to +37.5 at 95 %).",
    "With “Twelve more places before evisceration” it is not shown to differ from today's plan (\u22120.1 to +2.1 at 95 %).",
    "With “Lorries 20 minutes later, so that crates do not wait so long” it is 4.2 heads/h less than today's plan (\u22125.5 to \u22122.9 at 95 %).",
  ]);
});

test("many variants are counted, and only the two furthest in the wanted direction are told", () => {
  const sentences = answer({ ...syntheticFactorial(), levelSteps: null });
  expect(sentences).toHaveLength(4);
  expect(sentences[1]).toBe("All 11 variants are shown to differ from today's plan at 95 %.");
  expect(sentences[2]).toContain("“32 places, 4.8 s”");
});

test("variants of which none is shown are not ranked", () => {
  const study = { ...syntheticFactorial(), levelSteps: null };
  for (const variant of study.variants.slice(1)) variant.differences!.throughput!.shown = false;
  expect(answer(study).slice(1)).toEqual(["None of the 11 variants is shown to differ from today's plan at 95 %."]);
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
    "This study asked for no response, so there is no answer to give.",
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
  expect(base).toMatch(/^Throughput while hanging in today's plan/);
  expect(best).toMatch(/^Best of all 12 is “32 places, 4.8 s”, .* more than today's plan \(.*\); all others are shown/);
  expect(steps).toMatch(/^Skinning cycle time: .* instead of/);
  expect(more).toHaveLength(2);
  expect(more[0]).toMatch(/^Places before skinning: .* instead of/);
  expect(more[1]).toMatch(
    /^Each is the average over the other factors; ranges are at 95 %, allowing for \d+ steps compared\.$/,
  );
});
