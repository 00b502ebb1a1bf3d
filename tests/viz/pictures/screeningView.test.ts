import { expect, test } from "vitest";
import { screeningView } from "../../../viz/index.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("a screening is drawn factor by factor, in the unit of the response's differences", () => {
  const results = screeningResults();
  const view = screeningView(results, results.responses[0]!)!;
  expect(view.points[0]).toEqual({ name: "time per head", muStar: 46, sigma: 34, halfWidth: 2 });
  expect(view.points).toHaveLength(3);
  expect(view.description).toContain("matters most");
  expect(screeningView(syntheticStudy(), results.responses[0]!)).toBeNull();
});
