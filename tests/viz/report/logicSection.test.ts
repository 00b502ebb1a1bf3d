import { expect, test } from "vitest";
import { renderReport } from "../../../viz/index.ts";
import { escapeHtml } from "../../../viz/report/html.ts";
import { MODEL_LIMITS, MODEL_LOGIC } from "../../../viz/report/logicSection.ts";
import { syntheticSingleDay } from "../../support/syntheticStudy.ts";

test("every line of the model's logic and limits stands in every report, a single day's too", () => {
  const page = renderReport(syntheticSingleDay());
  for (const line of [...MODEL_LOGIC, ...MODEL_LIMITS]) expect(page).toContain(escapeHtml(line));
});
