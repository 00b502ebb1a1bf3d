import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { steps } from "../line/index.ts";
import { perTonne } from "./carcassKg.ts";
import { codKilograms, type ServiceTotals, serviceTotals, serviceUses } from "./plantServices.ts";
import type { Response } from "./response.ts";
import { row } from "./row.ts";
import { energyPerTonne } from "./utilitySheet.ts";
import { plantUse, usesEnergy, usesWater } from "./utilityUse.ts";

const LITRES_PER_M3 = 1000;
const LESS = { better: "less" } as const;

/** Water and energy for a tonne of carcass; hot water, compressed air and the load of the drains where the plan names consumers. */
export function serviceResponses(plan: Plan): Response[] {
  const all = steps(plan);
  const { utilities } = plan;
  const served = utilities !== null && utilities.consumers.length > 0;
  const wet = all.some(usesWater) || (utilities?.consumers.some(drawsWater) ?? false);
  return [
    ...(wet ? [waterResponse(plan)] : []),
    ...(served || all.some(usesEnergy) ? [energyResponse(plan)] : []),
    ...(served ? services(plan) : []),
    ...(wet && utilities?.codPerLitre != null ? drains(plan) : []),
  ];
}

export function drawsWater(consumer: { waterPerHead: number; waterPerHour: number; waterPerDay: number }): boolean {
  return consumer.waterPerHead > 0 || consumer.waterPerHour > 0 || consumer.waterPerDay > 0;
}

function waterResponse(plan: Plan): Response {
  const of = (day: DayRecord) => perTonne(plantUse(day, plan).freshLitres / LITRES_PER_M3, day);
  const meaning =
    "No published value for rabbits. Waste water of plants for chickens, by analogy: 1.45 (from memory) to 6.30 m3 for a tonne of carcass, yearly mean (Decision (EU) 2023/2749; French order of 31 March 2025, Art. 5.5).";
  return { ...row("waterPerTonne", "Plant: fresh water per tonne of carcass", "m3/t", of, LESS), meaning };
}

function energyResponse(plan: Plan): Response {
  const of = (day: DayRecord) => energyPerTonne(plantUse(day, plan), day);
  const meaning =
    "Electricity and fuel. No published value for rabbits. Plants for chickens, by analogy: 170 to 490 kWh for a tonne of carcass, yearly mean (Decision (EU) 2023/2749, from memory).";
  return { ...row("energyPerTonne", "Plant: electricity and fuel per tonne of carcass", "kWh/t", of, LESS), meaning };
}

function services(plan: Plan): Response[] {
  const total =
    (of: (totals: ServiceTotals) => number): Response["of"] =>
    (day) =>
      of(serviceTotals(serviceUses(day, plan)));
  const peak =
    "The most that all consumers take at once, while the line works or while it is cleaned; each at its average over that time.";
  const rows: [Response, string?][] = [
    [
      row(
        "hotWater",
        "Plant: hot water of the consumers",
        "L",
        total(({ hotLitres }) => hotLitres),
        LESS,
      ),
    ],
    [
      row(
        "hotWaterPeak",
        "Plant: hot water, most at once",
        "L/h",
        total(({ hotLitresPerHour }) => hotLitresPerHour),
        LESS,
      ),
      peak,
    ],
    [
      row(
        "heat",
        "Plant: heat in hot water",
        "kWh",
        total(({ heatKilowattHours }) => heatKilowattHours),
        LESS,
      ),
    ],
    [
      row(
        "heatPeak",
        "Plant: heat in hot water, most at once",
        "kW",
        total(({ heatKilowatts }) => heatKilowatts),
        LESS,
      ),
      peak,
    ],
    [row("fuel", "Plant: fuel for hot water", "kWh", (day) => plantUse(day, plan).fuelKilowattHours, LESS)],
    [
      row(
        "compressedAir",
        "Plant: compressed air, as free air",
        "m3",
        total(({ airCubicMetres }) => airCubicMetres),
        LESS,
      ),
    ],
  ];
  return rows.map(([response, meaning]) => (meaning === undefined ? response : { ...response, meaning }));
}

function drains(plan: Plan): Response[] {
  const load: Response["of"] = (day) => codKilograms(plantUse(day, plan).freshLitres, plan);
  const meaning =
    "Chemical oxygen demand of the waste water after treatment at the site. No figure for rabbits was found.";
  return [
    { ...row("codLoad", "Plant: oxygen demand (COD) of the waste water", "kg", load, LESS), meaning },
    {
      ...row(
        "codPerTonne",
        "Plant: oxygen demand (COD) per tonne of carcass",
        "kg/t",
        (day) => perTonne(load(day), day),
        LESS,
      ),
      meaning,
    },
  ];
}
