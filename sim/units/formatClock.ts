const DAY = 86400;

/**
 * Seconds after midnight as a time of day, rounded to the minute: "06:00"; on later days "01:30 (+1 d)".
 * Negative, infinite and NaN: RangeError.
 */
export function formatClock(secondsAfterMidnight: number): string {
  const minutes = Math.round(checked(secondsAfterMidnight) / 60);
  const day = Math.floor((minutes * 60) / DAY);
  const timeOfDay = hoursAndMinutes(minutes - (day * DAY) / 60);
  return day === 0 ? timeOfDay : `${timeOfDay} (+${day} d)`;
}

/** Seconds after midnight in the form that `readClock` reads, to the second: "06:00", "25:30", "06:00:30". */
export function writeClock(secondsAfterMidnight: number): string {
  const seconds = Math.round(checked(secondsAfterMidnight));
  const rest = seconds % 60;
  const start = hoursAndMinutes((seconds - rest) / 60);
  return rest === 0 ? start : `${start}:${twoDigits(rest)}`;
}

function hoursAndMinutes(minutes: number): string {
  return `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}

function checked(seconds: number): number {
  if (!(seconds >= 0) || seconds === Number.POSITIVE_INFINITY) {
    throw new RangeError(`${seconds} is not a number of seconds after midnight`);
  }
  return seconds;
}
