import { expect, it } from "vitest";
import { renderReport } from "../../../viz/report/index.ts";
import { inventedOptionsResult } from "../../support/invented.ts";
import { syntheticFactorial } from "../../support/syntheticStudy.ts";

it("the report of a line-up answers first, then tells price, worth and payback of each offer", () => {
  const page = renderReport(syntheticFactorial(), { offers: inventedOptionsResult() });
  const told = page.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
  expect(told).toMatch(/Answer Buy the machine\. The best is &quot;a machine&quot;\./);
  expect(told).toMatch(/What to do next Ask for a second offer\. Cautions /);
  expect(told).toMatch(
    /Plan Price Payback Benefit a year .*? a machine best 12 000 EUR 2\.0 years 1\.0 to never 5 000 EUR/,
  );
  expect(told).toMatch(
    /Interest 6 % a year, 250 days a year, money in EUR\. Cash of a day: revenue less pay\. Means over/,
  );
  expect(told).toMatch(/a machine 12 000 10 300 20 17 to 23 /);
  expect(told).toMatch(/a machine 5 000 4 000 to 6 000 5 000 4 000 to 6 000 2\.0 1\.0 to never 2\.0 1\.0 to never/);
});
