import type { ResponseInfo } from "../observations/index.ts";

const MINUTE = 60;
const HOUR = 3600;

/** "78 min (70 to 86 min)", "12 carcasses/h (9 to 15 carcasses/h)": a size with its interval, no finer than the interval is wide. */
export function spreadWords(mean: number, low: number, high: number, response: ResponseInfo): string {
  const { scale, unit } = unitFor(Math.max(Math.abs(mean), Math.abs(high)), response);
  const half = (high - low) / 2 / scale;
  const decimals = decimalsFor(half > 0 ? half : mean / scale / 10);
  const text = (value: number) => plain((value / scale).toFixed(decimals));
  if (low === high) return `${text(mean)}${unit}`;
  return `${text(mean)}${unit} (${text(low)} to ${text(high)}${unit})`;
}

/** "1 min", "20 s", "2 carcasses/h": a round number. */
export function sizeWords(size: number, response: ResponseInfo): string {
  const { scale, unit } = unitFor(size, response);
  return `${Number((size / scale).toPrecision(3))}${unit}`;
}

function unitFor(largest: number, { format, unit }: ResponseInfo): { scale: number; unit: string } {
  if (format !== "clock" && format !== "duration") return { scale: 1, unit: ` ${unit}` };
  if (largest < MINUTE) return { scale: 1, unit: " s" };
  return largest < 3 * HOUR ? { scale: MINUTE, unit: " min" } : { scale: HOUR, unit: " h" };
}

/** As many as half of the interval needs for one digit, two where that begins with 1: none where it is 2 or more. */
function decimalsFor(half: number): number {
  return half > 0 ? Math.min(4, Math.max(0, Math.ceil(Math.log10(2 / half)))) : 0;
}

function plain(text: string): string {
  return Number(text) === 0 ? text.replace("-", "") : text;
}
