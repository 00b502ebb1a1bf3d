import type { UnitFamily } from "./unitFamily.ts";

/** A regular expression (ECMA 262, as JSON Schema wants it) that accepts what `readQuantity` accepts, range apart. */
export function quantityPattern(family: UnitFamily): string {
  const sign = family.least < 0 ? "-?" : "";
  return `^${sign}(\\d+\\.?\\d*|\\.\\d+)([eE][+\\-]?\\d+)?\\s*(${unitsPattern(family)})$`;
}

/** Matches any one unit of the family. */
export function unitsPattern(family: UnitFamily): string {
  return Object.keys(family.units)
    .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\/]/gu, "\\$&"))
    .join("|");
}
