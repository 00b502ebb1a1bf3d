import { expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { serverDocument } from "../../../viz/index.ts";
import { figuresFor } from "../../../viz/report/figures.ts";
import { daySection, experimentation, limitSection, resultsSection } from "../../../viz/report/reportSections.ts";
import { responseCharts } from "../../../viz/report/studyCharts.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticFactorial, syntheticSingleDay, syntheticStudy } from "../../support/syntheticStudy.ts";

// (1 - confidence) x comparisons: expected number of false alarms, any statistics text (linearity of expectation).
test("what several comparisons do to the word shown is stated: 11 at 95 % give 0.55 by chance", () => {
  expect(experimentation(syntheticFactorial()).markup).toContain(
    "chance alone would show about 0.55 differences for each result in 11 comparisons",
  );
});

test("what each variant changes in the plan is listed as the study wrote it", () => {
  const study = syntheticStudy();
  study.variants[1]!.set = { "line.evisceration.positions": 4 };
  expect(experimentation(study).markup).toContain("<code>line.evisceration.positions</code> = <code>4</code>");
});

test("a plan without limits says that it watches none", () => {
  const study = syntheticSingleDay();
  study.variants[0]!.day.limits = [];
  expect(limitSection(study, figuresFor(serverDocument())).markup).toContain("The plan watches no time limit.");
});

test("figures are numbered on through the page", () => {
  const figures = figuresFor(serverDocument());
  const markup = daySection(syntheticStudy(), figures).markup + limitSection(syntheticStudy(), figures).markup;
  const numbers = [...markup.matchAll(/Figure (\d+)\./g)].map((match) => Number(match[1]));
  expect(numbers.length).toBeGreaterThan(9);
  expect(numbers).toEqual(numbers.map((_, index) => index + 1));
});

test("pictures of differences stay off paper where a table lists every one of them, and only there", () => {
  const offPaper = (study: StudyResults) =>
    resultsSection(study, figuresFor(serverDocument())).markup.match(/<div class="screen">/g)?.length ?? 0;
  expect(offPaper(syntheticStudy())).toBe(0);
  const factorial = syntheticFactorial();
  const differences = responseCharts(factorial).filter(({ name }) => name.startsWith("difference-"));
  expect(differences.length).toBeGreaterThan(0);
  expect(offPaper(factorial)).toBe(differences.length);
});

test("a long list of what the variants change folds open", () => {
  const study = syntheticStudy();
  const [base, other] = study.variants;
  const many = Array.from({ length: 21 }, () => ({ ...other!, set: { "line.evisceration.positions": 4 } }));
  const markup = experimentation({ ...study, variants: [base!, ...many] }).markup;
  expect(markup).toContain("<summary>What each of the 21 variants changes in the plan</summary>");
  expect(experimentation(study).markup).not.toContain("<summary>");
});

test("a screening answers by its factors; the points it was run at fold open", () => {
  const markup = resultsSection(screeningResults(), figuresFor(serverDocument())).markup;
  expect(markup).toMatch(/<details><summary>Every result of all \d+ variants<\/summary>/);
  expect(resultsSection(syntheticStudy(), figuresFor(serverDocument())).markup).not.toContain("Every result of all");
});
