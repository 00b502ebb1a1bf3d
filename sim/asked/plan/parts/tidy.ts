const DIGITS = 12;

/**
 * A figure worked out from written ones, to 12 significant digits: far more than anybody writes, and free of the noise
 * that changing units leaves in the last two ("3.6 m/min" at a pitch of "0.3 m" is a shackle every 5 s, not
 * 4.999999999999999 s).
 */
export function tidy(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
