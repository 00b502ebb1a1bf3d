import { foundWords } from "./foundWords.ts";
import { unitsPattern } from "./quantityPattern.ts";
import { type Reading, read, refused } from "./reading.ts";
import type { UnitFamily, UnitScale } from "./unitFamily.ts";

/** Money per quantity, such as a price per kilogram; `amount` is per SI unit of the family. */
export interface MoneyPer {
  amount: number;
  currency: string;
}

/** Whether the amount may be less than nothing: what is taken away at a cost has a negative price. */
export type Sign = "of 0 or more" | "of either sign";

const MONEY_PER = /^(-?(?:\d+\.?\d*|\.\d+))\s*([A-Z]{3})\s*\/\s*(\S.*)$/u;

/** Accepts what `readMoneyPer` accepts. */
export function moneyPerPattern(family: UnitFamily, sign: Sign): string {
  const minus = sign === "of 0 or more" ? "" : "-?";
  return `^${minus}(\\d+\\.?\\d*|\\.\\d+)\\s*[A-Z]{3}\\s*\\/\\s*(${unitsPattern(family)})$`;
}

/** Reads "0.002 EUR/L" for volumes, "0.25 EUR/kWh" for energies, "6.5 EUR/kg" for masses. */
export function readMoneyPer(family: UnitFamily, sign: Sign, written: unknown): Reading<MoneyPer> {
  const parts = typeof written === "string" ? MONEY_PER.exec(written) : null;
  const scale = parts === null ? undefined : scaleOf(family, parts[3] as string);
  if (parts === null || scale === undefined || (sign === "of 0 or more" && Number(parts[1]) < 0)) {
    const units = Object.keys(family.units)
      .map((unit) => `/${unit}`)
      .join(", ");
    return refused(
      `${foundWords(written)} is no price of ${family.name}`,
      `a number ${sign}, a three-letter currency code in capitals, then one of ${units}`,
      `write for example "${moneyPerExample(family)}"`,
    );
  }
  return read({ amount: (Number(parts[1]) * scale[1]) / scale[0] + 0, currency: parts[2] as string });
}

/** A price as it should be written: by the largest unit that people print. */
export function moneyPerExample(family: UnitFamily): string {
  return `0.5 EUR/${family.printed.includes(family.si) ? family.si : family.printed.at(-1)}`;
}

function scaleOf(family: UnitFamily, unit: string): UnitScale | undefined {
  return Object.hasOwn(family.units, unit) ? family.units[unit] : undefined;
}
