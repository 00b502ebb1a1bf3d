import { formatDecimals } from "../../sim/text/units/index.ts";

/**
 * "2.4 % (113 of 4 730 heads)". Never rounded to 0 % or 100 % unless it is none or all: "none of 4 730 heads",
 * "under 0.01 % (1 of 1 000 000 heads)".
 */
export function shareWords(part: number, whole: number, things: string): string {
  if (whole === 0) return `no ${things}`;
  if (part === 0) return `none of ${formatDecimals(whole, 0)} ${things}`;
  return `${percentWords(part, whole)} (${formatDecimals(part, 0)} of ${formatDecimals(whole, 0)} ${things})`;
}

function percentWords(part: number, whole: number): string {
  const percent = (100 * part) / whole;
  if (part === whole) return "100 %";
  if (percent < 0.005) return "under 0.01 %";
  if (percent > 99.995) return "over 99.99 %";
  const decimals = percent < 0.1 || percent > 99.5 ? 2 : percent < 10 ? 1 : 0;
  return `${formatDecimals(percent, decimals)} %`;
}
