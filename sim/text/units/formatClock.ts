export const SECONDS_PER_DAY = 86_400;

/**
 * Seconds after midnight as a time of day, to the minute, or to the second with `precise`: "06:00", "06:00:30". Other days
 * are counted: "01:30 +1 d", "23:00 −1 d". Not a number and infinity give "not known".
 */
export function formatClock(secondsAfterMidnight: number, precise = false): string {
  if (!Number.isFinite(secondsAfterMidnight)) return "not known";
  const unit = precise ? 1 : 60;
  const rounded = Math.round(secondsAfterMidnight / unit) * unit;
  const days = Math.floor(rounded / SECONDS_PER_DAY);
  const time = timeOfDay(rounded - days * SECONDS_PER_DAY, precise);
  return days === 0 ? time : `${time} ${days > 0 ? "+" : "\u2212"}${Math.abs(days)} d`;
}

/**
 * Seconds after midnight in the form that `readClock` reads, to the second: "06:00", "25:30", "06:00:30". Negative,
 * infinite and NaN: RangeError.
 */
export function writeClock(secondsAfterMidnight: number): string {
  if (!(secondsAfterMidnight >= 0) || secondsAfterMidnight === Number.POSITIVE_INFINITY) {
    throw new RangeError(`${secondsAfterMidnight} is not a number of seconds after midnight`);
  }
  const seconds = Math.round(secondsAfterMidnight);
  return timeOfDay(seconds, seconds % 60 !== 0);
}

function timeOfDay(seconds: number, precise: boolean): string {
  const parts = [Math.floor(seconds / 3600), Math.floor((seconds % 3600) / 60), ...(precise ? [seconds % 60] : [])];
  return parts.map((part) => String(part).padStart(2, "0")).join(":");
}
