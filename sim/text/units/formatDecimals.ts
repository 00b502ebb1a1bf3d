const THIN_SPACE = "\u202F";
const MINUS = "\u2212";

/**
 * A number with so many decimals, thousands parted by a thin no-break space (ISO 80000-1), a true minus sign, no "-0".
 * `decimals` may be negative (-2 rounds to hundreds). Not a number gives "not known"; infinity gives "no limit".
 */
export function formatDecimals(value: number, decimals: number): string {
  if (Number.isNaN(value)) return "not known";
  if (!Number.isFinite(value)) return "no limit";
  const step = Number(`1e${Math.max(0, -decimals)}`);
  const digits = (Math.round(Math.abs(value) / step) * step).toFixed(0);
  const plain = decimals > 0 ? Math.abs(value).toFixed(Math.min(decimals, 12)) : digits;
  const [whole = "0", fraction] = plain.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, THIN_SPACE);
  const text = fraction === undefined ? grouped : `${grouped}.${fraction}`;
  return value < 0 && /[1-9]/.test(text) ? MINUS + text : text;
}

/** Decimals that show `resolution` with two significant digits: 0.034 -> 3, 4.2 -> 1, 530 -> -1. 0 gives `fallback`. */
export function decimalsFor(resolution: number, fallback = 1): number {
  if (!(resolution > 0) || !Number.isFinite(resolution)) return fallback;
  return Math.min(12, 1 - Math.floor(Math.log10(resolution) + 1e-9));
}
