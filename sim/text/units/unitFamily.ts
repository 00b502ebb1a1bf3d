/** Multiply by the first, divide by the second: kept apart so that 350 g is the double nearest to 0.35 kg. */
export type UnitScale = readonly [multiplyBy: number, divideBy: number];

/** One kind of quantity: which units people may write, and what one of each is in SI. */
export interface UnitFamily {
  /** With its article, for messages: "a time". */
  readonly name: string;
  /** The unit of the number that reading gives. Its scale in `units` is [1, 1]. */
  readonly si: string;
  /** A whole quantity as it should be written. */
  readonly example: string;
  /** Symbol to scale, smallest unit first. */
  readonly units: Readonly<Record<string, UnitScale>>;
  /** What people write instead of a symbol; used only to suggest the symbol. */
  readonly otherSpellings: Readonly<Record<string, string>>;
  /** Smallest value that has a meaning, in SI. */
  readonly least: number;
  /** Units to print in, smallest first; the largest one that leaves a number of 1 or more is taken. */
  readonly printed: readonly string[];
}
