const DAY = 86_400;

/**
 * Seconds after midnight as a time of day, HH:MM, or HH:MM:SS with `precise`. Later days are counted: "01:10 +1 d".
 * Rounds to the nearest minute (second).
 */
export function formatClock(secondsAfterMidnight: number, precise = false): string {
  if (!Number.isFinite(secondsAfterMidnight)) return "not known";
  const unit = precise ? 1 : 60;
  const rounded = Math.round(secondsAfterMidnight / unit) * unit;
  const days = Math.floor(rounded / DAY);
  const inDay = rounded - days * DAY;
  const parts = [Math.floor(inDay / 3600), Math.floor((inDay % 3600) / 60)];
  if (precise) parts.push(inDay % 60);
  const time = parts.map((part) => String(part).padStart(2, "0")).join(":");
  return days === 0 ? time : `${time} ${days > 0 ? "+" : "\u2212"}${Math.abs(days)} d`;
}
