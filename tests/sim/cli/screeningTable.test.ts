import { expect, it } from "vitest";
import { screeningTable } from "../../../sim/cli/screeningTable.ts";
import { studySummary } from "../../../sim/cli/studySummary.ts";
import { screeningResults } from "../../support/screeningResults.ts";

it("lists the factors of a screening, the one that matters most first, in place of its variants", () => {
  const results = screeningResults();
  const lines = screeningTable(results, results.responses[0]!);
  expect(lines[2]).toMatch(/^ {2}time per head +46 heads\/h +2 heads\/h +\u221246 heads\/h +34 heads\/h$/);
  expect(lines[3]).toMatch(/^ {2}walking/);
  expect(lines[5]).toMatch(/^ {2}an unused factor +no value/);
  const text = studySummary(results).join("\n");
  expect(text).toContain(lines.join("\n"));
  expect(text).not.toContain("than today's plan");
});
