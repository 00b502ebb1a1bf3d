/** Events of one day: about a thousand times those of a full plant's. A minute or so of computing. */
export const MAX_EVENTS = 100_000_000;

/** Days of one study, all variants together: about a gigabyte of values where every usual response is kept. */
export const MAX_DAYS = 1_000_000;

/** A study asks for more days than it is allowed. */
export class TooManyDays extends Error {
  override name = "TooManyDays";

  constructor(asked: number, most: number) {
    super(`the study asks for ${asked} days, more than ${most}; ask for fewer, or raise the ceiling of days`);
  }
}
