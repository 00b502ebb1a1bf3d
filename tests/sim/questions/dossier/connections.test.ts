import { describe, expect, it } from "vitest";
import { SITE_FIGURES } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { utilitySheet } from "../../../../sim/day/observations/index.ts";
import { servicedPlan } from "../../../../sim/questions/dossier/assumedServices.ts";
import { busiest, dayProfile } from "../../../../sim/questions/dossier/dayProfile.ts";
import { connectionSheet, plantLayout, type Service } from "../../../../sim/questions/dossier/index.ts";
import { FERNCOTE, type LayoutCase, USUAL } from "../../../support/layoutCases.ts";

const OWN = FERNCOTE();
const ASSUMED = USUAL();
const sheetOf = ({ plan, layout, days }: LayoutCase) => connectionSheet(plan, layout, days);
const [own, assumed] = [sheetOf(OWN), sheetOf(ASSUMED)];

function rowOf(sheet: typeof own, service: Service, what: string) {
  const rows = sheet.parts.find((part) => part.service === service)!.rows;
  const found = rows.find((row) => row.what.startsWith(what));
  if (found === undefined) throw new Error(`no "${what}" among ${rows.map((row) => row.what).join("; ")}`);
  return found;
}
const figureOf = (...where: Parameters<typeof rowOf>) => rowOf(...where).value;
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);
const mean = (values: readonly number[]) => sum(values) / values.length;

describe("the profile of a day", () => {
  it.each([OWN, ASSUMED])("adds up to what the day used: $name", ({ plan, layout, days }) => {
    const served = servicedPlan(plan, layout).plan;
    for (const day of days) {
      const sheet = utilitySheet(day, served)!;
      const { kilowatts, coldLitres, hotLitres } = dayProfile(served, day);
      expect(sum(kilowatts) / 60 / sheet.total.kilowattHours).toBeCloseTo(1, 9);
      expect((sum(coldLitres) + sum(hotLitres)) / sheet.total.freshLitres).toBeCloseTo(1, 9);
      expect(sum(hotLitres) / sheet.services.hotLitres).toBeCloseTo(1, 9);
    }
  });

  it("has water by the head where heads are worked on, and none of it in the night", () => {
    const { plan, days } = OWN;
    const bare = { ...plan, utilities: null };
    const { coldLitres } = dayProfile(bare, days[0]!);
    const first = Math.floor(days[0]!.stages.find(({ name }) => name === "evisceration")!.ownTime!.fromSeconds / 60);
    expect(sum(coldLitres.subarray(0, Math.floor(plan.day.shifts[0]!.fromSeconds / 60)))).toBeLessThan(50);
    expect(coldLitres[first + 60]!).toBeGreaterThan(10);
  });

  it("needs traces", () => {
    const bare = runDay(compileLine(OWN.plan), { seed: "layout", replication: 0 });
    expect(() => dayProfile(OWN.plan, bare)).toThrow(RangeError);
  });

  it("has its busiest minutes where the mean over them is largest", () => {
    const values = Float64Array.from([0, 1, 5, 1, 4, 4, 0]);
    expect(busiest(values, 1)).toEqual({ mean: 5, minute: 2 });
    expect(busiest(values, 2)).toEqual({ mean: 4, minute: 4 });
    expect(busiest(values, 3)).toEqual({ mean: 10 / 3, minute: 2 });
    expect(busiest(values, 100).mean).toBeCloseTo(15 / 7, 12);
  });
});

