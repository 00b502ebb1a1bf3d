import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { connectionSheet, equipmentList } from "../../../sim/questions/dossier/index.ts";
import { layoutVerdict, renderLayoutReport } from "../../../viz/index.ts";
import { FERNCOTE } from "../../support/layoutCases.ts";

const { plan, layout, days } = FERNCOTE();
const found = {
  layout,
  equipment: equipmentList(plan, layout, days),
  connections: connectionSheet(plan, layout, days),
};
const { document } = parseHTML(renderLayoutReport(found));
const text = document.querySelector("main")!.textContent!;
const rowsOf = (heading: string) => {
  const title = [...document.querySelectorAll("h3")].find(({ textContent }) => textContent === heading)!;
  return [...title.nextElementSibling!.querySelectorAll("tbody tr")].map((row) =>
    [...row.children].map((cell) => cell.textContent),
  );
};

it("answers with floor and connections, and says what the drawing is not", () => {
  expect(layoutVerdict(found)).toContain(
    `${Math.round(layout.building.width)} x ${Math.round(layout.building.depth)} m`,
  );
  expect(document.querySelector(".verdict")!.textContent).toBe(layoutVerdict(found));
  expect(text).toContain("not for building");
  expect(document.querySelector("#cautions")).not.toBeNull();
});

it("has a row for everything to buy, every connection with formula and source, every figure with its key", () => {
  expect(rowsOf("Equipment").map(([name]) => name)).toEqual(found.equipment.map(({ name }) => name));
  for (const { service, rows } of found.connections.parts) {
    const shown = rowsOf(`${service.charAt(0).toUpperCase()}${service.slice(1)}`);
    expect(shown.map(([what, , formula, source]) => [what, formula, source])).toEqual(
      rows.map(({ what, formula, source }) => [what, formula, source]),
    );
  }
  expect(rowsOf("By-products").map(([name]) => name)).toEqual(found.connections.byProducts.map(({ name }) => name));
  expect(rowsOf("Figures of building and services").map(([key]) => key)).toEqual(layout.figures.map(({ key }) => key));
});
