import { SECONDS_PER_DAY } from "./formatClock.ts";
import { formatNumber } from "./formatNumber.ts";

const MINUTE = 60;
const HOUR = 3600;

/**
 * Seconds as people say them: "4.2 s", "2 min 30 s", "1 h 05", "2 d 3 h". Rounded to three digits below a minute, to
 * the second below an hour, to the minute below a day, to the hour above. Negative differences get a minus sign.
 * Infinity is "no limit"; NaN and minus infinity throw RangeError.
 */
export function formatDuration(seconds: number): string {
  if (seconds === Number.POSITIVE_INFINITY) return "no limit";
  if (!Number.isFinite(seconds)) throw new RangeError(`formatDuration: ${seconds} is not a number of seconds`);
  if (seconds < 0) return `−${formatDuration(-seconds)}`;
  const short = Number(seconds.toPrecision(3));
  if (short < MINUTE) return `${formatNumber(seconds)} s`;
  const wholeSeconds = Math.round(seconds);
  if (wholeSeconds < HOUR) return twoParts(wholeSeconds, MINUTE, "min", 1, "s", 1);
  const wholeMinutes = Math.round(seconds / MINUTE);
  if (wholeMinutes * MINUTE < SECONDS_PER_DAY)
    return twoParts(wholeMinutes * MINUTE, HOUR, "h", MINUTE, "", 2).trimEnd();
  return twoParts(Math.round(seconds / HOUR) * HOUR, SECONDS_PER_DAY, "d", HOUR, "h", 1);
}

/** The same to the minute: "0 s" below half a minute. */
export function formatMinutes(seconds: number): string {
  return formatDuration(MINUTE * Math.round(seconds / MINUTE));
}

function twoParts(total: number, large: number, largeUnit: string, small: number, smallUnit: string, digits: number) {
  const first = `${Math.floor(total / large)} ${largeUnit}`;
  const rest = (total % large) / small;
  return rest === 0 ? first : `${first} ${String(rest).padStart(digits, "0")} ${smallUnit}`;
}
