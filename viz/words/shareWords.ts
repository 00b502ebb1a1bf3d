import { formatNumber } from "../frame/index.ts";

/** "2.4 % (113 of 4 730 heads)"; small shares keep two digits, none is "none of 4 730 heads". */
export function shareWords(part: number, whole: number, things: string): string {
  if (whole === 0) return `no ${things}`;
  if (part === 0) return `none of ${formatNumber(whole, 0)} ${things}`;
  const percent = (100 * part) / whole;
  const decimals = percent >= 10 || percent === 100 ? 0 : percent >= 0.1 ? 1 : 2;
  return `${formatNumber(percent, decimals)} % (${formatNumber(part, 0)} of ${formatNumber(whole, 0)} ${things})`;
}
