import { foundWords } from "./foundWords.ts";
import { type Reading, read, refused } from "./reading.ts";

/** Hours, minutes and, if wanted, seconds. Hours from 24 on are those of the following days. */
export const CLOCK_PATTERN = "^\\d{1,2}:[0-5]\\d(:[0-5]\\d)?$";
export const CLOCK_EXAMPLE = "06:00";

const clock = new RegExp(CLOCK_PATTERN, "u");

/** Reads "06:00" (or "06:00:30") into seconds after midnight; "25:30" is half past one on the next day. */
export function readClock(written: unknown): Reading<number> {
  if (typeof written !== "string" || !clock.test(written)) {
    return refused(
      `${foundWords(written)} is not a clock time`,
      'hours and minutes on the 24-hour clock ("25:30" is half past one on the next day)',
      `write for example "${CLOCK_EXAMPLE}"`,
    );
  }
  const [hours, minutes, seconds = 0] = written.split(":").map(Number) as [number, number, number?];
  return read(hours * 3600 + minutes * 60 + seconds);
}