describe("the connection sheet, beside values from outside", () => {
  it("1,000 L of water from 10 to 60 and 82 °C take 58.08 and 83.69 kWh (property library, 3 bar), within 0.5 %", () => {
    // Ferncote: 6 m³ at 60 °C; tools 180 L/h at 82 °C; hands 200 L/h at 40 °C.
    const hot = (what: string) => 1000 * figureOf(own, "hot water", what);
    const heat = (hot("cleaning, warm") * 58.084 + hot("tool sterilisers") * 83.693 + hot("hand wash") * 34.86) / 1000;
    expect(figureOf(own, "hot water", "heat a day") / heat).toBeCloseTo(1, 2);
    expect(hot("cleaning, warm")).toBeCloseTo(6000, 6);
  });

  it("ammonia from -8 to 35 °C has 5.1707 without losses (property library), 65 % of it are 3.361", () => {
    // Property equations differ by up to 1e-3.
    expect(Math.abs(figureOf(own, "refrigeration", "chilling: coefficient") / (0.65 * 5.1707) - 1)).toBeLessThan(1e-3);
  });

  it("refrigeration takes out what comes in: carcasses + doors + people + walls + fans and lights", () => {
    const carcasses = figureOf(own, "refrigeration", "chilling: heat of the carcasses");
    const other = figureOf(own, "refrigeration", "chilling: doors");
    expect(figureOf(own, "refrigeration", "chilling: all heat")).toBeCloseTo(carcasses + other, 9);
    // Fans 4.5 and lights 0.6 kW, walls 2.5 kW; half a person at 0 °C: 272 W / 2 (ASHRAE Refrigeration, from memory).
    expect(other - 4.5 - 0.6 - 2.5 - 0.136).toBeCloseTo(
      OWN.plan.line.flatMap((stage) => ("cooling" in stage ? [stage.cooling!.doorKilowatts] : []))[0]!,
      6,
    );
    const joules = mean(OWN.days.map((day) => sum(day.stages.map(({ heatJoules }) => heatJoules))));
    const hours = mean(OWN.days.map((day) => (day.finishSeconds - OWN.plan.day.shifts[0]!.fromSeconds) / 3600));
    expect(carcasses / (joules / 3.6e6 / hours)).toBeCloseTo(1, 2);
  });

  it("compressed air at a ratio of 8 takes 0.079936 kWh/m³ in one ideal stage (textbook), 0.1142 at 70 %", () => {
    expect(figureOf(own, "compressed air", "compressor") / ((40 * 0.079936) / 0.7)).toBeCloseTo(1, 4);
  });

  it("40 CFR 432.12 allows 0.24, 0.12 and 0.40 g for each kg of live weight", () => {
    const live = mean(OWN.days.map(({ masses }) => masses.liveKg));
    expect(figureOf(own, "drains", "what a limit")).toBeCloseTo((0.24 * live) / 1000, 9);
    expect(figureOf(own, "drains", "the same: oil")).toBeCloseTo((0.12 * live) / 1000, 9);
    expect(figureOf(own, "drains", "the same: solids")).toBeCloseTo((0.4 * live) / 1000, 9);
  });

  it("oxygen demand is litres x 3 g/L less the 30 % taken out, as the plan gives it", () => {
    expect(figureOf(own, "drains", "oxygen demand (COD)")).toBeCloseTo(
      figureOf(own, "drains", "waste water a day") * 3 * 0.7,
      9,
    );
  });

  it("a usual plant of the tool's own figures lies inside what is published for chickens, by analogy: 1.45 to 6.30 m³ and 170 to 490 kWh a tonne", () => {
    for (const sheet of [own, assumed]) {
      expect(figureOf(sheet, "cold water", "for a tonne")).toBeGreaterThan(1.45);
      expect(figureOf(sheet, "cold water", "for a tonne")).toBeLessThan(6.3);
      expect(figureOf(sheet, "electricity", "electricity and fuel")).toBeGreaterThan(160);
      expect(figureOf(sheet, "electricity", "electricity and fuel")).toBeLessThan(490);
    }
  });
});

