import { formatNumber } from "./formatNumber.ts";
import type { UnitFamily, UnitScale } from "./unitFamily.ts";

/**
 * An SI number as people read it, in the largest of the family's printed units that leaves 1 or more: 0.35 kg is
 * "350 g". Rounded to `significantDigits` (3 unless said). Infinity is "no limit"; NaN throws RangeError.
 */
export function formatQuantity(family: UnitFamily, si: number, significantDigits = 3): string {
  if (si === Number.POSITIVE_INFINITY) return "no limit";
  const symbol = family.printed.findLast((unit) => Math.abs(inUnit(family, si, unit)) >= 1) ?? smallest(family, si);
  return `${formatNumber(inUnit(family, si, symbol), significantDigits)} ${symbol}`;
}

/** The SI number with its SI unit, every digit kept: `readQuantity` gives the same double back. */
export function writeQuantity(family: UnitFamily, si: number): string {
  return `${si} ${family.si}`;
}

function inUnit(family: UnitFamily, si: number, symbol: string): number {
  const scale = family.units[symbol] as UnitScale;
  return (si * scale[1]) / scale[0];
}

/** Nothing at all is "0 kg", not "0 g". */
function smallest(family: UnitFamily, si: number): string {
  const first = family.printed[0] as string;
  return si === 0 && family.printed.includes(family.si) ? family.si : first;
}
