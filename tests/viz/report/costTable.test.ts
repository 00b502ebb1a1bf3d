import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { costTable } from "../../../viz/report/costTable.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const [variant] = exampleDay("parts/money", "none").variants;
/** No-break spaces as spaces. */
const plain = (text: string) => text.replaceAll("\u00a0", " ");
const cells = (markup: string) =>
  [...parseHTML(`<main>${markup}</main>`).document.querySelectorAll("tbody tr")].map((row) =>
    [...row.querySelectorAll("th, td")].map(({ textContent }) => plain(textContent ?? "")),
  );

it("shows cost and margin without and with what the plant costs", () => {
  const { margin, fullMargin, plant } = variant!.costSheet!;
  const rows = cells(costTable(variant!)!.markup);
  expect(rows.at(-1)).toEqual([
    "margin of the day",
    `${formatDecimals(margin!, 0)} EUR`,
    `${formatDecimals(fullMargin!, 0)} EUR`,
  ]);
  expect(rows.at(-2)![0]).toBe("cost per kg of carcass, animals not included");
  expect(rows).toContainEqual(["building: price spread evenly over its life, no interest", "40 EUR"]);
  expect(rows).toContainEqual(["overhead", `${plant!.overhead.toFixed(0)} EUR`]);
  expect(plain(costTable(variant!)!.markup)).toContain("The bank takes 89 EUR a working day");
});

it("warns of a margin without them, and is not there without money", () => {
  const sheet = { ...variant!.costSheet!, plant: null, fullMargin: null, fullCostPerKg: null, loanPayment: null };
  const markup = costTable({ ...variant!, costSheet: sheet })!.markup;
  expect(markup).toContain("Without them the margin is not what a plant earns.");
  expect(cells(markup).at(-1)!.at(-1)).toBe("not counted");
  expect(costTable({ ...variant!, costSheet: null })).toBeNull();
});
