import { expect, test } from "vitest";
import { type MassColumns, massChart } from "../../../viz/index.ts";
import { picture, testContext, textsOf } from "../../support/drawing.ts";

const COLUMNS: MassColumns = {
  title: "Where the live weight goes",
  caption: "The widest band is the carcass",
  subtitle: "One day",
  description: "56 % carcass.",
  liveKilograms: 10_000,
  liveText: "10 000 kg",
  flows: [
    { name: "carcass", kilograms: 5600, text: "5 600 kg, 56 %", kind: "carcass" },
    { name: "viscera", kilograms: 2500, text: "2 500 kg, 25 %", kind: "by-product" },
    { name: "skins", kilograms: 1500, text: "1 500 kg, 15 %", kind: "by-product" },
    { name: "blood", kilograms: 380, text: "380 kg, 3.8 %", kind: "by-product" },
    { name: "condemned", kilograms: 20, text: "20 kg, 0.2 %", kind: "lost" },
    { name: "nothing", kilograms: 0, text: "0 kg", kind: "lost" },
  ],
};

test("bands are as wide as their mass, and what has none is left out", async () => {
  const svg = massChart(COLUMNS, testContext());
  await expect(picture(svg)).toMatchFileSnapshot("../../pictures/mass.svg");
  const widths = [...svg.querySelectorAll("[data-value] path")].map((band) =>
    Number(band.getAttribute("stroke-width")),
  );
  expect(widths).toHaveLength(5);
  expect(widths[0]! / widths[2]!).toBeCloseTo(5600 / 1500, 1);
  expect(textsOf(svg)).not.toContain("nothing");
});

test("a day without live weight says so", () => {
  expect(textsOf(massChart({ ...COLUMNS, liveKilograms: 0 }, testContext()))[1]).toMatch(/^No live weight/);
});
