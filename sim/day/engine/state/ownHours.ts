import { STATES } from "../dayRecord.ts";

/**
 * What a stage's own time needs to know of the day (see ownTime.ts): when it began and when its last head left, and its
 * position-seconds by state at those moments. Changes with the first head, with each head that leaves, and when an idle
 * stage changes its state; not with each event.
 */
export class OwnHours {
  // Seconds begin as NaN: see DayState.
  /** Since when heads could reach it; NaN before. */
  from = Number.NaN;
  /** When the last head left; NaN before the first one did. */
  left = Number.NaN;
  hasBegun = false;
  /** It has ended for good. */
  isOver = false;
  /** Nobody may work here by plan: a break, a pause, hours without its crews. */
  isAway = false;
  /** Position-seconds by state: when it began; when `left` was `leftSumsAt`; at the beginning of the absence under way. */
  readonly fromSums = new Float64Array(STATES.length);
  readonly leftSums = new Float64Array(STATES.length);
  leftSumsAt = Number.NaN;
  readonly awaySums = new Float64Array(STATES.length);
  /** Position-seconds by state in earlier absences. */
  readonly away = new Float64Array(STATES.length);
}
