import type { TimeCell } from "./readTime.ts";

/** A column of the file before its heading is read. */
export interface RawColumn {
  heading: string;
  cells: TimeCell[];
}
