import { formatNumber } from "./formatNumber.ts";

/** A share from 0 to 1 in percent, three significant digits at least: 0.025 is "2.5 %". */
export function formatShare(share: number): string {
  return `${formatNumber(share * 100)} %`;
}
