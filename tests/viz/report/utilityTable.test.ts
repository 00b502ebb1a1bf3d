import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { utilityTable } from "../../../viz/report/utilityTable.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const rowsOf = (markup: string) =>
  [...parseHTML(`<main>${markup}</main>`).document.querySelectorAll("tbody tr")].map(({ textContent }) =>
    (textContent ?? "").replaceAll("\u202f", "").replaceAll("\u00a0", " "),
  );
const [variant] = exampleDay("parts/utilities", "none").variants;

it("lists who takes what, how hot, and the most at once", () => {
  const markup = utilityTable(variant!)!.markup.replaceAll("\u202f", "").replaceAll("\u00a0", " ");
  expect(rowsOf(markup)).toContain("cleaningwhile cleaning1000 L60 °C58.1 kWh––2000 L/h, 116 kW heat");
  expect(markup).toContain("Most hot water at once: 2000 L/h, 116 kW of heat");
  expect(markup).toContain("4.2 kg of oxygen demand (COD)");
});

it("holds water and energy for a tonne against chickens by analogy, and says so", () => {
  const markup = utilityTable(variant!)!.markup.replaceAll("\u202f", "").replaceAll("\u00a0", " ");
  expect(markup).toContain(
    "No published value for rabbits was found; plants for chickens are shown as an analogy only",
  );
  expect(rowsOf(markup).at(-2)).toMatch(/^fresh water2516 L1450 to 6300 Linside this range$/u);
  expect(rowsOf(markup).at(-1)).toMatch(/below this range: check which consumers the plan leaves out/u);
  const sheet = { ...variant!.utilitySheet!, kilowattHoursPerTonne: 600 };
  expect(rowsOf(utilityTable({ ...variant!, utilitySheet: sheet })!.markup).at(-1)).toMatch(/above this range/u);
});

it("shows what a cold room takes out, and says when no consumers are named", () => {
  const [chiller] = exampleDay("parts/chiller", "none").variants;
  const markup = utilityTable(chiller!)!.markup;
  expect(markup).toContain("Cold rooms: heat to take out");
  expect(markup).toContain("The plan names no consumers besides the stages");
  const { utilitySheet: _, ...older } = chiller!;
  expect(utilityTable(older)).toBeNull();
});
