import { decimalsFor, formatNumber, timeUnitFor } from "../frame/index.ts";

/** A span of time in the unit that suits it, three digits: "10 s", "15 min", "2.17 h". */
export function spanWords(seconds: number): string {
  if (!Number.isFinite(seconds)) return formatNumber(seconds, 0);
  const unit = timeUnitFor(seconds);
  const value = seconds / unit.seconds;
  const decimals = Number.isInteger(value) ? 0 : Math.max(0, Math.min(2, decimalsFor(Math.abs(value) / 10)));
  return `${formatNumber(value, decimals)} ${unit.unit}`;
}
