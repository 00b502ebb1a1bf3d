import type { ByProduct, Capital, Setting, Utilities } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { type Anatomy, toByProducts } from "./toByProducts.ts";
import { toUtilities } from "./toUtilities.ts";

type FileStage = PlanFile["line"][number];

interface Upkeep {
  byProducts: ByProduct[];
  utilities: Utilities;
  capital: Capital | null;
  settings: Setting[];
}

/** What stages and stations on chains use, take off and cost. */
export function toUpkeep(
  file: Pick<FileStage, "takesOff" | "water" | "energyPerHead" | "power" | "capital" | "settings">,
  anatomy: Anatomy,
): Upkeep {
  const { capital } = file;
  return {
    byProducts: toByProducts(file.takesOff, anatomy),
    utilities: toUtilities(file),
    capital: capital && { price: capital.price.amount, lifeYears: capital.life, daysPerYear: capital.daysPerYear },
    settings: file.settings,
  };
}