describe("the connection sheet", () => {
  it("says of every figure how it comes about and where from", () => {
    for (const sheet of [own, assumed])
      for (const { rows } of sheet.parts) {
        expect(rows.length).toBeGreaterThan(0);
        for (const row of rows) {
          expect(row.formula, row.what).not.toBe("");
          expect(row.source, row.what).not.toBe("");
          expect(row.value, row.what).toSatisfy((value: number) => Number.isFinite(value) && value >= 0);
          for (const [, key] of row.source.matchAll(/site\.(\w+\.\w+)/g))
            expect(Object.keys(SITE_FIGURES)).toContain(key);
        }
      }
  });

  it("takes the plan's own consumers as they stand, and assumes some only where it names none", () => {
    expect(rowOf(own, "hot water", "tool sterilisers").source).toMatch(/^the plan/);
    expect(rowOf(assumed, "hot water", "tool sterilisers").source).toMatch(/^assumed: site\.water\.tools/);
    expect(own.open[0]).toMatch(/names its own consumers/);
    expect(assumed.open[0]).toMatch(/names no consumers/);
  });

  it("reckons an assumed figure anew when the plan gives it: twice the water for each tool is twice the water for tools", () => {
    const { plan, days } = ASSUMED;
    const site = { given: { "water.tools": (2 * 15) / 3_600_000 }, rooms: {}, categories: {} };
    const doubled = sheetOf({ ...ASSUMED, plan: { ...plan, site }, layout: plantLayout({ ...plan, site }, days) });
    const tools = (sheet: typeof own) => figureOf(sheet, "hot water", "tool sterilisers");
    expect(tools(doubled) / tools(assumed)).toBeCloseTo(2, 9);
  });

  it("has a peak between the mean while the line works and everything connected", () => {
    for (const [sheet, { days }] of [
      [own, OWN],
      [assumed, ASSUMED],
    ] as const) {
      const peak = figureOf(sheet, "electricity", "peak together");
      expect(peak).toBeLessThan(figureOf(sheet, "electricity", "connected"));
      expect(peak).toBeGreaterThan(figureOf(sheet, "electricity", "a day") / 24);
      expect(figureOf(sheet, "electricity", "to ask for") / peak).toBeCloseTo(1.15, 9);
      expect(figureOf(sheet, "cold water", "fresh water, busiest")).toBeGreaterThanOrEqual(
        figureOf(sheet, "cold water", "the same while"),
      );
      expect(sheet.days).toBe(days.length);
    }
  });

  it("airs each room by floor x height x changes", () => {
    const floor = ASSUMED.layout.rooms
      .filter(({ kind }) => kind === "live side")
      .reduce((total, { squareMetres }) => total + squareMetres, 0);
    expect(figureOf(assumed, "ventilation", "live animals")).toBeCloseTo(floor * 4 * 12, 6);
  });
});

describe("by-products", () => {
  const byName = Object.fromEntries(own.byProducts.map((row) => [row.name, row]));

  it("fall under the categories of Regulation (EC) 1069/2009: gut content 2, blood, skins and feet 3, dead on arrival and condemned 2", () => {
    const categories = Object.fromEntries(own.byProducts.map(({ name, category }) => [name, category]));
    expect(categories).toEqual({
      ...{ blood: 3, "hind paws": 3, skins: 3, "fore paws and head": 3, viscera: 2, trim: 3 },
      ...{ "dead on arrival": 2, condemned: 2 },
    });
    expect(byName.viscera!.reason).toMatch(/Art\. 9\(a\)/);
    expect(byName.blood!.reason).toMatch(/Art\. 10\(b\)/);
  });

  it("weigh what the days took off, and need containers for what comes until the next collection, and one more", () => {
    for (const row of own.byProducts) {
      const kilograms = OWN.days.map(({ masses }) => masses.byProductsKg[row.name] ?? masses.outKg[row.name] ?? 0);
      expect(row.kilograms).toBeCloseTo(mean(kilograms), 9);
      expect(row.kilogramsMost).toBe(Math.max(...kilograms));
      expect(row.changes).toBe(Math.ceil(row.kilogramsMost / row.containerKilograms));
      expect(row.containers).toBe(Math.ceil(row.changes / row.collectionsPerDay) + 1);
    }
    // The plan's skin bin is emptied at 500 kg; what has no vessel goes into 500 kg filled to 80 %.
    expect(byName.skins!.containerKilograms).toBe(500);
    expect(byName["hind paws"]!.containerKilograms).toBe(400);
    expect(byName.drip).toBeUndefined();
  });

  it("fall under what the plan says where it says something", () => {
    const site = { given: {}, rooms: {}, categories: { viscera: 3 as const } };
    const sheet = sheetOf({ ...OWN, plan: { ...OWN.plan, site } });
    expect(sheet.byProducts.find(({ name }) => name === "viscera")).toMatchObject({
      category: 3,
      reason: "as the plan says",
    });
  });
});
