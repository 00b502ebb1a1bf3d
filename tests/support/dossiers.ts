import type { StudyResults } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { type Dossier, dossierOf, type SizedKind, sizeKinds, trialStudy } from "../../sim/questions/dossier/index.ts";
import { NO_FILES } from "./demands.ts";

/** A demand with all of its business in it; invented. Few steps and heads, so that a dossier is quick. */
export function businessDemand(changes: Record<string, unknown> = {}): Record<string, unknown> {
  const leftOut = ["pre-loosening", "abdomen opening", "final trim", "chiller loading"];
  return {
    name: "Test dossier (invented)",
    markets: [
      {
        name: "shops",
        carcassMass: "1.6 t",
        season: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1.6],
        growth: "6 %",
        price: "7 EUR/kg",
      },
      { name: "kitchens", carcasses: 700, price: "7.5 EUR/kg" },
    ],
    years: { weeks: 48, looked: 6, sizedFor: 2, spare: "5 %" },
    week: { days: 5, peak: 1.1 },
    day: {
      shifts: [{ name: "day", from: "06:00", to: "12:00" }],
      breaks: [{ name: "break", at: "09:00", length: "20 min" }],
    },
    steps: Object.fromEntries(leftOut.map((name) => [name, { leftOut: true }])),
    compare: { kinds: ["full line by hand", "compact plant"] },
    pay: "18 EUR/h",
    money: {
      currency: "EUR",
      water: "2 EUR/m3",
      wasteWater: "3 EUR/m3",
      energy: "0.25 EUR/kWh",
      overtimeFactor: 1.5,
      livePrice: "2 EUR/kg",
      plantCosts: { daysPerYear: 240, packaging: "0.1 EUR", overheadPerYear: "60000 EUR" },
      prices: { skins: "0.1 EUR/kg" },
    },
    capital: {
      stations: Object.fromEntries(
        [
          ...["unloading", "feeding", "washing", "restacking", "hanging", "stunning", "sticking", "hind-leg cutting"],
          ...["skinning", "four-leg cutting", "evisceration", "inspection", "trim"],
          ...["bleeding", "chilling"],
        ].map((step, at) => [step, at < 13 ? `${3000 + 1000 * at} EUR` : "100 EUR"]),
      ),
      crate: "20 EUR",
      vessel: "2000 EUR",
      floor: "900 EUR/m2",
      power: "300 EUR/kW",
      other: { planning: "50000 EUR" },
      life: 4,
      buildingLife: 20,
      interest: "5 %",
      maintenance: "3 %",
      loan: { share: "50 %", interest: "4 %", years: 5 },
    },
    ...changes,
  };
}

/** The kinds of a demand, their simulated days, and the dossier of both. */
export async function dossierFor(
  demand: Record<string, unknown>,
  days = 2,
): Promise<{ kinds: SizedKind[]; results: StudyResults; dossier: Dossier }> {
  const { kinds, faults } = sizeKinds(demand, NO_FILES);
  if (kinds === null) throw new Error(faults.map(({ path, found }) => `${path} ${found}`).join("\n"));
  const study = trialStudy(kinds, NO_FILES, "1", days);
  const results = await runStudy(study, { gambrel: "test", command: "", traces: "all" });
  return { kinds, results, dossier: dossierOf(kinds, results) };
}
