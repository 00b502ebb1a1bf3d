const THIN_SPACE = "\u202F";
const MINUS = "\u2212";

/**
 * A number in decimal notation, thousands parted by a thin no-break space (ISO 80000-1), a true minus sign, no "-0".
 * `decimals` may be negative (-2 rounds to hundreds). Not a number gives "not known"; infinity gives "no limit".
 */
export function formatNumber(value: number, decimals: number): string {
  if (Number.isNaN(value)) return "not known";
  if (!Number.isFinite(value)) return "no limit";
  const step = 10 ** Math.max(0, -decimals);
  const digits = (Math.round(Math.abs(value) / step) * step).toFixed(0);
  const plain = decimals > 0 ? Math.abs(value).toFixed(Math.min(decimals, 12)) : digits;
  const [whole = "0", fraction] = plain.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, THIN_SPACE);
  const text = fraction === undefined ? grouped : `${grouped}.${fraction}`;
  return value < 0 && /[1-9]/.test(text) ? MINUS + text : text;
}

/**
 * Decimals for a figure and both ends of its interval, by the rule that the terminal writes by (`intervalDecimals` in
 * sim/units, which no picture loads; a test holds the two to the same): behind the point the last digit stands for at most half of the
 * half-width; whole numbers keep two digits of it.
 */
export function intervalDecimals(halfWidth: number): number {
  const behindPoint = Math.ceil(-Math.log10(halfWidth / 2) - 1e-9);
  const twoDigits = 1 - Math.floor(Math.log10(halfWidth) + 1e-9);
  return Math.min(12, Math.max(behindPoint, Math.min(0, twoDigits)));
}

/** Decimals that show `resolution` with two significant digits: 0.034 -> 3, 4.2 -> 1, 530 -> -1. 0 gives `fallback`. */
export function decimalsFor(resolution: number, fallback = 1): number {
  if (!(resolution > 0) || !Number.isFinite(resolution)) return fallback;
  return Math.min(12, 1 - Math.floor(Math.log10(resolution) + 1e-9));
}
