import type { Design, SizedStation } from "./design.ts";

/** The sized parts that a plan is written from; crate steps apart from the stations of the line. */
export interface Parts
  extends Pick<Design, "rate" | "crews" | "dwells" | "chiller" | "chain" | "crates" | "byProducts"> {
  stations: SizedStation[];
  crateSteps: SizedStation[];
}
