import type { Change } from "../../asked/study/index.ts";
import type { OfferCost } from "../options/index.ts";

/**
 * How much of each element a design has: places, people, 1 of an option that is bought, or the number of the moment at which
 * something begins, the earliest being 0. In the order of the space.
 */
export type Counts = readonly number[];

/** Something that there can be more or less of. */
export interface Element {
  /** The station, the crew, the option, or what is moved. */
  name: string;
  from: number;
  to: number;
  /** What one more takes of the total; of a moment, what each step away from today's takes. */
  price: number;
  /** Of a moment: the one of the plan as it is. */
  today?: number;
  time?: TimeElement;
}

/** What begins at one of some moments; in a week also what comes on one of some days, or a crew with one of some numbers of people. */
export interface TimeElement {
  what: "load" | "gap" | "shift" | "break" | "day" | "people";
  /** The load, shift, break or crew. */
  of: string;
  /** A load of several lorries. */
  many: boolean;
  /** Stands before a moment in the name of a design. */
  label: string;
  /** By count: "06:30", or of a gap between lorries "45 min". */
  moments: readonly string[];
  /** 0 of days and people. */
  stepSeconds: number;
  /** The day of the week that it is moved on, or away from. */
  on?: string;
  /** Of a load that may come on another day: how many of its lorries, the last ones. */
  lorries?: number;
}

/** Everything that may be chosen. */
export interface Space {
  kind: "places" | "people" | "budget" | "times" | "week";
  /** What the total is counted in: "places", "people", a currency, minutes by which things are moved, or steps away from today's week. */
  unit: string;
  elements: readonly Element[];
  /** Least and most of the total that a design takes. */
  least: number;
  most: number;
  /** What the plan as it is has; null of an element that it has more of than can be counted. */
  base: readonly (number | null)[];
  /** Pairs of elements that exclude each other. */
  apart: readonly (readonly [number, number])[];
  /** Of each option what it costs to buy and keep; empty where nothing is bought. */
  offerCosts: readonly OfferCost[];
  /** Of a week: elements whose counts together are bounded, with what is added to each for its number of people. */
  people?: { of: readonly { element: number; fewest: number }[]; most: number };
  /** What makes such a design out of the plan as it is. */
  changeOf(counts: Counts): Change;
  /** In a few words; a different one for each design. */
  nameOf(counts: Counts): string;
}

/** What a design takes of the total. */
export function spent({ elements }: Pick<Space, "elements">, counts: Counts): number {
  return elements.reduce((sum, { price, today = 0 }, index) => sum + price * Math.abs(counts[index]! - today), 0);
}

/** Whether elements are moved away from today's, with no total to share out. */
export function isMoved({ kind }: Pick<Space, "kind">): boolean {
  return kind === "times" || kind === "week";
}

/** Within the bounds of every element, and nothing in it that excludes another; the total is not looked at. */
export function isPossible({ elements, apart, people }: Space, counts: Counts): boolean {
  const present = people?.of.reduce((sum, { element, fewest }) => sum + fewest + counts[element]!, 0) ?? 0;
  return (
    present <= (people?.most ?? present) &&
    elements.every(({ from, to }, index) => counts[index]! >= from && counts[index]! <= to) &&
    apart.every(([one, other]) => counts[one] === 0 || counts[other] === 0)
  );
}

/** May be recommended. */
export function isAllowed(space: Space, counts: Counts): boolean {
  const total = spent(space, counts);
  return isPossible(space, counts) && total >= space.least && total <= space.most;
}

/** The plan as it is as a design; null where it is none of those that are allowed. */
export function baseCounts(space: Space): Counts | null {
  const counts = space.base.map((count) => count ?? Number.NaN);
  return isAllowed(space, counts) ? counts : null;
}
