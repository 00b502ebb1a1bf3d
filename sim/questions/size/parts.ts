import type { Way } from "../../asked/plan/index.ts";
import type { AlternativeName, Staffing } from "./alternatives.ts";
import type { PlantDesign, SizedStation } from "./design.ts";

/** The sized parts that a plan is written from; crate steps apart from the stations of the line. */
export interface Parts
  extends Pick<PlantDesign, "rate" | "crews" | "dwells" | "chiller" | "chain" | "crates" | "byProducts"> {
  choice: { name: AlternativeName; way: Way; staffing: Staffing };
  stations: SizedStation[];
  crateSteps: SizedStation[];
}
