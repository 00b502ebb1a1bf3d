import { parseHTML } from "linkedom";
import { expect, it } from "vitest";
import { massTable } from "../../../viz/report/massTable.ts";
import { exampleDay } from "../../support/exampleDay.ts";

const [variant] = exampleDay("parts/presentation", "none").variants;

it("lists kilograms in and out with what is sold in words", () => {
  const { document } = parseHTML(`<main>${massTable(variant!)!.markup}</main>`);
  const rows = [...document.querySelectorAll("tbody tr")].map(({ textContent }) =>
    (textContent ?? "").replaceAll("\u00a0", " "),
  );
  expect(rows).toContain("carcassout: sold as carcass744 kg49.6 %");
  expect(rows).toContain("dripout: lost in the chiller15.2 kg1.0 %");
  expect(rows).toContain("not accounted forroundingunder 1 g0.0 %");
  expect(document.querySelector("p")!.textContent).toBe(
    "Sold: hot carcass with kidneys, without head, paws, liver and heart and lungs. No published definition matches it. Compare its yield only with yields of the same presentation.",
  );
});

it("says when the plan does not tell what is sold, and is not there for older results", () => {
  const silent = { ...variant!, massBalance: { ...variant!.massBalance!, presentation: "" } };
  expect(massTable(silent)!.markup).toContain("does not say what stays on the carcass");
  const { massBalance: _, ...older } = variant!;
  expect(massTable(older)).toBeNull();
});
