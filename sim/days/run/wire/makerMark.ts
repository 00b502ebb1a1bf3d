import { arithmeticMark } from "./arithmeticMark.ts";

/** Who made a day: only days of one maker go into one result. */
export interface MakerMark {
  /** Version of this program. */
  gambrel: string;
  /** See `arithmeticMark`. */
  arithmetic: string;
}

export function makerMark(gambrel: string): MakerMark {
  return { gambrel, arithmetic: arithmeticMark() };
}

/** How two makers differ, in words ("gambrel 0.1.0 there, 0.2.0 here"); null when they do not. */
export function makerDifference(there: MakerMark, here: MakerMark): string | null {
  if (there.gambrel !== here.gambrel) return `gambrel ${there.gambrel} there, ${here.gambrel} here`;
  if (there.arithmetic !== here.arithmetic) {
    return "a release of Node.js there whose exp, log or power differ in the last digit from those here";
  }
  return null;
}
