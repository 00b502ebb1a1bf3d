import type { Quantity } from "./quantity.ts";

/** Real days as somebody wrote them down. */
export interface Observed {
  /** Lines of the file, one for each day. */
  lines: number[];
  quantities: ObservedQuantity[];
  /** Headings of columns that hold nothing to compare. */
  passedOver: string[];
}

export interface ObservedQuantity {
  heading: string;
  quantity: Quantity;
  /** One for each day; null where the cell is empty. At least one is there. SI: seconds after the day's start, 0 to 1. */
  values: (number | null)[];
}
