import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { plantSection } from "../../../viz/report/plantSection.ts";
import { exampleDay } from "../../support/exampleDay.ts";

it("stands in the report of a plan that takes something off, and in no other", () => {
  const { document } = parseHTML(`<main>${plantSection(exampleDay("parts/presentation", "none"))!.markup}</main>`);
  expect([...document.querySelectorAll("h2, h3")].map(({ textContent }) => textContent)).toEqual([
    "What goes through the plant",
    "Mass balance",
    "Costs and margin",
  ]);
  expect(plantSection(exampleDay("parts/gate", "none"))).toBeNull();
});
