import type { ResponseInfo } from "./responseInfo.ts";

/**
 * A response's value as a reader wants it: "612.3 carcasses/h", "15:42", "12.3 %", "35.2 min".
 * `startClockSeconds` (seconds after midnight) turns the seconds of a "clock" response into the time of day.
 */
export function formatResponse(value: number, info: ResponseInfo, startClockSeconds: number): string {
  if (info.format === "clock") return formatClock(startClockSeconds + value);
  if (info.format === "duration") return formatDuration(value);
  if (info.format === "share") return `${plainNumber(value * 100)} %`;
  return `${plainNumber(value)} ${info.unit}`.trimEnd();
}

/**
 * A difference of two values: "+12.3 carcasses/h", "-8.2 min", "+1.2 percentage points". `plain` leaves a plus sign
 * out.
 */
export function formatSpan(value: number, info: ResponseInfo, style: "signed" | "plain" = "signed"): string {
  const sign = style === "signed" && value > 0 ? "+" : "";
  if (info.format === "clock" || info.format === "duration") return sign + formatDuration(value);
  if (info.format === "share") return `${sign}${plainNumber(value * 100)} percentage points`;
  return `${sign}${plainNumber(value)} ${info.unit}`.trimEnd();
}

/** "333.0 to 339.1 carcasses/h": two texts with a unit, which is said once where it is the same. */
export function formatRange(low: string, high: string): string {
  const unitAt = low.indexOf(" ");
  const sameUnit = unitAt > 0 && low.slice(unitAt) === high.slice(high.indexOf(" "));
  return `${sameUnit ? low.slice(0, unitAt) : low} to ${high}`;
}

/** Hours and minutes of a 24-hour clock, to the nearest minute; later days are counted ("01:10 +1 d"). */
function formatClock(secondsAfterMidnight: number): string {
  const minutes = Math.round(secondsAfterMidnight / 60);
  const days = Math.floor(minutes / 1440);
  const two = (count: number): string => String(count).padStart(2, "0");
  const time = `${two(Math.floor((minutes - days * 1440) / 60))}:${two(minutes % 60)}`;
  return days === 0 ? time : `${time} ${days > 0 ? "+" : ""}${days} d`;
}

/** Seconds up to two minutes, minutes up to two hours, then hours. */
function formatDuration(seconds: number): string {
  const size = Math.abs(seconds);
  if (size < 120) return `${plainNumber(seconds)} s`;
  if (size < 7200) return `${plainNumber(seconds / 60)} min`;
  return `${plainNumber(seconds / 3600)} h`;
}

/** At most four significant digits before the point is reached, never an exponent; "-0" is 0. */
function plainNumber(value: number): string {
  const size = Math.abs(value);
  if (Number.isInteger(value)) return String(value + 0);
  const decimals = size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.001 ? 3 : 5;
  const text = value.toFixed(decimals);
  return Number(text) === 0 && text.startsWith("-") ? text.slice(1) : text;
}
